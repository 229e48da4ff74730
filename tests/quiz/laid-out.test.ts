/** Questions of a lesson: laid out by their own id, so that neither the first option nor the order listed gives it away. */
import { describe, expect, it } from 'vitest';
import { type ChooseOne, laidOutById, markAnswer, NOTHING_ABOUT, type Order } from '../../src/core/quiz';

const shared = {
  origin: { from: 'bank', topic: 'a' },
  difficulty: 1,
  prompt: { rich: [] },
  explain: { rich: [] },
  source: 'common practice',
  about: NOTHING_ABOUT,
} as const;
const options = ['a', 'b', 'c', 'd'].map((id) => ({ id, says: { rich: [] } }));
const one = (id: string, keepOrder = false): ChooseOne => ({
  ...shared,
  kind: 'choose-one',
  id,
  options,
  right: 'a',
  keepOrder,
});
const order = (id: string): Order => ({
  ...shared,
  kind: 'order',
  id,
  cards: options,
  needs: { b: [['a']], c: [['b']], d: [['c']] },
});
const IDS = Array.from({ length: 200 }, (_, i) => `question-${i}`);
const idsOf = (list: readonly { readonly id: string }[]): string[] => list.map(({ id }) => id);

describe('questions laid out by their id', () => {
  it('keep their options, stand the same each time, and put the right one first about one time in four', () => {
    const firsts = IDS.filter((id) => {
      const item = laidOutById(one(id)) as ChooseOne;
      expect(item).toEqual(laidOutById(one(id)));
      expect(idsOf(item.options).sort()).toEqual(idsOf(options));
      return item.options[0]?.id === 'a';
    });
    expect(firsts.length).toBeGreaterThan(IDS.length / 8);
    expect(firsts.length).toBeLessThan(IDS.length / 2.5);
  });

  it('leave an order that means something alone', () => {
    for (const id of IDS.slice(0, 20))
      expect(idsOf((laidOutById(one(id, true)) as ChooseOne).options)).toEqual(idsOf(options));
  });

  it('never show cards already in order', () => {
    for (const id of IDS) {
      const { cards } = laidOutById(order(id)) as Order;
      expect(markAnswer(order(id), { type: 'order', ids: idsOf(cards) }).right, id).toBe(false);
    }
  });
});
