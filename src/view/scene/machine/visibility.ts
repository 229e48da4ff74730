/** What shows, as the part table has it. */
import type { Part } from '../../../core/machine';
import { type PartLook, partLook, type ShownBy } from '../../../store';
import { GHOST, HIDDEN, type PartTable, SOLID } from './part-table';

const NUMBER: Readonly<Record<PartLook, number>> = { hidden: HIDDEN, solid: SOLID, ghost: GHOST };

export const partShows = (part: Part, state: ShownBy): number => NUMBER[partLook(part, state)];

/** Writes `table.shown`; returns whether anything changed. `ghosts`: parts that a view leaves as ghosts, 1 each. */
export function writeShown(table: PartTable, state: ShownBy, ghosts?: Uint8Array): boolean {
  let changed = false;
  table.document.machine.parts.forEach((part, i) => {
    const own = partShows(part, state);
    const shows = own === SOLID && ghosts?.[i] === 1 ? GHOST : own;
    if (table.shown[i] !== shows) changed = true;
    table.shown[i] = shows;
  });
  return changed;
}
