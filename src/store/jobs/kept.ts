/** Records of jobs, and how they are read: what does not read back whole keeps its text. */
import {
  exportHistory,
  exportProgress,
  type HistoryEntry,
  importHistory,
  importProgress,
  type JobProgress,
  type Measured,
  type MeasuredJob,
} from '../../core/jobs';
import type { Ports } from '../ports';
import { type DamagedRecord, NOT_MEASURED } from './state';

/** Sheets under way, by the id of their progress; finished ones; texts that could not be read whole; measured values. */
export const JOB_RECORDS = 'jobs';
export const JOB_HISTORY = 'job-history';
export const JOB_DAMAGED = 'jobs-damaged';
export const JOB_MEASURED = 'job-measured';

export interface KeptJobs {
  readonly kept: readonly JobProgress[];
  readonly history: readonly HistoryEntry[];
  readonly damaged: readonly DamagedRecord[];
}

const newestFirst = (a: JobProgress, b: JobProgress): number => b.changed_ms - a.changed_ms;

/** Reads every record; a damaged text is laid aside before anything writes over it. */
export async function readKept(records: Ports['records'], machineId: string): Promise<KeptJobs> {
  const kept: JobProgress[] = [];
  for (const { key, text } of await records.list(JOB_RECORDS)) {
    const { progress, faults } = importProgress(text, undefined, key);
    if (faults.some((f) => f.level !== 'note')) await records.write(JOB_DAMAGED, key, text);
    if (progress !== null && progress.machineId === machineId) kept.push(progress);
  }
  const entries: HistoryEntry[] = [];
  for (const { key, text } of await records.list(JOB_HISTORY)) {
    const read = importHistory(text, key);
    if (read.faults.length > 0) await records.write(JOB_DAMAGED, `history ${key}`, text);
    entries.push(...read.entries.filter((e) => e.machineId === machineId));
  }
  const damaged = (await records.list(JOB_DAMAGED)).map(({ key, text }) => ({
    key,
    text,
    faults: [...importProgress(text, undefined, key).faults],
  }));
  return {
    kept: kept.sort(newestFirst),
    history: entries.sort((a, b) => a.at_ms - b.at_ms),
    damaged,
  };
}

export const keepProgress = (records: Ports['records'], progress: JobProgress): Promise<boolean> =>
  records.write(JOB_RECORDS, progress.id, exportProgress(progress));

export const keepEntry = (records: Ports['records'], entry: HistoryEntry): Promise<boolean> =>
  records.write(JOB_HISTORY, entry.id, exportHistory([entry]));

const isMeasured = (value: unknown): value is Measured =>
  typeof value === 'object' &&
  value !== null &&
  ['amplitude_m', 'vibrations_per_minute'].every((key) =>
    Number.isFinite((value as Record<string, unknown>)[key]),
  );

/** Measured values of a sheet; none where nothing readable was kept. */
export async function readMeasured(records: Ports['records'], id: string): Promise<MeasuredJob> {
  const text = await records.read(JOB_MEASURED, id);
  if (text === null) return NOT_MEASURED;
  try {
    const found = JSON.parse(text) as Record<string, unknown> | null;
    const side = (key: 'high' | 'low'): Measured | null => {
      const value = found?.[key];
      return isMeasured(value) ? value : null;
    };
    return { high: side('high'), low: side('low') };
  } catch {
    return NOT_MEASURED;
  }
}
