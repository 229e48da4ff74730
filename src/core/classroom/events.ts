/**
 * What can happen in a class. The journal keeps these; the state is what they come to, so replaying a journal gives
 * the class as it was. Their forms are checked when they are read back.
 */
import { z } from 'zod';
import { type Answer, CERTAINTIES, type Certainty, type Item, ITEM_KINDS, stageSettingSchema } from '../quiz';
import {
  type ClassQuestion,
  type ClassSettings,
  type Follow,
  MOST_LETTERS_OF_NAME,
  MOST_QUESTIONS,
  MOST_SEATS,
} from './state';

/** Ids of options, cards and parts. */
const word = z.string().min(1).max(80);
export const learnerIdSchema = z.string().regex(/^[0-9a-f]{32}$/);
export const seatSchema = z.int().min(1).max(MOST_SEATS);
export const nameSchema = z
  .string()
  .trim()
  .min(1)
  .max(MOST_LETTERS_OF_NAME)
  // No control or direction marks: a name must not be able to turn the line that it stands in.
  .regex(/^[^\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+$/u);
export const certaintySchema = z.literal([...CERTAINTIES]);
export const questionNumberSchema = z
  .int()
  .min(0)
  .max(MOST_QUESTIONS - 1);

/** As many pieces as an item may have. */
const MOST_PIECES = 16;
export const answerSchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('choice'), ids: z.array(word).min(1).max(MOST_PIECES) }),
  z.strictObject({ type: z.literal('part'), partId: word }),
  z.strictObject({ type: z.literal('order'), ids: z.array(word).min(1).max(MOST_PIECES) }),
  z.strictObject({ type: z.literal('number'), si: z.number().min(-1e15).max(1e15) }),
  z.strictObject({
    type: z.literal('match'),
    pairs: z.record(word, word).refine((pairs) => Object.keys(pairs).length <= MOST_PIECES),
  }),
]);

export const settingsSchema = z.strictObject({
  title: z.string().trim().max(80),
  mode: z.enum(['solo', 'team']),
  seats: seatSchema,
  names: z.boolean(),
});

export const followSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('step'),
    topic: z.string().regex(/^[a-z0-9-]{1,60}$/),
    step: z.string().regex(/^[a-z0-9-]{1,60}$/),
  }),
  z.strictObject({ type: z.literal('stage'), stage: stageSettingSchema }),
]);

/** The host made the items itself and keeps them under a checksum; that they are items is all that is asked. */
const itemSchema = z.custom<Item>(
  (value) =>
    typeof value === 'object' &&
    value !== null &&
    ITEM_KINDS.some((kind) => kind === (value as { kind?: unknown }).kind),
);
const questionSchema = z.strictObject({
  item: itemSchema,
  from: z.enum(['class-bank', 'practice-bank', 'generated']),
  original: z.string().max(200),
  topic: z.string().max(80).nullable(),
});

/** Questions as a host keeps them; null when they are none. */
export function readQuestions(value: unknown): readonly ClassQuestion[] | null {
  const read = z.array(questionSchema).max(MOST_QUESTIONS).safeParse(value);
  return read.success ? read.data : null;
}

/** What moves a session on, without further words. */
export const MOVES = ['open', 'close', 'reveal', 'next', 'back', 'skip', 'pause', 'resume', 'end'] as const;
export type Move = (typeof MOVES)[number];
export const moveSchema = z.enum(MOVES);

const count = z.int().min(0).max(MOST_SEATS);
export const handsSchema = z.record(word, count).refine((hands) => Object.keys(hands).length <= MOST_PIECES);

export const eventSchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('settings'), settings: settingsSchema }),
  z.strictObject({
    type: z.literal('join'),
    learner: learnerIdSchema,
    seat: seatSchema,
    name: nameSchema.nullable(),
  }),
  /** A number is given free: whoever had it must join again. What was answered from it stays. */
  z.strictObject({ type: z.literal('free'), seat: seatSchema }),
  z.strictObject({
    type: z.literal('session'),
    id: z.string().regex(/^[a-z0-9-]{1,40}$/),
    at_ms: z.number(),
    questions: z.array(questionSchema).min(1).max(MOST_QUESTIONS),
  }),
  z.strictObject({ type: z.literal('move'), move: moveSchema }),
  z.strictObject({
    type: z.literal('answer'),
    learner: learnerIdSchema,
    question: questionNumberSchema,
    revision: z.int().min(1).max(1_000_000),
    answer: answerSchema,
    certainty: certaintySchema,
    /** Given while the question was open and kept on the phone, which could not reach the host then. */
    kept: z.boolean(),
  }),
  z.strictObject({ type: z.literal('hands'), question: questionNumberSchema, hands: handsSchema.nullable() }),
  z.strictObject({
    type: z.literal('paper'),
    question: questionNumberSchema,
    seat: seatSchema,
    /** Null: the cell is emptied. */
    entry: z.strictObject({ answer: answerSchema.nullable(), right: z.boolean() }).nullable(),
  }),
  z.strictObject({ type: z.literal('follow'), follow: followSchema.nullable() }),
]);

export type ClassEvent =
  | { readonly type: 'settings'; readonly settings: ClassSettings }
  | { readonly type: 'join'; readonly learner: string; readonly seat: number; readonly name: string | null }
  | { readonly type: 'free'; readonly seat: number }
  | {
      readonly type: 'session';
      readonly id: string;
      readonly at_ms: number;
      readonly questions: readonly ClassQuestion[];
    }
  | { readonly type: 'move'; readonly move: Move }
  | AnswerEvent
  | {
      readonly type: 'hands';
      readonly question: number;
      readonly hands: Readonly<Record<string, number>> | null;
    }
  | {
      readonly type: 'paper';
      readonly question: number;
      readonly seat: number;
      readonly entry: { readonly answer: Answer | null; readonly right: boolean } | null;
    }
  | { readonly type: 'follow'; readonly follow: Follow | null };

export interface AnswerEvent {
  readonly type: 'answer';
  readonly learner: string;
  readonly question: number;
  readonly revision: number;
  readonly answer: Answer;
  readonly certainty: Certainty;
  readonly kept: boolean;
}

/** A journal's record back into an event; null when it is none. */
export function readEvent(data: unknown): ClassEvent | null {
  const read = eventSchema.safeParse(data);
  return read.success ? read.data : null;
}
