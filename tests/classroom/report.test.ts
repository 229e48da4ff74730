/** Shares, statistics and who needs which lesson, on a class small enough to count by hand. */
import { describe, expect, it } from 'vitest';
import { type ClassEvent, drawSheet, reportOf, sharesOf, upperLower } from '../../src/core/classroom';
import { itemStatistics, rightAnswer } from '../../src/core/quiz';
import { valueOf } from '../mechanics/value-of';
import { answer, ITEMS, join, move, questionsOf, run, session, wrongAnswer } from './items';

const items = questionsOf(ITEMS).map((question) => question.item);
const [one, several, pick] = [items[0]!, items[1]!, items[2]!];

/** Seats 1 to 4 answer the first two questions; seat 4 leaves the second out; the third is skipped. */
const after = run([
  ...[1, 2, 3, 4].map(join),
  session(),
  move('open'),
  answer(1, 0, rightAnswer(one), { certainty: 3 }),
  answer(2, 0, wrongAnswer(one), { certainty: 3 }),
  answer(3, 0, wrongAnswer(one), { certainty: 1 }),
  answer(4, 0, rightAnswer(one), { certainty: 1 }),
  move('reveal'),
  move('next'),
  move('open'),
  answer(1, 1, rightAnswer(several), { certainty: 2 }),
  answer(2, 1, wrongAnswer(several), { certainty: 2 }),
  answer(3, 1, rightAnswer(several), { certainty: 2 }),
  move('reveal'),
  move('next'),
  move('open'),
  answer(1, 2, rightAnswer(pick)),
  move('skip'),
  move('end'),
]);

describe('shares', () => {
  it('count each option, right ones, and each confidence', () => {
    const shares = sharesOf(one, after.session!.asked[0]!);
    expect(shares.rows.map((row) => [row.count, row.right])).toEqual([
      [2, true],
      [2, false],
      [0, false],
    ]);
    expect(shares).toMatchObject({ count: 4, right: 2 });
    expect(shares.byCertainty).toEqual({
      1: { said: 2, right: 1 },
      2: { said: 0, right: 0 },
      3: { said: 2, right: 1 },
    });
    // Of several, how many ticked each.
    expect(sharesOf(several, after.session!.asked[1]!).rows.map((row) => row.count)).toEqual([3, 0, 2]);
  });
  it('add hands and papers', () => {
    const events: ClassEvent[] = [
      { type: 'hands', question: 0, hands: { o1: 5, o2: 2 } },
      {
        type: 'paper',
        question: 0,
        seat: 9,
        entry: { answer: { type: 'choice', ids: ['o3'] }, right: false },
      },
      { type: 'paper', question: 2, seat: 9, entry: { answer: null, right: true } },
    ];
    const state = run(events, after);
    const shares = sharesOf(one, state.session!.asked[0]!);
    expect(shares).toMatchObject({ count: 12, right: 7 });
    expect(shares.rows.map((row) => row.count)).toEqual([7, 4, 1]);
    expect(sharesOf(pick, state.session!.asked[2]!)).toMatchObject({ count: 2, right: 2 });
  });
});

describe('report', () => {
  const report = reportOf(after);
  it('leaves skipped questions out and counts answers left out as wrong in the statistics alone', () => {
    expect(report.items.map((each) => each.at)).toEqual([0, 1]);
    expect(report.items.map((each) => each.difficulty)).toEqual([0.5, 2 / 3]);
    const rows = [
      [1, 1],
      [0, 0],
      [0, 1],
      [1, 0],
    ];
    const own = valueOf(itemStatistics(rows));
    expect(report.kr20).toBe(own.kr20);
    expect(report.items.map((each) => each.point_biserial)).toEqual(own.point_biserial);
    expect(report.notes.map(({ key }) => key)).toContain('quiz.note.few-people');
    expect(report.items.map((each) => each.discrimination)).toEqual([null, null]);
  });
  it('lists who was sure and wrong, marks by certainty, and lessons by need', () => {
    expect(report.items[0]!.sureAndWrong).toEqual([2]);
    expect(report.seats.map(({ seat, right, answered, mark }) => [seat, right, answered, mark])).toEqual([
      [1, 2, 2, 5],
      [2, 0, 2, -8],
      [3, 1, 2, 2],
      [4, 1, 1, 1],
    ]);
    expect(report.seats[1]!.lessons).toEqual(['brakes', 'oil']);
    expect(report.lessons).toEqual([
      { topic: 'brakes', seats: [2, 3] },
      { topic: 'oil', seats: [2] },
    ]);
  });
});

describe('upper and lower 27 %', () => {
  it('is 1 for an item that only the best know, and shares the people at a group’s edge', () => {
    const rows = Array.from({ length: 100 }, (_, i) => [i >= 50 ? 1 : 0, i >= 73 ? 1 : 0, i < 27 ? 1 : 0, 1]);
    // Totals: 27 people 2, 23 people 1, 23 people 2, 27 people 3.
    const [first, second, third, fourth] = upperLower(rows)!;
    expect(second).toBeCloseTo(1, 12);
    expect(fourth).toBeCloseTo(0, 12);
    // Lower group: 23 with one right and 4 of the 50 with two, of whom 27 are the weakest-by-place: 4 * 27 / 50.
    expect(third).toBeCloseTo(0 - (4 * 27) / 50 / 27, 12);
    expect(first).toBeCloseTo(1 - (4 * 23) / 50 / 27, 12);
  });
  it('does not depend on the order of people and says nothing below 30', () => {
    const rows = Array.from({ length: 40 }, (_, i) => [i % 3 === 0 ? 1 : 0, i % 2, i % 5 === 0 ? 0 : 1]);
    expect(upperLower([...rows].reverse())).toEqual(upperLower(rows));
    expect(upperLower(rows.slice(0, 29))).toBeNull();
  });
});

describe('drawing a sheet', () => {
  const pool = (from: 'class-bank' | 'practice-bank' | 'generated', topic: string | null, n: number) =>
    Array.from({ length: n }, (_, i) => ({
      item: { ...ITEMS[i % ITEMS.length]!, id: `${from}-${i}` },
      from,
      topic,
    }));
  const bank = [...pool('class-bank', 'oil', 10), ...pool('practice-bank', 'brakes', 10)];
  const made = pool('generated', null, 10);
  const wish = {
    topics: [],
    banks: 'class' as const,
    kinds: [],
    difficulties: [],
    generated: 0.4,
    count: 10,
  };
  it('keeps to the share, the banks and the number, and is the same under its seed', () => {
    const sheet = drawSheet(bank, made, wish, 5);
    expect(sheet.filter((each) => each.from === 'generated')).toHaveLength(4);
    expect(sheet.filter((each) => each.from === 'class-bank')).toHaveLength(6);
    expect(drawSheet(bank, made, wish, 5)).toEqual(sheet);
    expect(drawSheet(bank, made, wish, 6)).not.toEqual(sheet);
    expect(new Set(sheet.map((each) => each.original)).size).toBe(10);
  });
  it('fills up from the other sort, but never with one that was not wanted at all', () => {
    expect(drawSheet(bank, made, { ...wish, count: 18 }, 5).map((each) => each.from)).toHaveLength(18);
    const none = drawSheet(bank, made, { ...wish, generated: 0, count: 18 }, 5);
    expect(none).toHaveLength(10);
    const all = drawSheet(bank, made, { ...wish, generated: 1, count: 18 }, 5);
    expect(new Set(all.map((each) => each.from))).toEqual(new Set(['generated']));
    const kinds = drawSheet(bank, made, { ...wish, kinds: ['number'] }, 5);
    expect(new Set(kinds.map((each) => each.item.kind))).toEqual(new Set(['number']));
    expect(drawSheet(bank, [], { ...wish, topics: ['brakes'] }, 5)).toEqual([]);
  });
});
