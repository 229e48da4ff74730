/**
 * Whole-body vibration in words: weighted acceleration of one steady frequency, daily exposure A(8), and where it
 * stands against the action and limit values.
 * Sources: ISO 2631-1:1997, Annex A (weighting Wk for vertical vibration through the seat, parameters from memory;
 * checked against its table 3, from memory too); Directive 2002/44/EC, Art. 3: action 0.5 m/s2, limit 1.15 m/s2 over
 * 8 h. A calculation at one place of a machine is no measurement at a seat.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  finished,
  type Message,
  type Result,
  within,
} from '../../kernel';

/** Daily exposure A(8) from which an employer must act, and which must not be passed. */
export const ACTION_M_S2 = 0.5;
export const LIMIT_M_S2 = 1.15;

/** Weight of vertical vibration at a frequency, 1 where a person feels it most (about 4 to 8 Hz: slightly above 1). */
export function verticalWeight(frequency_Hz: number): number {
  const f = frequency_Hz;
  const [f1, f2, f3, f4, q4, f5, q5, f6, q6] = [0.4, 100, 12.5, 12.5, 0.63, 2.37, 0.91, 3.35, 0.91];
  const highPass = 1 / Math.sqrt(1 + (f1 / f) ** 4);
  const lowPass = 1 / Math.sqrt(1 + (f / f2) ** 4);
  const quadratic = (at: number, q: number) =>
    f ** 4 * q * q + f * f * at * at * (1 - 2 * q * q) + at ** 4 * q * q;
  const transition =
    Math.sqrt((f * f + f3 * f3) / (f3 * f3)) * Math.sqrt((f4 ** 4 * q4 * q4) / quadratic(f4, q4));
  const step = (q6 / q5) * Math.sqrt(quadratic(f5, q5) / quadratic(f6, q6));
  return highPass * lowPass * transition * step;
}

export interface WholeBodyInput {
  /** Peak acceleration of the steady vibration, m/s2. */
  readonly peak_m_s2: number;
  readonly frequency_Hz: number;
  readonly hours_a_day: number;
}

export interface WholeBody {
  readonly weight: number;
  /** Weighted root mean square. */
  readonly weighted_m_s2: number;
  readonly A8_m_s2: number;
  readonly level: 'below-action' | 'above-action' | 'above-limit';
  readonly notes: readonly Message[];
}

export function wholeBody(input: WholeBodyInput): Result<WholeBody> {
  const faults = checkNumbers(input, {
    peak_m_s2: atLeast(0),
    frequency_Hz: above(0),
    hours_a_day: within(0, 24),
  });
  if (faults.length > 0) return fail(faults);
  const weight = verticalWeight(input.frequency_Hz);
  const weighted_m_s2 = (weight * input.peak_m_s2) / Math.SQRT2;
  const A8_m_s2 = weighted_m_s2 * Math.sqrt(input.hours_a_day / 8);
  const level =
    A8_m_s2 > LIMIT_M_S2
      ? ('above-limit' as const)
      : A8_m_s2 > ACTION_M_S2
        ? ('above-action' as const)
        : ('below-action' as const);
  return finished({ weight, weighted_m_s2, A8_m_s2, level, notes: [] });
}
