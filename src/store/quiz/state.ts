/** Slow state of the quiz: the review cards, and the run that is on. */
import type { Certainty, Given, Item, ItemKind, ReviewCard } from '../../core/quiz';

/** 'practice' and 'review' tell after each answer; 'test' tells nothing until its end. */
export type QuizMode = 'practice' | 'review' | 'test';

export interface QuizSetup {
  /** Topics that questions are drawn from; empty: all lessons. */
  readonly topics: readonly string[];
  readonly count: number;
  /** Where the questions come from. */
  readonly from: 'bank' | 'generated' | 'both';
  /** Kinds that are asked; empty: all. */
  readonly kinds: readonly ItemKind[];
  /** Of a test; null: no limit. */
  readonly minutes: number | null;
}

export interface QuizRun {
  readonly mode: QuizMode;
  /** Draws the same sheet again with the same setup. */
  readonly seed: number;
  readonly items: readonly Item[];
  /** By number of the item; null: not answered. */
  readonly given: readonly (Given | null)[];
  readonly at: number;
  /** 'told': the item at hand was answered and its answer is shown. */
  readonly phase: 'asking' | 'told' | 'done';
  /** Milliseconds of the clock; null: no limit. */
  readonly endsAt_ms: number | null;
}

export interface QuizState {
  readonly loaded: boolean;
  /** By item id, as kept. */
  readonly cards: Readonly<Record<string, ReviewCard>>;
  readonly setup: QuizSetup;
  readonly run: QuizRun | null;
  /** Sheet for printing. */
  readonly paper: { readonly seed: number; readonly items: readonly Item[] } | null;
  readonly busy: boolean;
}

export const DEFAULT_CERTAINTY: Certainty = 1;

export const INITIAL_QUIZ: QuizState = {
  loaded: false,
  cards: {},
  setup: { topics: [], count: 10, from: 'both', kinds: [], minutes: null },
  run: null,
  paper: null,
  busy: false,
};
