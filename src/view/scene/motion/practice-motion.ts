/**
 * Practice on the stage: a part goes its way when a try is right, gives a little and comes back when it is not; between
 * the two it is where a hand holds it.
 */
import { type Laying, poseOffsetsAt } from '../../../core/assembly';
import { type PracticeHold, type PracticeStage, transient } from '../../../store';
import { type HandPath, handPath, playedAt } from '../practice/hand-path';

export interface PracticeMotion {
  /** Moves on and writes where every part is (four numbers a part); `moving`: another frame is wanted. */
  advance(
    dt_s: number,
    stage: PracticeStage,
    hold: PracticeHold | null,
    cuts: boolean,
    out: Float32Array,
  ): { readonly changed: boolean; readonly moving: boolean };
}

/** How far and how long a part that is held gives way. */
const GIVES_M = 0.018;
const GIVES_S = 0.5;
const PULLS = 2;
/** What a hand lets go of is back within a tenth of where it was after so many seconds, and at its place this near. */
const BACK_S = 0.16;
const BACK_M = 5e-4;

export function practiceMotion(): PracticeMotion {
  let seen: number | null = null;
  let at_s = Infinity;
  let shown_m = 0;
  let scratch = new Float32Array(0);
  let path: { readonly of: Laying; readonly line: HandPath } | null = null;

  const writeWay = (laying: Laying, play_s: number, out: Float32Array): void => {
    if (scratch.length !== out.length) scratch = new Float32Array(out.length);
    poseOffsetsAt(laying.timeline, play_s, scratch);
    for (const part of laying.parts)
      for (let k = 4 * part; k < 4 * part + 4; k++) out[k] = laying.seat[k]! + scratch[k]!;
  };
  const shift = (parts: readonly number[], direction: readonly number[], by_m: number, out: Float32Array) => {
    for (const part of parts)
      for (let k = 0; k < 3; k++) out[4 * part + k] = out[4 * part + k]! + by_m * direction[k]!;
  };
  /** How much of a motion the hand has done already, seconds. */
  const doneByHand = (hold: PracticeHold): number => {
    const { way } = hold;
    if (way === null) return 0;
    if (path?.of !== way) path = { of: way, line: handPath(way, hold.lead) };
    return playedAt(path.line, transient.hand_m);
  };

  return {
    advance(dt_s, stage, hold, cuts, out) {
      const anew = stage.serial !== seen;
      const { laying, stuck, back } = stage;
      const takes_s = laying?.timeline.stepEnd_s.at(-1) ?? 0;
      // What is met at rest stays at rest: a run taken up again plays nothing.
      if (anew) {
        at_s = cuts ? Infinity : 0;
        // What the hand brought on its way goes on from there.
        const brought = hold !== null && laying !== null && !back && hold.parts[0] === laying.parts[0];
        if (brought && !cuts) at_s = doneByHand(hold);
        // What is tugged at gives by the hand itself.
        if (stuck !== null && transient.handHolds) at_s = Infinity;
      } else if (at_s < Infinity) at_s += dt_s;
      seen = stage.serial;

      const held = hold !== null && hold.laid === stage.to;
      if (!held) {
        shown_m = 0;
        if (!transient.handHolds) transient.hand_m = 0;
      } else if (!transient.handHolds && transient.hand_m > 0) {
        transient.hand_m *= cuts ? 0 : 0.1 ** (dt_s / BACK_S);
        if (transient.hand_m < BACK_M) transient.hand_m = 0;
      }
      const byHand = held && (transient.hand_m > 0 || shown_m > 0);
      if (!anew && !byHand && at_s === Infinity) return { changed: false, moving: false };
      out.set(stage.to);
      if (byHand) {
        at_s = Infinity;
        shown_m = transient.hand_m;
        const { way } = hold;
        const play_s = doneByHand(hold);
        if (way === null) shift(hold.parts, hold.direction, shown_m, out);
        else if (shown_m > 0)
          writeWay(way, way.reverse ? (way.timeline.stepEnd_s.at(-1) ?? 0) - play_s : play_s, out);
        return { changed: true, moving: !transient.handHolds && shown_m > 0 };
      }
      if (laying !== null && at_s < takes_s)
        writeWay(laying, laying.reverse !== back ? takes_s - at_s : at_s, out);
      else if (laying === null && stuck !== null && at_s < GIVES_S)
        shift(stuck.parts, stuck.direction, GIVES_M * Math.abs(Math.sin((PULLS * Math.PI * at_s) / GIVES_S)), out); // prettier-ignore
      else at_s = Infinity;
      return { changed: true, moving: at_s < Infinity };
    },
  };
}
