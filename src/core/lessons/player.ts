/**
 * The lesson player as a reducer: which step is open, what has been done, where to take it up again. Plain data; the
 * day of an event is given from outside.
 */
import type { Lesson } from './parse';

/** What is kept of one lesson. Step ids, so that it survives steps being added. */
export interface LessonProgress {
  readonly lesson: string;
  /** Steps that were gone through to their end. */
  readonly done: readonly string[];
  /** Tasks that were done by oneself (a step can be passed without). */
  readonly tasks: readonly string[];
  /** The step that was open last. */
  readonly at: string | null;
  /** Day number of the last event. */
  readonly day: number;
}

export type PlayerAction =
  | { readonly type: 'open'; readonly step: string | null }
  | { readonly type: 'next' }
  | { readonly type: 'previous' }
  | { readonly type: 'task-done'; readonly step: string }
  | { readonly type: 'restart' };

export const newProgress = (lesson: string, day: number): LessonProgress => ({
  lesson,
  done: [],
  tasks: [],
  at: null,
  day,
});

/** The next state; `day` is today's day number. Unknown steps are left out of account. */
export function play(
  lesson: Lesson,
  progress: LessonProgress,
  action: PlayerAction,
  day: number,
): LessonProgress {
  const ids = lesson.steps.map((step) => step.id);
  const now = progress.at === null ? -1 : ids.indexOf(progress.at);
  const known = (list: readonly string[]): string[] => list.filter((id) => ids.includes(id));
  const base = { ...progress, done: known(progress.done), tasks: known(progress.tasks), day };
  switch (action.type) {
    case 'open': {
      const step = action.step !== null && ids.includes(action.step) ? action.step : resumeAt(lesson, base);
      return { ...base, at: step };
    }
    case 'next': {
      const here = ids[Math.max(0, now)]!;
      const next = ids[Math.min(ids.length - 1, Math.max(0, now) + 1)]!;
      return { ...base, done: added(base.done, here), at: next };
    }
    case 'previous':
      return { ...base, at: ids[Math.max(0, now - 1)]! };
    case 'task-done':
      return ids.includes(action.step) ? { ...base, tasks: added(base.tasks, action.step) } : base;
    case 'restart':
      return { ...base, done: [], tasks: [], at: ids[0]! };
  }
}

const added = (list: readonly string[], id: string): readonly string[] =>
  list.includes(id) ? list : [...list, id];

/** Where to go on: the step that was open, else the first that is not done, else the first. */
export function resumeAt(lesson: Lesson, progress: LessonProgress): string {
  const ids = lesson.steps.map((step) => step.id);
  if (progress.at !== null && ids.includes(progress.at)) return progress.at;
  return ids.find((id) => !progress.done.includes(id)) ?? ids[0]!;
}

/** Share of the steps gone through, 0 to 1. */
export function shareDone(stepIds: readonly string[], progress: LessonProgress | undefined): number {
  if (progress === undefined || stepIds.length === 0) return 0;
  return stepIds.filter((id) => progress.done.includes(id)).length / stepIds.length;
}

/** Kept text back into progress; null when it is none. */
export function readProgress(text: string): LessonProgress | null {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof data !== 'object' || data === null) return null;
  const { lesson, done, tasks, at, day } = data as Record<string, unknown>;
  const strings = (list: unknown): list is string[] =>
    Array.isArray(list) && list.every((each) => typeof each === 'string');
  if (typeof lesson !== 'string' || !strings(done) || !strings(tasks) || typeof day !== 'number') return null;
  return { lesson, done, tasks, at: typeof at === 'string' ? at : null, day };
}
