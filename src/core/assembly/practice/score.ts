/**
 * The score: points lost, a plain sum that can be checked by hand. Nothing is multiplied and nothing is hidden; the
 * clock weighs little, since haste is no skill at this work.
 */
import type { PracticeBench } from './bench';
import { leastWalk } from './run';
import type { PracticeState } from './types';

/** Points lost for each; a full five minutes is one (training values). */
export const POINTS = { wrong: 3, hint: 1, extra: 1, time: 1 } as const;
const TIME_S = 300;

export interface PracticeScore {
  /** Counts behind the points. */
  readonly wrong: number;
  readonly hints: number;
  /** Moves beyond the least that the planner needs. */
  readonly extra: number;
  readonly fiveMinutes: number;
  readonly lost: number;
  readonly moves: number;
  readonly leastMoves: number;
}

export function scoreOf(bench: PracticeBench, state: PracticeState): PracticeScore {
  const leastMoves = leastWalk(bench, state.goal).moves.length;
  const moves = state.moves.length;
  const wrong = state.wrong.length;
  const hints = state.hints.length;
  const extra = Math.max(0, moves - leastMoves);
  const fiveMinutes = Math.floor(state.elapsed_s / TIME_S);
  const lost = POINTS.wrong * wrong + POINTS.hint * hints + POINTS.extra * extra + POINTS.time * fiveMinutes;
  return { wrong, hints, extra, fiveMinutes, lost, moves, leastMoves };
}
