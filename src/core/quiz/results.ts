/** What a run of questions came to. What was wrong though the person was sure comes first: that is what hurts people. */
import { BEST_MARK, type Certainty, certaintyMark } from './certainty';
import type { Answer, Item } from './item';
import { markAnswer, type Marked } from './mark';

/** One answer given; null: left out (then no certainty counts). */
export interface Given {
  readonly answer: Answer | null;
  readonly certainty: Certainty;
}

export type Standing = 'sure-and-wrong' | 'wrong' | 'left-out' | 'lucky' | 'right';

export interface ResultRow {
  readonly item: Item;
  readonly given: Given;
  readonly marked: Marked;
  readonly mark: number;
  /** 'lucky': right, but a guess. */
  readonly standing: Standing;
}

export interface Results {
  /** Sure and wrong first, then wrong, left out, lucky, right; each in the order asked. */
  readonly rows: readonly ResultRow[];
  readonly right: number;
  readonly count: number;
  readonly mark: number;
  readonly best: number;
  /** By certainty: how often said, how often right. */
  readonly byCertainty: Readonly<Record<Certainty, { readonly said: number; readonly right: number }>>;
}

const RANK: readonly Standing[] = ['sure-and-wrong', 'wrong', 'left-out', 'lucky', 'right'];
const LEFT_OUT: Marked = { right: false, share: 0, wrong: [], missing: [] };

export function resultOf(item: Item, given: Given): ResultRow {
  const { answer, certainty } = given;
  if (answer === null) return { item, given, marked: LEFT_OUT, mark: 0, standing: 'left-out' };
  const marked = markAnswer(item, answer);
  const standing = marked.right
    ? certainty === 1
      ? 'lucky'
      : 'right'
    : certainty === 3
      ? 'sure-and-wrong'
      : 'wrong';
  return { item, given, marked, mark: certaintyMark(marked.right, certainty), standing };
}

export function resultsOf(asked: readonly { readonly item: Item; readonly given: Given }[]): Results {
  const inOrder = asked.map(({ item, given }) => resultOf(item, given));
  const answered = inOrder.filter((row) => row.given.answer !== null);
  const of = (certainty: Certainty): { said: number; right: number } => {
    const said = answered.filter((row) => row.given.certainty === certainty);
    return { said: said.length, right: said.filter((row) => row.marked.right).length };
  };
  return {
    rows: [...inOrder].sort((a, b) => RANK.indexOf(a.standing) - RANK.indexOf(b.standing)),
    right: inOrder.filter((row) => row.marked.right).length,
    count: inOrder.length,
    mark: inOrder.reduce((sum, row) => sum + row.mark, 0),
    best: BEST_MARK * inOrder.length,
    byCertainty: { 1: of(1), 2: of(2), 3: of(3) },
  };
}
