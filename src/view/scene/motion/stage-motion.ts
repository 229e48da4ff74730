/** What moves on the stage from frame to frame: teardown time, exploded view, spin. Writes the fast values. */
import {
  buildTimeline,
  type Explode,
  explodeOffsetsAt,
  type Plan,
  poseOffsetsAt,
  type Timeline,
} from '../../../core/assembly';
import type { MachineDocument } from '../../../core/document';
import type { Machine } from '../../../core/machine';
import { type AppState, selectViewPicture, type StudyStage, transient } from '../../../store';
import type { Motion } from '../machine/poses';
import { practiceMotion } from './practice-motion';
import { spinRates } from './spin';
import { studyMotion } from './study-motion';
import { easeInOut, stepTime, teardownClock } from './teardown-clock';

export interface StageMotion extends Motion {
  readonly timeline: Timeline | null;
  /** Explode as shown now, which follows the slider. */
  readonly explodeShown: number;
  /**
   * Moves on by dt. `changed`: poses differ from the last frame; `placed`: by more than the spin; `spread`: by the exploded view; `moving`: another frame
   * is wanted; `reached`: step that playing has reached, null when it did not change; `ended`: playing came to its end.
   */
  advance(
    dt_s: number,
    state: AppState,
    cuts: boolean,
  ): {
    changed: boolean;
    placed: boolean;
    spread: boolean;
    moving: boolean;
    reached: number | null;
    ended: boolean;
  };
}

/** The plan that plays: the machine's own, or that of an open job. */
interface Played {
  readonly plan: Plan;
  readonly explode: Explode;
}

const timelineOf = (machine: Machine, { plan, explode }: Played): Timeline | null =>
  plan.steps.length === 0 ? null : buildTimeline(plan, machine, explode);

/** Seconds in which the exploded view comes within a tenth of the slider. */
const FOLLOW_S = 0.16;
/** Seconds in which a stopped spin comes back to rest, heavy side down. */
const SETTLE_S = 0.7;

export function stageMotion(document: MachineDocument): StageMotion {
  const count = document.machine.parts.length;
  const { teardown, machine, explode } = document;
  const own: Played = { plan: teardown, explode };
  let played = own;
  let timeline = timelineOf(machine, played);
  let clock = timeline === null ? null : teardownClock(timeline);
  let explodeShown = -1;
  let timeShown = -1;
  const study = studyMotion(machine);
  const practice = practiceMotion();
  let settle: { drum: number; exciter: number; at: number } | null = null;
  const motion = {
    get timeline() {
      return timeline;
    },
    teardown: new Float32Array(4 * count),
    explode: new Float32Array(3 * count),
    get turnAxes() {
      return timeline?.turnAxes ?? null;
    },
    drumAngle_rad: 0,
    exciterAngle_rad: 0,
    get carry() {
      return study.active ? study.carry : null;
    },
    get explodeShown() {
      return Math.max(0, explodeShown);
    },
    advance(dt_s: number, state: AppState, cuts: boolean) {
      let changed = false;
      let moving = false;
      let reached: number | null = null;
      let ended = false;

      const plays = state.jobs.stage ?? own;
      if (plays.plan !== played.plan) {
        // Another plan: everything is at once where that plan has it.
        played = plays;
        timeline = timelineOf(machine, played);
        clock = timeline === null ? null : teardownClock(timeline);
        transient.teardownTime_s = timeline === null ? 0 : stepTime(timeline, state.teardown.step);
        motion.teardown.fill(0);
        timeShown = -1;
        changed = true;
      }
      if (state.practice.stage !== null) {
        // Practice has the parts: the plan's own time stands.
        const { stage, hold } = state.practice;
        const practised = practice.advance(dt_s, stage, hold, cuts, motion.teardown);
        changed ||= practised.changed;
        moving ||= practised.moving;
        timeShown = -1;
      } else if (clock !== null && timeline !== null) {
        const next = clock.advance(transient.teardownTime_s, dt_s, state.teardown, cuts);
        transient.teardownTime_s = next.time_s;
        if (next.time_s !== timeShown) {
          timeShown = next.time_s;
          poseOffsetsAt(timeline, timeShown, motion.teardown);
          changed = true;
        }
        moving ||= next.moving;
        ended = next.ended;
        if (next.step !== state.teardown.step) reached = next.step;
      }

      const wanted = transient.explode;
      const spread = wanted !== explodeShown && explodeShown >= 0;
      if (wanted !== explodeShown) {
        const far = Math.abs(wanted - Math.max(0, explodeShown));
        explodeShown =
          cuts || explodeShown < 0 || far < 0.0015
            ? wanted
            : explodeShown + (wanted - explodeShown) * (1 - 0.1 ** (dt_s / FOLLOW_S));
        explodeOffsetsAt(document.explode, explodeShown, motion.explode);
        changed = true;
        moving ||= explodeShown !== wanted;
      }

      const placed = changed;

      const studied = study.advance(dt_s, state.studies.stage ?? shaking(state), cuts);
      changed ||= studied.changed;
      moving ||= studied.moving;

      if (state.spinning) {
        settle = null;
        const { operation, drumRadius_m } = document.machine;
        const { direction, frequencyHigh_Hz, frequencyLow_Hz } = state.exciter;
        const frequency =
          direction === 'high'
            ? (frequencyHigh_Hz ?? operation.frequency_high_Hz)
            : (frequencyLow_Hz ?? operation.frequency_low_Hz);
        const rates = spinRates(direction, frequency, drumRadius_m);
        transient.drumAngle_rad += rates.drum_rad_s * dt_s;
        transient.exciterAngle_rad += rates.exciter_rad_s * dt_s;
        moving = true;
      } else if (!state.shot.open && (transient.drumAngle_rad !== 0 || transient.exciterAngle_rad !== 0)) {
        // Back to the nearest whole turn, where the model stands.
        settle ??= {
          drum: nearestTurn(transient.drumAngle_rad),
          exciter: nearestTurn(transient.exciterAngle_rad),
          at: 0,
        };
        settle.at += dt_s;
        const left = cuts ? 0 : 1 - easeInOut(Math.min(1, settle.at / SETTLE_S));
        transient.drumAngle_rad = settle.drum * left;
        transient.exciterAngle_rad = settle.exciter * left;
        if (left === 0) settle = null;
        else moving = true;
      }
      if (
        motion.drumAngle_rad !== transient.drumAngle_rad ||
        motion.exciterAngle_rad !== transient.exciterAngle_rad
      ) {
        motion.drumAngle_rad = transient.drumAngle_rad;
        motion.exciterAngle_rad = transient.exciterAngle_rad;
        changed = true;
      }
      return { changed, placed, spread, moving, reached, ended };
    },
  };
  return motion;
}

/** Shaking that the view 'what shakes' asks for. */
function shaking(state: AppState): StudyStage | null {
  const picture = selectViewPicture(state);
  return picture?.view === 'shakes' ? (picture.facts?.stage ?? null) : null;
}

/** What is left of an angle beyond the nearest whole turn, radians. */
const nearestTurn = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
