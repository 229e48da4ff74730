/** Where to go on, as text: back as it went in, within any limit, nothing believed that is damaged or of another make. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Answer, type Given, type Item, NOTHING_ABOUT } from '../../src/core/quiz';
import {
  makeOf,
  readResume,
  type Resume,
  RESUME_LIMIT_12,
  RESUME_LIMIT_2004,
  type TimedGiven,
  writeResume,
} from '../../src/core/records';
import { ITEMS } from '../classroom/items';

const STEPS = Array.from({ length: 12 }, (_, i) => `step-${i}`);
const make = makeOf(STEPS, ITEMS);

function answerOf(item: Item): fc.Arbitrary<Answer> {
  switch (item.kind) {
    case 'pick-part':
      return fc
        .oneof(fc.constantFrom(...item.among), fc.string({ minLength: 1, maxLength: 20 }))
        .map((partId) => ({ type: 'part', partId }));
    case 'number':
      return fc
        .double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 })
        .map((si) => ({ type: 'number', si: Number(si.toPrecision(12)) + 0 }));
    case 'order':
      return fc.shuffledSubarray(item.cards.map((card) => card.id)).map((ids) => ({ type: 'order', ids }));
    case 'match':
      return fc
        .tuple(...item.left.map(() => fc.constantFrom(...item.options.map((option) => option.id))))
        .map((right) => ({
          type: 'match',
          pairs: Object.fromEntries(item.left.map((left, i) => [left.id, right[i]!])),
        }));
    case 'direction':
      return fc.constantFrom('less', 'same', 'more').map((id) => ({ type: 'choice', ids: [id] }));
    default:
      return fc.subarray(item.options.map((option) => option.id)).map((ids) => ({ type: 'choice', ids }));
  }
}

const givenOf = (item: Item): fc.Arbitrary<Given> =>
  fc.record({
    answer: fc.oneof({ weight: 9, arbitrary: answerOf(item) }, fc.constant(null)),
    certainty: fc.constantFrom(1 as const, 2 as const, 3 as const),
  });
const timedOf = (item: Item): fc.Arbitrary<TimedGiven | null> =>
  fc.option(fc.record({ given: givenOf(item), latency_s: fc.nat(5000), after_s: fc.nat(500_000) }), {
    freq: 5,
  });
const stepNumbers = fc.subarray(STEPS.map((_, i) => i));

const resumes: fc.Arbitrary<Resume> = fc.record({
  at: fc.nat(STEPS.length - 1),
  done: stepNumbers,
  tasks: stepNumbers,
  attempts: fc.nat(40),
  bestRight: fc.nat(40),
  inLesson: fc
    .tuple(...ITEMS.map((item) => fc.option(givenOf(item))))
    .map((list) => new Map(list.flatMap((given, i) => (given === null ? [] : [[i, given] as const])))),
  quiz: fc.option(
    fc.record({
      seed: fc.nat(999_999),
      at: fc.nat(ITEMS.length - 1),
      began_ms: fc.integer({ min: 0, max: 4_102_444_800_000 }),
      given: fc.tuple(...ITEMS.map(timedOf)),
    }),
  ),
});

describe('resume text', () => {
  it('gives back what went in, in plain letters', () => {
    fc.assert(
      fc.property(resumes, (resume) => {
        const text = writeResume(resume, make, ITEMS, RESUME_LIMIT_12);
        expect(text).toMatch(/^[\x21-\x7e]+$/);
        expect(readResume(text, make, ITEMS)).toEqual(resume);
      }),
      { numRuns: 150, seed: 4 },
    );
  });

  it('keeps to any limit; steps and scores are the last to go', () => {
    fc.assert(
      fc.property(resumes, fc.integer({ min: 45, max: 400 }), (resume, limit) => {
        const text = writeResume(resume, make, ITEMS, limit);
        expect(text.length).toBeLessThanOrEqual(limit);
        const { at, done, tasks, attempts, bestRight } = resume;
        expect(readResume(text, make, ITEMS)).toMatchObject({ at, done, tasks, attempts, bestRight });
      }),
      { numRuns: 150, seed: 5 },
    );
  });

  it('holds a lesson of 40 steps and a bank of 120 questions, all answered, in the 4,096 letters of 1.2', () => {
    const bank: readonly Item[] = Array.from({ length: 120 }, (_, i) => ({
      ...ITEMS[i % ITEMS.length]!,
      id: `q-${String(i).padStart(3, '0')}`,
      about: NOTHING_ABOUT,
    }));
    const steps = Array.from({ length: 40 }, (_, i) => i);
    const mark = makeOf(steps.map(String), bank);
    const given = fc.sample(fc.tuple(...bank.map((item) => givenOf(item))), { numRuns: 1, seed: 1 })[0]!;
    const resume: Resume = {
      at: 39,
      done: steps,
      tasks: steps,
      attempts: 12,
      bestRight: 119,
      inLesson: new Map(),
      quiz: {
        seed: 999_999,
        at: 119,
        began_ms: 1_790_000_000_000,
        given: given.map((each) => ({ given: each, latency_s: 90, after_s: 20_000 })),
      },
    };
    const text = writeResume(resume, mark, bank, RESUME_LIMIT_2004);
    expect(text.length).toBeLessThanOrEqual(RESUME_LIMIT_12);
    expect(readResume(text, mark, bank)).toEqual(resume);
  });

  it('believes nothing that was damaged, cut, or of another make of the lesson', () => {
    const text = writeResume(fc.sample(resumes, { numRuns: 1, seed: 8 })[0]!, make, ITEMS, RESUME_LIMIT_12);
    expect(readResume(text, makeOf([...STEPS, 'new'], ITEMS), ITEMS)).toBeNull();
    expect(readResume(text, makeOf(STEPS, ITEMS.slice(1)), ITEMS.slice(1))).toBeNull();
    for (const other of ['', '{}', 'bookmark=3', '1', '~~~~~~~', `1${make}~?~0~0~0~0~~`])
      expect(readResume(other, make, ITEMS)).toBeNull();
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.string({ minLength: 1, maxLength: 3 }), (at, put) => {
        // Whatever comes of it is a place to go on from, never an exception.
        const read = readResume(text.slice(0, at) + put + text.slice(at + 1), make, ITEMS);
        expect(read === null || read.at >= 0).toBe(true);
      }),
      { numRuns: 300, seed: 6 },
    );
  });

  it('is the same whatever order options are shown in', () => {
    const turned = ITEMS.map((item): Item =>
      'options' in item ? ({ ...item, options: [...item.options].reverse() } as Item) : item,
    );
    expect(makeOf(STEPS, turned)).toBe(make);
    const resume = fc.sample(resumes, { numRuns: 1, seed: 3 })[0]!;
    const text = writeResume(resume, make, ITEMS, RESUME_LIMIT_12);
    expect(writeResume(resume, make, turned, RESUME_LIMIT_12)).toBe(text);
  });
});
