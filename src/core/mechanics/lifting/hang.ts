/**
 * How a load hangs when the hook does not stand over its centre of mass: it swings until it does, by
 * atan(offset / height), height being that of the pick-up points' middle over the centre of mass; with the pick-up
 * below the centre of mass it turns over. Statics of a stiff load on one hook. That a tilt above 5 degrees is too much is
 * common practice, no source.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  finite,
  finished,
  message,
  STANDARD_GRAVITY,
  type Message,
  type Result,
} from '../../kernel';

export interface HangInput {
  /** Horizontal distance of the hook from the centre of mass as the load stands. */
  readonly offset_m: number;
  /** Height of the pick-up points over the centre of mass; negative where they are below. */
  readonly height_m: number;
  readonly mass_kg?: number | undefined;
  /** Tilt that is still allowed, default 5 degrees. */
  readonly allowed_deg?: number | undefined;
}

export interface Hang {
  /** Null where it turns over. */
  readonly tilt_deg: number | null;
  readonly stable: boolean;
  readonly level: boolean;
  /** Moment that swings it as it leaves the ground, N m; null without a mass. */
  readonly moment_Nm: number | null;
  readonly notes: readonly Message[];
}

/** Refused: a negative offset or mass. */
export function hang(input: HangInput): Result<Hang> {
  const faults = checkNumbers(input, {
    offset_m: atLeast(0),
    height_m: finite,
    mass_kg: above(0),
    allowed_deg: above(0),
  });
  if (faults.length > 0) return fail(faults);
  const { offset_m, height_m, mass_kg, allowed_deg = 5 } = input;
  const stable = height_m > 0;
  const tilt_deg = stable ? (Math.atan2(offset_m, height_m) * 180) / Math.PI : null;
  const level = tilt_deg !== null && tilt_deg <= allowed_deg;
  const notes: Message[] = [];
  if (!stable) notes.push(message('mechanics.note.turns-over'));
  else if (!level) notes.push(message('mechanics.note.hook-off-centre', { allowed_deg }));
  return finished({
    tilt_deg,
    stable,
    level,
    moment_Nm: mass_kg === undefined ? null : mass_kg * STANDARD_GRAVITY * offset_m,
    notes,
  });
}
