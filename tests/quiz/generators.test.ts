/** Every generated question, checked without the generator: from the model's own data, or by hand-written formulas. */
import { describe, expect, it } from 'vitest';
import { planOnGraph, buildGraph } from '../../src/core/assembly';
import { believe, placeReadings } from '../../src/core/faults';
import { findPart, findUnit } from '../../src/core/machine';
import {
  GENERATOR_NAMES,
  generateItem,
  generateItems,
  type Item,
  markAnswer,
  regenerate,
  rightAnswer,
  type Subject,
} from '../../src/core/quiz';
import english from '../../src/words/en';
import { plant, signatures } from '../faults/bench-of-alder-one';
import { fit, machine, masses, solids } from '../models/alder-one';

const graph = buildGraph(machine, solids, masses);
const subject: Subject = {
  machine,
  solids,
  masses,
  fit,
  graph,
  teardown: planOnGraph(machine, graph),
  plant,
};
const own = GENERATOR_NAMES.filter((name) => !name.startsWith('order-'));
const SEEDS = Array.from({ length: 40 }, (_, i) => 1 + 37 * i);
const made = (name: string): Item[] => SEEDS.flatMap((seed) => generateItem(subject, name, seed) ?? []);

const massOf = (unitId: string): number =>
  findUnit(machine, unitId)!.partIds.reduce(
    (sum, id) => sum + masses[findPart(machine, id)!.kind]!.mass_kg,
    0,
  );
/** Numbers among the parameters of the question as asked. */
function asked(item: Item, name: string): number {
  const params = 'phrase' in item.prompt ? item.prompt.params : undefined;
  const found = params?.[name];
  if (typeof found !== 'object' || !('si' in found)) throw new Error(`${item.id}: no ${name}`);
  return found.si;
}
const key = (item: Item): string => ('phrase' in item.prompt ? item.prompt.phrase : '');
const optionsOf = (item: Item) => ('options' in item ? item.options : []);

describe('all generators', () => {
  it.each(own)('%s: stable, words there, no doubles, the marked answer alone is right', (name) => {
    const items = made(name);
    expect(items.length).toBeGreaterThan(SEEDS.length / 2);
    expect(
      new Set(items.map(({ id: _id, origin: _origin, ...item }) => JSON.stringify(item))).size,
    ).toBeGreaterThan(1);
    for (const item of items) {
      expect(regenerate(subject, item.id)).toEqual(item);
      expect(markAnswer(item, rightAnswer(item)).right).toBe(true);
      for (const phrase of phrasesOf(item)) expect(english[phrase], phrase).toBeDefined();
      const options = optionsOf(item);
      const said = options.map((option) => JSON.stringify(option.says));
      expect(new Set(said).size, item.id).toBe(said.length);
      if (item.kind === 'choose-one') {
        expect(options.length).toBeGreaterThanOrEqual(3);
        const right = options.filter(
          (option) => markAnswer(item, { type: 'choice', ids: [option.id] }).right,
        );
        expect(right).toHaveLength(1);
      }
      if (item.kind === 'pick-part') {
        const right = item.among.filter((ref) =>
          item.accept.some((id) => findUnit(machine, ref)!.partIds.includes(id)),
        );
        expect(right, item.id).toHaveLength(1);
      }
    }
  });

  it('draw a sheet of different questions, the same for a seed', () => {
    const sheet = generateItems(subject, 25, 5);
    expect(sheet).toHaveLength(25);
    expect(generateItems(subject, 25, 5)).toEqual(sheet);
    expect(new Set(sheet.map((item) => item.id)).size).toBe(25);
    expect(regenerate(subject, 'gen/no-such/1')).toBeNull();
    expect(regenerate(subject, 'x')).toBeNull();
  });
});

describe('checked another way', () => {
  it('heaviest: by weighing all options', () => {
    for (const item of made('heaviest')) {
      if (item.kind !== 'choose-one') throw new Error(item.kind);
      const weights = item.options.map((option) => [massOf(option.id), option.id] as const);
      const [first, second] = weights.sort((a, b) => b[0] - a[0]);
      expect(first![1]).toBe(item.right);
      expect(first![0] / second![0]).toBeGreaterThan(1.25);
    }
  });

  it('moves-with and shakes: by the parts’ own entries', () => {
    for (const item of made('moves-with')) {
      if (item.kind !== 'choose-several') throw new Error(item.kind);
      const motion = key(item).split('.').at(-1);
      for (const { id } of item.options) {
        const all = findUnit(machine, id)!.partIds.every(
          (part) => findPart(machine, part)!.movesWith === motion,
        );
        expect(item.right.includes(id), `${item.id} ${id}`).toBe(all);
      }
    }
    for (const item of made('shakes')) {
      if (item.kind !== 'choose-several') throw new Error(item.kind);
      for (const { id } of item.options) {
        const sides = findUnit(machine, id)!.partIds.map((part) => findPart(machine, part)!.side);
        expect(item.right.includes(id)).toBe(sides.every((side) => side === 'vibrating'));
        expect(sides).not.toContain('isolator');
      }
    }
  });

  it('part-does, part-fails, match-functions: by the words of the right part', () => {
    for (const [name, section] of [
      ['part-does', 'does'],
      ['part-fails', 'fails'],
    ] as const)
      for (const item of made(name)) {
        if (item.kind !== 'choose-one' || !('phrase' in item.prompt)) throw new Error(item.kind);
        const text = (item.prompt.params!['text'] as { phrase: string }).phrase;
        const texts = item.options.map((option) => english[`part.${wordOf(option.id)}.${section}`]);
        expect(texts.filter((each) => each === english[text])).toHaveLength(1);
        expect(english[`part.${wordOf(item.right)}.${section}`]).toBe(english[text]);
      }
    for (const item of made('match-functions')) {
      if (item.kind !== 'match') throw new Error(item.kind);
      for (const { id } of item.left) {
        const right = item.options.find((option) => option.id === item.right[id])!;
        expect((right.says as { phrase: string }).phrase).toBe(`part.${wordOf(id)}.does`);
      }
    }
  });

  it('force-by-speed and life-by-load: by the share that the right option names', () => {
    for (const item of made('force-by-speed')) {
      const change = asked(item, 'share') * (key(item).endsWith('faster') ? 1 : -1);
      expect(shareOf(item)).toBeCloseTo(2 * change + change * change, 9);
    }
    for (const item of made('life-by-load')) {
      const change = asked(item, 'share') * (key(item).endsWith('heavier') ? 1 : -1);
      expect(shareOf(item)).toBeCloseTo(Math.exp((-10 / 3) * Math.log(1 + change)) - 1, 9);
    }
  });

  it('follows-speed: by what each formula holds', () => {
    const speedPower = { force: 2, unbalance: 0, weight: 0, life: -(2 * 10) / 3 - 1 };
    for (const item of made('follows-speed')) {
      const [what, way] = key(item).split('.').at(-1)!.split('-') as [keyof typeof speedPower, string];
      const sign = Math.sign(speedPower[what] * (way === 'up' ? 1 : -1));
      expect(item.kind === 'direction' && item.right).toBe(sign > 0 ? 'more' : sign < 0 ? 'less' : 'same');
    }
  });

  it('numbers: by formulas written out here', () => {
    const right = (item: Item): number => (item.kind === 'number' ? item.right_si : NaN);
    for (const item of made('force-number')) {
      const turns_rad = asked(item, 'frequency') * 2 * Math.PI;
      expect(right(item)).toBeCloseTo(asked(item, 'mass') * asked(item, 'radius') * turns_rad * turns_rad, 6);
    }
    for (const item of made('two-weights')) {
      const [a, b] = [asked(item, 'fixed'), asked(item, 'swinging')];
      const expected = { together: a + b, against: Math.abs(a - b), square: Math.hypot(a, b) };
      expect(right(item)).toBeCloseTo(expected[key(item).split('.').at(-1) as keyof typeof expected], 9);
    }
    for (const item of made('drum-pull')) {
      const torque_Nm =
        (asked(item, 'pressure') * asked(item, 'displacement') * asked(item, 'efficiency')) / (2 * Math.PI);
      expect(right(item)).toBeCloseTo(torque_Nm / asked(item, 'radius'), 6);
    }
    for (const item of made('linear-load'))
      expect(right(item)).toBeCloseTo((asked(item, 'mass') * 9.80665) / asked(item, 'width'), 6);
    for (const item of made('blow-spacing'))
      expect(right(item)).toBeCloseTo(asked(item, 'speed') / asked(item, 'frequency'), 12);
  });

  it('fault-readings: by Bayes on first-order signatures, which the generator does not use', () => {
    const truths = new Set<string>();
    for (const item of made('fault-readings')) {
      if (item.kind !== 'find-fault') throw new Error(item.kind);
      const readings = item.shown.map((each) => {
        if (!('phrase' in each)) throw new Error(item.id);
        const { name, value } = each.params as unknown as { name: { phrase: string }; value: { si: number } };
        return { measurement: name.phrase.replace('fault-bench.measure.', ''), value: value.si };
      });
      const placed = placeReadings(signatures, readings);
      if (!placed.ok) throw new Error(item.id);
      const belief = believe(signatures, placed.value);
      // Each option by how well it explains the readings alone, whatever it is met how often.
      const chance = (id: string): number => {
        const h = signatures.hypotheses.findIndex((each) => each.id === id);
        return belief.hypotheses[h]! / signatures.hypotheses[h]!.prior;
      };
      const right = chance(item.right);
      for (const { id } of item.options)
        if (id !== item.right) expect(chance(id) / right, `${item.id}: ${id}`).toBeLessThan(0.1);
      truths.add(item.right);
    }
    expect(truths.size).toBeGreaterThan(8);
    expect(generateItem({ ...subject, plant: null }, 'fault-readings', 1)).toBeNull();
  });

  it('range-on-slope: more oil a turn pulls harder', () => {
    for (const item of made('range-on-slope')) {
      const [asks, end] = key(item).split('.').at(-1)!.split('-') as ['pull' | 'speed', 'drum' | 'axle'];
      const { displacement_low_m3_rev: low, displacement_high_m3_rev: high } = machine.drive![end];
      const more = low > high ? 'low' : 'high';
      const less = low > high ? 'high' : 'low';
      expect(item.kind === 'choose-one' && item.right).toBe(asks === 'pull' ? more : less);
    }
  });
});

const wordOf = (unitId: string): string => {
  const { kind } = findPart(machine, findUnit(machine, unitId)!.partIds[0]!)!;
  return machine.kinds[kind]!.word ?? kind;
};

/** Signed change that the right option names. */
function shareOf(item: Item): number {
  if (item.kind !== 'choose-one') throw new Error(item.kind);
  const says = item.options.find((option) => option.id === item.right)!.says;
  if (!('phrase' in says)) throw new Error(item.id);
  const share = says.params!['share'] as { si: number };
  return says.phrase.endsWith('more') ? share.si : -share.si;
}

function phrasesOf(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = (value as { phrase?: unknown }).phrase;
  return [...(typeof own === 'string' ? [own] : []), ...Object.values(value).flatMap(phrasesOf)];
}
