/**
 * Progress as JSON and back. What is read is checked whole: unknown keys and values of the wrong kind are faults with
 * their paths, and what could be read comes with them, so that nothing is lost without being said.
 */
import { z } from 'zod';
import { type Fault, lineAt, lineInJson, message, printFound } from '../kernel';
import { expectedOf, foundAt, printPath } from '../machine';
import type { JobProgress } from './progress';
import type { JobSheet } from './sheet-types';

export const PROGRESS_FORMAT = 'drumbench-job-progress';
export const PROGRESS_VERSION = 1;

const words = z.record(z.string(), z.string());
export const progressSchema = z.strictObject({
  machineId: z.string().min(1),
  jobId: z.string().min(1),
  id: z.string().min(1),
  started_ms: z.number(),
  changed_ms: z.number(),
  done: z.array(z.string()),
  values: z.record(z.string(), z.union([z.number(), z.string(), z.boolean()])),
  notes: words,
  signed: words,
});
const fileSchema = z.strictObject({
  format: z.literal(PROGRESS_FORMAT),
  schema_version: z.literal(PROGRESS_VERSION),
  progress: progressSchema,
});

export function exportProgress(progress: JobProgress): string {
  return `${JSON.stringify({ format: PROGRESS_FORMAT, schema_version: PROGRESS_VERSION, progress }, null, 2)}\n`;
}

export interface ImportedProgress {
  /** Everything that could be read; null where not even that. */
  readonly progress: JobProgress | null;
  /** Empty only when the whole file was good. */
  readonly faults: readonly Fault[];
}

const TEXT_LIMIT = 5_000_000;

/** Reads a file; with a sheet also whether its steps and fields still exist. */
export function importProgress(text: string, sheet?: JobSheet, file?: string): ImportedProgress {
  const at = file === undefined ? {} : { file };
  if (text.length > TEXT_LIMIT)
    return whole(at, 'fault.text-limit', String(text.length), { limit: TEXT_LIMIT });
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return { progress: null, faults: [{ ...at, ...jsonFault(text, error) }] };
  }
  const parsed = fileSchema.safeParse(data);
  const faults: Fault[] = parsed.success
    ? []
    : parsed.error.issues.map((issue) => ({
        ...at,
        ...placeInJson(text, issue.path),
        expected: expectedOf(issue),
        found: foundAt(data, issue),
      }));
  const progress = parsed.success ? parsed.data.progress : salvage(data);
  if (progress !== null && sheet !== undefined) faults.push(...againstSheet(progress, sheet, at, text));
  return { progress, faults };
}

/** Line and path of a fault in a JSON text. */
export function placeInJson(text: string, path: readonly PropertyKey[]): Pick<Fault, 'line' | 'path'> {
  const line = lineInJson(text, path);
  return { ...(line === undefined ? {} : { line }), path: printPath(path) };
}

/** A text that is no JSON, with the line on which reading it ended where the engine tells. */
export function jsonFault(text: string, error: unknown): Fault {
  const said = (error as Error).message;
  const position = /at position (\d+)/.exec(said)?.[1];
  const ended = /end of JSON|Unterminated/i.test(said) ? text.trimEnd().length : undefined;
  const at = position === undefined ? ended : Number(position);
  return {
    ...(at === undefined ? {} : { line: lineAt(text, at) }),
    path: printPath([]),
    expected: message('fault.json'),
    found: printFound(said),
  };
}

function whole(at: object, key: string, found: string, params?: Record<string, number>): ImportedProgress {
  return {
    progress: null,
    faults: [{ ...at, path: printPath([]), expected: message(key, params), found: printFound(found) }],
  };
}

/** Takes every entry that is good by itself; null where it is not even a progress. */
function salvage(data: unknown): JobProgress | null {
  const body = (data as { progress?: unknown } | null)?.progress;
  if (typeof body !== 'object' || body === null) return null;
  const raw = body as Record<string, unknown>;
  const text = (key: string): string | null => (typeof raw[key] === 'string' ? raw[key] : null);
  const time = (key: string): number => (typeof raw[key] === 'number' ? raw[key] : 0);
  const entries = <T>(key: string, good: (v: unknown) => v is T): Record<string, T> =>
    typeof raw[key] === 'object' && raw[key] !== null
      ? Object.fromEntries(Object.entries(raw[key]).filter((e): e is [string, T] => good(e[1])))
      : {};
  const isText = (v: unknown): v is string => typeof v === 'string';
  const isValue = (v: unknown): v is string | number | boolean =>
    typeof v === 'string' || typeof v === 'boolean' || (typeof v === 'number' && Number.isFinite(v));
  const [machineId, jobId] = [text('machineId'), text('jobId')];
  if (machineId === null || jobId === null) return null;
  return {
    machineId,
    jobId,
    id: text('id') ?? `${machineId}-${jobId}`,
    started_ms: time('started_ms'),
    changed_ms: time('changed_ms'),
    done: Array.isArray(raw['done']) ? raw['done'].filter(isText) : [],
    values: entries('values', isValue),
    notes: entries('notes', isText),
    signed: entries('signed', isText),
  };
}

/** Entries of another version of the job: named, and kept. */
function againstSheet(progress: JobProgress, sheet: JobSheet, at: object, text: string): Fault[] {
  const steps = new Set(sheet.steps.map((s) => s.id));
  const fields = new Set(sheet.fields.map((f) => f.id));
  const fault = (path: readonly PropertyKey[], key: string, found: string): Fault => ({
    ...at,
    ...placeInJson(text, ['progress', ...path]),
    expected: message(key),
    found: printFound(found),
    level: 'note',
  });
  return [
    ...(progress.machineId === sheet.machineId
      ? []
      : [fault(['machineId'], 'fault.job.other-machine', progress.machineId)]),
    ...(progress.jobId === sheet.jobId ? [] : [fault(['jobId'], 'fault.job.other-job', progress.jobId)]),
    ...progress.done.flatMap((id, i) =>
      steps.has(id) ? [] : [fault(['done', i], 'fault.job.no-such-step', id)],
    ),
    ...Object.keys(progress.values).flatMap((id) =>
      fields.has(id) ? [] : [fault(['values', id], 'fault.job.field', id)],
    ),
    ...(['notes', 'signed'] as const).flatMap((key) =>
      Object.keys(progress[key]).flatMap((id) =>
        steps.has(id) ? [] : [fault([key, id], 'fault.job.no-such-step', id)],
      ),
    ),
  ];
}
