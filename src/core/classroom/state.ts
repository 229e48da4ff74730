/** A class as data: who sits where, which questions are asked, what was answered. Everything in it is JSON. */
import type { Answer, Certainty, Item, StageSetting } from '../quiz';

/** Most people (or teams) on one class sheet; the host is made for this many. */
export const MOST_SEATS = 300;
export const MOST_QUESTIONS = 100;
export const MOST_LETTERS_OF_NAME = 40;

/** 'team': a number stands for a team, and several phones may answer for it; the latest answer counts. */
export type ClassMode = 'solo' | 'team';

/** Where a question comes from. What lies in everybody's app can have been seen before. */
export type QuestionOrigin = 'class-bank' | 'practice-bank' | 'generated';

export interface ClassQuestion {
  /** Sealed, with its key: never sent as it is before the reveal. */
  readonly item: Item;
  readonly from: QuestionOrigin;
  /** Id that it has in its bank, or `gen/<generator>/<seed>`. */
  readonly original: string;
  readonly topic: string | null;
}

/** 'closed': no new answers, nothing told yet. A revealed question is never opened again: its answer is out. */
export type QuestionPhase = 'waiting' | 'open' | 'closed' | 'revealed' | 'skipped';

/** `phone`: given by whoever sits there. `paper`: entered by the instructor, who marks what has no letters. */
export type SeatAnswer =
  | {
      readonly via: 'phone';
      readonly answer: Answer;
      readonly certainty: Certainty;
      /** Highest number that each phone has sent; a lower or equal one is a repeat. */
      readonly revisions: Readonly<Record<string, number>>;
    }
  | { readonly via: 'paper'; readonly answer: Answer | null; readonly right: boolean };

export interface AskedQuestion {
  readonly phase: QuestionPhase;
  /** By seat number. */
  readonly answers: Readonly<Record<string, SeatAnswer>>;
  /** Hands counted: how many for each option; null: no hands were counted. */
  readonly hands: Readonly<Record<string, number>> | null;
}

/** Whoever answers: one phone. */
export interface Learner {
  readonly seat: number;
  readonly name: string | null;
}

/** What phones show instead of a question: a step of a lesson, or the stage as the instructor has set it. */
export type Follow =
  | { readonly type: 'step'; readonly topic: string; readonly step: string }
  | { readonly type: 'stage'; readonly stage: StageSetting };

export interface ClassSettings {
  readonly title: string;
  readonly mode: ClassMode;
  /** Numbers on the class sheet run from 1 to this. */
  readonly seats: number;
  /** People may give a name beside their number. */
  readonly names: boolean;
}

export type SessionPhase = 'lobby' | 'asking' | 'ended';

export interface ClassSession {
  readonly id: string;
  /** Milliseconds of the clock when it was made. */
  readonly at_ms: number;
  readonly phase: SessionPhase;
  readonly paused: boolean;
  /** Number of the question at hand, from 0; -1 in the lobby. */
  readonly at: number;
  readonly questions: readonly ClassQuestion[];
  readonly asked: readonly AskedQuestion[];
}

export interface ClassState {
  readonly settings: ClassSettings;
  /** By id (a hash of the phone's token, never the token). */
  readonly learners: Readonly<Record<string, Learner>>;
  readonly session: ClassSession | null;
  readonly follow: Follow | null;
}

export const EMPTY_CLASS: ClassState = {
  settings: { title: '', mode: 'solo', seats: 30, names: false },
  learners: {},
  session: null,
  follow: null,
};

export const NOT_ASKED: AskedQuestion = { phase: 'waiting', answers: {}, hands: null };

/** The question at hand with what came in; null in the lobby. */
export function atHand(
  session: ClassSession | null,
): { readonly question: ClassQuestion; readonly asked: AskedQuestion } | null {
  const question = session?.questions[session.at];
  const asked = session?.asked[session.at];
  return question === undefined || asked === undefined ? null : { question, asked };
}
