/** Ways for a body to leave, and what stands in each way. */
import type { Vec3 } from '../kernel';

/** +x, -x, +y, -y, +z, -z: number 2 * axis, plus 1 for the negative sense. */
export const DIRECTIONS: readonly Vec3[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
];

export type BlockCause = 'path' | 'tool';

export interface Blocker {
  readonly body: number;
  /** Travel until it strikes; 0 where it touches or where only the tool meets it. */
  readonly strike_m: number;
  readonly cause: BlockCause;
}

/** A stretch of a way, before it is known how far the last one must go. */
export interface WayLeg {
  readonly direction: Vec3;
  /** Least distance; null: until it is clear. */
  readonly distance_m: number | null;
  readonly pitch_m: number | null;
}

/** One way for a body to leave by itself. */
export interface Way {
  readonly body: number;
  readonly kind: 'straight' | 'fastener' | 'unscrew' | 'two-leg' | 'hose';
  /** Number in DIRECTIONS of its (last) direction; -1 where it is oblique or differs from part to part. */
  readonly direction: number;
  readonly legs: readonly WayLeg[];
  /** Legs of each part where they differ. */
  readonly partLegs: Readonly<Record<number, readonly WayLeg[]>> | null;
  readonly blockers: readonly Blocker[];
  /** A threaded partner that this way comes off by itself. */
  readonly releases: number;
}

export function listBlockers(found: ReadonlyMap<number, number>, cause: BlockCause = 'path'): Blocker[] {
  return [...found].map(([body, strike_m]) => ({ body, strike_m, cause }));
}

/** Number in DIRECTIONS of a vector, -1 for an oblique one. */
export function directionNumber(direction: Vec3): number {
  return DIRECTIONS.findIndex(
    (d) => d[0] * direction[0] + d[1] * direction[1] + d[2] * direction[2] > 0.99999,
  );
}
