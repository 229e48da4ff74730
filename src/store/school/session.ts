/**
 * A packaged lesson's session with the school's system. It watches what a learner does (steps, answers, the quiz) and
 * tells the system; at the beginning it puts back what the system kept of an earlier visit.
 */
import { type Lesson, type LessonProgress, newProgress } from '../../core/lessons';
import { type Answer, type Certainty, drawItems, type Given, type Item, resultsOf } from '../../core/quiz';
import {
  makeOf,
  type PackageSettings,
  type QuizResume,
  readAnswer,
  readResume,
  type Resume,
  schoolAnswer,
  type SchoolLink,
  type SchoolReport,
  type SchoolTrouble,
  type TimedGiven,
  writeResume,
} from '../../core/records';
import type { Commands } from '../commands';
import { ensureTopic, LESSON_RECORDS } from '../lessons/commands';
import { today } from '../lessons/day';
import type { Ports } from '../ports';
import { ANSWER_RECORDS, createQuizCommands } from '../quiz/commands';
import { ensurePlant } from '../quiz/plant';
import type { QuizRun } from '../quiz/state';
import { selectSubject, topicItems } from '../quiz/subject';
import type { AppState } from '../state';
import type { AppStore } from '../store';
import type { SchoolState } from './state';

export interface SchoolSurroundings {
  readonly store: AppStore;
  readonly ports: Ports;
  readonly commands: Commands;
  readonly link: SchoolLink;
  readonly settings: PackageSettings;
  /** The question in plain words, for the system's own lists. */
  readonly wordsOf: (item: Item) => string;
  /** Puts an answer of an earlier visit back into a lesson's step. */
  readonly putBack: (place: string, given: Given) => void;
  /** Milliseconds of the clock. */
  readonly now: () => number;
}

/** Seconds in which a person's paging through steps is gathered into one report. */
const GATHER_ms = 1000;
const SECOND_ms = 1000;

export class SchoolSession {
  private lesson: Lesson | null = null;
  /** The bank, by id: numbers of `Resume` count here. */
  private items: readonly Item[] = [];
  private make = '';
  private limit = 0;
  private readonly began_ms: number;
  /** When what is open now was opened. */
  private since_ms: number;
  private inLesson = new Map<number, Given>();
  private timed: (TimedGiven | null)[] = [];
  private quizBegan_ms = 0;
  private run: QuizRun | null = null;
  private wait: ReturnType<typeof setTimeout> | undefined;
  private stop: () => void = () => {};
  private open = false;

  constructor(private readonly around: SchoolSurroundings) {
    this.began_ms = around.now();
    this.since_ms = this.began_ms;
    const { lesson, mastery } = around.settings;
    this.set({
      topic: lesson,
      phase: 'opening',
      heard: false,
      judged: true,
      learner: '',
      mastery,
      trouble: null,
      attempts: 0,
      bestRight: 0,
      count: 0,
    });
  }

  /** Hears of troubles with the system; handed to the link when it is made. */
  readonly hear = (trouble: SchoolTrouble | null): void => {
    if (this.around.store.getState().school?.trouble !== trouble) this.set({ trouble });
  };

  /** Fetches the lesson, begins with the system, puts back what it kept. The machine must be on its way already. */
  async begin(): Promise<void> {
    const { store, ports, settings, link } = this.around;
    const topic = await ensureTopic(store, ports, settings.lesson);
    const there = await machineReady(store);
    if (topic === null || !there) {
      this.set({ phase: 'failed' });
      return;
    }
    await ensurePlant(store, ports).catch(() => null);
    const subject = selectSubject(store.getState())!;
    this.lesson = topic.lesson;
    this.items = [...topicItems(topic, subject)].sort((a, b) => (a.id < b.id ? -1 : 1));
    this.make = makeOf(
      topic.lesson.steps.map((step) => step.id),
      this.items,
    );
    const opening = await link.open();
    this.open = true;
    this.limit = opening?.limit ?? 0;
    const kept = opening === null ? null : readResume(opening.resume, this.make, this.items);
    this.set({
      heard: opening !== null,
      judged: opening?.judged ?? true,
      learner: opening?.learner ?? '',
      mastery: opening?.mastery ?? settings.mastery,
      count: this.items.length,
      attempts: kept?.attempts ?? 0,
      bestRight: kept?.bestRight ?? 0,
    });
    if (kept !== null) await this.putBack(kept);
    // Only now is anything opened: it opens where it was left.
    this.set({ phase: 'ready' });
    this.run = store.getState().quiz.run;
    this.stop = store.subscribe((state, before) => this.changed(state, before));
    this.tell();
  }

  /** Draws the quiz of this lesson and asks its first question. */
  startQuiz(seed = Math.floor(Math.random() * 1_000_000)): void {
    this.timed = this.items.map(() => null);
    this.quizBegan_ms = this.around.now();
    this.quiz().askSheet(this.drawn(seed), seed);
  }

  /** The last word: the page goes away. */
  end(): void {
    if (!this.open) return;
    this.open = false;
    clearTimeout(this.wait);
    this.stop();
    this.around.link.end(this.report());
    this.set({ phase: 'closed', heard: false });
  }

  /** Tells the system now, such as when the page is hidden. */
  readonly tell = (): void => {
    clearTimeout(this.wait);
    this.wait = undefined;
    if (this.open) this.around.link.tell(this.report());
  };

  /** A record that was written: answers go to the system as they are given, those of a test when it is handed in. */
  readonly wrote = (collection: string, text: string): void => {
    if (collection !== ANSWER_RECORDS || !this.open) return;
    if (this.around.store.getState().school?.judged === false) return;
    const kept = readAnswer(text);
    const i = this.items.findIndex((item) => item.id === kept?.item);
    const item = this.items[i];
    if (kept === null || item === undefined || kept.answer === null) return;
    const given: Given = { answer: kept.answer as Answer, certainty: kept.certainty as Certainty };
    const now = this.around.now();
    const timed = kept.mode === 'test' ? this.timed[i] : undefined;
    const times =
      timed == null
        ? { latency_s: (now - this.since_ms) / SECOND_ms, at_ms: now }
        : { latency_s: timed.latency_s, at_ms: this.quizBegan_ms + timed.after_s * SECOND_ms };
    this.around.link.answered(schoolAnswer(item, given, this.around.wordsOf(item), times));
    if (kept.mode === 'lesson') this.inLesson.set(i, given);
    this.soon();
  };

  private quiz() {
    const { store, ports, commands } = this.around;
    return createQuizCommands(store, ports, commands);
  }

  private set(part: Partial<SchoolState>): void {
    const { store } = this.around;
    const before = store.getState().school;
    store.setState({ school: { ...before, ...part } as SchoolState });
  }

  private drawn(seed: number): readonly Item[] {
    return drawItems(this.items, { count: this.items.length }, seed);
  }

  private soon(): void {
    this.wait ??= setTimeout(this.tell, GATHER_ms);
  }

  private changed(state: AppState, before: AppState): void {
    const { lesson: topic } = this.around.settings;
    const lessons = state.lessons.progress[topic] !== before.lessons.progress[topic];
    const { run } = state.quiz;
    const quiz = run !== before.quiz.run;
    if (!lessons && !quiz && state.route === before.route) return;
    const now = this.around.now();
    if (quiz) this.watchQuiz(run, now);
    const elsewhere =
      state.lessons.progress[topic]?.at !== before.lessons.progress[topic]?.at ||
      run?.at !== before.quiz.run?.at ||
      state.route !== before.route;
    if (elsewhere) this.since_ms = now;
    if (lessons || quiz) this.soon();
  }

  private watchQuiz(run: QuizRun | null, now: number): void {
    const before = this.run;
    this.run = run;
    if (run === null || before?.seed !== run.seed) return;
    run.given.forEach((given, k) => {
      if (given === null || given === before.given[k]) return;
      const i = this.numberOf(run.items[k]!);
      this.timed[i] = {
        given,
        latency_s: Math.round((now - this.since_ms) / SECOND_ms),
        after_s: Math.round((now - this.quizBegan_ms) / SECOND_ms),
      };
    });
    if (run.phase === 'done' && before.phase !== 'done') {
      const given = run.items.map((item, k) => ({
        item,
        given: run.given[k] ?? { answer: null, certainty: 1 as const },
      }));
      const { attempts, bestRight } = this.around.store.getState().school!;
      this.set({ attempts: attempts + 1, bestRight: Math.max(bestRight, resultsOf(given).right) });
    }
  }

  private numberOf(item: Item): number {
    return this.items.findIndex((each) => each.id === item.id);
  }

  private async putBack(kept: Resume): Promise<void> {
    const { store, ports, settings, putBack } = this.around;
    const { steps } = this.lesson!;
    const ids = (numbers: readonly number[]): string[] => numbers.flatMap((i) => steps[i]?.id ?? []);
    const progress: LessonProgress = {
      ...newProgress(settings.lesson, today()),
      done: ids(kept.done),
      tasks: ids(kept.tasks),
      at: steps[kept.at]?.id ?? null,
    };
    await ports.records.write(LESSON_RECORDS, settings.lesson, JSON.stringify(progress));
    const { lessons } = store.getState();
    store.setState({
      lessons: { ...lessons, progress: { ...lessons.progress, [settings.lesson]: progress } },
    });
    this.inLesson = new Map(kept.inLesson);
    for (const [i, given] of kept.inLesson)
      for (const { id, task, check } of steps) {
        if (check === this.items[i]!.id) putBack(`${settings.lesson}/${id}/check`, given);
        if (task?.type === 'predict' && task.item === this.items[i]!.id)
          putBack(`${settings.lesson}/${id}/task`, given);
      }
    if (kept.quiz !== null) this.putQuizBack(kept.quiz);
  }

  private putQuizBack({ seed, at, began_ms, given }: QuizResume): void {
    const sheet = this.drawn(seed);
    this.timed = [...given];
    this.quizBegan_ms = began_ms;
    this.quiz().askSheet(sheet, seed, {
      at,
      given: sheet.map((item) => given[this.numberOf(item)]?.given ?? null),
    });
  }

  private report(): SchoolReport {
    const { store, settings } = this.around;
    const state = store.getState();
    const { attempts, bestRight, mastery, count } = state.school!;
    const steps = this.lesson?.steps ?? [];
    const progress = state.lessons.progress[settings.lesson];
    const done = steps.filter((step) => progress?.done.includes(step.id)).length;
    const { run } = state.quiz;
    const asked = attempts > 0 ? count : (run?.given.filter((given) => given !== null).length ?? 0);
    const score = attempts === 0 || count === 0 ? null : bestRight / count;
    const whole = done === steps.length && (attempts > 0 || count === 0);
    const numbers = (ids: readonly string[] = []): number[] =>
      steps.flatMap((step, i) => (ids.includes(step.id) ? [i] : []));
    const resume: Resume = {
      at: Math.max(
        0,
        steps.findIndex((step) => step.id === progress?.at),
      ),
      done: numbers(progress?.done),
      tasks: numbers(progress?.tasks),
      attempts,
      bestRight,
      inLesson: this.inLesson,
      quiz:
        run === null || run.phase === 'done'
          ? null
          : { seed: run.seed, at: run.at, began_ms: this.quizBegan_ms, given: this.timed },
    };
    return {
      completed: whole,
      passed: score === null ? null : score >= mastery - 1e-9,
      score,
      attempts,
      progress: (done + asked) / Math.max(1, steps.length + count),
      place:
        run !== null && run.phase !== 'done' && state.route.place === 'quiz' ? 'quiz' : (progress?.at ?? ''),
      resume: this.limit === 0 ? '' : writeResume(resume, this.make, this.items, this.limit),
      session_s: (this.around.now() - this.began_ms) / SECOND_ms,
    };
  }
}

/** Waits for the machine; false when it cannot be had. */
function machineReady(store: AppStore): Promise<boolean> {
  const known = ({ document, loading }: AppState): boolean | null =>
    document !== null ? true : loading.phase === 'failed' ? false : null;
  const now = known(store.getState());
  if (now !== null) return Promise.resolve(now);
  return new Promise((resolve) => {
    const stop = store.subscribe((state) => {
      const answer = known(state);
      if (answer === null) return;
      stop();
      resolve(answer);
    });
  });
}
