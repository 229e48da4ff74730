/**
 * Width of the strip on which a round drum stands: a rigid cylinder pressed into an elastic half-space,
 * b = sqrt(4 q R / (pi E*)), E* = E / (1 - nu^2), width 2 b; mean pressure q / (2 b), greatest 4/pi of it.
 * Source: K. L. Johnson, Contact Mechanics, ch. 4 (Hertz line contact; from memory). Soil is neither elastic nor at
 * rest under a drum, so this is an order of size.
 */
import {
  above,
  checkNumbers,
  fail,
  finished,
  STANDARD_GRAVITY,
  within,
  type Message,
  type Result,
} from '../../kernel';

export interface ContactWidthInput {
  readonly load_N_m: number;
  readonly drum_radius_m: number;
  readonly soil_modulus_Pa: number;
  /** Poisson's ratio, default 0.3. */
  readonly poisson?: number | undefined;
}

export interface ContactWidth {
  readonly width_m: number;
  readonly mean_pressure_Pa: number;
  readonly notes: readonly Message[];
}

export function contactWidth(input: ContactWidthInput): Result<ContactWidth> {
  const faults = checkNumbers(input, {
    load_N_m: above(0),
    drum_radius_m: above(0),
    soil_modulus_Pa: above(0),
    poisson: within(0, 0.5),
  });
  if (faults.length > 0) return fail(faults);
  const { poisson = 0.3 } = input;
  const modulus = input.soil_modulus_Pa / (1 - poisson ** 2);
  const width_m = 2 * Math.sqrt((4 * input.load_N_m * input.drum_radius_m) / (Math.PI * modulus));
  return finished({ width_m, mean_pressure_Pa: input.load_N_m / width_m, notes: [] });
}

/**
 * Depth at which the stress below a line load has faded to a share of the soil's own weight above it:
 * 2 q / (pi z) = share rho g z. That a load stops to matter at about a fifth is common practice in foundation work,
 * no source.
 * @param load_N_m line load; @param share such as 0.2; @returns m
 */
export const fadeDepth = (load_N_m: number, soil_density_kg_m3: number, share: number): number =>
  Math.sqrt((2 * load_N_m) / (Math.PI * share * soil_density_kg_m3 * STANDARD_GRAVITY));
