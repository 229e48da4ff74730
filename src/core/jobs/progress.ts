/** How far a sheet is done: ticks, filled fields, notes. A pure reducer; the caller brings the time. */
import { type Message, message } from '../kernel';
import type { FieldValue, FieldValues, JobSheet, SheetField, SheetStep } from './sheet-types';

export interface JobProgress {
  readonly machineId: string;
  readonly jobId: string;
  /** Made when the sheet was started; names it in a history. */
  readonly id: string;
  /** Milliseconds since 1970, from the caller's clock. */
  readonly started_ms: number;
  readonly changed_ms: number;
  /** Step ids that are done. */
  readonly done: readonly string[];
  /** Field id -> value in SI. */
  readonly values: FieldValues;
  /** Step id -> a person's words. */
  readonly notes: Readonly<Record<string, string>>;
  /** Hold points signed although a value lies outside its limits: step id -> who and why. */
  readonly signed: Readonly<Record<string, string>>;
}

export type ProgressEvent =
  | { readonly type: 'tick' | 'untick'; readonly stepId: string; readonly at_ms: number }
  | {
      readonly type: 'fill';
      readonly fieldId: string;
      readonly value: FieldValue | null;
      readonly at_ms: number;
    }
  | {
      readonly type: 'note' | 'sign';
      readonly stepId: string;
      readonly text: string;
      readonly at_ms: number;
    };

export const startProgress = (sheet: JobSheet, id: string, at_ms: number): JobProgress => ({
  machineId: sheet.machineId,
  jobId: sheet.jobId,
  id,
  started_ms: at_ms,
  changed_ms: at_ms,
  done: [],
  values: {},
  notes: {},
  signed: {},
});

/** 'empty', 'good' within limits (or without any), 'bad' outside them. */
export function judgeField(field: SheetField, value: FieldValue | undefined): 'empty' | 'good' | 'bad' {
  if (value === undefined || value === '') return 'empty';
  switch (field.type) {
    case 'number':
      if (typeof value !== 'number' || !Number.isFinite(value)) return 'bad';
      return (field.min !== null && value < field.min - 1e-12) ||
        (field.max !== null && value > field.max + 1e-12)
        ? 'bad'
        : 'good';
    case 'check':
      return value === true ? 'good' : 'bad';
    case 'choice': {
      const found = field.choices.find((c) => c.id === value);
      return found === undefined || found.good === false ? 'bad' : 'good';
    }
    case 'text':
      return 'good';
  }
}

/** What of a step's hold point is still open: empty fields, values outside limits that nobody signed for. */
export function openHold(step: SheetStep, progress: JobProgress): readonly Message[] {
  if (!step.hold) return [];
  return step.fields.flatMap((field) => {
    const verdict = judgeField(field, progress.values[field.id]);
    if (verdict === 'empty') return field.optional ? [] : [message('job.hold.empty', { field: field.id })];
    if (verdict === 'bad' && !(step.id in progress.signed))
      return [message('job.hold.outside', { field: field.id })];
    return [];
  });
}

/** Why a step may not be ticked yet; empty when it may. A hold point before it that is not done stops everything after. */
export function mayTick(sheet: JobSheet, progress: JobProgress, stepId: string): readonly Message[] {
  const step = sheet.steps.find((s) => s.id === stepId);
  if (step === undefined) return [message('job.hold.no-step', { step: stepId })];
  const before = sheet.steps.find((s) => s.number < step.number && s.hold && !progress.done.includes(s.id));
  return [
    ...(before === undefined ? [] : [message('job.hold.before', { step: before.number })]),
    ...openHold(step, progress),
  ];
}

/** The next progress; an event that the hold rule forbids changes nothing. */
export function reduceProgress(sheet: JobSheet, progress: JobProgress, event: ProgressEvent): JobProgress {
  const next = (change: Partial<JobProgress>): JobProgress => ({
    ...progress,
    ...change,
    changed_ms: Math.max(progress.changed_ms, event.at_ms),
  });
  switch (event.type) {
    case 'tick':
      return progress.done.includes(event.stepId) || mayTick(sheet, progress, event.stepId).length > 0
        ? progress
        : next({ done: [...progress.done, event.stepId] });
    case 'untick': {
      if (!progress.done.includes(event.stepId)) return progress;
      const step = sheet.steps.find((s) => s.id === event.stepId);
      // what stood on a hold point that is open again is open too
      const falls = (id: string): boolean =>
        id === event.stepId ||
        (step?.hold === true && (sheet.steps.find((s) => s.id === id)?.number ?? 0) > step.number);
      return next({ done: progress.done.filter((id) => !falls(id)) });
    }
    case 'fill': {
      const field = sheet.fields.find((f) => f.id === event.fieldId);
      if (field === undefined || progress.values[event.fieldId] === event.value) return progress;
      const { [event.fieldId]: _, ...rest } = progress.values;
      const filled = next({
        values: event.value === null ? rest : { ...rest, [event.fieldId]: event.value },
      });
      const step = sheet.steps.find((s) => s.id === field.stepId);
      // a hold point that no longer holds is not done
      return step !== undefined && filled.done.includes(step.id) && openHold(step, filled).length > 0
        ? reduceProgress(sheet, filled, { type: 'untick', stepId: step.id, at_ms: event.at_ms })
        : filled;
    }
    case 'note':
      return next({ notes: withText(progress.notes, event.stepId, event.text) });
    case 'sign':
      return next({ signed: withText(progress.signed, event.stepId, event.text) });
  }
}

function withText(
  all: Readonly<Record<string, string>>,
  key: string,
  text: string,
): Readonly<Record<string, string>> {
  const { [key]: _, ...rest } = all;
  return text.trim() === '' ? rest : { ...rest, [key]: text };
}

/** Share of steps done, and whether all are. */
export function progressShare(sheet: JobSheet, progress: JobProgress): { share: number; complete: boolean } {
  const done = sheet.steps.filter((s) => progress.done.includes(s.id)).length;
  return {
    share: sheet.steps.length === 0 ? 1 : done / sheet.steps.length,
    complete: done === sheet.steps.length,
  };
}
