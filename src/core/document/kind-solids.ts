/** A document's bodies as core's formulas take them. */
import type { KindSolid } from '../geometry';
import type { DrawnBody, MachineDocument } from './types';

interface DrawnSolid extends KindSolid {
  readonly bodies: readonly DrawnBody[];
}

const made = new WeakMap<MachineDocument['solids'], Readonly<Record<string, DrawnSolid>>>();

/** Solids by kind id; the same object for the same bodies. */
export function kindSolids({
  solids,
}: Pick<MachineDocument, 'solids'>): Readonly<Record<string, DrawnSolid>> {
  let kinds = made.get(solids);
  if (kinds === undefined) {
    kinds = Object.fromEntries(Object.entries(solids).map(([id, bodies]) => [id, { bodies }]));
    made.set(solids, kinds);
  }
  return kinds;
}
