/** What kept tests, practice runs and job sheets come to. A record that cannot be read is counted as such. */
import { readJobEntry, readPractice, readTest } from './kept-work';

export interface TestSummary {
  readonly taken: number;
  /** Best and last share of right answers, 0 to 1; null before the first. */
  readonly best: number | null;
  readonly last: number | null;
}

export interface PracticeSummary {
  readonly finished: number;
  readonly open: number;
  /** Fewest points lost in a finished run. */
  readonly fewestLost: number | null;
  readonly time_s: number;
}

export interface JobSummary {
  /** Sheets under way. */
  readonly open: number;
  readonly finished: number;
  /** Ended before every step was ticked off. */
  readonly endedEarly: number;
  readonly passed: number;
  readonly failed: number;
}

export interface WorkSummary {
  readonly tests: TestSummary;
  readonly practice: PracticeSummary;
  readonly jobs: JobSummary;
  readonly unreadable: number;
}

interface WorkTexts {
  readonly tests: readonly string[];
  readonly practice: readonly string[];
  /** Sheets under way, and those that were filed. */
  readonly jobs: readonly string[];
  readonly jobHistory: readonly string[];
}

/** Each list as kept, in any order. */
export function summariseWork(texts: WorkTexts): WorkSummary {
  let unreadable = 0;
  const all = <T>(list: readonly string[], read: (text: string) => T | null): readonly T[] =>
    list.flatMap((text) => {
      const found = read(text);
      if (found === null) unreadable++;
      return found === null ? [] : [found];
    });
  const tests = [...all(texts.tests, readTest)].sort((a, b) => a.at_ms - b.at_ms);
  const shares = tests.filter((each) => each.count > 0).map((each) => each.right / each.count);
  const runs = all(texts.practice, readPractice);
  const finished = runs.filter((run) => run.finished);
  const jobs = all(texts.jobHistory, readJobEntry);
  const complete = jobs.filter((job) => job.complete);
  return {
    tests: {
      taken: tests.length,
      best: shares.length === 0 ? null : Math.max(...shares),
      last: shares.at(-1) ?? null,
    },
    practice: {
      finished: finished.length,
      open: runs.length - finished.length,
      fewestLost: finished.length === 0 ? null : Math.min(...finished.map((run) => run.lost)),
      time_s: runs.reduce((sum, run) => sum + run.elapsed_s, 0),
    },
    jobs: {
      open: texts.jobs.length,
      finished: complete.length,
      endedEarly: jobs.length - complete.length,
      passed: complete.filter((job) => job.result === 'passed').length,
      failed: complete.filter((job) => job.result === 'failed').length,
    },
    unreadable,
  };
}
