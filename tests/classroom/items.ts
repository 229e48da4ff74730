/** One question of each kind, as plain data, and a class with them. */
import {
  apply,
  type ClassEvent,
  type ClassQuestion,
  type ClassState,
  EMPTY_CLASS,
  judge,
  sealedList,
} from '../../src/core/classroom';
import { type Answer, type Item, NOTHING_ABOUT, type Option, rightAnswer } from '../../src/core/quiz';

const words = (text: string) => ({ rich: [{ t: 'p' as const, of: [{ t: 'text' as const, text }] }] });
const option = (id: string, why?: string): Option =>
  why === undefined ? { id, says: words(`says ${id}`) } : { id, says: words(`says ${id}`), why: words(why) };

const shared = (id: string, topic = 'brakes') => ({
  id,
  origin: { from: 'generator' as const, generator: id, seed: 77123 },
  difficulty: 1 as const,
  prompt: words(`Ask ${id}`),
  explain: words('KEY-EXPLAIN'),
  source: 'KEY-SOURCE',
  about: { ...NOTHING_ABOUT, parts: ['KEY-PART'], step: { topic, step: 'first' } },
});

export const ITEMS: readonly Item[] = [
  {
    ...shared('one'),
    kind: 'choose-one',
    options: [option('yes'), option('no', 'KEY-WHY'), option('maybe')],
    right: 'yes',
    keepOrder: false,
  },
  {
    ...shared('several', 'oil'),
    kind: 'choose-several',
    options: [option('a'), option('b', 'KEY-WHY'), option('c')],
    right: ['a', 'c'],
    keepOrder: false,
  },
  { ...shared('pick', 'oil'), kind: 'pick-part', accept: ['hub'], among: ['hub', 'shell', 'yoke'] },
  {
    ...shared('order'),
    kind: 'order',
    cards: [option('third'), option('first'), option('second')],
    needs: { second: [['first']], third: [['first', 'second']] },
  },
  { ...shared('number'), kind: 'number', quantity: 'mass', right_si: 123.456, tolerance_si: 1.25 },
  {
    ...shared('direction'),
    kind: 'direction',
    set: 'change',
    right: 'more',
    why: { less: words('KEY-WHY') },
  },
  {
    ...shared('match'),
    kind: 'match',
    left: [option('bolt'), option('nut')],
    options: [option('nut'), option('bolt'), option('extra')],
    right: { bolt: 'bolt', nut: 'nut' },
  },
  {
    ...shared('fault'),
    kind: 'find-fault',
    shown: [words('It rattles')],
    options: [option('loose'), option('worn', 'KEY-WHY')],
    right: 'loose',
  },
];

export const questionsOf = (items: readonly Item[]): readonly ClassQuestion[] =>
  sealedList(
    items.map((item) => ({
      item,
      from: 'generated' as const,
      original: `gen/${item.id}/77123`,
      topic: null,
    })),
  );

/** Applies events in order; one that is refused throws. */
export function run(events: readonly ClassEvent[], from: ClassState = EMPTY_CLASS): ClassState {
  return events.reduce((state, event) => {
    const verdict = judge(state, event);
    if (verdict.verdict === 'refuse') throw new Error(`${JSON.stringify(event)}: ${verdict.why}`);
    return verdict.verdict === 'take' ? apply(state, event) : state;
  }, from);
}

/** A learner's id by number. */
export const learner = (n: number): string => n.toString(16).padStart(32, '0');
export const join = (n: number): ClassEvent => ({ type: 'join', learner: learner(n), seat: n, name: null });
export const session = (items: readonly Item[] = ITEMS): ClassEvent => ({
  type: 'session',
  id: 's1',
  at_ms: 0,
  questions: questionsOf(items),
});
export const move = (what: Extract<ClassEvent, { type: 'move' }>['move']): ClassEvent => ({
  type: 'move',
  move: what,
});
export const answer = (
  n: number,
  question: number,
  given: Answer,
  more: Partial<Extract<ClassEvent, { type: 'answer' }>> = {},
): ClassEvent => ({
  type: 'answer',
  learner: learner(n),
  question,
  revision: 1,
  answer: given,
  certainty: 2,
  kept: false,
  ...more,
});

/** A wrong answer that fits the question's form. */
export function wrongAnswer(item: Item): Answer {
  const right = rightAnswer(item);
  switch (item.kind) {
    case 'pick-part':
      return { type: 'part', partId: 'shell' };
    case 'number':
      return { type: 'number', si: 1 };
    case 'order':
      return { type: 'order', ids: item.cards.map(({ id }) => id) };
    case 'direction':
      return { type: 'choice', ids: ['less'] };
    case 'match':
      return {
        type: 'match',
        pairs: Object.fromEntries(item.left.map(({ id }) => [id, item.options.at(-1)!.id])),
      };
    case 'choose-several':
      return { type: 'choice', ids: item.right.slice(0, 1) };
    default: {
      const ids = right.type === 'choice' ? right.ids : [];
      return { type: 'choice', ids: [item.options.find(({ id }) => !ids.includes(id))!.id] };
    }
  }
}
