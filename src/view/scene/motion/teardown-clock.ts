/**
 * Time on the teardown's timeline: eases to the end of a chosen step, runs while playing and says which steps passed,
 * follows a hand that scrubs. Pure; the store and the clock come from outside.
 */
import type { Timeline } from '../../../core/assembly';

export interface TeardownState {
  readonly step: number;
  readonly playing: boolean;
  readonly reverse: boolean;
}

export interface TeardownClock {
  /**
   * Moves on by `dt_s`. `time_s` is what the fast values hold (a hand may have moved it).
   * @returns the new time, whether it still moves, the step that is now reached, and whether playing has ended
   */
  advance(
    time_s: number,
    dt_s: number,
    state: TeardownState,
    cuts: boolean,
  ): { time_s: number; moving: boolean; step: number; ended: boolean };
}

/** Seconds that an ease to another step takes at least and at most. */
const EASE_LEAST_S = 0.45;
const EASE_MOST_S = 1.6;

/** Time at which steps 0..step are done. */
export const stepTime = (timeline: Timeline, step: number): number =>
  step < 0 ? 0 : (timeline.stepEnd_s[Math.min(step, timeline.stepEnd_s.length - 1)] ?? 0);

/** Last step that is done at a time; -1: none. */
export function stepAt(timeline: Timeline, time_s: number): number {
  let step = -1;
  while (step + 1 < timeline.stepEnd_s.length && timeline.stepEnd_s[step + 1]! <= time_s + 1e-6) step++;
  return step;
}

export function teardownClock(timeline: Timeline): TeardownClock {
  let lastStep = -1;
  let written = 0;
  let ease: { from: number; to: number; at: number; takes: number } | null = null;

  return {
    advance(time_s, dt_s, state, cuts) {
      // Someone else moved the time: the ease gives way.
      if (time_s !== written) ease = null;
      if (state.step !== lastStep) {
        lastStep = state.step;
        const to = stepTime(timeline, state.step);
        const way = Math.abs(to - time_s);
        if (!state.playing && way > 1e-6)
          ease = { from: time_s, to, at: 0, takes: Math.min(EASE_MOST_S, Math.max(EASE_LEAST_S, way)) };
      }
      let moving = false;
      let ended = false;
      let step = state.step;
      if (state.playing) {
        ease = null;
        time_s += state.reverse ? -dt_s : dt_s;
        const last = timeline.stepEnd_s[timeline.stepEnd_s.length - 1] ?? 0;
        ended = state.reverse ? time_s <= 0 : time_s >= last;
        time_s = Math.min(last, Math.max(0, time_s));
        step = ended && state.reverse ? -1 : stepAt(timeline, time_s);
        lastStep = step;
        moving = !ended;
      } else if (ease !== null) {
        ease.at += dt_s;
        const share = cuts ? 1 : Math.min(1, ease.at / ease.takes);
        time_s = ease.from + (ease.to - ease.from) * easeInOut(share);
        if (share >= 1) {
          time_s = ease.to;
          ease = null;
        } else moving = true;
      }
      written = time_s;
      return { time_s, moving, step, ended };
    },
  };
}

export const easeInOut = (s: number): number => (s < 0.5 ? 4 * s * s * s : 1 - (2 - 2 * s) ** 3 / 2);
