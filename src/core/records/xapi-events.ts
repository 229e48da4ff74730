/**
 * What happened, beside single answers, as statements of the Experience API 1.0.3: a lesson attempted and completed, a
 * test passed or failed, a practice run and a job sheet completed. Source as in xapi.ts.
 */
import { z } from 'zod';
import type { KeptRecord } from './archive';
import { readJobEntry, readPractice, readTest } from './kept-work';
import { OWN_IRI, type StatementActor, type StatementHead, type StatementScore, uuidOf } from './xapi';

/** Any statement: what the queue needs of it is its id. */
export interface EventStatement extends StatementHead {
  readonly object: {
    readonly objectType: 'Activity';
    readonly id: string;
    readonly definition: { readonly type: string };
  };
  readonly result?: {
    readonly completion?: boolean;
    readonly success?: boolean;
    readonly score?: StatementScore;
    readonly duration?: string;
    readonly extensions?: Readonly<Record<string, string | number>>;
  };
  readonly context: {
    readonly platform: string;
    readonly language: string;
    readonly contextActivities: {
      readonly grouping: readonly { readonly objectType: 'Activity'; readonly id: string }[];
    };
  };
  readonly timestamp: string;
}

export type EventVerb = 'attempted' | 'completed' | 'passed' | 'failed';

const TYPES = {
  lesson: 'http://adlnet.gov/expapi/activities/lesson',
  test: 'http://adlnet.gov/expapi/activities/assessment',
  practice: 'http://adlnet.gov/expapi/activities/simulation',
  job: 'http://adlnet.gov/expapi/activities/performance',
} as const;
const DAY_ms = 86_400_000;

/** Where records of each sort lie. */
export interface WorkCollections {
  readonly lessons: string;
  readonly tests: string;
  readonly practice: string;
  readonly jobs: string;
}

export interface EventFacts {
  readonly actor: StatementActor;
  readonly language: string;
  /** Share of right answers that passes a test, 0 to 1. */
  readonly mastery: number;
  /** Step ids of each lesson. */
  readonly steps: Readonly<Record<string, readonly string[]>>;
}

interface Happened {
  readonly verb: EventVerb;
  readonly kind: keyof typeof TYPES;
  readonly of: string;
  readonly at_ms: number;
  readonly result?: EventStatement['result'];
}

const lessonSchema = z.object({ lesson: z.string(), done: z.array(z.string()), day: z.number() });

/** Statements that the records come to; the same record in the same state always gives the same ids. */
export function eventStatements(
  records: readonly KeptRecord[],
  collections: WorkCollections,
  facts: EventFacts,
): readonly EventStatement[] {
  const { actor, language } = facts;
  return records.flatMap((record) =>
    happened(record, collections, facts).map(({ verb, kind, of, at_ms, result }): EventStatement => ({
      id: uuidOf(actor.homePage, actor.name, record.collection, record.key, verb),
      actor: { objectType: 'Agent', account: { homePage: actor.homePage, name: actor.name } },
      verb: { id: `http://adlnet.gov/expapi/verbs/${verb}`, display: { en: verb } },
      object: {
        objectType: 'Activity',
        id: `${OWN_IRI}${kind}/${of.split('/').map(encodeURIComponent).join('/')}`,
        definition: { type: TYPES[kind] },
      },
      ...(result === undefined ? {} : { result }),
      context: {
        platform: 'Drumbench',
        language,
        contextActivities: { grouping: [{ objectType: 'Activity', id: `${OWN_IRI}course` }] },
      },
      timestamp: new Date(at_ms).toISOString(),
    })),
  );
}

function happened(
  { collection, text }: KeptRecord,
  collections: WorkCollections,
  { mastery, steps }: EventFacts,
): readonly Happened[] {
  switch (collection) {
    case collections.lessons: {
      const lesson = readLesson(text);
      if (lesson === null) return [];
      const at = { kind: 'lesson', of: lesson.lesson, at_ms: lesson.day * DAY_ms } as const;
      const all = steps[lesson.lesson];
      const whole = all !== undefined && all.every((step) => lesson.done.includes(step));
      return [
        { verb: 'attempted', ...at },
        ...(whole ? [{ verb: 'completed' as const, ...at, result: { completion: true } }] : []),
      ];
    }
    case collections.tests: {
      const test = readTest(text);
      if (test === null || test.count === 0) return [];
      const scaled = test.right / test.count;
      const success = scaled >= mastery - 1e-9;
      const at = { kind: 'test', of: test.topics.length === 0 ? 'all' : test.topics.join('+') } as const;
      return [
        { verb: 'attempted', ...at, at_ms: test.began_ms },
        {
          verb: success ? 'passed' : 'failed',
          ...at,
          at_ms: test.at_ms,
          result: {
            completion: true,
            success,
            score: { scaled, raw: test.right, min: 0, max: test.count },
            duration: durationOf((test.at_ms - test.began_ms) / 1000),
          },
        },
      ];
    }
    case collections.practice: {
      const run = readPractice(text);
      if (run === null || !run.finished) return [];
      const { machineId, mode, goal, lost, elapsed_s, saved_ms } = run;
      return [
        {
          verb: 'completed',
          kind: 'practice',
          of: `${machineId}/${mode}/${goal}`,
          at_ms: saved_ms,
          result: {
            completion: true,
            duration: durationOf(elapsed_s),
            extensions: { [`${OWN_IRI}points-lost`]: lost },
          },
        },
      ];
    }
    case collections.jobs: {
      const job = readJobEntry(text);
      if (job === null || !job.complete) return [];
      return [
        {
          verb: 'completed',
          kind: 'job',
          of: `${job.machineId}/${job.jobId}`,
          at_ms: job.at_ms,
          result: {
            completion: true,
            ...(job.result === 'open' ? {} : { success: job.result === 'passed' }),
          },
        },
      ];
    }
    default:
      return [];
  }
}

function readLesson(text: string): z.infer<typeof lessonSchema> | null {
  try {
    const read = lessonSchema.safeParse(JSON.parse(text));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}

/** ISO 8601, to a hundredth of a second. */
const durationOf = (seconds: number): string => `PT${Number(Math.max(0, seconds).toFixed(2))}S`;
