/** Slow state of a packaged lesson: what the school's system says, and how far the learner is. Null in the whole app. */
import type { SchoolTrouble } from '../../core/records';

export interface SchoolState {
  readonly topic: string;
  readonly phase: 'opening' | 'ready' | 'closed' | 'failed';
  /** A system hears what is done here. */
  readonly heard: boolean;
  readonly judged: boolean;
  readonly learner: string;
  /** Share that passes, 0 to 1. */
  readonly mastery: number;
  readonly trouble: SchoolTrouble | null;
  /** Quizzes handed in. */
  readonly attempts: number;
  /** Most right answers in one; of how many. */
  readonly bestRight: number;
  readonly count: number;
}

export type SchoolSlice = SchoolState | null;
