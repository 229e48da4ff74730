/**
 * Nut factor from thread and collar friction:
 * K = (dm / 2d) (tan l + f sec a) / (1 - f tan l sec a) + 0.625 fc, a = 30 degrees, tan l = P / (pi dm), dm = mean
 * of d and the minor diameter d - 1.226869 P.
 * Source: R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, ch. 8 (from memory);
 * U. C. Jindal, Machine Design, Ex 9-3.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  type Message,
  type Result,
} from '../../kernel';

export interface NutFactorInput {
  readonly diameter_m: number;
  readonly pitch_m: number;
  readonly thread_friction: number;
  readonly collar_friction: number;
}

export interface NutFactor {
  readonly K: number;
  readonly notes: readonly Message[];
}

const SEC_30 = 2 / Math.sqrt(3);

/** Refused: a pitch of half the diameter or more, friction so high that the thread cannot be turned. */
export function nutFactor(input: NutFactorInput): Result<NutFactor> {
  const { diameter_m: d, pitch_m, thread_friction: f, collar_friction } = input;
  const faults = checkNumbers(input, {
    diameter_m: above(0),
    pitch_m: above(0),
    thread_friction: atLeast(0),
    collar_friction: atLeast(0),
  });
  if (pitch_m >= d / 2) faults.push(faultAt('pitch_m', message('expected.below', { limit: d / 2 }), pitch_m));
  if (faults.length > 0) return fail(faults);
  const mean = d - (1.226869 / 2) * pitch_m;
  const lead = pitch_m / (Math.PI * mean);
  const slack = 1 - f * lead * SEC_30;
  if (slack <= 0) {
    return fail([faultAt('thread_friction', message('expected.below', { limit: 1 / (lead * SEC_30) }), f)]);
  }
  const K = ((mean / (2 * d)) * (lead + f * SEC_30)) / slack + 0.625 * collar_friction;
  return finished({ K, notes: [] });
}
