/**
 * 'These were measured. What fits all of it?' A case of the fault bench: its readings follow from the full physics of
 * one hidden fault with the error of the way each is taken. The wrong options are faults that share a symptom with it;
 * each is ruled out by at least one reading shown, at whatever severity it is taken.
 */
import type { Random } from '../../kernel';
import {
  type BenchInputs,
  errorOf,
  faultCase,
  type FaultEntry,
  faultyInputs,
  INPUT_NAMES,
  inSteps,
  type NumericMeasurement,
  type Plant,
  QUANTITY_OF,
  type ReadingName,
  type Readings,
  readingsOf,
  severities,
  WHOLE_INPUTS,
} from '../../faults';
import { shuffled } from '../asking';
import type { Content } from '../content';
import type { Item, Option } from '../item';
import { frameOf, type Generator, phrase, randomOf } from './frame';

const GENERATOR = 'fault-readings';
/** A reading out of the ordinary, and one that rules a fault out: both in standard deviations. */
const ODD_SD = 4;
const RULED_OUT_SD = 5;
/** A truth whose own readings stray further than this is drawn anew. */
const FITS_SD = 2.5;
const WRONG = 3;
const TRIES = 12;
/** Mild faults hide among sound machines: nothing to ask about. */
const LEAST_SEVERITY = 0.5;
const LEAST_SHOWN = 4;
const MOST_SHOWN = 6;

interface Shown {
  readonly m: NumericMeasurement;
  readonly read: number;
}

export const faultReadings: Generator = ({ plant }, seed) => {
  if (plant === undefined || plant === null) return null;
  const random = randomOf(GENERATOR, seed);
  for (let k = 0; k < TRIES; k++) {
    const fault = plant.book.faults[random.index(plant.book.faults.length)]!;
    const item = itemOf(plant, fault, random, seed);
    if (item !== null) return item;
  }
  return null;
};

function itemOf(plant: Plant, fault: FaultEntry, random: Random, seed: number): Item | null {
  const levels = severities(fault).filter((level) => inSteps(fault) || level >= LEAST_SEVERITY);
  const severity = levels[random.index(levels.length)]!;
  const hidden = faultCase(plant, fault, random, severity);
  const { usual, spread } = ordinary(plant);
  const sd = (m: NumericMeasurement, read: number): number =>
    Math.hypot(errorOf(m, read), spread[m.id as ReadingName]);
  const all = plant.book.measurements.flatMap((m): Shown[] => {
    const value = m.kind === 'number' ? hidden.readings.numbers[m.id as ReadingName] : null;
    if (m.kind !== 'number' || value === null) return [];
    return [{ m, read: value + errorOf(m, value) * random.normal() }];
  });
  const off = ({ m, read }: Shown, expected: number | null): number =>
    expected === null ? 0 : (read - expected) / sd(m, read);
  const fits = all.every((s) => Math.abs(off(s, hidden.readings.numbers[s.m.id as ReadingName])) < FITS_SD);
  const odd = all.filter((s) => Math.abs(off(s, usual[s.m.id as ReadingName])) > ODD_SD);
  if (!fits || odd.length === 0) return null;

  // Likest first: faults that would make the same gauges read odd.
  const others = shuffled(plant.book.faults, random)
    .filter((each) => each.id !== fault.id)
    .map((each) => ({ fault: each, states: statesOf(plant, each) }))
    .map((each) => ({ ...each, shared: sharedWith(each.states) }))
    .sort((a, b) => b.shared - a.shared);
  const shown = new Set<Shown>([strongest(odd, (s) => Math.abs(off(s, usual[s.m.id as ReadingName])))]);
  const wrong: { readonly fault: FaultEntry; readonly against: Shown; readonly expected: number }[] = [];
  for (const { fault: other, states } of others) {
    if (wrong.length === WRONG) break;
    const between = !inSteps(other);
    const least = (s: Shown): Miss =>
      leastMiss(
        states.map((state) => state[s.m.id as ReadingName]),
        (expected) => off(s, expected),
        between,
      );
    const against = strongest(all, (s) => least(s).off);
    const found = least(against);
    if (!(found.off > RULED_OUT_SD && Number.isFinite(found.expected))) continue;
    // Some faults make a reading stray more than it does on a sound machine.
    const strays = strayOf(plant, other, found.level)[against.m.id as ReadingName];
    const wide = Math.hypot(errorOf(against.m, against.read), strays);
    if (!(Math.abs(against.read - found.expected) > RULED_OUT_SD * wide)) continue;
    if (!shown.has(against) && shown.size >= MOST_SHOWN) continue;
    shown.add(against);
    wrong.push({ fault: other, against, expected: found.expected });
  }
  if (wrong.length < WRONG) return null;
  // What else is odd belongs to the picture, as far as there is room.
  for (const s of odd) if (shown.size < MOST_SHOWN) shown.add(s);
  for (const s of shuffled(all, random)) if (shown.size < LEAST_SHOWN) shown.add(s);

  const options: Option[] = [
    { id: fault.id, says: { fault: fault.id } },
    ...wrong.map(({ fault: other, against, expected }) => ({
      id: other.id,
      says: { fault: other.id },
      why: phrase('gen.fault.why', { name: nameOf(against), value: amount(against.m, expected) }),
    })),
  ];
  return {
    ...frameOf({
      generator: GENERATOR,
      seed,
      difficulty: 3,
      source: 'common practice',
      parts: fault.parts,
      place: 'faults',
    }),
    kind: 'find-fault',
    prompt: phrase('gen.fault.ask'),
    shown: shuffled([...shown], random).map((s) =>
      phrase('gen.fault.reading', {
        name: nameOf(s),
        value: amount(s.m, s.read),
        usual: amount(s.m, usual[s.m.id as ReadingName] ?? 0),
      }),
    ),
    options: shuffled(options, random),
    right: fault.id,
    explain: phrase('gen.fault.explain', {
      fault: { fault: fault.id },
      does: phrase(`fault-bench.fault.${fault.id}.does`),
    }),
  };

  function sharedWith(states: readonly Numbers[]): number {
    return Math.max(
      ...states.map(
        (state) =>
          odd.filter((s) => {
            const name = s.m.id as ReadingName;
            const [expected, sound] = [state[name], usual[name]];
            if (expected === null || sound === null) return false;
            const [here, there] = [s.read - sound, expected - sound];
            return here * there > 0 && Math.abs(there) / sd(s.m, s.read) > ODD_SD;
          }).length,
      ),
    );
  }
}

interface Miss {
  /** Standard deviations; 0 where a severity explains the reading or nothing is known. */
  readonly off: number;
  readonly expected: number;
  /** Place of that severity among the computed ones. */
  readonly level: number;
}

/**
 * How far off a reading is at the severity that explains it best.
 * @param between severities between the computed ones can be met: a reading between two of theirs is explained
 */
function leastMiss(
  expected: readonly (number | null)[],
  off: (expected: number) => number,
  between: boolean,
): Miss {
  let best: Miss = { off: Infinity, expected: NaN, level: 0 };
  let last = NaN;
  for (const [level, each] of expected.entries()) {
    if (each === null) return { off: 0, expected: NaN, level };
    const signed = off(each);
    if (between && signed * last < 0) return { off: 0, expected: each, level };
    if (Math.abs(signed) < best.off) best = { off: Math.abs(signed), expected: each, level };
    last = signed;
  }
  return best;
}

const nameOf = ({ m }: Shown): Content => phrase(`fault-bench.measure.${m.id}`);
const amount = (m: NumericMeasurement, si: number): Content => ({
  si,
  quantity: QUANTITY_OF[m.id as ReadingName],
  figures: 3,
});
const strongest = (list: readonly Shown[], by: (shown: Shown) => number): Shown =>
  list.reduce((a, b) => (by(b) > by(a) ? b : a));

type Numbers = Readings['numbers'];
type Spread = Readonly<Record<ReadingName, number>>;

interface Ordinary {
  readonly usual: Numbers;
  /** One standard deviation over sound machines. */
  readonly spread: Spread;
}

interface Cache {
  ordinary?: Ordinary;
  readonly states: Map<string, readonly Numbers[]>;
  readonly strays: Map<string, Spread>;
}

const known = new WeakMap<Plant, Cache>();
function cacheOf(plant: Plant): Cache {
  let cache = known.get(plant);
  if (cache === undefined) known.set(plant, (cache = { states: new Map(), strays: new Map() }));
  return cache;
}

/** Readings of a sound machine, and how they stray. */
function ordinary(plant: Plant): Ordinary {
  const cache = cacheOf(plant);
  return (cache.ordinary ??= {
    usual: readingsOf(plant, plant.sound).numbers,
    spread: spreadAt(plant, plant.sound),
  });
}

/** One standard deviation of each reading about a state: each input moved by its own spread, added in squares. */
function spreadAt(plant: Plant, inputs: BenchInputs): Spread {
  const centre = readingsOf(plant, inputs).numbers;
  const names = Object.keys(centre) as ReadingName[];
  const squares = Object.fromEntries(names.map((name) => [name, 0])) as Record<ReadingName, number>;
  for (const input of INPUT_NAMES) {
    const step = plant.spread[input];
    if (step === 0 || WHOLE_INPUTS.has(input)) continue;
    const moved = readingsOf(plant, { ...inputs, [input]: inputs[input] + step }).numbers;
    for (const name of names) {
      const [a, b] = [centre[name], moved[name]];
      if (a !== null && b !== null) squares[name] += (b - a) ** 2;
    }
  }
  return Object.fromEntries(names.map((name) => [name, Math.sqrt(squares[name])])) as Record<
    ReadingName,
    number
  >;
}

/** Readings of a fault at its severities, all else sound. */
function statesOf(plant: Plant, fault: FaultEntry): readonly Numbers[] {
  const { states } = cacheOf(plant);
  let found = states.get(fault.id);
  if (found === undefined) {
    found = severities(fault).map((severity) => readingsOf(plant, stateOf(plant, fault, severity)).numbers);
    states.set(fault.id, found);
  }
  return found;
}

function strayOf(plant: Plant, fault: FaultEntry, level: number): Spread {
  const { strays } = cacheOf(plant);
  const key = `${fault.id}/${level}`;
  let found = strays.get(key);
  if (found === undefined) {
    found = spreadAt(plant, stateOf(plant, fault, severities(fault)[level]!));
    strays.set(key, found);
  }
  return found;
}

const stateOf = (plant: Plant, fault: FaultEntry, severity: number): BenchInputs =>
  faultyInputs(plant, plant.sound, fault, severity);
