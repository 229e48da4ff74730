/** The stage of a class: how a question or the instructor sets it, and the instructor's own stage as a setting. */
import { partsOfRef } from '../../core/machine';
import type { Follow, SeenQuestion } from '../../core/classroom';
import type { Item, StageSetting } from '../../core/quiz';
import type { AppState } from '../state';

/** Parts of the machine are named one by one at most this often; beyond it the list is left out. */
const MOST_NAMED = 60;

/** While a question is asked its own stage; once it is revealed, the parts that its answer is about stand out. */
export function stageOfQuestion(item: Item, phase: SeenQuestion['phase']): StageSetting {
  const { parts } = item.about;
  const own = item.stage ?? {};
  return phase === 'revealed' && parts.length > 0 ? { ...own, highlight: [...parts] } : own;
}

export const stageOfFollow = (follow: Follow): StageSetting | null =>
  follow.type === 'stage' ? follow.stage : null;

/** The stage as it stands, as a setting that others can take; what only this screen can know (the camera's turn) is not in it. */
export function stageSettingOf(state: AppState): StageSetting {
  const { document, explode, section, spinning, exciter, selectedPart, teardown, cameraWish } = state;
  const machine = document?.machine;
  const named = (ids: ReadonlySet<string> | null): string[] | undefined => {
    const known = [...(ids ?? [])].filter(
      (id) => machine !== undefined && partsOfRef(machine, id).length > 0,
    );
    return known.length === 0 || known.length > MOST_NAMED ? undefined : known;
  };
  const step = teardown.open ? document?.teardown.steps[teardown.step] : undefined;
  const only = named(state.isolatedParts);
  const hide = named(state.hiddenParts);
  const ghost = named(state.ghostedParts);
  const taken = step?.unitIds[0];
  const wished = cameraWish.partId;
  return {
    camera: { view: cameraWish.view, ...(wished === null ? {} : { part: wished }) },
    explode: Math.round(explode * 1000) / 1000,
    ...(section.on ? { cut: { axis: section.axis, offset_m: section.offset_m } } : {}),
    ...(spinning ? { spin: exciter.direction } : {}),
    ...(selectedPart === null ? {} : { highlight: [selectedPart] }),
    ...(only === undefined ? {} : { only }),
    ...(hide === undefined ? {} : { hide }),
    ...(ghost === undefined ? {} : { ghost }),
    ...(state.showContext ? { whole_machine: true } : {}),
    ...(state.balloons ? { labels: true } : {}),
    ...(taken === undefined ? {} : { taken_off: taken }),
  };
}
