/** What all generated questions share: their id, source, seeded choice among units, options without doubles. */
import { type Random, seededRandom } from '../../kernel';
import { defaultOptions, findPart, isPresent, type Machine, type Unit } from '../../machine';
import { shuffled } from '../asking';
import type { Content } from '../content';
import { type Difficulty, type Item, NOTHING_ABOUT, type Option } from '../item';
import type { Subject } from '../subject';

export type Generator = (subject: Subject, seed: number) => Item | null;

interface Frame {
  readonly generator: string;
  readonly seed: number;
  readonly difficulty: Difficulty;
  readonly source: string;
  readonly parts?: readonly string[];
  readonly place?: string;
  readonly terms?: readonly string[];
}

export const frameOf = ({ generator, seed, difficulty, source, parts, place, terms }: Frame) => ({
  id: `gen/${generator}/${seed}`,
  origin: { from: 'generator' as const, generator, seed },
  difficulty,
  source,
  about: { ...NOTHING_ABOUT, parts: parts ?? [], place: place ?? null, terms: terms ?? [] },
});

/** Random numbers of one generator: the same seed in two generators must not draw alike. */
export function randomOf(generator: string, seed: number): Random {
  let mix = seed >>> 0;
  for (const letter of generator) mix = Math.imul(mix ^ letter.charCodeAt(0), 0x9e3779b1) >>> 0;
  return seededRandom(mix);
}

export const oneOf = <T>(list: readonly T[], random: Random): T => list[random.index(list.length)]!;

/** Units that are there by default, the rear ghost left out; fluids too, since nobody picks oil. */
export function ownUnits(machine: Machine): readonly Unit[] {
  const options = defaultOptions(machine);
  return machine.units.filter((unit) =>
    unit.partIds.every((id) => {
      const part = findPart(machine, id);
      if (part === undefined || !isPresent(part, options)) return false;
      return machine.kinds[part.kind]?.finish !== 'oil';
    }),
  );
}

export const massOf = ({ machine, masses }: Subject, unit: Unit): number =>
  unit.partIds.reduce((sum, id) => sum + (masses[findPart(machine, id)?.kind ?? '']?.mass_kg ?? 0), 0);

/** One unit of each kind: two of a pattern cannot be told apart by name. Drawn in random order. */
export function unlike(machine: Machine, units: readonly Unit[], random: Random): readonly Unit[] {
  const seen = new Set<string>();
  return shuffled(units, random).filter((unit) => {
    const kind = findPart(machine, unit.partIds[0]!)!.kind;
    if (seen.has(kind)) return false;
    seen.add(kind);
    return true;
  });
}

export const unitOption = (unit: Unit, why?: Content): Option => ({
  id: unit.id,
  says: { part: unit.id },
  ...(why === undefined ? {} : { why }),
});

export const phrase = (
  key: string,
  params?: Readonly<Record<string, string | number | Content | readonly Content[]>>,
): Content => (params === undefined ? { phrase: key } : { phrase: key, params });
