/**
 * Study: drum and frame on the soil. The linear steady state over frequency, the motion in time where the drum may
 * lift off, the natural frequencies, and whether the linear answer holds at all.
 */
import { message, type Message } from '../../kernel';
import {
  naturalFrequencies,
  rollerInTime,
  rollerResponse,
  type NaturalFrequencies,
  type RollerInTime,
  type RollerResponse,
  type RollerResponseInput,
} from '../../mechanics';
import { mountStiffness, type RollerBasis } from './roller-basis';

export interface VibrationChoice {
  readonly unbalance_kgm: number;
  readonly frequency_Hz: number;
  readonly soil_stiffness_N_m: number;
  readonly soil_damping_Ns_m: number;
  readonly hardness_IRHD: number;
}

/** One frequency of the sweep; null where there is no steady state. */
export interface SweepPoint {
  readonly frequency_Hz: number;
  readonly drum_m: number | null;
  readonly frame_m: number | null;
  readonly drum_phase_deg: number | null;
  readonly frame_phase_deg: number | null;
  readonly soil_force_N: number | null;
  readonly static_load_N: number;
  /** The linear answer holds: the soil always carries, or there is none. */
  readonly holds: boolean;
}

export interface VibrationStudy {
  /** What the calculations `roller-response` and `roller-time` take. */
  readonly input: RollerResponseInput;
  readonly linear: RollerResponse;
  /** The motion in time; null when the drum hangs free, or the time steps ran out. */
  readonly time: RollerInTime | null;
  readonly natural: NaturalFrequencies;
  readonly sweep: readonly SweepPoint[];
  readonly assumptions: readonly Message[];
  readonly limits: readonly Message[];
}

export const SWEEP_Hz = { from: 2, to: 60, step: 0.5 } as const;

/** The study; null for values that the formulas refuse (hardness outside 30 to 75 IRHD, say). */
export function vibrationStudy(basis: RollerBasis, choice: VibrationChoice): VibrationStudy | null {
  const mount = mountStiffness(basis, choice.hardness_IRHD);
  const input: RollerResponseInput = {
    drum_mass_kg: basis.vibratingMass_kg,
    frame_mass_kg: basis.frameMass_kg,
    unbalance_kgm: choice.unbalance_kgm,
    frequency_Hz: choice.frequency_Hz,
    mount_stiffness_N_m: mount.moving_N_m,
    mount_damping_Ns_m: mount.damping_Ns_m,
    soil_stiffness_N_m: choice.soil_stiffness_N_m,
    soil_damping_Ns_m: choice.soil_damping_Ns_m,
  };
  const linear = rollerResponse(input);
  const natural = naturalFrequencies(input);
  if (!linear.ok || !natural.ok || !(mount.moving_N_m > 0)) return null;
  const time = choice.soil_stiffness_N_m > 0 ? rollerInTime(input) : null;
  return {
    input,
    linear: linear.value,
    time: time?.ok === true ? time.value : null,
    natural: natural.value,
    sweep: sweep(input),
    assumptions: [
      'vertical-only',
      'constant-unbalance',
      'rigid-drum',
      'soil-spring',
      'training-soil',
      'start-at-rest',
    ].map((word) => message(`study.vibration.assume.${word}`)),
    limits: ['linear-contact', 'no-rocking', 'no-plastic', 'several-motions'].map((word) =>
      message(`study.vibration.limit.${word}`),
    ),
  };
}

function sweep(input: RollerResponseInput): SweepPoint[] {
  const count = Math.round((SWEEP_Hz.to - SWEEP_Hz.from) / SWEEP_Hz.step);
  return Array.from({ length: count + 1 }, (_, i) => {
    const frequency_Hz = SWEEP_Hz.from + i * SWEEP_Hz.step;
    const at = rollerResponse({ ...input, frequency_Hz });
    const value = at.ok ? at.value : null;
    return {
      frequency_Hz,
      drum_m: value?.drum_amplitude_m ?? null,
      frame_m: value?.frame_amplitude_m ?? null,
      drum_phase_deg: value?.drum_phase_deg ?? null,
      frame_phase_deg: value?.frame_phase_deg ?? null,
      soil_force_N: value?.soil_force_amplitude_N ?? null,
      static_load_N: value?.static_load_N ?? 0,
      holds: value !== null && value.contact !== 'lost' && value.drum_amplitude_m !== null,
    };
  });
}
