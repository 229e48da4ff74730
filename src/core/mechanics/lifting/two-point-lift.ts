/**
 * Load on two hooks: moments about one hook give a = m (L - x) / L, b = m x / L. Statics; it holds while hooks and
 * centre of mass are in one line, since tilting otherwise moves the shares.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  STANDARD_GRAVITY,
  type Message,
  type Result,
} from '../../kernel';

export interface TwoPointLiftInput {
  readonly mass_kg: number;
  /** Horizontal distance between the hooks A and B. */
  readonly distance_m: number;
  /** Horizontal distance of the centre of mass from A, towards B. */
  readonly cog_from_a_m: number;
}

export interface TwoPointLift {
  readonly a_kg: number;
  readonly b_kg: number;
  readonly a_N: number;
  readonly b_N: number;
  readonly notes: readonly Message[];
}

/** Refused: a centre of mass that is not between the hooks (one would have to push). */
export function twoPointLift(input: TwoPointLiftInput): Result<TwoPointLift> {
  const { mass_kg, distance_m, cog_from_a_m } = input;
  const faults = checkNumbers(input, { mass_kg: above(0), distance_m: above(0), cog_from_a_m: atLeast(0) });
  if (cog_from_a_m > distance_m) {
    faults.push(faultAt('cog_from_a_m', message('expected.at-most', { limit: distance_m }), cog_from_a_m));
  }
  if (faults.length > 0) return fail(faults);
  const b_kg = mass_kg * (cog_from_a_m / distance_m);
  const a_kg = mass_kg - b_kg;
  return finished({ a_kg, b_kg, a_N: a_kg * STANDARD_GRAVITY, b_N: b_kg * STANDARD_GRAVITY, notes: [] });
}
