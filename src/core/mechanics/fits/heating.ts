/**
 * Heating a ring so that its bore grows: dT = growth / (alpha D), growth being interference plus the clearance
 * wanted for sliding it on. Source: T. H. Wentzell, Machine Design, ch. 6 (thermal expansion).
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  finite,
  finished,
  message,
  type Message,
  type Result,
} from '../../kernel';

/** Normal target and upper limit for ordinary bearing rings, degrees Celsius: common practice, no source. */
export const BEARING_HEATING_C = { target: 120, limit: 125 } as const;

export interface HeatingInput {
  readonly diameter_m: number;
  /** Wanted growth of the diameter, m, 0 or more. */
  readonly growth_m: number;
  /** Linear expansion, 1/K; steel 11e-6 to 12e-6. */
  readonly alpha_per_K: number;
  /** Temperature that the part starts from; without it no end temperature is given. */
  readonly start_C?: number | undefined;
}

export interface Heating {
  readonly delta_T_K: number;
  readonly temperature_C: number | null;
  readonly notes: readonly Message[];
}

/** Notes an end temperature above what ordinary bearing rings bear. */
export function heatingForGrowth(input: HeatingInput): Result<Heating> {
  const faults = checkNumbers(input, {
    diameter_m: above(0),
    growth_m: atLeast(0),
    alpha_per_K: above(0),
    start_C: finite,
  });
  if (faults.length > 0) return fail(faults);
  const delta_T_K = input.growth_m / (input.alpha_per_K * input.diameter_m);
  const temperature_C = input.start_C === undefined ? null : input.start_C + delta_T_K;
  const notes: Message[] = [];
  if (temperature_C === null) notes.push(message('mechanics.note.temperature-needs-start'));
  else if (temperature_C > BEARING_HEATING_C.limit) {
    notes.push(message('mechanics.note.too-hot-for-bearing', { limit_C: BEARING_HEATING_C.limit }));
  }
  return finished({ delta_T_K, temperature_C, notes });
}
