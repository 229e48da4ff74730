/**
 * Natural frequencies of drum and frame on soil, without damping: w^2 from
 * (kd - md w^2)(k - mf w^2) = k^2, kd = k + ks. The lower is mostly the frame on its mounts, the upper mostly the drum
 * on the soil. Textbook: two masses in line, two springs.
 */
import { above, atLeast, checkNumbers, fail, finished, type Result } from '../../kernel';

export interface NaturalFrequenciesInput {
  readonly drum_mass_kg: number;
  readonly frame_mass_kg: number;
  readonly mount_stiffness_N_m: number;
  readonly soil_stiffness_N_m: number;
}

export interface NaturalFrequencies {
  /** 0 where drum and frame can float away together (no soil). */
  readonly lower_Hz: number;
  readonly upper_Hz: number;
}

export function naturalFrequencies(input: NaturalFrequenciesInput): Result<NaturalFrequencies> {
  const faults = checkNumbers(input, {
    drum_mass_kg: above(0),
    frame_mass_kg: above(0),
    mount_stiffness_N_m: atLeast(0),
    soil_stiffness_N_m: atLeast(0),
  });
  if (faults.length > 0) return fail(faults);
  const a = (input.mount_stiffness_N_m + input.soil_stiffness_N_m) / input.drum_mass_kg;
  const b = input.mount_stiffness_N_m / input.frame_mass_kg;
  const product = (input.soil_stiffness_N_m / input.drum_mass_kg) * b;
  // (a - b)^2 + 4 a b - 4 product, written so that nothing cancels
  const spread = Math.hypot(a - b, 2 * Math.sqrt((input.mount_stiffness_N_m / input.drum_mass_kg) * b));
  const upper = (a + b + spread) / 2;
  const lower = upper === 0 ? 0 : product / upper;
  const hertz = (square: number): number => Math.sqrt(square) / (2 * Math.PI);
  return finished({ lower_Hz: hertz(lower), upper_Hz: hertz(upper) });
}
