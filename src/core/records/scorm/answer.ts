/** An answered question as a learning system hears of it, before any standard's own writing. */
import { toShown } from '../../kernel';
import {
  type Answer,
  DIRECTION_SETS,
  type Given,
  type Item,
  markAnswer,
  oneOrder,
  rightAnswer,
} from '../../quiz';

/** What was answered, in ids of the question. Numbers are in the shown unit of SI. */
export type Response =
  | { readonly type: 'choice'; readonly ids: readonly string[] }
  | { readonly type: 'sequencing'; readonly ids: readonly string[] }
  | { readonly type: 'matching'; readonly pairs: readonly (readonly [string, string])[] }
  | { readonly type: 'numeric'; readonly value: number; readonly off: number };

export interface SchoolAnswer {
  readonly id: string;
  /** The question in words, one line. */
  readonly description: string;
  readonly response: Response | null;
  /** Right answers; of a number one with how far off still counts. */
  readonly right: readonly Response[];
  readonly isRight: boolean;
  readonly weighting: number;
  readonly latency_s: number;
  /** When it was answered, milliseconds of the clock. */
  readonly at_ms: number;
  /** All ids that could be chosen, by the side of the question they stand on. */
  readonly ids: readonly string[];
  readonly options: readonly string[];
}

/** Right answers named at most: 2004 guarantees room for ten patterns. */
const MOST_PATTERNS = 10;

/** @param words the question in plain words */
export function schoolAnswer(
  item: Item,
  given: Given,
  words: string,
  times: { readonly latency_s: number; readonly at_ms: number },
): SchoolAnswer {
  const isRight = given.answer !== null && markAnswer(item, given.answer).right;
  return {
    id: item.id,
    description: words.replace(/\s+/g, ' ').trim(),
    response: given.answer === null || saysNothing(given.answer) ? null : responseOf(item, given.answer),
    right: rightOnes(item, isRight ? given.answer : null),
    isRight,
    weighting: 1,
    ...times,
    ...sides(item),
  };
}

/** Systems take no empty text for an answer. */
const saysNothing = (answer: Answer): boolean =>
  (answer.type === 'choice' || answer.type === 'order') && answer.ids.length === 0;

function responseOf(item: Item, answer: Answer): Response {
  switch (answer.type) {
    case 'choice':
      return { type: 'choice', ids: answer.ids };
    case 'part':
      return { type: 'choice', ids: [answer.partId] };
    case 'order':
      return { type: 'sequencing', ids: answer.ids };
    case 'match':
      return { type: 'matching', pairs: Object.entries(answer.pairs).sort(([a], [b]) => (a < b ? -1 : 1)) };
    case 'number': {
      const shown = (si: number): number => (item.kind === 'number' ? toShown(si, item.quantity, 'si') : si);
      const off = item.kind === 'number' ? Math.abs(shown(item.tolerance_si) - shown(0)) : 0;
      return { type: 'numeric', value: shown(answer.si), off };
    }
  }
}

/** Where several answers are right (an order, a part of several) the one that was given comes first. */
function rightOnes(item: Item, given: Answer | null): readonly Response[] {
  if (item.kind === 'pick-part') {
    const first = given?.type === 'part' ? [given.partId] : [];
    const all = [...new Set([...first, ...item.accept])].slice(0, MOST_PATTERNS);
    return all.map((id) => ({ type: 'choice', ids: [id] }));
  }
  if (item.kind === 'order') {
    const ids = given?.type === 'order' ? given.ids : oneOrder(item);
    return [{ type: 'sequencing', ids }];
  }
  return [responseOf(item, rightAnswer(item))];
}

function sides(item: Item): { readonly ids: readonly string[]; readonly options: readonly string[] } {
  switch (item.kind) {
    case 'pick-part':
      return { ids: [...new Set([...item.among, ...item.accept])], options: [] };
    case 'order':
      return { ids: item.cards.map((card) => card.id), options: [] };
    case 'match':
      return { ids: item.left.map((each) => each.id), options: item.options.map((each) => each.id) };
    case 'direction':
      return { ids: DIRECTION_SETS[item.set], options: [] };
    case 'number':
      return { ids: [], options: [] };
    default:
      return { ids: item.options.map((each) => each.id), options: [] };
  }
}
