/** How a class answered one question: the share of each answer and of each confidence. Nobody is named. */
import { type Answer, CERTAINTIES, type Certainty, type Item, markAnswer, rightAnswer } from '../quiz';
import { handIds, LETTERED_KINDS } from './judge';
import type { AskedQuestion, SeatAnswer } from './state';

export interface AnswerShare {
  /** Null: paper or hands, marked right or wrong without an answer in words. */
  readonly answer: Answer | null;
  readonly right: boolean;
  readonly count: number;
}

export interface Shares {
  /** Answers in all, hands included. */
  readonly count: number;
  readonly right: number;
  /**
   * One row an option where there are options (of choose-several: how many ticked it), else one row an answer, most
   * frequent first.
   */
  readonly rows: readonly AnswerShare[];
  /** Of answers from phones. */
  readonly byCertainty: Readonly<Record<Certainty, { readonly said: number; readonly right: number }>>;
}

/** Rows of free answers beyond this are put together as the rest. */
const MOST_ROWS = 8;

/** Whether what was given from a seat is right. */
export const isRight = (item: Item, given: SeatAnswer): boolean =>
  given.via === 'paper' && given.answer === null ? given.right : markAnswer(item, given.answer!).right;

export function sharesOf(item: Item, asked: AskedQuestion): Shares {
  const given = Object.values(asked.answers);
  const hands = Object.entries(asked.hands ?? {});
  const rightByHand = hands.reduce((sum, [id, count]) => sum + (handIsRight(item, id) ? count : 0), 0);
  const byHand = hands.reduce((sum, [, count]) => sum + count, 0);
  const phones = given.flatMap((each) => (each.via === 'phone' ? [each] : []));
  const of = (certainty: Certainty): { said: number; right: number } => {
    const said = phones.filter((each) => each.certainty === certainty);
    return { said: said.length, right: said.filter((each) => isRight(item, each)).length };
  };
  return {
    count: given.length + byHand,
    right: given.filter((each) => isRight(item, each)).length + rightByHand,
    rows: optionRows(item, asked) ?? answerRows(item, asked),
    byCertainty: Object.fromEntries(CERTAINTIES.map((each) => [each, of(each)])) as Shares['byCertainty'],
  };
}

const handIsRight = (item: Item, id: string): boolean =>
  LETTERED_KINDS.includes(item.kind) ? markAnswer(item, { type: 'choice', ids: [id] }).right : id === 'right';

/** Null where the question has no list of options. */
function optionRows(item: Item, { answers, hands }: AskedQuestion): readonly AnswerShare[] | null {
  const several = item.kind === 'choose-several';
  if (!several && !LETTERED_KINDS.includes(item.kind)) return null;
  const ids = several ? item.options.map(({ id }) => id) : handIds(item);
  const unworded = unwordedRows(answers);
  const rows = ids.map((id): AnswerShare => ({
    answer: { type: 'choice', ids: [id] },
    right: several ? item.right.includes(id) : handIsRight(item, id),
    count:
      Object.values(answers).filter(({ answer }) => answer?.type === 'choice' && answer.ids.includes(id))
        .length + (several ? 0 : (hands?.[id] ?? 0)),
  }));
  return [...rows, ...unworded, ...(several ? handRows(hands) : [])];
}

const unwordedRows = (answers: AskedQuestion['answers']): readonly AnswerShare[] =>
  [true, false].flatMap((right) => {
    const count = Object.values(answers).filter(
      (each) => each.via === 'paper' && each.answer === null && each.right === right,
    ).length;
    return count === 0 ? [] : [{ answer: null, right, count }];
  });

const handRows = (hands: AskedQuestion['hands']): readonly AnswerShare[] =>
  [true, false].flatMap((right) => {
    const count = hands?.[right ? 'right' : 'wrong'] ?? 0;
    return count === 0 ? [] : [{ answer: null, right, count }];
  });

function answerRows(item: Item, { answers, hands }: AskedQuestion): readonly AnswerShare[] {
  const rows = new Map<string, AnswerShare>();
  for (const { answer } of Object.values(answers)) {
    if (answer === null) continue;
    const { right } = markAnswer(item, answer);
    // Any part that is accepted is one and the same right answer.
    const said = item.kind === 'pick-part' && right ? rightAnswer(item) : answer;
    const key = JSON.stringify(said.type === 'match' ? Object.entries(said.pairs).sort() : said);
    const row = rows.get(key);
    rows.set(key, { answer: said, right, count: (row?.count ?? 0) + 1 });
  }
  const sorted = [...rows.values()].sort((a, b) => b.count - a.count);
  const rest = [true, false].flatMap((right): AnswerShare[] => {
    const count = sorted
      .slice(MOST_ROWS)
      .filter((row) => row.right === right)
      .reduce((sum, row) => sum + row.count, 0);
    return count === 0 ? [] : [{ answer: null, right, count }];
  });
  return [...sorted.slice(0, MOST_ROWS), ...rest, ...unwordedRows(answers), ...handRows(hands)];
}
