/** Questions about the parts themselves: which is heavier, what moves with whom, what shakes, what does what. */
import { findPart, type MovesWith, type Unit } from '../../machine';
import { shuffled } from '../asking';
import type { Content } from '../content';
import {
  frameOf,
  type Generator,
  massOf,
  oneOf,
  ownUnits,
  phrase,
  randomOf,
  unitOption,
  unlike,
} from './frame';

const OPTIONS = 4;
/** The heaviest must outweigh the next by this, so that the answer can be known and not guessed at. */
const CLEARLY_HEAVIER = 1.3;
/** Lighter parts are no matter of lifting. */
const WORTH_WEIGHING_KG = 5;

/** 'Which of these is the heaviest?' Wrong ones are near in mass; size misleads, mass decides the lift. */
export const heaviest: Generator = (subject, seed) => {
  const generator = 'heaviest';
  const random = randomOf(generator, seed);
  const heavy = ownUnits(subject.machine).filter(
    (unit) => unit.group === null && massOf(subject, unit) >= WORTH_WEIGHING_KG,
  );
  for (const right of shuffled(heavy, random)) {
    const mass = massOf(subject, right);
    const lighter = unlike(
      subject.machine,
      heavy.filter((unit) => massOf(subject, unit) * CLEARLY_HEAVIER <= mass),
      random,
    )
      .filter((unit) => kindOf(unit) !== kindOf(right))
      .sort((a, b) => massOf(subject, b) - massOf(subject, a));
    if (lighter.length < OPTIONS - 1) continue;
    const wrong = lighter.slice(0, OPTIONS - 1);
    return {
      ...frameOf({ generator, seed, difficulty: 1, source: 'common practice', parts: [right.id] }),
      kind: 'choose-one',
      prompt: phrase('gen.heaviest.ask'),
      options: shuffled(
        [right, ...wrong].map((unit) =>
          unitOption(
            unit,
            unit === right
              ? undefined
              : phrase('gen.heaviest.lighter', { mass: { si: massOf(subject, unit), quantity: 'mass' } }),
          ),
        ),
        random,
      ),
      right: right.id,
      keepOrder: false,
      explain: phrase('gen.heaviest.explain', {
        part: { part: right.id },
        mass: { si: mass, quantity: 'mass' },
      }),
    };
  }
  return null;

  function kindOf(unit: Unit): string {
    return findPart(subject.machine, unit.partIds[0]!)!.kind;
  }
};

/** What a unit moves with; null where its parts differ. */
function motionOf(machine: Parameters<typeof ownUnits>[0], unit: Unit): MovesWith | null {
  const all = new Set(unit.partIds.map((id) => findPart(machine, id)!.movesWith));
  return all.size === 1 ? [...all][0]! : null;
}

/** Isolators bend between both sides: neither is wholly right. */
const isBetween = (machine: Parameters<typeof ownUnits>[0], unit: Unit): boolean =>
  unit.partIds.some((id) => findPart(machine, id)!.side === 'isolator');

/** 'Which of these turn at the speed of the exciter / roll with the drum / stand still against the frame?' */
export const movesWith: Generator = (subject, seed) => {
  const generator = 'moves-with';
  const { machine } = subject;
  const random = randomOf(generator, seed);
  const asked = oneOf(['exciter', 'drum', 'spindle'] as const, random);
  const units = unlike(
    machine,
    ownUnits(machine).filter((unit) => !isBetween(machine, unit)),
    random,
  );
  const right = units.filter((unit) => motionOf(machine, unit) === asked).slice(0, 1 + random.index(2));
  const wrong = units
    .filter((unit) => {
      const motion = motionOf(machine, unit);
      return motion !== null && motion !== asked;
    })
    .slice(0, 5 - right.length);
  if (right.length === 0 || wrong.length < 2) return null;
  return {
    ...frameOf({
      generator,
      seed,
      difficulty: 2,
      source: 'common practice',
      parts: right.map((unit) => unit.id),
    }),
    kind: 'choose-several',
    prompt: phrase(`gen.moves-with.${asked}`),
    options: shuffled(
      [
        ...right.map((unit) => unitOption(unit)),
        ...wrong.map((unit) => unitOption(unit, phrase(`gen.moves-with.why-${motionOf(machine, unit)!}`))),
      ],
      random,
    ),
    right: right.map((unit) => unit.id),
    keepOrder: false,
    explain: phrase(`gen.moves-with.explain-${asked}`, {
      parts: right.map((unit): Content => ({ part: unit.id })),
    }),
  };
};

/** 'Which of these shake with the drum?' The isolators part the two sides. */
export const shakes: Generator = (subject, seed) => {
  const generator = 'shakes';
  const { machine } = subject;
  const random = randomOf(generator, seed);
  const side = (unit: Unit): string => {
    const all = new Set(unit.partIds.map((id) => findPart(machine, id)!.side));
    return all.size === 1 ? [...all][0]! : 'mixed';
  };
  const units = unlike(machine, ownUnits(machine), random);
  const right = units.filter((unit) => side(unit) === 'vibrating').slice(0, 2 + random.index(2));
  const wrong = units.filter((unit) => side(unit) === 'still').slice(0, 6 - right.length);
  if (right.length < 2 || wrong.length < 2) return null;
  return {
    ...frameOf({
      generator,
      seed,
      difficulty: 2,
      source: 'common practice',
      parts: [right[0]!.id],
      place: 'studies/isolation',
    }),
    kind: 'choose-several',
    prompt: phrase('gen.shakes.ask'),
    options: shuffled(
      [
        ...right.map((unit) => unitOption(unit, phrase('gen.shakes.inside'))),
        ...wrong.map((unit) => unitOption(unit, phrase('gen.shakes.outside'))),
      ],
      random,
    ),
    right: right.map((unit) => unit.id),
    keepOrder: false,
    explain: phrase('gen.shakes.explain'),
  };
};

/** Units whose kind has words in the catalogue (a machine file that brings its own names has none). */
const worded = (machine: Parameters<typeof ownUnits>[0], unit: Unit): string | null => {
  if (unit.group !== null || unit.partIds.length > 1) return null;
  const { kind } = findPart(machine, unit.partIds[0]!)!;
  const entry = machine.kinds[kind];
  return entry === undefined || entry.names !== undefined ? null : (entry.word ?? kind);
};

/** Words of units, each once. */
function wordedUnits(subject: Parameters<Generator>[0], random: ReturnType<typeof randomOf>) {
  const seen = new Set<string>();
  return shuffled(ownUnits(subject.machine), random).flatMap((unit) => {
    const word = worded(subject.machine, unit);
    if (word === null || seen.has(word)) return [];
    seen.add(word);
    return [{ unit, word }];
  });
}

/** 'Which part does this?' and 'Which part fails like this?': the same parts, asked by work or by damage. */
const whichPart =
  (generator: string, section: 'does' | 'fails'): Generator =>
  (subject, seed) => {
    const random = randomOf(generator, seed);
    const drawn = wordedUnits(subject, random).slice(0, OPTIONS);
    const right = drawn[0];
    if (right === undefined || drawn.length < OPTIONS) return null;
    return {
      ...frameOf({ generator, seed, difficulty: 1, source: 'common practice', parts: [right.unit.id] }),
      kind: 'choose-one',
      prompt: phrase(`gen.which-part.${section}`, {
        text: phrase(`part.${right.word}.${section}`),
      }),
      options: shuffled(
        drawn.map(({ unit, word }) =>
          unitOption(
            unit,
            unit === right.unit
              ? undefined
              : phrase('gen.which-part.why', { text: phrase(`part.${word}.${section}`) }),
          ),
        ),
        random,
      ),
      right: right.unit.id,
      keepOrder: false,
      explain: phrase('gen.which-part.explain', { part: { part: right.unit.id } }),
    };
  };
export const partDoes = whichPart('part-does', 'does');
export const partFails = whichPart('part-fails', 'fails');

/** 'What does each part do?' Four parts, five works. */
export const matchFunctions: Generator = (subject, seed) => {
  const generator = 'match-functions';
  const random = randomOf(generator, seed);
  const drawn = wordedUnits(subject, random).slice(0, OPTIONS);
  if (drawn.length < OPTIONS) return null;
  const left = drawn.slice(0, OPTIONS - 1);
  return {
    ...frameOf({
      generator,
      seed,
      difficulty: 2,
      source: 'common practice',
      parts: left.map(({ unit }) => unit.id),
    }),
    kind: 'match',
    prompt: phrase('gen.match.ask'),
    left: left.map(({ unit }) => unitOption(unit)),
    options: shuffled(
      drawn.map(({ unit, word }) => ({ id: unit.id, says: phrase(`part.${word}.does`) })),
      random,
    ),
    right: Object.fromEntries(left.map(({ unit }) => [unit.id, unit.id])),
    explain: phrase('gen.match.explain'),
  };
};

/** 'Show me the ...' on the stage, or from a list of five. */
export const pickNamed: Generator = (subject, seed) => {
  const generator = 'pick-named';
  const random = randomOf(generator, seed);
  const { machine } = subject;
  const drawn = unlike(machine, ownUnits(machine), random).slice(0, 5);
  const right = drawn[0];
  if (right === undefined || drawn.length < 5) return null;
  // Any of its kind is right: the name does not tell which of several is meant.
  const kind = findPart(machine, right.partIds[0]!)!.kind;
  const alike = machine.parts.filter((p) => p.kind === kind).map((p) => p.id);
  return {
    ...frameOf({ generator, seed, difficulty: 1, source: 'common practice', parts: [right.id] }),
    kind: 'pick-part',
    prompt: phrase('gen.pick.ask', { part: { part: kind } }),
    accept: [...new Set([...alike, ...right.partIds])],
    among: shuffled(
      drawn.map((unit) => unit.id),
      random,
    ),
    explain: phrase(`gen.pick.explain`, { part: { part: kind } }),
  };
};
