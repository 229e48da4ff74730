/** What a session came to, item by item and number by number, for after the lesson. */
import { type Message } from '../kernel';
import { certaintyMark, itemStatistics } from '../quiz';
import { type DiscriminationBand, bandOf, upperLower } from './discrimination';
import { isRight, type Shares, sharesOf } from './shares';
import type { ClassQuestion, ClassSession, ClassState, SeatAnswer } from './state';

export interface ItemReport {
  /** Number of the question, from 0. */
  readonly at: number;
  readonly question: ClassQuestion;
  readonly shares: Shares;
  /** Share of right answers of those who answered, hands included; null: nobody did. */
  readonly difficulty: number | null;
  /** Correlation of item and total; null where it cannot be told. */
  readonly point_biserial: number | null;
  /** Upper less lower 27 %; null below 30 people. */
  readonly discrimination: number | null;
  readonly band: DiscriminationBand | null;
  /** Sure and wrong: seats. */
  readonly sureAndWrong: readonly number[];
}

export interface SeatReport {
  readonly seat: number;
  readonly name: string | null;
  readonly answered: number;
  readonly right: number;
  /** By certainty; of answers from phones. */
  readonly mark: number;
  /** Numbers of questions, from 0. */
  readonly sureAndWrong: readonly number[];
  /** Lessons that teach what was wrong, most often first. */
  readonly lessons: readonly string[];
}

export interface ClassReport {
  readonly items: readonly ItemReport[];
  readonly seats: readonly SeatReport[];
  /** KR-20; null where it cannot be told. */
  readonly kr20: number | null;
  /** Said below 30 people, and where a figure cannot be told. */
  readonly notes: readonly Message[];
  /** Lessons by how many seats need them. */
  readonly lessons: readonly { readonly topic: string; readonly seats: readonly number[] }[];
}

/** Questions that count: asked and not skipped, or with answers entered from paper. */
const counts = (session: ClassSession, at: number): boolean => {
  const { phase, answers, hands } = session.asked[at]!;
  if (phase === 'skipped') return false;
  return phase !== 'waiting' || Object.keys(answers).length > 0 || hands !== null;
};

/**
 * @returns figures over all questions that were asked and all seats that answered any of them; for the statistics an
 * answer left out counts as wrong
 */
export function reportOf(state: ClassState): ClassReport {
  const { session } = state;
  if (session === null) return { items: [], seats: [], kr20: null, notes: [], lessons: [] };
  const numbers = session.questions.map((_, at) => at).filter((at) => counts(session, at));
  const seats = [
    ...new Set(numbers.flatMap((at) => Object.keys(session.asked[at]!.answers).map(Number))),
  ].sort((a, b) => a - b);
  const given = (at: number, seat: number): SeatAnswer | undefined => session.asked[at]!.answers[seat];
  const right = (at: number, seat: number): boolean => {
    const each = given(at, seat);
    return each !== undefined && isRight(session.questions[at]!.item, each);
  };
  const sureAndWrong = (at: number, seat: number): boolean => {
    const each = given(at, seat);
    return each?.via === 'phone' && each.certainty === 3 && !right(at, seat);
  };
  const responses = seats.map((seat) => numbers.map((at) => (right(at, seat) ? 1 : 0)));
  const read = responses.length > 0 && numbers.length > 0 ? itemStatistics(responses) : null;
  const statistics = read?.ok === true ? read.value : null;
  const split = upperLower(responses);
  const items = numbers.map((at, i): ItemReport => {
    const question = session.questions[at]!;
    const shares = sharesOf(question.item, session.asked[at]!);
    const d = split?.[i] ?? null;
    return {
      at,
      question,
      shares,
      difficulty: shares.count === 0 ? null : shares.right / shares.count,
      point_biserial: statistics?.point_biserial[i] ?? null,
      discrimination: d,
      band: d === null ? null : bandOf(d),
      sureAndWrong: seats.filter((seat) => sureAndWrong(at, seat)),
    };
  });
  const people = seats.map((seat): SeatReport => {
    const answered = numbers.filter((at) => given(at, seat) !== undefined);
    const wrong = answered.filter((at) => !right(at, seat));
    return {
      seat,
      name: nameOf(state, seat),
      answered: answered.length,
      right: answered.length - wrong.length,
      mark: answered.reduce((sum, at) => {
        const each = given(at, seat)!;
        return each.via === 'phone' ? sum + certaintyMark(right(at, seat), each.certainty) : sum;
      }, 0),
      sureAndWrong: answered.filter((at) => sureAndWrong(at, seat)),
      lessons: byFrequency(wrong.flatMap((at) => lessonOf(session.questions[at]!) ?? [])),
    };
  });
  const topics = byFrequency(people.flatMap((each) => each.lessons));
  return {
    items,
    seats: people,
    kr20: statistics?.kr20 ?? null,
    notes: statistics?.notes ?? [],
    lessons: topics.map((topic) => ({
      topic,
      seats: people.flatMap((each) => (each.lessons.includes(topic) ? [each.seat] : [])),
    })),
  };
}

/** In a team several names may belong to one number. */
const nameOf = (state: ClassState, seat: number): string | null => {
  const names = Object.values(state.learners).flatMap((each) =>
    each.seat === seat && each.name !== null ? [each.name] : [],
  );
  return names.length === 0 ? null : names.join(', ');
};

/** The lesson that teaches a question: where its result leads, else the lesson that its bank belongs to. */
const lessonOf = ({ item, topic }: ClassQuestion): string | null => item.about.step?.topic ?? topic;

function byFrequency(words: readonly string[]): readonly string[] {
  const count = new Map<string, number>();
  for (const word of words) count.set(word, (count.get(word) ?? 0) + 1);
  return [...count].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([word]) => word);
}
