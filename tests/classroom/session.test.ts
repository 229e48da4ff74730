/** The class as a state machine: what may happen when, whatever is tried. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  apply,
  type ClassEvent,
  type ClassState,
  EMPTY_CLASS,
  judge,
  learnerView,
  MOVES,
  readEvent,
} from '../../src/core/classroom';
import { rightAnswer } from '../../src/core/quiz';
import { answer, ITEMS, join, learner, move, questionsOf, run, session, wrongAnswer } from './items';

const items = questionsOf(ITEMS).map((question) => question.item);
const right = (q: number) => rightAnswer(items[q]!);
const why = (state: ClassState, event: ClassEvent): string => {
  const verdict = judge(state, event);
  return verdict.verdict === 'refuse' ? verdict.why.replace('class.refused.', '') : verdict.verdict;
};
const seats = (n: number): ClassEvent[] => Array.from({ length: n }, (_, i) => join(i + 1));

describe('numbers of the class sheet', () => {
  it('gives a number to one phone, and to several in teams', () => {
    const solo = run([join(1)]);
    expect(why(solo, { ...join(2), seat: 1 } as ClassEvent)).toBe('taken');
    expect(why(solo, { ...join(2), seat: 31 } as ClassEvent)).toBe('no-such-number');
    const settings = { title: '', mode: 'team' as const, seats: 6, names: false };
    const team = run([{ type: 'settings', settings }, join(1)]);
    expect(why(team, { ...join(2), seat: 1 } as ClassEvent)).toBe('take');
  });
  it('lets a phone change its number until it has answered', () => {
    const state = run([...seats(2), session(), move('open')]);
    expect(why(state, { ...join(1), seat: 9 } as ClassEvent)).toBe('take');
    const after = apply(state, answer(1, 0, right(0)));
    expect(why(after, { ...join(1), seat: 9 } as ClassEvent)).toBe('has-answered');
    expect(why(after, join(1))).toBe('take');
  });
  it('keeps names only where they are turned on, and drops them when they are turned off', () => {
    const named: ClassEvent = { type: 'join', learner: learner(1), seat: 1, name: 'A' };
    expect(run([named]).learners[learner(1)]!.name).toBeNull();
    const settings = { title: '', mode: 'solo' as const, seats: 6, names: true };
    const on = run([{ type: 'settings', settings }, named]);
    expect(on.learners[learner(1)]!.name).toBe('A');
    const off = run([{ type: 'settings', settings: { ...settings, names: false } }], on);
    expect(off.learners[learner(1)]!.name).toBeNull();
  });
});

describe('answers', () => {
  const open = run([...seats(3), session(), move('open')]);
  it('are taken while the question is open and not before, after, or in a pause', () => {
    expect(why(run([...seats(1), session()]), answer(1, 0, right(0)))).toBe('not-open');
    expect(why(open, answer(1, 0, right(0)))).toBe('take');
    expect(why(open, answer(1, 1, right(1)))).toBe('not-open');
    expect(why(run([move('close')], open), answer(1, 0, right(0)))).toBe('not-open');
    expect(why(run([move('pause')], open), answer(1, 0, right(0)))).toBe('paused');
    expect(why(run([move('end')], open), answer(1, 0, right(0)))).toBe('ended');
    expect(why(open, answer(9, 0, right(0)))).toBe('unknown');
  });
  it('that were kept on a phone without network count until the reveal, never after', () => {
    const kept = answer(1, 0, right(0), { kept: true });
    expect(why(run([move('close')], open), kept)).toBe('take');
    expect(why(run([move('close'), move('reveal')], open), kept)).toBe('not-open');
  });
  it('count once however often they are sent, and the latest of a phone counts in whatever order they come', () => {
    const first = answer(1, 0, wrongAnswer(items[0]!), { revision: 1 });
    const second = answer(1, 0, right(0), { revision: 2, certainty: 3 });
    for (const sent of [
      [first, second],
      [second, first],
      [first, first, second, second, first],
    ]) {
      const state = run(sent, open);
      expect(Object.keys(state.session!.asked[0]!.answers)).toEqual(['1']);
      expect(state.session!.asked[0]!.answers['1']).toMatchObject({ answer: right(0), certainty: 3 });
    }
    // Even after the reveal a repeat is told that it was taken.
    expect(why(run([second, move('reveal')], open), second)).toBe('repeat');
  });
  it('hold nothing but the pieces of the question', () => {
    items.forEach((item, q) => {
      const state = run([
        ...seats(1),
        session(),
        ...Array.from({ length: q + 1 }, () => move('next')),
        move('open'),
      ]);
      expect(why(state, answer(1, q, rightAnswer(item))), item.kind).toBe('take');
      expect(why(state, answer(1, q, wrongAnswer(item))), item.kind).toBe('take');
      if (item.kind !== 'pick-part' && item.kind !== 'number')
        expect(why(state, answer(1, q, { type: 'part', partId: 'hub' })), item.kind).toBe('answer');
      if (item.kind !== 'choose-several')
        expect(why(state, answer(1, q, { type: 'choice', ids: ['o1', 'o2'] })), item.kind).toBe('answer');
    });
  });
});

describe('a session', () => {
  it('goes on, back and past a question, and never reopens what was revealed', () => {
    let state = run([session(), move('open'), move('close'), move('open'), move('reveal')]);
    expect(why(state, move('open'))).toBe('revealed');
    expect(why(state, move('skip'))).toBe('revealed');
    state = run([move('next'), move('skip')], state);
    expect(state.session).toMatchObject({ at: 2 });
    expect(state.session!.asked.map((each) => each.phase).slice(0, 3)).toEqual([
      'revealed',
      'skipped',
      'waiting',
    ]);
    state = run([move('back'), move('open'), move('close'), move('end')], state);
    expect(state.session).toMatchObject({ at: 1, phase: 'ended' });
    expect(why(state, move('open'))).toBe('ended');
  });
  it('shows no question on a phone before it is opened, and the key only once revealed', () => {
    const lobby = run([...seats(1), session(), move('next')]);
    expect(learnerView(lobby, learner(1))!.question).toMatchObject({ item: null, shares: null });
    const opened = run([move('open'), answer(1, 0, right(0))], lobby);
    expect(learnerView(opened, learner(1))!.question!.item).toMatchObject({ right: '' });
    expect(learnerView(opened, learner(1))!.question!.shares).toBeNull();
    const revealed = run([move('reveal')], opened);
    const seen = learnerView(revealed, learner(1))!;
    expect(seen.question!.item).toMatchObject({ right: 'o1' });
    expect(seen.question!.shares).toMatchObject({ count: 1, right: 1 });
    expect(seen.own).toMatchObject({ answer: right(0), byOther: false });
    expect(learnerView(revealed, learner(2))).toBeNull();
  });
  it('keeps its laws whatever is tried', () => {
    const anyEvent = fc.oneof(
      fc.constantFrom(...MOVES).map(move),
      fc.integer({ min: 1, max: 4 }).map(join),
      fc
        .record({
          n: fc.integer({ min: 1, max: 4 }),
          q: fc.integer({ min: 0, max: 3 }),
          revision: fc.integer({ min: 1, max: 3 }),
          kept: fc.boolean(),
        })
        .map(({ n, q, revision, kept }) => answer(n, q, right(q), { revision, kept })),
      fc.integer({ min: 1, max: 4 }).map((seat): ClassEvent => ({ type: 'free', seat })),
    );
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 60 }), (events) => {
        let state = run([session()]);
        for (const event of events) {
          const before = state;
          if (judge(state, event).verdict === 'take') state = apply(state, event);
          const now = state.session!;
          before.session!.asked.forEach((was, q) => {
            const is = now.asked[q]!;
            if (was.phase === 'revealed') {
              expect(is.phase).toBe('revealed');
              expect(is.answers).toEqual(was.answers);
            }
            // An answer may be replaced, never lost.
            expect(Object.keys(is.answers)).toEqual(expect.arrayContaining(Object.keys(was.answers)));
          });
          expect(now.asked.filter((each) => each.phase === 'open').length).toBeLessThanOrEqual(1);
          expect(now.at).toBeLessThan(now.questions.length);
          // What has been taken is a repeat when it comes again.
          if (event.type === 'answer' && judge(before, event).verdict === 'take')
            expect(judge(state, event).verdict).toBe('repeat');
        }
      }),
      { numRuns: 60, seed: 41 },
    );
  });
  it('is the same when its events have passed through a journal', () => {
    const events = [
      ...seats(2),
      session(),
      move('open'),
      answer(1, 0, right(0)),
      answer(2, 0, wrongAnswer(items[0]!)),
      move('reveal'),
      { type: 'hands', question: 0, hands: { o1: 4 } } as ClassEvent,
      { type: 'paper', question: 1, seat: 2, entry: { answer: null, right: true } } as ClassEvent,
    ];
    const back = events.map((event) => readEvent(JSON.parse(JSON.stringify(event)))!);
    expect(back).not.toContain(null);
    expect(run(back)).toEqual(run(events));
    expect(run(back)).not.toEqual(EMPTY_CLASS);
  });
});
