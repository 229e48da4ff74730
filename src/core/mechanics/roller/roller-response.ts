/**
 * Drum and frame of a vibratory roller on soil, steady state of the linear two-mass model:
 *   md z" + c (z' - f') + k (z - f) + cs z' + ks z = U w^2 cos wt,   mf f" - c (z' - f') - k (z - f) = 0.
 * Source: T. S. Yoo, E. T. Selig, J. Geotech. Eng. Div. ASCE 105 (GT10) 1979 (from memory). Linear means: the soil
 * also pulls. It holds only while the dynamic soil force stays within the static load; beyond that the drum lifts
 * off ('lost') and the numbers are only the linear answer.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  finished,
  message,
  STANDARD_GRAVITY,
  type Message,
  type Result,
} from '../../kernel';
import { angleDeg, complex, magnitude, minus, over, plus, times } from './complex';

export interface RollerResponseInput {
  /** All that vibrates with the drum. */
  readonly drum_mass_kg: number;
  /** Part of the frame that rests on the drum. */
  readonly frame_mass_kg: number;
  readonly unbalance_kgm: number;
  readonly frequency_Hz: number;
  /** All mounts together. */
  readonly mount_stiffness_N_m: number;
  readonly mount_damping_Ns_m: number;
  /** 0 and 0: the drum hangs free of the ground. */
  readonly soil_stiffness_N_m: number;
  readonly soil_damping_Ns_m: number;
}

export interface RollerResponse {
  readonly drum_amplitude_m: number | null;
  /** Drum against force; negative: it lags. */
  readonly drum_phase_deg: number | null;
  readonly frame_amplitude_m: number | null;
  readonly frame_phase_deg: number | null;
  readonly soil_force_amplitude_N: number | null;
  readonly static_load_N: number;
  /** Force of the unbalance, U w^2. */
  readonly force_N: number;
  /** U / drum mass, the limit for a free drum. */
  readonly nominal_amplitude_m: number;
  /** Null where there is no soil, or no steady state. */
  readonly contact: 'kept' | 'lost' | null;
  readonly notes: readonly Message[];
}

/** Below this share of its largest terms the determinant counts as an undamped resonance. */
const SINGULAR = 1e-12;

export function rollerResponse(input: RollerResponseInput): Result<RollerResponse> {
  const faults = checkNumbers(input, {
    drum_mass_kg: above(0),
    frame_mass_kg: above(0),
    unbalance_kgm: atLeast(0),
    frequency_Hz: above(0),
    mount_stiffness_N_m: atLeast(0),
    mount_damping_Ns_m: atLeast(0),
    soil_stiffness_N_m: atLeast(0),
    soil_damping_Ns_m: atLeast(0),
  });
  if (faults.length > 0) return fail(faults);
  const w = 2 * Math.PI * input.frequency_Hz;
  const force_N = input.unbalance_kgm * w * w;
  const mount = complex(input.mount_stiffness_N_m, w * input.mount_damping_Ns_m);
  const soil = complex(input.soil_stiffness_N_m, w * input.soil_damping_Ns_m);
  const drumSide = plus(complex(-input.drum_mass_kg * w * w), plus(mount, soil));
  const frameSide = plus(complex(-input.frame_mass_kg * w * w), mount);
  const product = times(drumSide, frameSide);
  const mountSquare = times(mount, mount);
  const determinant = minus(product, mountSquare);

  const known = {
    static_load_N: (input.drum_mass_kg + input.frame_mass_kg) * STANDARD_GRAVITY,
    force_N,
    nominal_amplitude_m: input.unbalance_kgm / input.drum_mass_kg,
  };
  if (magnitude(determinant) <= SINGULAR * (magnitude(product) + magnitude(mountSquare))) {
    return finished({
      drum_amplitude_m: null,
      drum_phase_deg: null,
      frame_amplitude_m: null,
      frame_phase_deg: null,
      soil_force_amplitude_N: null,
      ...known,
      contact: null,
      notes: [message('mechanics.note.undamped-resonance')],
    });
  }
  // phases belong to a unit force, so that they exist with no unbalance too
  const drum = over(frameSide, determinant);
  const frame = over(mount, determinant);
  const soil_force_amplitude_N = force_N * magnitude(times(soil, drum));
  const isHung = magnitude(soil) === 0;
  const contact = isHung ? null : soil_force_amplitude_N <= known.static_load_N ? 'kept' : 'lost';
  const notes: Message[] = [];
  if (isHung) notes.push(message('mechanics.note.no-soil'));
  if (contact === 'lost') notes.push(message('mechanics.note.contact-lost'));
  return finished({
    drum_amplitude_m: force_N * magnitude(drum),
    drum_phase_deg: angleDeg(drum),
    frame_amplitude_m: force_N * magnitude(frame),
    frame_phase_deg: angleDeg(frame),
    soil_force_amplitude_N,
    ...known,
    contact,
    notes,
  });
}
