/** What shows, as the part table has it. */
import type { Part } from '../../../core/machine';
import { type PartLook, partLook, type ShownBy } from '../../../store';
import { GHOST, HIDDEN, type PartTable, SOLID } from './part-table';

const NUMBER: Readonly<Record<PartLook, number>> = { hidden: HIDDEN, solid: SOLID, ghost: GHOST };

export const partShows = (part: Part, state: ShownBy): number => NUMBER[partLook(part, state)];

/** Writes `table.shown`; returns whether anything changed. */
export function writeShown(table: PartTable, state: ShownBy): boolean {
  let changed = false;
  table.document.machine.parts.forEach((part, i) => {
    const shows = partShows(part, state);
    if (table.shown[i] !== shows) changed = true;
    table.shown[i] = shows;
  });
  return changed;
}
