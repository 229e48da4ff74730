/** The study of two-speed traction as it is set, for the box beside a lesson's text and for its tasks. */
import type { Machine } from '../../../core/machine';
import { type Combination, type TwoSpeedStudy, twoSpeedStudy } from '../../../core/studies';
import type { AppState, TwoSpeedSettings } from '../../../store';

export interface Slope {
  readonly study: TwoSpeedStudy;
  readonly now: Combination;
  readonly relief_Pa: number;
}

const known = new WeakMap<Machine, WeakMap<TwoSpeedSettings, Slope | null>>();

/** Worked out once a setting; null without a machine or where it has no travel drive. */
export function selectSlope(state: AppState): Slope | null {
  const machine = state.document?.machine;
  const set = state.studies['two-speed'];
  if (machine === undefined) return null;
  const own = known.get(machine) ?? new WeakMap<TwoSpeedSettings, Slope | null>();
  known.set(machine, own);
  let slope = own.get(set);
  if (slope === undefined) {
    slope = work(machine, set);
    own.set(set, slope);
  }
  return slope;
}

function work(machine: Machine, set: TwoSpeedSettings): Slope | null {
  const relief_Pa = set.relief_Pa ?? machine.drive?.relief_Pa ?? 0;
  const study = relief_Pa > 0 ? twoSpeedStudy(machine, { ...set, relief_Pa }) : null;
  const now = study?.combinations.find(
    (each) => each.drum_range === set.drum_range && each.axle_range === set.axle_range,
  );
  return study === null || now === undefined ? null : { study, now, relief_Pa };
}
