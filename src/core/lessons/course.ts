/** The course as the app reads it: an outline of all lessons, and each lesson with the questions of its bank. */
import type { BankItem, Difficulty, ItemKind } from '../quiz';
import type { Lesson, Term } from './parse';

export interface OutlineItem {
  readonly id: string;
  readonly kind: ItemKind;
  readonly difficulty: Difficulty;
}

export interface OutlineLesson {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly minutes: number;
  readonly requires: readonly string[];
  readonly steps: readonly { readonly id: string; readonly title: string; readonly asks: boolean }[];
  readonly items: readonly OutlineItem[];
}

export interface CourseOutline {
  readonly language: string;
  readonly lessons: readonly OutlineLesson[];
}

/** A lesson and its bank, as fetched together. */
export interface Topic {
  readonly lesson: Lesson;
  readonly items: readonly BankItem[];
}

export interface Glossary {
  readonly language: string;
  readonly terms: readonly Term[];
}

export function outlineOf(language: string, topics: readonly Topic[]): CourseOutline {
  return {
    language,
    lessons: topics.map(({ lesson, items }) => ({
      id: lesson.id,
      title: lesson.title,
      summary: lesson.summary,
      minutes: lesson.minutes,
      requires: lesson.requires,
      steps: lesson.steps.map((step) => ({
        id: step.id,
        title: step.title,
        asks: step.task !== null || step.check !== null,
      })),
      items: items.map(({ entry }) => ({ id: entry.id, kind: entry.kind, difficulty: entry.difficulty })),
    })),
  };
}
