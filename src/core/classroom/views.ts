/** What may be seen of a class: by a phone, and on the instructor's screen, which a projector may show to all. */
import type { Answer, Certainty, Item } from '../quiz';
import { type Shares, sharesOf } from './shares';
import { sealed, withoutKey } from './sealed';
import {
  atHand,
  type ClassSettings,
  type ClassState,
  type Follow,
  type QuestionOrigin,
  type QuestionPhase,
  type SessionPhase,
} from './state';

export interface SeenQuestion {
  /** From 0. */
  readonly number: number;
  readonly count: number;
  readonly phase: QuestionPhase;
  /** Without its key until it is revealed; null on a phone before it is opened. */
  readonly item: Item | null;
  /** Once revealed. */
  readonly shares: Shares | null;
}

export interface OwnAnswer {
  readonly answer: Answer;
  readonly certainty: Certainty;
  /** Given by another phone of the team. */
  readonly byOther: boolean;
  readonly revision: number;
}

export interface LearnerView {
  readonly settings: ClassSettings;
  readonly seat: number;
  readonly name: string | null;
  /** Null: nothing has been started. */
  readonly session: string | null;
  readonly phase: SessionPhase | null;
  readonly paused: boolean;
  readonly question: SeenQuestion | null;
  /** What the host holds of this seat's answer to the question at hand. */
  readonly own: OwnAnswer | null;
  readonly follow: Follow | null;
}

export interface InstructorView {
  readonly settings: ClassSettings;
  readonly session: string | null;
  readonly phase: SessionPhase | null;
  readonly paused: boolean;
  readonly question: SeenQuestion | null;
  /** Answers so far to the question at hand. */
  readonly answered: number;
  readonly hands: Readonly<Record<string, number>> | null;
  /** Every question of the session, in order. */
  readonly list: readonly {
    readonly phase: QuestionPhase;
    readonly item: Item;
    readonly from: QuestionOrigin;
    readonly answered: number;
  }[];
  readonly seats: readonly { readonly seat: number; readonly name: string | null; readonly here: boolean }[];
  readonly follow: Follow | null;
}

/** A waiting question is not on the phones yet; a skipped one is off them again. */
const ON_PHONES: readonly QuestionPhase[] = ['open', 'closed', 'revealed'];

function seenQuestion(state: ClassState, onPhone: boolean): SeenQuestion | null {
  const { session } = state;
  const now = atHand(session);
  if (session === null || now === null) return null;
  const { question, asked } = now;
  const revealed = asked.phase === 'revealed';
  const hidden = onPhone && !ON_PHONES.includes(asked.phase);
  return {
    number: session.at,
    count: session.questions.length,
    phase: asked.phase,
    item: hidden ? null : revealed ? question.item : withoutKey(question.item),
    shares: revealed ? sharesOf(question.item, asked) : null,
  };
}

/** Null for somebody who has not joined. */
export function learnerView(state: ClassState, learnerId: string): LearnerView | null {
  const learner = state.learners[learnerId];
  if (learner === undefined) return null;
  const { session } = state;
  const given = atHand(session)?.asked.answers[learner.seat];
  const revision = given?.via === 'phone' ? (given.revisions[learnerId] ?? 0) : 0;
  return {
    settings: state.settings,
    seat: learner.seat,
    name: learner.name,
    session: session?.id ?? null,
    phase: session?.phase ?? null,
    paused: session?.paused ?? false,
    question: seenQuestion(state, true),
    own:
      given?.via === 'phone'
        ? { answer: given.answer, certainty: given.certainty, byOther: revision === 0, revision }
        : null,
    follow: state.follow,
  };
}

/** @param online ids of learners whose phone is connected */
export function instructorView(state: ClassState, online: ReadonlySet<string>): InstructorView {
  const { session, learners } = state;
  const seats = new Map<number, { seat: number; name: string | null; here: boolean }>();
  for (const [id, { seat, name }] of Object.entries(learners)) {
    const before = seats.get(seat);
    seats.set(seat, {
      seat,
      name: [before?.name, name].filter((each) => each != null).join(', ') || null,
      here: before?.here === true || online.has(id),
    });
  }
  const now = atHand(session);
  return {
    settings: state.settings,
    session: session?.id ?? null,
    phase: session?.phase ?? null,
    paused: session?.paused ?? false,
    question: seenQuestion(state, false),
    answered: Object.keys(now?.asked.answers ?? {}).length,
    hands: now?.asked.hands ?? null,
    list:
      session?.questions.map(({ item, from }, i) => ({
        phase: session.asked[i]!.phase,
        item: session.asked[i]!.phase === 'revealed' ? item : withoutKey(item),
        from,
        answered: Object.keys(session.asked[i]!.answers).length,
      })) ?? [],
    seats: [...seats.values()].sort((a, b) => a.seat - b.seat),
    follow: state.follow,
  };
}

/** Questions under numbers, ready to be asked. */
export const sealedList = <T extends { readonly item: Item }>(questions: readonly T[]): readonly T[] =>
  questions.map((question, i) => ({ ...question, item: sealed(question.item, i + 1) }));
