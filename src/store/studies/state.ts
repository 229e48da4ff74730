/** Slow state of the studies: what a person has set in each, and what the stage shows of the open one. */
import type { Direction } from '../../core/mechanics';

export const STUDIES = ['vibration', 'isolation', 'two-speed', 'compaction', 'ballast', 'identify'] as const;
export type StudyName = (typeof STUDIES)[number];

/** Null everywhere below is the machine's own value. */
export interface VibrationSettings {
  readonly direction: Direction;
  readonly frequency_Hz: number | null;
  readonly soil_stiffness_N_m: number;
  readonly soil_damping_Ns_m: number;
  readonly hardness_IRHD: number | null;
}

export type IsolatorCondition = 'sound' | 'cracked' | 'missing';

export interface IsolationSettings {
  readonly direction: Direction;
  readonly hardness_left_IRHD: number | null;
  readonly hardness_right_IRHD: number | null;
  /** By part id; what is not named is sound. */
  readonly conditions: Readonly<Record<string, IsolatorCondition>>;
  readonly crack_share: number;
  readonly hours_a_day: number;
}

export interface TwoSpeedSettings {
  readonly ground: string;
  readonly grade_percent: number;
  readonly drum_adhesion: number;
  readonly axle_adhesion: number;
  readonly rolling_resistance_N_per_N: number;
  readonly relief_Pa: number | null;
  readonly speed_m_s: number;
  /** Ranges that the drawing of the circuit shows. */
  readonly drum_range: 'low' | 'high';
  readonly axle_range: 'low' | 'high';
}

export interface CompactionSettings {
  readonly direction: Direction;
  readonly speed_m_s: number;
  readonly soil_modulus_Pa: number;
  readonly soil_density_kg_m3: number;
  readonly lift_m: number;
  readonly pad_sink_m: number;
}

export interface BallastSettings {
  readonly fill_share: number;
  readonly salt_mass_percent: number;
  readonly temperature_C: number;
}

export interface IdentifySettings {
  readonly steering_deg: number;
  readonly oscillation_deg: number;
}

/** What the stage does for the open study. */
export type StudyStage =
  | {
      readonly kind: 'shake';
      /** Samples of whole turns of the exciter, upwards positive, already exaggerated. */
      readonly drum_m: readonly number[];
      readonly frame_m: readonly number[];
      readonly samples_a_turn: number;
    }
  | { readonly kind: 'sides' }
  | { readonly kind: 'joint'; readonly steering_deg: number; readonly oscillation_deg: number };

export interface StudiesState {
  readonly vibration: VibrationSettings;
  readonly isolation: IsolationSettings;
  readonly 'two-speed': TwoSpeedSettings;
  readonly compaction: CompactionSettings;
  readonly ballast: BallastSettings;
  readonly identify: IdentifySettings;
  readonly stage: StudyStage | null;
}

export const INITIAL_STUDIES: StudiesState = {
  vibration: {
    direction: 'high',
    frequency_Hz: null,
    soil_stiffness_N_m: 30e6,
    soil_damping_Ns_m: 150e3,
    hardness_IRHD: null,
  },
  isolation: {
    direction: 'high',
    hardness_left_IRHD: null,
    hardness_right_IRHD: null,
    conditions: {},
    crack_share: 0.5,
    hours_a_day: 6,
  },
  'two-speed': {
    ground: 'clay-wet',
    grade_percent: 25,
    drum_adhesion: 0.25,
    axle_adhesion: 0.45,
    rolling_resistance_N_per_N: 0.05,
    relief_Pa: null,
    speed_m_s: 1,
    drum_range: 'low',
    axle_range: 'low',
  },
  compaction: {
    direction: 'high',
    speed_m_s: 4 / 3.6,
    soil_modulus_Pa: 30e6,
    soil_density_kg_m3: 1900,
    lift_m: 0.3,
    pad_sink_m: 0.01,
  },
  ballast: { fill_share: 0.75, salt_mass_percent: 20, temperature_C: 15 },
  identify: { steering_deg: 0, oscillation_deg: 0 },
  stage: null,
};
