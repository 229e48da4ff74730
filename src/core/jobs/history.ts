/** A machine's history: one entry a finished (or ended) job, as plain data that storage keeps and files carry. */
import { z } from 'zod';
import { type Fault, message, printFound } from '../kernel';
import { expectedOf, foundAt } from '../machine';
import { type JobProgress, progressShare } from './progress';
import type { JobSheet } from './sheet-types';
import { jsonFault, placeInJson, progressSchema } from './transfer';
import type { JobVerdict, MeasuredJob } from './verdict';

const measured = z.strictObject({ amplitude_m: z.number(), vibrations_per_minute: z.number() }).nullable();
export const HISTORY_FORMAT = 'drumbench-history';

const historyEntrySchema = z.strictObject({
  schema_version: z.literal(1),
  machineId: z.string().min(1),
  jobId: z.string().min(1),
  /** Id of the progress. */
  id: z.string().min(1),
  at_ms: z.number(),
  complete: z.boolean(),
  result: z.enum(['passed', 'failed', 'open']),
  measured: z.strictObject({ high: measured, low: measured }),
  progress: progressSchema,
});
export type HistoryEntry = z.infer<typeof historyEntrySchema>;

export function historyEntry(
  sheet: JobSheet,
  progress: JobProgress,
  measuredJob: MeasuredJob,
  verdict: JobVerdict,
  at_ms: number,
): HistoryEntry {
  return {
    schema_version: 1,
    machineId: sheet.machineId,
    jobId: sheet.jobId,
    id: progress.id,
    at_ms,
    complete: progressShare(sheet, progress).complete,
    result: verdict.result,
    measured: { high: measuredJob.high, low: measuredJob.low },
    progress: { ...progress, done: [...progress.done] },
  };
}

/** Newest last. */
export const addToHistory = (
  history: readonly HistoryEntry[],
  entry: HistoryEntry,
): readonly HistoryEntry[] =>
  [...history.filter((e) => e.id !== entry.id), entry].sort((a, b) => a.at_ms - b.at_ms);

export const exportHistory = (history: readonly HistoryEntry[]): string =>
  `${JSON.stringify({ format: HISTORY_FORMAT, schema_version: 1, entries: history }, null, 2)}\n`;

/** Reads a history; good entries come back beside the faults of the others. */
export function importHistory(
  text: string,
  file?: string,
): {
  readonly entries: readonly HistoryEntry[];
  readonly faults: readonly Fault[];
} {
  const at = file === undefined ? {} : { file };
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return { entries: [], faults: [{ ...at, ...jsonFault(text, error) }] };
  }
  const list = (data as { entries?: unknown } | null)?.entries;
  if (!Array.isArray(list))
    return {
      entries: [],
      faults: [{ ...at, path: 'entries', expected: message('fault.type.array'), found: printFound(list) }],
    };
  const entries: HistoryEntry[] = [];
  const faults: Fault[] = [];
  list.forEach((each: unknown, i) => {
    const parsed = historyEntrySchema.safeParse(each);
    if (parsed.success) entries.push(parsed.data);
    else
      faults.push(
        ...parsed.error.issues.map((issue) => ({
          ...at,
          ...placeInJson(text, ['entries', i, ...issue.path]),
          expected: expectedOf(issue),
          found: foundAt(each, issue),
        })),
      );
  });
  return { entries, faults };
}
