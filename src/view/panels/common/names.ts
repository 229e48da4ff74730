/** Names that a person reads: of kinds, of single parts, of units that leave in one step. */
import { findPart, findUnit, type Machine } from '../../../core/machine';
import type { Speech } from '../../bind';

/** Name of a kind: the catalogue's, else the machine file's own in this language, else its id. */
export function kindName(speech: Speech, machine: Machine, kindId: string): string {
  const kind = machine.kinds[kindId];
  const key = `part.${kind?.word ?? kindId}.name`;
  if (speech.has(key)) return speech.t(key);
  return kind?.names?.[speech.language] ?? kind?.names?.['en'] ?? kindId;
}

/** Ordinal of a part among its like: `07` of `hub-bolts/07`, `3` of `isolator-right-3`; empty when there is one only. */
export function ordinalOf(machine: Machine, partId: string): string {
  const slash = partId.indexOf('/');
  if (slash >= 0) return partId.slice(slash + 1);
  const tail = /-(\d+)$/.exec(partId)?.[1];
  const kind = findPart(machine, partId)?.kind;
  return tail !== undefined && partId !== kind ? tail : '';
}

/** Name of one part with its ordinal. */
export function partName(speech: Speech, machine: Machine, partId: string): string {
  const part = findPart(machine, partId);
  if (part === undefined) return partId;
  const name = kindName(speech, machine, part.kind);
  const ordinal = ordinalOf(machine, partId);
  return ordinal === '' ? name : `${name} ${ordinal}`;
}

/** Name of a unit: its own words, else the name of the one kind it holds, else of its first part. */
export function unitName(speech: Speech, machine: Machine, unitId: string): string {
  const key = `unit.${unitId}.name`;
  if (speech.has(key)) return speech.t(key);
  const unit = findUnit(machine, unitId);
  if (unit === undefined) return partName(speech, machine, unitId);
  if (unit.partIds.length === 1) return partName(speech, machine, unit.partIds[0]!);
  const kinds = [...new Set(unit.partIds.map((id) => findPart(machine, id)!.kind))];
  return kindName(speech, machine, kinds[0]!);
}

/** Lower case without accents, for searching. */
export const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Diacritic}/gu, '')
    .toLocaleLowerCase();
