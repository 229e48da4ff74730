/** The balls' state on flat arrays, so that a step allocates nothing. */

/** Position table: x, y, z, radius. */
export const P = 4;
/** Motion table: velocity x y z, spin x y z (both seen from the housing), 1 / mass, 1 / moment of inertia. */
export const V = 8;

export interface Balls {
  readonly count: number;
  readonly position: Float64Array;
  readonly motion: Float64Array;
}

/** Moment of inertia of a ball over m r^2 (2/5) and of a disc (1/2). */
export const INERTIA_FACTOR = { 3: 0.4, 2: 0.5 } as const;

/** `count` balls at the origin with no size; fill them with `setBall`. */
export const createBalls = (count: number): Balls => ({
  count,
  position: new Float64Array(count * P),
  motion: new Float64Array(count * V),
});

/** Places ball `i` at rest; `mass_kg` and the dimension give its inertias. */
export function setBall(
  balls: Balls,
  i: number,
  centre_m: readonly [number, number, number],
  radius_m: number,
  mass_kg: number,
  dimension: 2 | 3 = 3,
): void {
  balls.position.set([...centre_m, radius_m], i * P);
  const inertia = INERTIA_FACTOR[dimension] * mass_kg * radius_m * radius_m;
  balls.motion.set([0, 0, 0, 0, 0, 0, 1 / mass_kg, 1 / inertia], i * V);
}

/** The mass of ball `i` in kg. */
export const massOf = (balls: Balls, i: number): number => 1 / balls.motion[i * V + 6]!;

/** Kinetic energy in J of all balls as seen from the housing: m v^2 / 2 + I w^2 / 2. */
export function kineticEnergy(balls: Balls): number {
  const m = balls.motion;
  let sum = 0;
  for (let o = 0; o < balls.count * V; o += V) {
    const v2 = m[o]! ** 2 + m[o + 1]! ** 2 + m[o + 2]! ** 2;
    const w2 = m[o + 3]! ** 2 + m[o + 4]! ** 2 + m[o + 5]! ** 2;
    sum += 0.5 * (v2 / m[o + 6]! + w2 / m[o + 7]!);
  }
  return sum;
}
