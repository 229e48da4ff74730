/** Name of a part as the label at the pointer says it: its kind's name and, of several alike, its number. */
import type { Machine } from '../../core/machine';
import type { Speech } from '../bind';

export function partName(speech: Speech, machine: Machine, partId: string): string {
  const kindId = machine.parts.find((part) => part.id === partId)?.kind ?? partId;
  const kind = machine.kinds[kindId];
  const key = `part.${kind?.word ?? kindId}.name`;
  const name = speech.has(key)
    ? speech.t(key)
    : (kind?.names?.[speech.language] ?? kind?.names?.['en'] ?? kindId);
  const number = /[/-](\d+)$/.exec(partId)?.[1];
  return number === undefined || partId === kindId ? name : `${name} ${number}`;
}
