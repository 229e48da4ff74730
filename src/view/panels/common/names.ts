/** Names that a person reads: of kinds, of single parts, of units that leave in one step. */
import type { Message, MessageParam } from '../../../core/kernel';
import { findPart, findUnit, type Machine, partsOfRef } from '../../../core/machine';
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
  if (ordinal !== '') return `${name} ${ordinal}`;
  // Of a pair of one kind the id tells the side, or front from rear.
  const place = /-(left|right|front|rear|upper|lower)$/.exec(partId)?.[1];
  return place === undefined || part.kind.endsWith(place)
    ? name
    : speech.t('part-place', { name, place: speech.t(`place.${place}`) });
}

/** Name of a unit: its own words, else the name of the one kind it holds, else of its first part. */
export function unitName(speech: Speech, machine: Machine, unitId: string): string {
  const key = `unit.${unitId}.name`;
  if (speech.has(key)) return speech.t(key);
  const unit = findUnit(machine, unitId);
  if (unit === undefined) {
    return speech.has(`fluid.${unitId}`) ? speech.t(`fluid.${unitId}`) : partName(speech, machine, unitId);
  }
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

/** A name inside a sentence: small first letter, unless the word is an abbreviation such as O-ring. */
export const inSentence = (name: string): string =>
  /^\p{Lu}\p{Ll}/u.test(name) ? name.charAt(0).toLocaleLowerCase() + name.slice(1) : name;

/** Says a core message whose parameters are ids of the machine and SI numbers: names and units put in for them. */
export function sayAbout(speech: Speech, machine: Machine, message: Message): string {
  const named = (id: string): string => {
    if (speech.has(`fluid.${id}`)) return speech.t(`fluid.${id}`);
    const parts = partsOfRef(machine, id);
    if (parts.length === 0) return id;
    // One of several alike goes by the name of its kind: a list of four numbers helps nobody.
    return inSentence(
      findUnit(machine, id)?.partIds.length === 1 && ordinalOf(machine, parts[0]!) !== ''
        ? kindName(speech, machine, findPart(machine, parts[0]!)!.kind)
        : unitName(speech, machine, id),
    );
  };
  const params: Record<string, MessageParam> = {};
  for (const [key, value] of Object.entries(message.params ?? {})) {
    if (typeof value === 'string') params[key] = named(value);
    else if (typeof value === 'number' && key.endsWith('_N'))
      params[key] = speech.quantity(value, 'force-large');
    else if (typeof value === 'number' && key.endsWith('_m3')) params[key] = speech.quantity(value, 'volume');
    else if (Array.isArray(value))
      params[key] = [
        ...new Set(
          (value as readonly (string | Message)[]).map((each) =>
            typeof each === 'string' ? named(each) : speech.say(each),
          ),
        ),
      ];
    else params[key] = value;
  }
  const text = speech.t(message.key, params);
  return text.charAt(0).toLocaleUpperCase() + text.slice(1);
}
