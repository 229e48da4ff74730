/** What is shared by all connections of a class: who is on line, and who is to be told what when something happened. */
import type { Verdict } from '../../core/classroom';
import {
  type ClassEvent,
  type HostMessage,
  type HostPage,
  instructorView,
  learnerView,
  sealedList,
  withoutKey,
} from '../../core/classroom';
import type { ClassStore } from './class-store';
import { type Draft, keepDraft, readDraft } from './draft-file';
import type { Stock } from './stock';

/** One connection. */
export interface Line {
  say(message: HostMessage): void;
  /** Words that go to many are put into text once. */
  sayText(text: string): void;
}

export interface Desk {
  readonly store: ClassStore;
  readonly stock: Stock;
  /** The sheet that was drawn and not yet begun. */
  readonly draft: () => Draft;
  /** Another sheet, or none; resolves once it is on the disk. */
  setDraft(draft: Draft): Promise<void>;
  /** Puts an event on the disk and tells those whom it concerns. */
  put(event: ClassEvent): Promise<Verdict>;
  /** Adds a phone; the function returned takes it off. */
  addLearner(id: string, line: Line): () => void;
  addInstructor(line: Line): () => void;
  /** Tells instructors what is new, soon. */
  turnPage(): void;
}

/** Counts come in by the dozen; instructors are told this often at most. */
const PAGE_EVERY_ms = 150;

interface DeskOptions {
  /** Data folder. */
  readonly folder: string;
  readonly store: ClassStore;
  readonly stock: Stock;
  readonly code: string;
  readonly addresses: () => readonly string[];
}

export function openDesk({ folder, store, stock, code, addresses }: DeskOptions): Desk {
  let draft = readDraft(folder);
  // One writing after the other: the last sheet is the one that stays.
  let keeping = Promise.resolve();
  const learners = new Map<string, Set<Line>>();
  const instructors = new Set<Line>();
  let pageWaits = false;

  const tellLearner = (id: string): void => {
    const view = learnerView(store.state(), id);
    for (const line of learners.get(id) ?? [])
      line.say(
        view === null
          ? { type: 'refused', id: null, why: { key: 'class.refused.unknown' } }
          : { type: 'view', view },
      );
  };
  const tellAll = (): void => {
    for (const id of learners.keys()) tellLearner(id);
  };
  const page = (): HostPage => ({
    view: instructorView(store.state(), new Set(learners.keys())),
    draft:
      draft === null
        ? null
        : sealedList(draft).map(({ item, from, topic }) => ({ item: withoutKey(item), from, topic })),
    past: store.past(),
    stock: stock.about,
    code,
    addresses: addresses(),
    learnersOnline: learners.size,
  });
  const turnPage = (): void => {
    if (pageWaits || instructors.size === 0) return;
    pageWaits = true;
    setTimeout(() => {
      pageWaits = false;
      const text = JSON.stringify({ type: 'page', page: page() } satisfies HostMessage);
      for (const line of instructors) line.sayText(text);
    }, PAGE_EVERY_ms);
  };

  const desk: Desk = {
    store,
    stock,
    draft: () => draft,
    setDraft(next) {
      draft = next;
      keeping = keeping.then(() => keepDraft(folder, next));
      return keeping;
    },
    turnPage,
    async put(event) {
      const verdict = await store.put(event);
      if (verdict.verdict !== 'take') return verdict;
      if (event.type === 'answer') {
        // In a team the others' phones show what was answered.
        const { learners: all, settings } = store.state();
        const seat = all[event.learner]?.seat;
        if (settings.mode === 'team')
          for (const id of learners.keys()) if (all[id]?.seat === seat) tellLearner(id);
      } else if (event.type === 'join') tellLearner(event.learner);
      else if (event.type !== 'hands' && event.type !== 'paper') tellAll();
      turnPage();
      return verdict;
    },
    addLearner(id, line) {
      const lines = learners.get(id) ?? new Set<Line>();
      learners.set(id, lines.add(line));
      turnPage();
      return () => {
        lines.delete(line);
        if (lines.size === 0 && learners.get(id) === lines) learners.delete(id);
        turnPage();
      };
    },
    addInstructor(line) {
      instructors.add(line);
      turnPage();
      return () => instructors.delete(line);
    },
  };
  return desk;
}
