/** Practice on the stage: a part goes its way when a try is right, gives a little and comes back when it is not. */
import { poseOffsetsAt } from '../../../core/assembly';
import type { PracticeStage } from '../../../store';

export interface PracticeMotion {
  /** Moves on and writes where every part is (four numbers a part); `moving`: another frame is wanted. */
  advance(
    dt_s: number,
    stage: PracticeStage,
    cuts: boolean,
    out: Float32Array,
  ): { readonly changed: boolean; readonly moving: boolean };
}

/** How far and how long a part that is held gives way. */
const GIVES_M = 0.018;
const GIVES_S = 0.5;
const PULLS = 2;

export function practiceMotion(): PracticeMotion {
  let seen: number | null = null;
  let at_s = Infinity;
  let scratch = new Float32Array(0);

  return {
    advance(dt_s, stage, cuts, out) {
      const anew = stage.serial !== seen;
      // What is met at rest stays at rest: a run taken up again plays nothing.
      if (anew) at_s = cuts ? Infinity : 0;
      else if (at_s === Infinity) return { changed: false, moving: false };
      else at_s += dt_s;
      seen = stage.serial;
      out.set(stage.to);
      const { laying, stuck, back } = stage;
      if (laying !== null) {
        const takes_s = laying.timeline.stepEnd_s.at(-1) ?? 0;
        if (at_s >= takes_s) at_s = Infinity;
        else {
          if (scratch.length !== out.length) scratch = new Float32Array(out.length);
          const inwards = laying.reverse !== back;
          poseOffsetsAt(laying.timeline, inwards ? takes_s - at_s : at_s, scratch);
          for (const part of laying.parts)
            for (let k = 4 * part; k < 4 * part + 4; k++) out[k] = laying.seat[k]! + scratch[k]!;
        }
      } else if (stuck !== null && at_s < GIVES_S) {
        const gives = GIVES_M * Math.abs(Math.sin((PULLS * Math.PI * at_s) / GIVES_S));
        for (const part of stuck.parts)
          for (let k = 0; k < 3; k++) out[4 * part + k] = out[4 * part + k]! + gives * stuck.direction[k]!;
      } else at_s = Infinity;
      return { changed: true, moving: at_s < Infinity };
    },
  };
}
