/**
 * Interference fit of two cylinders of any materials (thick-cylinder theory, plane stress, elastic).
 * p = d / [D (((Do^2 + D^2)/(Do^2 - D^2) + nu_o)/E_o + ((D^2 + Di^2)/(D^2 - Di^2) - nu_i)/E_i)], d diametral.
 * Source: R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design (from memory); A. C. Ugural,
 * S. K. Fenster, Advanced Strength and Applied Elasticity, ch. 8. Press force F = mu p pi D L, torque T = F D / 2.
 */
import {
  above,
  atLeast,
  below,
  checkNumbers,
  checkOneOf,
  fail,
  faultAt,
  finished,
  message,
  type Fault,
  type Message,
  type Result,
} from '../../kernel';

export interface InterferenceFitInput {
  /** Bore of the inner part, m, 0 if it is solid. */
  readonly inner_bore_m: number;
  readonly fit_diameter_m: number;
  readonly outer_diameter_m: number;
  readonly E_inner_Pa: number;
  readonly E_outer_Pa: number;
  /** Poisson's ratios, 0 to below 0.5. */
  readonly nu_inner: number;
  readonly nu_outer: number;
  /** Give one of these two: the excess of the shaft's diameter, or the pressure it makes. */
  readonly interference_diametral_m?: number | undefined;
  readonly pressure_Pa?: number | undefined;
  /** Length of the fit and friction; without them press force and torque are null. */
  readonly length_m?: number | undefined;
  readonly friction?: number | undefined;
}

export interface InterferenceFit {
  readonly interference_diametral_m: number;
  readonly pressure_Pa: number;
  /** Hoop stresses, tension positive. */
  readonly hoop_outer_at_fit_Pa: number;
  readonly hoop_outer_at_outside_Pa: number;
  readonly hoop_inner_at_fit_Pa: number;
  /** Null for a solid inner part, which has no bore. */
  readonly hoop_inner_at_bore_Pa: number | null;
  readonly press_force_N: number | null;
  readonly torque_Nm: number | null;
  readonly notes: readonly Message[];
}

/** Refused: diameters out of order, moduli not above 0, neither or both of interference and pressure. */
export function interferenceFit(input: InterferenceFitInput): Result<InterferenceFit> {
  const faults = checkFit(input);
  if (faults.length > 0) return fail(faults);
  const { inner_bore_m: Di, fit_diameter_m: D, outer_diameter_m: Do, length_m, friction } = input;
  const outer = ringRatio(D, Do);
  const inner = ringRatio(Di, D);
  const compliance =
    D * ((outer + input.nu_outer) / input.E_outer_Pa + (inner - input.nu_inner) / input.E_inner_Pa);
  const pressure_Pa = input.pressure_Pa ?? (input.interference_diametral_m ?? 0) / compliance;
  const isSolid = Di === 0;
  const press_force_N =
    length_m === undefined || friction === undefined ? null : friction * pressure_Pa * Math.PI * D * length_m;
  const notes: Message[] = [];
  if (isSolid) notes.push(message('mechanics.note.solid-has-no-bore', { stress_Pa: -pressure_Pa }));
  if (press_force_N === null) notes.push(message('mechanics.note.press-needs-length-friction'));
  return finished({
    interference_diametral_m: input.interference_diametral_m ?? pressure_Pa * compliance,
    pressure_Pa,
    hoop_outer_at_fit_Pa: pressure_Pa * outer,
    hoop_outer_at_outside_Pa: pressure_Pa * (outer - 1),
    hoop_inner_at_fit_Pa: -pressure_Pa * inner,
    hoop_inner_at_bore_Pa: isSolid ? null : -pressure_Pa * (inner + 1),
    press_force_N,
    torque_Nm: press_force_N === null ? null : (press_force_N * D) / 2,
    notes,
  });
}

/**
 * (B^2 + A^2) / (B^2 - A^2) of a ring with inside A and outside B: its greatest hoop stress over the pressure at
 * the inside. Less 1 it is 2 A^2 / (B^2 - A^2), the hoop stress at the outside; 1 for a solid disc (A = 0).
 */
export function ringRatio(inside_m: number, outside_m: number): number {
  const square = (inside_m / outside_m) ** 2;
  return (1 + square) / (1 - square);
}

function checkFit(input: InterferenceFitInput): Fault[] {
  const faults = checkNumbers(input, {
    inner_bore_m: atLeast(0),
    fit_diameter_m: above(0),
    outer_diameter_m: above(0),
    E_inner_Pa: above(0),
    E_outer_Pa: above(0),
    nu_inner: atLeast(0),
    nu_outer: atLeast(0),
    interference_diametral_m: atLeast(0),
    pressure_Pa: atLeast(0),
    length_m: above(0),
    friction: atLeast(0),
  });
  faults.push(
    ...checkNumbers(input, { nu_inner: below(0.5), nu_outer: below(0.5) }).filter(
      (fault) => !faults.some((other) => other.path === fault.path),
    ),
    ...checkOneOf(input, ['interference_diametral_m', 'pressure_Pa']),
  );
  const { inner_bore_m, fit_diameter_m, outer_diameter_m } = input;
  if (inner_bore_m >= fit_diameter_m) {
    faults.push(faultAt('inner_bore_m', message('expected.below', { limit: fit_diameter_m }), inner_bore_m));
  }
  if (outer_diameter_m <= fit_diameter_m) {
    faults.push(
      faultAt('outer_diameter_m', message('expected.above', { limit: fit_diameter_m }), outer_diameter_m),
    );
  }
  return faults;
}
