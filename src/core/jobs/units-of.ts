/** Units that a word of a job stands for: a unit, a part of one, or the copies of a pattern's entry. */
import { findUnit, type Machine, partOf, partsOfRef } from '../machine';

export function unitsOf(machine: Machine, id: string): readonly string[] {
  const unit = findUnit(machine, id);
  if (unit !== undefined) return [unit.id];
  return [...new Set(partsOfRef(machine, id).map((part) => partOf(machine, part).unit))];
}

/** Part ids of several units, in the order of the machine. */
export function partsOfUnits(machine: Machine, unitIds: readonly string[]): readonly string[] {
  return unitIds.flatMap((id) => findUnit(machine, id)?.partIds ?? []);
}

/** The entry of the file that a unit is a copy of. */
export const entryOf = (machine: Machine, unitId: string): string =>
  findUnit(machine, unitId)?.entries[0]?.id ?? unitId;
