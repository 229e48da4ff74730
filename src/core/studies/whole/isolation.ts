/**
 * Study: what the isolators let through. Which parts shake and which must not; sag, natural frequency, transmissibility
 * and frame vibration at each end of the drum with isolators hard, soft, cracked or missing.
 *
 * Each end is looked at by itself: half of the frame's share on its own isolators, driven by the drum. That is exact
 * where the frame's radius of gyration along the drum is half the distance of the two sets, and close otherwise.
 */
import { message, STANDARD_GRAVITY, type Message } from '../../kernel';
import { defaultOptions, isPresent, type Machine } from '../../machine';
import { rollerResponse, rubberModuli, singleDof, wholeBody, type WholeBody } from '../../mechanics';
import { isolatorShear_N_m, mountStiffness, type RollerBasis } from './roller-basis';

export type IsolatorState = 'sound' | 'cracked' | 'missing';

export interface IsolationChoice {
  readonly unbalance_kgm: number;
  readonly frequency_Hz: number;
  readonly soil_stiffness_N_m: number;
  readonly soil_damping_Ns_m: number;
  readonly hardness_left_IRHD: number;
  readonly hardness_right_IRHD: number;
  /** By part id; what is not named is sound. */
  readonly states: Readonly<Record<string, IsolatorState>>;
  /** Share of its rubber's section that a cracked isolator has lost. */
  readonly crack_share: number;
  readonly hours_a_day: number;
}

export interface EndIsolation {
  readonly end: 'left' | 'right';
  readonly standing: number;
  readonly static_N_m: number;
  readonly moving_N_m: number;
  /** Null where no isolator stands. */
  readonly sag_m: number | null;
  readonly natural_Hz: number | null;
  readonly transmissibility: number | null;
  readonly frame_amplitude_m: number | null;
  readonly frame_peak_m_s2: number | null;
  /** As if a person stood on the frame there all the hours: an orientation, no measurement. */
  readonly exposure: WholeBody | null;
}

/** Transmissibility of both ends over frequency; null where no isolator stands. */
export interface IsolationCurvePoint {
  readonly frequency_Hz: number;
  readonly left: number | null;
  readonly right: number | null;
}

/** Part ids by side of the isolators. */
export interface IsolationSides {
  readonly inside: readonly string[];
  readonly isolators: readonly string[];
  readonly outside: readonly string[];
}

export interface IsolationStudy {
  readonly drum_amplitude_m: number | null;
  readonly contact: 'kept' | 'lost' | null;
  readonly ends: readonly EndIsolation[];
  /** Difference of the two sags: how far the frame hangs out of level over the drum; null where one end has none. */
  readonly level_difference_m: number | null;
  readonly curve: readonly IsolationCurvePoint[];
  readonly assumptions: readonly Message[];
  readonly limits: readonly Message[];
}

/** Everything present, with or without the light ghost of the rear, by side of the isolators. */
export function isolationSides(machine: Machine): IsolationSides {
  const options = defaultOptions(machine);
  const ids = (side: 'vibrating' | 'isolator' | 'still') =>
    machine.parts.filter((p) => p.side === side && isPresent(p, options, true)).map((p) => p.id);
  return { inside: ids('vibrating'), isolators: ids('isolator'), outside: ids('still') };
}

/** From 1 Hz on in half hertz. */
const CURVE_POINTS = 90;

/** The study; null for a hardness outside 30 to 75 IRHD. */
export function isolationStudy(basis: RollerBasis, choice: IsolationChoice): IsolationStudy | null {
  const hardness = { left: choice.hardness_left_IRHD, right: choice.hardness_right_IRHD };
  if (rubberModuli(hardness.left) === null || rubberModuli(hardness.right) === null) return null;
  const omega = 2 * Math.PI * choice.frequency_Hz;
  const stiffness = (end: 'left' | 'right') => {
    let standing = 0;
    let static_N_m = 0;
    for (const set of basis.isolators.filter((each) => each.end === end)) {
      const one = isolatorShear_N_m(set, hardness[end]);
      for (const id of set.partIds) {
        const state = choice.states[id] ?? 'sound';
        if (state === 'missing') continue;
        standing++;
        static_N_m += state === 'cracked' ? one * (1 - choice.crack_share) : one;
      }
    }
    return { standing, static_N_m, moving_N_m: static_N_m * basis.isolation.dynamic_factor };
  };
  const left = stiffness('left');
  const right = stiffness('right');
  // the dampers of sound mounts, less what is gone with the rubber
  const sound = mountStiffness(basis);
  const damping = (moving_N_m: number) => (sound.damping_Ns_m * moving_N_m) / sound.moving_N_m;
  const response = rollerResponse({
    drum_mass_kg: basis.vibratingMass_kg,
    frame_mass_kg: basis.frameMass_kg,
    unbalance_kgm: choice.unbalance_kgm,
    frequency_Hz: choice.frequency_Hz,
    mount_stiffness_N_m: left.moving_N_m + right.moving_N_m,
    mount_damping_Ns_m: damping(left.moving_N_m + right.moving_N_m),
    soil_stiffness_N_m: choice.soil_stiffness_N_m,
    soil_damping_Ns_m: choice.soil_damping_Ns_m,
  });
  if (!response.ok) return null;
  const drum_m = response.value.drum_amplitude_m;
  const half_kg = basis.frameMass_kg / 2;

  const ends = (['left', 'right'] as const).map((end): EndIsolation => {
    const { standing, static_N_m, moving_N_m } = end === 'left' ? left : right;
    const none = { sag_m: null, natural_Hz: null, transmissibility: null };
    const still = { frame_amplitude_m: null, frame_peak_m_s2: null, exposure: null };
    const base = { end, standing, static_N_m, moving_N_m };
    if (!(moving_N_m > 0)) return { ...base, ...none, ...still };
    const mass = singleDof({
      mass_kg: half_kg,
      stiffness_N_m: moving_N_m,
      damping_Ns_m: damping(moving_N_m),
      omega_rad_s: omega,
    });
    if (!mass.ok) return { ...base, ...none, ...still };
    const { transmissibility, natural_rad_s } = mass.value;
    const frame_m = drum_m === null || transmissibility === null ? null : drum_m * transmissibility;
    const peak = frame_m === null ? null : frame_m * omega * omega;
    const body =
      peak === null
        ? null
        : wholeBody({
            peak_m_s2: peak,
            frequency_Hz: choice.frequency_Hz,
            hours_a_day: choice.hours_a_day,
          });
    return {
      ...base,
      sag_m: (half_kg * STANDARD_GRAVITY) / static_N_m,
      natural_Hz: natural_rad_s / (2 * Math.PI),
      transmissibility,
      frame_amplitude_m: frame_m,
      frame_peak_m_s2: peak,
      exposure: body?.ok === true ? body.value : null,
    };
  });
  const passed = (moving_N_m: number, frequency_Hz: number): number | null => {
    const mass = singleDof({
      mass_kg: half_kg,
      stiffness_N_m: moving_N_m,
      damping_Ns_m: damping(moving_N_m),
      omega_rad_s: 2 * Math.PI * frequency_Hz,
    });
    return mass.ok ? mass.value.transmissibility : null;
  };
  const curve = Array.from({ length: CURVE_POINTS }, (_, i) => {
    const frequency_Hz = 1 + 0.5 * i;
    return {
      frequency_Hz,
      left: passed(left.moving_N_m, frequency_Hz),
      right: passed(right.moving_N_m, frequency_Hz),
    };
  });
  const [a, b] = [ends[0]?.sag_m ?? null, ends[1]?.sag_m ?? null];
  return {
    drum_amplitude_m: drum_m,
    contact: response.value.contact,
    ends,
    level_difference_m: a === null || b === null ? null : Math.abs(a - b),
    curve,
    assumptions: ['rubber-table', 'shear', 'stiffer-in-motion', 'each-end', 'crack-share', 'drum-linear'].map(
      (word) => message(`study.isolation.assume.${word}`),
    ),
    limits: ['no-measurement', 'hardness-scatter', 'drum-lifts', 'not-the-seat'].map((word) =>
      message(`study.isolation.limit.${word}`),
    ),
  };
}
