/** Commands of the quiz: drawing a sheet, answering, reviewing. Answers and review cards are kept as they are given. */
import {
  type Answer,
  type Certainty,
  drawItems,
  dueOn,
  GENERATOR_NAMES,
  generateItems,
  type Given,
  type Item,
  ITEM_KINDS,
  laidOut,
  readReviewCard,
  regenerate,
  resultOf,
  resultsOf,
  type ReviewCard,
  reviewed,
  type Subject,
} from '../../core/quiz';
import type { Commands } from '../commands';
import { ensureGraph } from '../graph/commands';
import { today } from '../lessons/day';
import { applyStage, giveStageBack } from '../lent-stage';
import { ensureCourse, ensureTopic } from '../lessons/commands';
import type { Ports } from '../ports';
import type { AppStore } from '../store';
import type { QuizMode, QuizRun, QuizSetup, QuizState } from './state';
import { ensurePlant } from './plant';
import { selectSubject, topicItems } from './subject';

export const REVIEW_RECORDS = 'review';
export const ANSWER_RECORDS = 'answers';
/** Tests handed in, one a record. */
export const TEST_RECORDS = 'tests';
/** Items asked in one review at most. */
const REVIEW_MOST = 20;
const MINUTE_ms = 60_000;

export function createQuizCommands(store: AppStore, ports: Ports, commands: Commands) {
  const get = (): QuizState => store.getState().quiz;
  const set = (part: Partial<QuizState>): void => store.setState({ quiz: { ...get(), ...part } });
  const setRun = (part: Partial<QuizRun>): void => {
    const { run } = get();
    if (run !== null) set({ run: { ...run, ...part } });
  };
  let count = 0;
  let began_ms = 0;
  const giveBack = (): void => giveStageBack(store, commands);

  /** Everything that a sheet can be drawn from: with the graph for questions of order, the bench for those of faults. */
  async function wholeSubject(): Promise<Subject | null> {
    await Promise.all([
      ensureGraph(store, ports).catch(() => null),
      ensurePlant(store, ports).catch(() => null),
    ]);
    return selectSubject(store.getState());
  }

  async function bankItems(topics: readonly string[], subject: Subject): Promise<readonly Item[]> {
    await ensureCourse(store, ports);
    const all = store.getState().lessons.course?.lessons.map((lesson) => lesson.id) ?? [];
    const wanted = topics.length === 0 ? all : all.filter((id) => topics.includes(id));
    const loaded = await Promise.all(wanted.map((topic) => ensureTopic(store, ports, topic)));
    return loaded.flatMap((topic) => (topic === null ? [] : topicItems(topic, subject)));
  }

  async function draw(setup: QuizSetup, seed: number): Promise<readonly Item[]> {
    const subject = await wholeSubject();
    if (subject === null) return [];
    const bank = setup.from === 'generated' ? [] : await bankItems(setup.topics, subject);
    // Half of a mixed sheet comes from the bank, more where there are too few of one sort.
    const made = setup.from === 'bank' ? [] : generateItems(subject, 3 * setup.count, seed, GENERATOR_NAMES);
    const kinds = setup.kinds.length === 0 ? ITEM_KINDS : setup.kinds;
    const of = (pool: readonly Item[]): readonly Item[] => pool.filter((item) => kinds.includes(item.kind));
    const half = Math.min(of(bank).length, Math.ceil(setup.count / 2));
    const fresh = of(made).slice(0, setup.count - (setup.from === 'both' ? half : 0));
    const { count } = setup;
    if (setup.from !== 'both') return drawItems(setup.from === 'bank' ? bank : fresh, { count, kinds }, seed);
    const known = drawItems(bank, { count: count - fresh.length, kinds }, seed);
    return drawItems([...known, ...fresh], { count, kinds }, seed);
  }

  function begin(mode: QuizMode, items: readonly Item[], seed: number, minutes: number | null): void {
    began_ms = Date.now();
    set({
      run: {
        mode,
        seed,
        items,
        given: items.map(() => null),
        at: 0,
        phase: 'asking',
        endsAt_ms: minutes === null ? null : Date.now() + minutes * MINUTE_ms,
      },
    });
    if (items.length > 0) {
      commands.go('quiz', 'run');
      stageOf(items[0]!);
    }
  }

  function stageOf(item: Item): void {
    applyStage(store, item.stage ?? {});
  }

  const newSeed = (): number => Math.floor(Math.random() * 1_000_000);

  /** Keeps one answer and moves the item's review card. */
  function keepAnswer(item: Item, given: Given, mode: QuizMode | 'lesson'): void {
    const row = resultOf(item, given);
    const day = today();
    const at_ms = Date.now();
    const key = `${String(at_ms).padStart(15, '0')}-${String(count++).padStart(4, '0')}`;
    void ports.records.write(
      ANSWER_RECORDS,
      key,
      JSON.stringify({
        version: 1,
        item: item.id,
        kind: item.kind,
        origin: item.origin,
        answer: given.answer,
        certainty: given.certainty,
        right: row.marked.right,
        mark: row.mark,
        mode,
        day,
        at_ms,
      }),
    );
    if (given.answer === null) return;
    const before = get().cards[item.id];
    // Generated questions are endless: only those that went wrong come back.
    if (item.origin.from === 'generator' && before === undefined && row.marked.right) return;
    const card = reviewed(item.id, before, row.marked.right, given.certainty, day);
    set({ cards: { ...get().cards, [item.id]: card } });
    void ports.records.write(REVIEW_RECORDS, item.id, JSON.stringify(card));
  }

  /** Keeps what a test came to. */
  function keepTest({ items, given, seed }: QuizRun): void {
    const { right, mark, best, count } = resultsOf(
      items.map((item, i) => ({ item, given: given[i] ?? { answer: null, certainty: 1 } })),
    );
    const topics = [...new Set(items.flatMap(({ origin }) => (origin.from === 'bank' ? [origin.topic] : [])))];
    const at_ms = Date.now();
    void ports.records.write(
      TEST_RECORDS,
      `${String(at_ms).padStart(15, '0')}-${seed}`,
      JSON.stringify({ version: 1, topics, count, right, mark, best, seed, began_ms, at_ms }),
    );
  }

  return {
    async load(): Promise<void> {
      await ensureCourse(store, ports);
      if (get().loaded) return;
      const cards: Record<string, ReviewCard> = {};
      for (const { text } of await ports.records.list(REVIEW_RECORDS)) {
        const card = readReviewCard(text);
        if (card !== null) cards[card.item] = card;
      }
      set({ cards: { ...cards, ...get().cards }, loaded: true });
    },
    change: (setup: Partial<QuizSetup>): void => set({ setup: { ...get().setup, ...setup } }),
    /** Draws a sheet and asks its first question. @param seed to ask the same sheet again */
    async start(mode: 'practice' | 'test', seed = newSeed()): Promise<void> {
      if (get().busy) return;
      set({ busy: true });
      const { setup } = get();
      const items = await draw(setup, seed);
      set({ busy: false });
      begin(mode, items, seed, mode === 'test' ? setup.minutes : null);
    },
    /** Asks what is due today. */
    async startReview(): Promise<void> {
      if (get().busy) return;
      set({ busy: true });
      const seed = newSeed();
      const due = dueOn(Object.values(get().cards), today()).slice(0, REVIEW_MOST);
      const subject = await wholeSubject();
      const bank = subject === null ? [] : await bankItems([], subject);
      const byId = new Map(bank.map((item) => [item.id, item]));
      const items = due.flatMap(({ item }, i) => {
        const found = byId.get(item) ?? (subject === null ? null : regenerate(subject, item));
        return found === null ? [] : [laidOut(found, seed + i)];
      });
      set({ busy: false });
      begin('review', items, seed, null);
    },
    /** Asks a sheet that was drawn elsewhere, as a test; `begun`: where it was left at an earlier visit. */
    askSheet(
      items: readonly Item[],
      seed: number,
      begun?: { readonly at: number; readonly given: readonly (Given | null)[] },
    ): void {
      begin('test', items, seed, null);
      if (begun === undefined) return;
      setRun({ given: items.map((_, i) => begun.given[i] ?? null) });
      if (items[begun.at] !== undefined) this.ask(begun.at);
    },
    /** Answers the question at hand. In a test nothing is told and the next one comes. */
    answer(answer: Answer | null, certainty: Certainty): void {
      const { run } = get();
      if (run === null || run.phase !== 'asking') return;
      const given: Given = { answer, certainty };
      const all = run.given.map((each, i) => (i === run.at ? given : each));
      if (run.mode === 'test') {
        setRun({ given: all });
        if (run.at + 1 < run.items.length) this.ask(run.at + 1);
        return;
      }
      keepAnswer(run.items[run.at]!, given, run.mode);
      setRun({ given: all, phase: 'told' });
    },
    /** Goes to another question of the run. */
    ask(at: number): void {
      const { run } = get();
      const item = run?.items[at];
      if (run === null || item === undefined || run.phase === 'done') return;
      const told = run.mode !== 'test' && run.given[at] !== null;
      setRun({ at, phase: told ? 'told' : 'asking' });
      stageOf(item);
    },
    /** Ends the run and shows its results; a test's answers are kept now. */
    finish(): void {
      const { run } = get();
      if (run === null || run.phase === 'done') return;
      if (run.mode === 'test')
        run.given.forEach((given, i) => {
          keepAnswer(run.items[i]!, given ?? { answer: null, certainty: 1 }, 'test');
        });
      if (run.mode === 'test') keepTest(run);
      setRun({ phase: 'done' });
      giveBack();
      commands.go('quiz', 'results');
    },
    /** Leaves the run without results. */
    leave(): void {
      set({ run: null });
      giveBack();
      commands.go('quiz');
    },
    /** A question inside a lesson. */
    answerInLesson: (item: Item, given: Given): void => keepAnswer(item, given, 'lesson'),
    /** Draws a sheet for printing. */
    async makePaper(seed = newSeed()): Promise<void> {
      if (get().busy) return;
      set({ busy: true });
      const items = await draw(get().setup, seed);
      set({ busy: false, paper: { seed, items } });
      commands.go('quiz', 'paper', String(seed));
    },
    setStage: stageOf,
    leaveStage: giveBack,
  };
}
