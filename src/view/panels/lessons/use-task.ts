/** Whether a step's task has been done, from what the stage and panels show. */
import { findUnit } from '../../../core/machine';
import type { TaskEntry } from '../../../core/lessons';
import { partsNamed } from '../../../core/quiz';
import { type AppState, selectExciterStudy, stepThatTakes } from '../../../store';
import { useApp } from '../../bind';
import { selectSlope } from './slope';

type SetTask = Extract<TaskEntry, { type: 'set' }>;

/** What a setting is now: SI, degrees where its name says so; undefined without a machine. */
function settingNow(s: AppState, setting: SetTask['setting']): number | boolean | string | undefined {
  const inputs = setting.startsWith('exciter.') ? selectExciterStudy(s)?.inputs : undefined;
  switch (setting) {
    case 'explode':
      return s.explode;
    case 'cut.on':
      return s.section.on;
    case 'cut.offset_m':
      return s.section.on ? s.section.offset_m : undefined;
    case 'spin':
      return s.spinning;
    case 'whole-machine':
      return s.showContext;
    case 'exciter.direction':
      return s.exciter.direction;
    case 'exciter.baffle_on':
      return s.exciter.baffleOn;
    case 'exciter.frequency_high_Hz':
      return inputs?.frequencyHigh_Hz;
    case 'exciter.frequency_low_Hz':
      return inputs?.frequencyLow_Hz;
    case 'exciter.fill':
      return inputs?.fill;
    case 'exciter.baffle_psi_deg':
      return inputs?.bafflePsi_deg;
    case 'joint.steering_deg':
      return s.studies.stage?.kind === 'joint' ? s.studies.stage.steering_deg : undefined;
    case 'joint.oscillation_deg':
      return s.studies.stage?.kind === 'joint' ? s.studies.stage.oscillation_deg : undefined;
    case 'slope.drum_range':
      return s.studies['two-speed'].drum_range;
    case 'slope.axle_range':
      return s.studies['two-speed'].axle_range;
    case 'slope.climbs':
      return selectSlope(s)?.now.traction.climbs;
  }
}

function isSet(s: AppState, task: SetTask): boolean {
  const now = settingNow(s, task.setting);
  if (task.equals !== undefined) return now === task.equals;
  if (typeof now !== 'number') return false;
  // A hair of slack: a slider's steps are no exact decimals.
  const slack = 1e-9 + Math.abs(now) * 1e-6;
  return now >= (task.at_least ?? -Infinity) - slack && now <= (task.at_most ?? Infinity) + slack;
}

/** True while what the task asks for is so; tasks that are answered (measure, predict) are never done by the stage. */
export const useTaskMet = (task: TaskEntry | null): boolean =>
  useApp((s) => {
    const { document } = s;
    if (task === null || document === null) return false;
    switch (task.type) {
      case 'find':
        return s.selectedPart !== null && partsNamed(document.machine, task.part).includes(s.selectedPart);
      case 'take-off': {
        const unit = findUnit(document.machine, task.unit);
        const step = unit === undefined ? -1 : stepThatTakes(document.teardown.steps, unit.id);
        return step >= 0 && s.teardown.step >= step;
      }
      case 'set':
        return isSet(s, task);
      case 'measure':
      case 'predict':
        return false;
    }
  });
