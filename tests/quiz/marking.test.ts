import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  drawItems,
  dueOn,
  type Item,
  LAST_BOX,
  laidOut,
  listedNeeds,
  markAnswer,
  NOTHING_ABOUT,
  oneOrder,
  readReviewCard,
  resultsOf,
  type ReviewCard,
  reviewed,
  rightAnswer,
  shuffled,
} from '../../src/core/quiz';
import { seededRandom } from '../../src/core/kernel';

const says = { phrase: 'x' };
const shared = {
  origin: { from: 'bank' as const, topic: 't' },
  difficulty: 1 as const,
  prompt: says,
  explain: says,
  source: 'common practice',
  about: NOTHING_ABOUT,
};
const option = (id: string) => ({ id, says });
const ITEMS: Item[] = [
  {
    ...shared,
    id: 'a',
    kind: 'choose-one',
    options: ['a', 'b', 'c'].map(option),
    right: 'b',
    keepOrder: false,
  },
  {
    ...shared,
    id: 'b',
    kind: 'choose-several',
    options: ['a', 'b', 'c'].map(option),
    right: ['a', 'c'],
    keepOrder: false,
  },
  { ...shared, id: 'c', kind: 'pick-part', accept: ['hub', 'hub-2'], among: ['hub', 'shell', 'shot'] },
  {
    ...shared,
    id: 'd',
    kind: 'order',
    cards: ['a', 'b', 'c'].map(option),
    needs: listedNeeds(['a', 'b', 'c'], 'as-listed'),
  },
  { ...shared, id: 'e', kind: 'number', quantity: 'force', right_si: 100, tolerance_si: 3 },
  { ...shared, id: 'f', kind: 'direction', set: 'change', right: 'more', why: {} },
  {
    ...shared,
    id: 'g',
    kind: 'match',
    left: ['a', 'b'].map(option),
    options: ['a', 'b', 'x'].map(option),
    right: { a: 'a', b: 'b' },
  },
  { ...shared, id: 'h', kind: 'find-fault', shown: [says], options: ['a', 'b'].map(option), right: 'a' },
];

describe('marking', () => {
  it('takes the right answer of every kind, and laying out does not change which is right', () => {
    for (const item of ITEMS)
      for (const seed of [1, 2, 3]) {
        const out = laidOut(item, seed);
        expect(markAnswer(out, rightAnswer(item)), item.kind).toMatchObject({ right: true, share: 1 });
        expect(markAnswer(item, rightAnswer(out)).right).toBe(true);
      }
  });

  it('refuses answers of another type, empty ones and near misses', () => {
    const wrong = (index: number, answer: Parameters<typeof markAnswer>[1]) =>
      expect(markAnswer(ITEMS[index]!, answer).right).toBe(false);
    for (const i of ITEMS.keys()) wrong(i, { type: 'choice', ids: [] });
    wrong(0, { type: 'choice', ids: ['a', 'b'] });
    wrong(1, { type: 'choice', ids: ['a'] });
    wrong(1, { type: 'choice', ids: ['a', 'b', 'c'] });
    wrong(2, { type: 'part', partId: 'shell' });
    wrong(3, { type: 'order', ids: ['a', 'a', 'b'] });
    wrong(4, { type: 'number', si: 103.1 });
    wrong(4, { type: 'number', si: NaN });
    wrong(6, { type: 'match', pairs: { a: 'a', b: 'x' } });
  });

  it('takes a number at the very limit', () => {
    expect(markAnswer(ITEMS[4]!, { type: 'number', si: 97 }).right).toBe(true);
    expect(markAnswer(ITEMS[4]!, { type: 'number', si: 103 }).right).toBe(true);
  });

  it('names the first card that may not go, and what it waits for', () => {
    expect(markAnswer(ITEMS[3]!, { type: 'order', ids: ['a', 'c', 'b'] })).toMatchObject({
      right: false,
      wrong: ['c'],
      missing: ['b'],
    });
  });

  it('takes exactly the orders that keep to the pairs', () => {
    const ids = ['a', 'b', 'c', 'd', 'e'];
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(fc.nat(4), fc.nat(4)), { maxLength: 6 }),
        fc.integer(),
        (drawn, seed) => {
          // Smaller before larger: never a contradiction.
          const before = drawn
            .filter(([a, b]) => a !== b)
            .map(([a, b]) => [ids[Math.min(a, b)]!, ids[Math.max(a, b)]!] as const);
          const item: Item = {
            ...shared,
            id: 'o',
            kind: 'order',
            cards: ids.map(option),
            needs: listedNeeds(ids, { before }),
          };
          const order = shuffled(ids, seededRandom(seed));
          const legal = before.every(([a, b]) => order.indexOf(a) < order.indexOf(b));
          expect(markAnswer(item, { type: 'order', ids: order }).right).toBe(legal);
          expect(oneOrder(item)).toHaveLength(ids.length);
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });

  it('puts sure and wrong first', () => {
    const asked = [
      { item: ITEMS[0]!, given: { answer: rightAnswer(ITEMS[0]!), certainty: 1 as const } },
      { item: ITEMS[1]!, given: { answer: null, certainty: 1 as const } },
      { item: ITEMS[2]!, given: { answer: { type: 'part' as const, partId: 'x' }, certainty: 2 as const } },
      { item: ITEMS[4]!, given: { answer: { type: 'number' as const, si: 1 }, certainty: 3 as const } },
      { item: ITEMS[5]!, given: { answer: rightAnswer(ITEMS[5]!), certainty: 3 as const } },
    ];
    const results = resultsOf(asked);
    expect(results.rows.map((row) => row.standing)).toEqual([
      'sure-and-wrong',
      'wrong',
      'left-out',
      'lucky',
      'right',
    ]);
    expect([results.right, results.count, results.mark, results.best]).toEqual([2, 5, 1 + 0 - 2 - 6 + 3, 15]);
    expect(results.byCertainty).toEqual({
      1: { said: 1, right: 1 },
      2: { said: 1, right: 0 },
      3: { said: 2, right: 1 },
    });
  });
});

describe('asking', () => {
  it('is the same sheet for the same seed, without doubles, no kind twice in a row while another is left', () => {
    const sheet = drawItems(ITEMS, { count: 6 }, 42);
    expect(drawItems(ITEMS, { count: 6 }, 42)).toEqual(sheet);
    expect(new Set(sheet.map((item) => item.id)).size).toBe(6);
    for (let i = 1; i < sheet.length; i++) expect(sheet[i]!.kind).not.toBe(sheet[i - 1]!.kind);
    expect(drawItems(ITEMS, { count: 99 }, 1)).toHaveLength(ITEMS.length);
    expect(drawItems(ITEMS, { count: 9, kinds: ['number'] }, 1)).toHaveLength(1);
  });

  it('never lays cards in a right order', () => {
    for (let seed = 0; seed < 50; seed++) {
      const out = laidOut(ITEMS[3]!, seed);
      if (out.kind !== 'order') throw new Error('kind');
      expect(out.cards.map((card) => card.id)).not.toEqual(['a', 'b', 'c']);
    }
  });
});

describe('review', () => {
  it('keeps its laws whatever is answered', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ right: fc.boolean(), certainty: fc.constantFrom(1, 2, 3), wait: fc.nat(40) }), {
          minLength: 1,
          maxLength: 20,
        }),
        (answers) => {
          let card: ReviewCard | undefined;
          let day = 20_000;
          for (const { right, certainty, wait } of answers) {
            day += wait;
            const next = reviewed('x', card, right, certainty as 1 | 2 | 3, day);
            expect(next.box).toBeGreaterThanOrEqual(1);
            expect(next.box).toBeLessThanOrEqual(LAST_BOX);
            expect(next.due).toBeGreaterThan(day);
            if (!right) expect(next.box).toBe(1);
            // A right guess teaches nothing: the gap does not grow.
            else if (certainty === 1) expect(next.box).toBe(Math.max(1, card?.box ?? 1));
            else expect(next.box).toBe(Math.min(LAST_BOX, (card?.box ?? 0) + 1));
            expect(dueOn([next], day)).toEqual([]);
            expect(dueOn([next], next.due)).toEqual([next]);
            expect(readReviewCard(JSON.stringify(next))).toEqual(next);
            card = next;
          }
        },
      ),
      { seed: 3, numRuns: 100 },
    );
  });

  it('takes no damaged card', () => {
    for (const text of ['', '{}', '[]', 'null', '{"item":"x","box":9,"due":1,"seen":1,"right":0,"wrong":0}'])
      expect(readReviewCard(text)).toBeNull();
  });
});
