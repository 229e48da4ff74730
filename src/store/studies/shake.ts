/** The motion of drum and frame for the stage: whole turns of the exciter, exaggerated by a round factor. */
import type { VibrationStudy } from '../../core/studies';
import type { StudyStage } from './state';

/** How far the drum may be shown to move each way, metres. */
const SHOWN_m = 0.05;
const SAMPLES_A_TURN = 64;
const ROUND = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
const DEGREE = Math.PI / 180;

export interface Shake {
  readonly stage: StudyStage;
  /** How many times larger than life. */
  readonly times: number;
}

/** `scale`: how many times larger; left out, the largest round factor that the stage has room for. */
export function shakeOf(study: VibrationStudy, scale?: number): Shake {
  const { time, linear } = study;
  const amplitude_m = time?.drum_amplitude_m ?? linear.drum_amplitude_m ?? 0;
  const times = scale ?? ROUND.findLast((each) => each * amplitude_m <= SHOWN_m) ?? 1;
  // the formulas count downwards, the stage upwards
  const up = (values: readonly number[]): number[] => values.map((value) => -times * value);
  const wave = (size_m: number | null, phase_deg: number | null): number[] =>
    Array.from(
      { length: SAMPLES_A_TURN },
      (_, i) => (size_m ?? 0) * Math.cos((2 * Math.PI * i) / SAMPLES_A_TURN + (phase_deg ?? 0) * DEGREE),
    );
  const drum = time?.trace.drum_m ?? wave(linear.drum_amplitude_m, linear.drum_phase_deg);
  const frame = time?.trace.frame_m ?? wave(linear.frame_amplitude_m, linear.frame_phase_deg);
  return {
    times,
    stage: { kind: 'shake', drum_m: up(drum), frame_m: up(frame), samples_a_turn: SAMPLES_A_TURN },
  };
}
