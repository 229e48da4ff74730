/**
 * Time to roll an area: lanes x passes x length / speed, and a stop at each end of every pass; production with an
 * efficiency for waiting and shifting. Source: S. W. Nunnally, Construction Methods and Management, compactor
 * production 16.3 W S L E / P (from memory), here with whole lanes; the rest is plain kinematics.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  within,
  wholeWithin,
  type Message,
  type Result,
} from '../../kernel';

export interface RollingTimeInput {
  /** Length of a lane, along the travel. */
  readonly length_m: number;
  /** Width of the area; left out: one lane. */
  readonly width_m?: number | undefined;
  readonly drum_width_m: number;
  /** How far lanes overlap, default 0. */
  readonly overlap_m?: number | undefined;
  /** Passes over each place (one way counts as one). */
  readonly passes: number;
  readonly speed_m_s: number;
  /** Time to stop and reverse after each pass, default 0. */
  readonly reverse_s?: number | undefined;
  /** Share of the time that is spent rolling, default 1; a 50-minute hour is 0.83. */
  readonly efficiency?: number | undefined;
  /** Thickness of the compacted layer; without it there is no volume. */
  readonly lift_m?: number | undefined;
}

export interface RollingTime {
  readonly lanes: number;
  readonly distance_m: number;
  readonly time_s: number;
  readonly area_m2_h: number;
  readonly volume_m3_h: number | null;
  readonly notes: readonly Message[];
}

/** Lanes are counted whole: 1 + ceil((width - drum) / (drum - overlap)). */
export function rollingTime(input: RollingTimeInput): Result<RollingTime> {
  const { length_m, drum_width_m, width_m = drum_width_m, overlap_m = 0, passes, lift_m } = input;
  const faults = checkNumbers(input, {
    length_m: above(0),
    width_m: above(0),
    drum_width_m: above(0),
    overlap_m: atLeast(0),
    passes: wholeWithin(1, 1000),
    speed_m_s: above(0),
    reverse_s: atLeast(0),
    efficiency: within(0.01, 1),
    lift_m: above(0),
  });
  if (overlap_m >= drum_width_m) {
    faults.push(faultAt('overlap_m', message('expected.below', { limit: drum_width_m }), overlap_m));
  }
  if (faults.length > 0) return fail(faults);
  // a hair less, so that a width that fits exactly does not cost a lane by rounding
  const extra = Math.max(0, width_m - drum_width_m) / (drum_width_m - overlap_m) - 1e-9;
  const lanes = 1 + Math.max(0, Math.ceil(extra));
  const runs = lanes * passes;
  const time_s =
    ((runs * length_m) / input.speed_m_s + runs * (input.reverse_s ?? 0)) / (input.efficiency ?? 1);
  const area_m2_h = (length_m * width_m * 3600) / time_s;
  return finished({
    lanes,
    distance_m: runs * length_m,
    time_s,
    area_m2_h,
    volume_m3_h: lift_m === undefined ? null : area_m2_h * lift_m,
    notes: lift_m === undefined ? [message('mechanics.note.volume-needs-lift')] : [],
  });
}
