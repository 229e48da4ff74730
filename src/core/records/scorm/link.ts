/** What a packaged lesson and the learning system that opened it say to one another, whatever the standard. */
import type { SchoolAnswer } from './answer';
import type { SchoolReport } from './report';

export const SCHOOL_STANDARDS = ['scorm12', 'scorm2004', 'cmi5'] as const;
export type SchoolStandard = (typeof SCHOOL_STANDARDS)[number];

/** What a package is told of itself by its launch page. */
export interface PackageSettings {
  readonly standard: SchoolStandard;
  /** Topic of the lesson. */
  readonly lesson: string;
  readonly language: string;
  /** Share of right answers that passes, 0 to 1. */
  readonly mastery: number;
}

/** `missing`: no system to be found; `refused`: it would not begin; `lost`: it did not take what it was told. */
export interface SchoolTrouble {
  readonly what: 'missing' | 'refused' | 'lost';
  /** What the system itself says: an error code or status, and the element or address concerned. */
  readonly code: string;
  readonly about: string;
}

export interface SchoolOpening {
  /** Text that `SchoolReport.resume` gave at an earlier visit; empty at the first. */
  readonly resume: string;
  /** Letters that there is room for. */
  readonly limit: number;
  /** False where the learner only looks: nothing is judged then. */
  readonly judged: boolean;
  /** Share that passes, where the system sets its own. */
  readonly mastery: number | null;
  /** Name that the system gives of the learner; empty where it gives none. */
  readonly learner: string;
}

export interface SchoolLink {
  /** Null where there is nothing to talk to; the trouble has been told then. */
  open(): Promise<SchoolOpening | null>;
  answered(answer: SchoolAnswer): void;
  tell(report: SchoolReport): void;
  /** The last word: the page goes away. */
  end(report: SchoolReport): void;
}

/** Hears of every trouble, and null once what was lost has been taken after all. */
export type HearTrouble = (trouble: SchoolTrouble | null) => void;
