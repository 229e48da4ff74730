/** Kept tests, practice runs and finished jobs, read as far as summaries and statements need them. */
import { z } from 'zod';
import { importHistory } from '../jobs';

const testSchema = z.object({
  version: z.literal(1),
  topics: z.array(z.string()),
  count: z.int().min(0),
  right: z.int().min(0),
  mark: z.number(),
  best: z.number(),
  began_ms: z.number(),
  at_ms: z.number(),
});
export type KeptTest = z.infer<typeof testSchema>;

const practiceSchema = z.object({
  version: z.literal(1),
  machineId: z.string(),
  task: z.object({
    mode: z.enum(['take-apart', 'put-together']),
    goal: z.union([
      z.object({ kind: z.literal('all') }),
      z.object({ kind: z.literal('unit'), unitId: z.string() }),
    ]),
  }),
  saved_ms: z.number(),
  elapsed_s: z.number(),
  score: z.object({ lost: z.number(), wrong: z.number(), hints: z.number() }).nullable(),
});

export interface PracticeFacts {
  readonly machineId: string;
  readonly mode: 'take-apart' | 'put-together';
  /** A unit's id, or `all`. */
  readonly goal: string;
  readonly finished: boolean;
  readonly lost: number;
  readonly elapsed_s: number;
  readonly saved_ms: number;
}

function read<T>(schema: z.ZodType<T>, text: string): T | null {
  try {
    const found = schema.safeParse(JSON.parse(text));
    return found.success ? found.data : null;
  } catch {
    return null;
  }
}

export const readTest = (text: string): KeptTest | null => read(testSchema, text);

export function readPractice(text: string): PracticeFacts | null {
  const found = read(practiceSchema, text);
  if (found === null) return null;
  const { machineId, task, score, elapsed_s, saved_ms } = found;
  const goal = task.goal.kind === 'all' ? 'all' : task.goal.unitId;
  return {
    machineId,
    mode: task.mode,
    goal,
    finished: score !== null,
    lost: score?.lost ?? 0,
    elapsed_s,
    saved_ms,
  };
}

/** A finished (or ended) job, as kept one a record. */
export function readJobEntry(text: string) {
  const { entries, faults } = importHistory(text);
  return faults.length === 0 ? (entries[0] ?? null) : null;
}
