/** Slow state of the lessons: what has been fetched, how far a person is. */
import type { CourseOutline, Glossary, LessonProgress, Topic } from '../../core/lessons';

export interface LessonsState {
  /** Of which language the rest is; null before the first fetch. */
  readonly language: string | null;
  readonly phase: 'idle' | 'loading' | 'ready' | 'failed';
  readonly course: CourseOutline | null;
  /** By topic, as fetched. */
  readonly topics: Readonly<Record<string, Topic>>;
  readonly glossary: Glossary | null;
  /** By topic, as kept. */
  readonly progress: Readonly<Record<string, LessonProgress>>;
}

export const INITIAL_LESSONS: LessonsState = {
  language: null,
  phase: 'idle',
  course: null,
  topics: {},
  glossary: null,
  progress: {},
};
