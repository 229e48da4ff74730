/**
 * What a fault can change, and what differs a little from one sound machine to the next: the inputs of the test bench.
 * Sound values come from the machine where it holds them, else from the fault book.
 */
import type { Quantity } from '../kernel';

/** Every input and what it measures. Shares and flags are plain numbers; a flag is 0 or 1. */
export const INPUT_QUANTITIES = {
  /** Shot in the chamber over the machine's own charge. */
  shot_share: 'share',
  /** Of ball on ball and on wall. */
  friction: 'plain',
  /** Time of the soft start to the higher speed. */
  spin_up_s: 'time',
  baffle_fitted: 'count',
  /** Oil that has come into the closed chamber. */
  chamber_oil_m3: 'volume',
  /** Volumetric efficiency of the exciter motor. */
  motor_volumetric: 'share',
  hoses_swapped: 'count',
  spline_intact: 'count',
  hardness_IRHD: 'count',
  isolators_missing_left: 'count',
  isolators_missing_right: 'count',
  /** Axial squeeze of both isolator sets together. */
  squeeze_m: 'length-small',
  /** Clearance that wear has added to a bearing. */
  wear_left_m: 'length-fine',
  wear_right_m: 'length-fine',
  /** Clearance class of the exciter bearings: 0 as specified (C4), 1 C3, 2 normal. */
  clearance_steps: 'count',
  /** Oil in the case over (or under) its mark. */
  oil_added_m3: 'volume',
  /** Oil that comes into (or leaves) the case in an hour. */
  oil_rate_m3_h: 'volume',
  /** Share of the case's oil that is water. */
  water_share: 'share',
  relief_Pa: 'pressure',
  brake_drag_Nm: 'torque',
  /** Preload left in the hub bolts over the right one. */
  hub_preload_share: 'share',
  scraper_gap_m: 'length-small',
  /** Angle between the drum's axis and square to the frame. */
  yaw_rad: 'angle',
  end_play_m: 'length-fine',
  /** Bed that the drum stands on for the test. */
  bed_stiffness_N_m: 'stiffness',
  rolling_resistance: 'plain',
  /** Warmth that a bearing seat gives off for each kelvin, over its usual value. */
  cooling_share: 'share',
  /** Where between the ends of its band the settled shot lies, in standard deviations. */
  settled_low_sd: 'plain',
  settled_high_sd: 'plain',
} as const satisfies Record<string, Quantity>;

export type InputName = keyof typeof INPUT_QUANTITIES;
export type BenchInputs = Readonly<Record<InputName, number>>;
export const INPUT_NAMES = Object.keys(INPUT_QUANTITIES) as readonly InputName[];

/** Inputs that count or switch: a severity between two of its levels means nothing for them. */
export const WHOLE_INPUTS: ReadonlySet<InputName> = new Set([
  'baffle_fitted',
  'hoses_swapped',
  'spline_intact',
  'isolators_missing_left',
  'isolators_missing_right',
  'clearance_steps',
]);
