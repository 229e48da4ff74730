/** What shows: hidden, isolated, ghosted, context and options, read from the store's state. */
import type { Part } from '../../../core/machine';
import type { AppState } from '../../../store';
import { GHOST, HIDDEN, type PartTable, SOLID } from './part-table';

type Shown = Pick<AppState, 'hiddenParts' | 'ghostedParts' | 'isolatedParts' | 'showContext' | 'optionsOn'>;

/** Context parts stay ghosts: they are there to show where the drum belongs. */
export function partShows(part: Part, state: Shown): number {
  if (part.option !== null && state.optionsOn[part.option] !== true) return HIDDEN;
  if (state.hiddenParts.has(part.id)) return HIDDEN;
  if (state.isolatedParts !== null) {
    if (!state.isolatedParts.has(part.id)) return HIDDEN;
  } else if (part.context && !state.showContext) return HIDDEN;
  if (state.ghostedParts.has(part.id)) return GHOST;
  return part.context && state.isolatedParts === null ? GHOST : SOLID;
}

/** Writes `table.shown`; returns whether anything changed. */
export function writeShown(table: PartTable, state: Shown): boolean {
  let changed = false;
  table.document.machine.parts.forEach((part, i) => {
    const shows = partShows(part, state);
    if (table.shown[i] !== shows) changed = true;
    table.shown[i] = shows;
  });
  return changed;
}
