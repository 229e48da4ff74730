/** Commands of the lessons. Progress is kept at each event, so that nothing is lost when a page is closed. */
import {
  type LessonProgress,
  newProgress,
  play,
  type PlayerAction,
  readProgress,
  type Topic,
} from '../../core/lessons';
import type { StageSetting } from '../../core/quiz';
import type { Commands } from '../commands';
import type { Ports } from '../ports';
import type { AppStore } from '../store';
import { today } from './day';
import { applyStage, giveStageBack } from '../lent-stage';
import { INITIAL_LESSONS, type LessonsState } from './state';

export const LESSON_RECORDS = 'lessons';

const fetching = new WeakMap<AppStore, Map<string, Promise<unknown>>>();

/** Calls at the same time share one fetch. */
function once<T>(store: AppStore, key: string, work: () => Promise<T>): Promise<T> {
  const open = fetching.get(store) ?? new Map<string, Promise<unknown>>();
  fetching.set(store, open);
  const found = open.get(key) as Promise<T> | undefined;
  if (found !== undefined) return found;
  const made = work().finally(() => open.delete(key));
  open.set(key, made);
  return made;
}

const setLessons = (store: AppStore, part: Partial<LessonsState>): void =>
  store.setState({ lessons: { ...store.getState().lessons, ...part } });

/** Outline of the course and kept progress, in the person's language. */
export function ensureCourse(store: AppStore, ports: Pick<Ports, 'course' | 'records'>): Promise<void> {
  const { language } = store.getState().settings;
  const { lessons } = store.getState();
  if (lessons.language === language && lessons.phase === 'ready') return Promise.resolve();
  return once(store, `course ${language}`, async () => {
    setLessons(store, { ...INITIAL_LESSONS, progress: lessons.progress, language, phase: 'loading' });
    try {
      const [course, records] = await Promise.all([
        ports.course.loadCourse(language),
        ports.records.list(LESSON_RECORDS),
      ]);
      const progress: Record<string, LessonProgress> = {};
      for (const { text } of records) {
        const read = readProgress(text);
        if (read !== null) progress[read.lesson] = read;
      }
      setLessons(store, { course, progress, phase: 'ready' });
    } catch {
      setLessons(store, { phase: 'failed' });
    }
  });
}

/** A topic with its bank; null when it cannot be had. */
export async function ensureTopic(
  store: AppStore,
  ports: Pick<Ports, 'course' | 'records'>,
  topic: string,
): Promise<Topic | null> {
  await ensureCourse(store, ports);
  const found = store.getState().lessons.topics[topic];
  if (found !== undefined) return found;
  const { language } = store.getState().lessons;
  return once(store, `topic ${language} ${topic}`, async () => {
    try {
      const loaded = await ports.course.loadTopic(language ?? 'en', topic);
      if (store.getState().lessons.language === language)
        setLessons(store, { topics: { ...store.getState().lessons.topics, [topic]: loaded } });
      return loaded;
    } catch {
      return null;
    }
  });
}

export function createLessonCommands(store: AppStore, ports: Ports, commands: Commands) {
  const act = (topic: string, action: PlayerAction): LessonProgress | null => {
    const { lessons } = store.getState();
    const lesson = lessons.topics[topic]?.lesson;
    if (lesson === undefined) return null;
    const before = lessons.progress[topic] ?? newProgress(topic, today());
    const next = play(lesson, before, action, today());
    setLessons(store, { progress: { ...lessons.progress, [topic]: next } });
    void ports.records.write(LESSON_RECORDS, topic, JSON.stringify(next));
    return next;
  };
  const giveBack = (): void => giveStageBack(store, commands);
  const goTo = (progress: LessonProgress | null): void => {
    if (progress?.at != null) commands.go('lessons', progress.lesson, progress.at);
  };
  return {
    loadCourse: (): Promise<void> => ensureCourse(store, ports),
    loadTopic: (topic: string): Promise<Topic | null> => ensureTopic(store, ports, topic),
    async loadGlossary(): Promise<void> {
      await ensureCourse(store, ports);
      const { lessons } = store.getState();
      if (lessons.glossary !== null) return;
      await once(store, `glossary ${lessons.language}`, async () => {
        try {
          setLessons(store, { glossary: await ports.course.loadGlossary(lessons.language ?? 'en') });
        } catch {
          // Without a glossary a part's card and the list of words say less; nothing else hangs on it.
        }
      });
    },
    /** Remembers which step is open; `step` null: where the person left off. */
    open: (topic: string, step: string | null): LessonProgress | null => act(topic, { type: 'open', step }),
    next: (topic: string): void => goTo(act(topic, { type: 'next' })),
    previous: (topic: string): void => goTo(act(topic, { type: 'previous' })),
    restart: (topic: string): void => goTo(act(topic, { type: 'restart' })),
    /** The last step is done and the lesson left. */
    finish(topic: string): void {
      act(topic, { type: 'next' });
      commands.go('lessons');
    },
    taskDone: (topic: string, step: string): void => void act(topic, { type: 'task-done', step }),
    /** @param selects false where a part is to be found, which is then left for the person to choose */
    setStage: (setting: StageSetting, selects = true): void => applyStage(store, setting, selects),
    leaveStage: giveBack,
  };
}
