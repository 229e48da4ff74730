import { describe, expect, it } from 'vitest';
import {
  type BlockingGraph,
  buildGraph,
  isDone,
  legalNow,
  planOnGraph,
  practiceBench,
  type PracticeState,
  startPractice,
  tryUnit,
  verifyPlan,
} from '../../src/core/assembly';
import {
  type ChooseOne,
  type ChooseSeveral,
  type Content,
  type Item,
  type Order,
  ORDER_GENERATORS,
  type OrderGenerator,
  orderQuestion,
  type Subject,
} from '../../src/core/quiz';
import english from '../../src/words/en';
import { box, screw, synthetic, type Synthetic } from '../assembly/fixture';
import * as alder from '../models/alder-one';
import { allOrders, alwaysBefore, canLeave } from './order-brute-force';

const subjectOf = ({ machine, solids, masses }: Synthetic): Subject & { graph: BlockingGraph } => {
  const graph = buildGraph(machine, solids, masses);
  return { machine, solids, masses, graph, teardown: planOnGraph(machine, graph), fit: undefined };
};

/** A tub of two wells under one lid that two groups of screws hold; three blocks fill one well, two the other. */
function wells(): Synthetic {
  const walls = [
    box([-0.2, 0, -0.1], [0.2, 0.02, 0.1]),
    box([-0.2, 0.02, -0.1], [-0.18, 0.2, 0.1]),
    box([-0.01, 0.02, -0.1], [0.01, 0.2, 0.1]),
    box([0.18, 0.02, -0.1], [0.2, 0.2, 0.1]),
    box([-0.18, 0.02, -0.1], [-0.01, 0.2, -0.08]),
    box([-0.18, 0.02, 0.08], [-0.01, 0.2, 0.1]),
    box([0.01, 0.02, -0.1], [0.18, 0.2, -0.08]),
    box([0.01, 0.02, 0.08], [0.18, 0.2, 0.1]),
  ];
  const block = (id: string, x: number, low: number, high: number) => ({
    id,
    solid: box([x - 0.085, low, -0.08], [x + 0.085, high, 0.08]),
  });
  const screws = (id: string, x: number) => ({
    id,
    places: [-0.09, 0.09].map((z) => ({ at_m: [x, 0.22, z] as const, turn_deg: [0, 0, 90] as const })),
    solid: screw(0.003, 0.05, 0.004, 0.005),
    joins: ['lid', 'tub'],
    engaged_m: 0.03,
    diameter_m: 0.006,
    size_m: 0.01,
  });
  return synthetic(
    [
      { id: 'tub', solid: walls, fixed: true },
      { id: 'lid', solid: box([-0.2, 0.2, -0.1], [0.2, 0.22, 0.1]) },
      block('left-low', -0.095, 0.02, 0.08),
      block('left-middle', -0.095, 0.08, 0.14),
      block('left-high', -0.095, 0.14, 0.2),
      block('right-low', 0.095, 0.02, 0.1),
      block('right-high', 0.095, 0.1, 0.2),
    ],
    [screws('screws-left', -0.19), screws('screws-right', 0.19)],
  );
}

/** Bodies that are on when the question is asked. */
function leftAt(subject: Subject & { graph: BlockingGraph }, item: Item): Set<number> {
  const after = item.stage?.taken_off;
  const left = new Set(subject.graph.bodies.keys());
  if (after === undefined) return left;
  for (const step of subject.teardown.steps) {
    if (step.kind !== 'remove') continue;
    for (const id of step.unitIds) left.delete(subject.graph.bodies.findIndex((b) => b.unitIds.includes(id)));
    if (step.unitIds.includes(after)) return left;
  }
  throw new Error(`no step takes off ${after}`);
}

const seeds = (count: number): number[] => Array.from({ length: count }, (_, i) => i + 1);

function made<T extends Item>(subject: Subject, generator: OrderGenerator, count: number): T[] {
  return seeds(count).flatMap((seed) => {
    const item = orderQuestion(subject, generator, seed);
    return item === null ? [] : [item as T];
  });
}

/** Orders of the cards that an item accepts. */
function accepted({ cards, needs }: Order): string[] {
  const out: string[] = [];
  const go = (gone: readonly string[]): void => {
    if (gone.length === cards.length) out.push(gone.join(' '));
    for (const { id } of cards) {
      const sets = needs[id];
      if (
        gone.includes(id) ||
        (sets !== undefined && !sets.some((set) => set.every((c) => gone.includes(c))))
      )
        continue;
      go([...gone, id]);
    }
  };
  go([]);
  return out;
}

describe('questions of order on a machine small enough to try every order', () => {
  const subject = subjectOf(wells());
  const { graph } = subject;
  const orders = allOrders(graph);
  const index = (id: string): number => graph.bodies.findIndex((b) => b.id === id);

  it('has the orders that it was made with', () => {
    // Two groups of screws, the lid, then the stacks of three and two run together in any way: 2 * 5! / (3! 2!).
    expect(new Set(orders.map(String)).size).toBe(20);
  });

  it('marks exactly what can leave', () => {
    const items = made<ChooseSeveral>(subject, 'order-now', 30);
    expect(items.length).toBeGreaterThan(20);
    for (const item of items) {
      const left = leftAt(subject, item);
      const free = item.options.filter((o) => canLeave(graph, left, index(o.id))).map((o) => o.id);
      expect([...item.right].sort()).toEqual(free.sort());
      expect(item.options.length).toBeGreaterThan(item.right.length);
    }
  });

  it('names what bars, and nothing that does not', () => {
    const items = made<ChooseOne>(subject, 'order-blocks', 30);
    expect(items.length).toBeGreaterThan(10);
    for (const item of items) {
      const asked = item.about.parts[0]!;
      expect(canLeave(graph, leftAt(subject, item), index(asked))).toBe(false);
      for (const { id } of item.options) expect(alwaysBefore(orders, id, asked)).toBe(id === item.right);
    }
  });

  it('knows the last of all that must be off before', () => {
    const items = made<ChooseOne>(subject, 'order-last', 30);
    expect(items.length).toBeGreaterThan(10);
    const ids = graph.bodies.map((b) => b.id);
    for (const item of items) {
      const asked = item.about.parts[0]!;
      const before = ids.filter((id) => alwaysBefore(orders, id, asked));
      const last = before.filter((id) =>
        before.every((other) => other === id || alwaysBefore(orders, other, id)),
      );
      expect(last).toEqual([item.right]);
      expect(new Set(item.options.map((o) => o.id)).size).toBe(4);
    }
  });

  it('accepts every order of the cards that some order of all has, and no other', () => {
    const items = made<Order>(subject, 'order-sequence', 20);
    expect(items.length).toBeGreaterThan(10);
    for (const item of items) {
      const cards = new Set(item.cards.map((c) => c.id));
      const real = new Set(orders.map((order) => order.filter((id) => cards.has(id)).join(' ')));
      expect(accepted(item).sort()).toEqual([...real].sort());
    }
  });
});

describe('questions of order on Alder One', () => {
  const subject = subjectOf(alder);
  const { graph, machine, teardown } = subject;
  const bench = practiceBench(machine, graph, 'test');
  const started = startPractice(bench, 'take-apart', { kind: 'all' });
  const whenAsked = (item: Item): PracticeState => {
    let state = started;
    const after = item.stage?.taken_off;
    if (after === undefined) return state;
    for (const step of teardown.steps) {
      if (step.kind !== 'remove') continue;
      for (const id of step.unitIds) state = tryUnit(bench, state, id).state;
      if (step.unitIds.includes(after)) return state;
    }
    throw new Error(`no step takes off ${after}`);
  };

  it('come of every kind, are the same for the same seed, and differ for others', () => {
    for (const generator of ORDER_GENERATORS) {
      const items = made(subject, generator, 8);
      expect(items).toHaveLength(8);
      expect(made(subject, generator, 8)).toEqual(items);
      expect(new Set(items.map((i) => JSON.stringify({ ...i, id: '', origin: '' }))).size).toBeGreaterThan(3);
    }
    expect(orderQuestion({ ...subject, graph: null }, 'order-now', 1)).toBeNull();
  });

  it('are answered the same way by practice, which accepts the right ones and refuses the wrong', () => {
    for (const item of made<ChooseSeveral>(subject, 'order-now', 12)) {
      const open = new Set(legalNow(bench, whenAsked(item)));
      for (const { id } of item.options)
        expect(`${id} ${open.has(id)}`).toBe(`${id} ${item.right.includes(id)}`);
    }
  });

  it('are right by the judge of motions: what is marked leaves without contact', () => {
    for (const item of made<ChooseSeveral>(subject, 'order-now', 4)) {
      const left = leftAt(subject, item);
      const gone = graph.bodies.flatMap((b, u) => (left.has(u) ? [] : b.unitIds));
      const first = { ...teardown.steps[0]!, kind: 'remove' as const, unitIds: gone, legs: [], partLegs: {} };
      const state = whenAsked(item);
      const steps = item.right.map((id) => {
        const { outcome } = tryUnit(bench, state, id);
        if (outcome.kind !== 'legal') throw new Error(`${id} was refused`);
        return outcome.step;
      });
      for (const step of steps) {
        const plan = { ...teardown, steps: [first, step] };
        const verdict = verifyPlan(machine, subject.solids, subject.masses, plan, { samples: 40 });
        expect(verdict.contacts).toEqual([]);
      }
    }
  });

  it('accept only orders that can be worked', () => {
    for (const item of made<Order>(subject, 'order-sequence', 3)) {
      const [one] = accepted(item);
      let state = started;
      const cards = one!.split(' ');
      cards.forEach((card, i) => {
        // All else may be taken off first, as long as the later cards stay.
        const later = new Set(cards.slice(i + 1));
        for (let again = true; again && legalNow(bench, state).indexOf(card) < 0;) {
          again = false;
          for (const id of legalNow(bench, state)) {
            const { outcome, state: next } = tryUnit(bench, state, id);
            if (id === card || outcome.kind !== 'legal' || outcome.move.bodies.some((b) => later.has(b)))
              continue;
            state = next;
            again = true;
          }
        }
        const { outcome, state: next } = tryUnit(bench, state, card);
        expect(`${card} ${outcome.kind}`).toBe(`${card} legal`);
        state = next;
      });
      expect(isDone(bench, state)).toBe(false);
    }
  });

  it('say only what the catalogue has words for, with every name that a text wants', () => {
    const said: Content[] = [];
    for (const generator of ORDER_GENERATORS)
      for (const item of made(subject, generator, 12)) {
        said.push(item.prompt, item.explain);
        for (const o of 'options' in item ? item.options : []) if (o.why !== undefined) said.push(o.why);
      }
    for (const content of said) {
      if (!('phrase' in content)) throw new Error(JSON.stringify(content));
      const text = english[content.phrase];
      expect(`${content.phrase}: ${typeof text}`).toBe(`${content.phrase}: string`);
      for (const [, name] of text!.matchAll(/\{\{\s*([\w-]+)\s*\}\}/g))
        expect(Object.keys(content.params ?? {})).toContain(name);
    }
  });

  it('hold before the bracket goes what the side plate weighs on, and say the force', () => {
    const items = made<ChooseOne>(subject, 'order-support', 12);
    for (const item of items) {
      const [held, comes] = item.about.parts;
      const at = teardown.steps.findIndex((s) => s.kind === 'remove' && s.unitIds[0] === comes);
      const supports = [teardown.steps[at - 1]!, teardown.steps[at]!].flatMap((s) => s.supports);
      expect(supports.map((s) => s.what)).toContain(held);
      for (const o of item.options) expect(supports.some((s) => s.what === o.id)).toBe(o.id === item.right);
    }
    expect(items.map((i) => i.right)).toContain('side-plate-right');
  });
});
