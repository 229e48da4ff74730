/**
 * What phones and the instructor's screen say to the host, and what it says back. The host checks every word of what
 * comes in; sizes are bounded before anything is read.
 */
import { z } from 'zod';
import { type Answer, type Certainty, type Item, ITEM_KINDS } from '../quiz';
import type { Message } from '../kernel';
import {
  answerSchema,
  certaintySchema,
  followSchema,
  handsSchema,
  moveSchema,
  nameSchema,
  questionNumberSchema,
  seatSchema,
  settingsSchema,
} from './events';
import type { ClassReport } from './report';
import { type ClassSettings, MOST_QUESTIONS, type QuestionOrigin } from './state';
import type { InstructorView, LearnerView } from './views';

/** Longest message in bytes; a connection that sends more is cut. */
export const MOST_BYTES_LEARNER = 4096;
export const MOST_BYTES_INSTRUCTOR = 65536;
/** Version of this talk; a page of another version is asked to reload. */
export const TALK_VERSION = 1;

/** Class codes: letters and digits that cannot be taken for one another. */
export const CODE_LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
export const CODE_LENGTH = 6;
/** As typed: small letters, blanks and dashes are forgiven. */
export const tidyCode = (typed: string): string => typed.toUpperCase().replace(/[\s-]/g, '');

const tokenSchema = z.string().regex(/^[A-Za-z0-9_-]{32,64}$/);
/** Chosen by the sender, given back with the reply. */
const messageId = z.string().regex(/^[A-Za-z0-9:_-]{1,60}$/);

export const learnerMessageSchema = z.discriminatedUnion('type', [
  /** First words of a phone that has not joined yet. */
  z.strictObject({
    type: z.literal('join'),
    version: z.literal(TALK_VERSION),
    code: z.string().max(40),
    seat: seatSchema,
    name: nameSchema.nullable(),
    /**
     * Made by the phone and kept before it is sent, so that a join whose reply was lost can be sent again; a known one
     * asks for another number.
     */
    token: tokenSchema,
  }),
  /** First words of a phone that has joined before. */
  z.strictObject({ type: z.literal('resume'), version: z.literal(TALK_VERSION), token: tokenSchema }),
  z.strictObject({
    type: z.literal('answer'),
    id: messageId,
    session: z.string().max(40),
    question: questionNumberSchema,
    revision: z.int().min(1).max(1_000_000),
    answer: answerSchema,
    certainty: certaintySchema,
    kept: z.boolean(),
  }),
  z.strictObject({ type: z.literal('ping') }),
]);
export type LearnerMessage = z.infer<typeof learnerMessageSchema>;

export const sheetWishSchema = z.strictObject({
  topics: z.array(z.string().regex(/^[a-z0-9-]{1,60}$/)).max(100),
  banks: z.enum(['class', 'practice', 'both']),
  kinds: z.array(z.enum(ITEM_KINDS)).max(ITEM_KINDS.length),
  difficulties: z.array(z.int().min(1).max(3)).max(3),
  generated: z.number().min(0).max(1),
  count: z.int().min(1).max(MOST_QUESTIONS),
});

const sessionIdSchema = z.string().regex(/^[a-z0-9-]{1,40}$/);

export const instructorMessageSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('instruct'),
    version: z.literal(TALK_VERSION),
    secret: z.string().max(100),
  }),
  z.strictObject({ type: z.literal('settings'), id: messageId, settings: settingsSchema }),
  /** Draws a sheet; the seed stays on the host. */
  z.strictObject({ type: z.literal('draw'), id: messageId, wish: sheetWishSchema }),
  /** Drops or moves a question of the drawn sheet. */
  z.strictObject({ type: z.literal('drop'), id: messageId, number: questionNumberSchema }),
  z.strictObject({
    type: z.literal('shift'),
    id: messageId,
    number: questionNumberSchema,
    by: z.union([z.literal(-1), z.literal(1)]),
  }),
  /** Makes a session of the drawn sheet; phones are then in the lobby. */
  z.strictObject({ type: z.literal('begin'), id: messageId }),
  z.strictObject({ type: z.literal('move'), id: messageId, move: moveSchema }),
  z.strictObject({ type: z.literal('free'), id: messageId, seat: seatSchema }),
  z.strictObject({
    type: z.literal('hands'),
    id: messageId,
    question: questionNumberSchema,
    hands: handsSchema.nullable(),
  }),
  z.strictObject({
    type: z.literal('paper'),
    id: messageId,
    question: questionNumberSchema,
    seat: seatSchema,
    entry: z.strictObject({ answer: answerSchema.nullable(), right: z.boolean() }).nullable(),
  }),
  z.strictObject({ type: z.literal('follow'), id: messageId, follow: followSchema.nullable() }),
  /** Asks for the questions with their answers, for a printed sheet and for entering papers. */
  z.strictObject({ type: z.literal('keys'), id: messageId }),
  /** Asks for what a session came to; null: the one at hand. */
  z.strictObject({ type: z.literal('report'), id: messageId, session: sessionIdSchema.nullable() }),
  z.strictObject({ type: z.literal('ping') }),
]);
export type InstructorMessage = z.infer<typeof instructorMessageSchema>;

/** A question of a drawn sheet, without its key. */
export interface DraftQuestion {
  readonly item: Item;
  readonly from: QuestionOrigin;
  readonly topic: string | null;
}

export interface PastSession {
  readonly id: string;
  readonly title: string;
  readonly at_ms: number;
}

/** What the host can draw from. */
export interface HostStock {
  readonly topics: readonly {
    readonly id: string;
    readonly title: string;
    readonly class: number;
    readonly practice: number;
  }[];
  /** Whether questions can be generated: a machine is there. */
  readonly generates: boolean;
}

export interface HostPage {
  readonly view: InstructorView;
  readonly draft: readonly DraftQuestion[] | null;
  readonly past: readonly PastSession[];
  readonly stock: HostStock;
  readonly code: string;
  /** Addresses under which phones reach the host. */
  readonly addresses: readonly string[];
  readonly learnersOnline: number;
}

export interface GivenFromSeat {
  readonly answer: Answer | null;
  readonly certainty: Certainty | null;
  readonly right: boolean;
}

export type HostMessage =
  | { readonly type: 'joined'; readonly view: LearnerView }
  | { readonly type: 'view'; readonly view: LearnerView }
  | { readonly type: 'accepted'; readonly id: string }
  | { readonly type: 'refused'; readonly id: string | null; readonly why: Message }
  | { readonly type: 'page'; readonly page: HostPage }
  | { readonly type: 'done'; readonly id: string }
  | { readonly type: 'keys'; readonly id: string; readonly items: readonly Item[] }
  | {
      readonly type: 'report';
      readonly id: string;
      readonly session: string;
      readonly at_ms: number;
      readonly settings: ClassSettings;
      readonly report: ClassReport;
      /** By question, then seat. */
      readonly given: readonly Readonly<Record<string, GivenFromSeat>>[];
    }
  | { readonly type: 'pong' };

/** What anyone may know before joining: that this is a class, and what to ask for. */
export interface ClassGreeting {
  readonly class: true;
  readonly version: number;
  readonly settings: ClassSettings;
}
