/**
 * Fast values: written many times a second outside the store, read in the frame loop. Whoever writes asks for a
 * frame; nobody sets state in a frame.
 */
export interface Transient {
  /** Time on the teardown timeline in seconds. */
  teardownTime_s: number;
  /** Angle of the drum and of the exciter about machine +x since the spin began, radians. */
  drumAngle_rad: number;
  exciterAngle_rad: number;
  /** Explode slider while it is dragged, 0 to 1. */
  explode: number;
  /** Cutting plane offset while it is dragged, metres. */
  sectionOffset_m: number;
  /** In practice: how far a hand has moved what it holds along its way, metres, and whether it holds it still. */
  hand_m: number;
  handHolds: boolean;
  version: number;
}

const listeners = new Set<() => void>();

export const transient: Transient = {
  teardownTime_s: 0,
  drumAngle_rad: 0,
  exciterAngle_rad: 0,
  explode: 0,
  sectionOffset_m: 0,
  hand_m: 0,
  handHolds: false,
  version: 0,
};

/** Called by whoever changed a fast value: asks all listeners (the stage) for a frame. */
export function requestFrame(): void {
  transient.version++;
  for (const listener of listeners) listener();
}

/** The stage (and live read-outs) listen here; returns the function that stops it. */
export function onFrameRequest(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
