/**
 * Life of several bearings of which none may fail: L = (sum L_i^-e)^(-1/e).
 * Source: G. Lundberg, A. Palmgren; T. A. Harris, Rolling Bearing Analysis (from memory).
 */
import {
  above,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  type Message,
  type Result,
} from '../../kernel';
import { checkExponent, systemExponent, type LifeExponent } from './exponent';

export interface BearingSystemInput {
  /** Lives of the single bearings at one and the same reliability, h, above 0. */
  readonly lives_h: readonly number[];
  /** 10/9 or 'ball', 9/8 or 'roller'; some texts use 1.5. */
  readonly exponent: LifeExponent;
}

export interface BearingSystem {
  /** Life of the whole at the same reliability. */
  readonly life_h: number;
  readonly notes: readonly Message[];
}

/** Refused: an empty list, a life or exponent not above 0. The result is never above the shortest life. */
export function bearingSystem(input: BearingSystemInput): Result<BearingSystem> {
  const { lives_h } = input;
  const faults = [
    ...lives_h.flatMap((life, i) =>
      checkNumbers({ [`lives_h[${i}]`]: life }, { [`lives_h[${i}]`]: above(0) }),
    ),
    ...checkExponent('exponent', input.exponent),
  ];
  if (lives_h.length === 0)
    faults.push(faultAt('lives_h', message('expected.entries', { limit: 1 }), lives_h));
  if (faults.length > 0) return fail(faults);
  const e = systemExponent(input.exponent);
  // by the shortest life, so that powers neither overflow nor vanish
  const shortest = Math.min(...lives_h);
  const sum = lives_h.reduce((total, life) => total + (shortest / life) ** e, 0);
  return finished({ life_h: shortest * sum ** (-1 / e), notes: [] });
}
