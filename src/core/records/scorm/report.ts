/** How far a learner is in a packaged lesson, before any standard's own writing. */
export interface SchoolReport {
  /** Every step gone through and the quiz handed in. */
  readonly completed: boolean;
  /** Null before the quiz was handed in. */
  readonly passed: boolean | null;
  /** Quizzes handed in, over all visits. */
  readonly attempts: number;
  /** Best share of right answers, 0 to 1; null before the quiz was handed in. */
  readonly score: number | null;
  /** Share of the whole, 0 to 1. */
  readonly progress: number;
  /** What is open: a step's id, or the quiz. */
  readonly place: string;
  /** Where to go on, as text; see `resume.ts`. */
  readonly resume: string;
  /** Time since this visit began. */
  readonly session_s: number;
}

/** An element of a data model and the value it is set to. */
export type Setting = readonly [element: string, value: string];

/** Share of right answers that passes where nobody says otherwise. */
export const DEFAULT_MASTERY = 0.8;
