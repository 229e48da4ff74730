/** What the exciter panel shows of a study: numbers of both directions and the outlines of the settled shot. */
import type { Message } from '../../../core/kernel';

/** Body frame of the housing: O = shaft axis, +x towards the heavy side, counter-clockwise seen from machine +x. */
export type Point = readonly [number, number];
export type Loop = readonly Point[];

export interface ShotOutline {
  readonly loop: Loop;
  /** Held behind the baffle. */
  readonly pocket: boolean;
}

export interface DirectionStudy {
  readonly captured: number | null;
  readonly shot_kgm: Point;
  readonly shot_U_kgm: number;
  readonly housing_kgm: Point;
  readonly total_kgm: Point;
  readonly U_kgm: number;
  readonly angle_deg: number | null;
  readonly force_N: number;
  readonly frequency_Hz: number;
  readonly nominalAmplitude_m: number | null;
  readonly bearing_left_N: number;
  readonly bearing_right_N: number;
  readonly shot: readonly ShotOutline[];
  readonly notes: readonly Message[];
}

export interface HousingOutline {
  readonly outer: Loop;
  readonly inner: Loop;
  readonly baffle: Loop | null;
  /** Trim bar and other steel fixed to the housing. */
  readonly fixed: readonly Loop[];
  /** Centre of the round chamber. */
  readonly centre_m: Point;
  readonly reach_m: number;
}

export interface ExciterInputs {
  readonly frequencyHigh_Hz: number;
  readonly frequencyLow_Hz: number;
  readonly fill: number;
  readonly bafflePsi_deg: number;
}

export interface ExciterStudyShape {
  readonly high: DirectionStudy;
  readonly low: DirectionStudy;
  /** U low / U high; null where high has none. */
  readonly ratio: number | null;
  readonly vibratingMass_kg: number;
  readonly shotMass_kg: number;
  readonly housing: HousingOutline;
  /** What is set now, and what the machine file says. */
  readonly inputs: ExciterInputs;
  readonly own: ExciterInputs;
  /** Low is the level closed form, known to be too high. */
  readonly lowIsLevel: boolean;
}
