/** What follows from the state of the shot that is watched. */
import type { ShotRun } from './shot';
import type { AppState } from './state';

/** The run that is shown: the one chosen, else the machine's own in the direction of the lever. */
export function selectShownRun({ shot, exciter }: AppState): ShotRun | null {
  if (shot.shown === null) return shot.own[exciter.direction];
  return shot.runs.find((run) => run.id === shot.shown) ?? shot.own[exciter.direction];
}
