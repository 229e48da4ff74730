/** Commands of practice: choosing a task, trying parts, confirming what is held, hints, pauses, keeping. */
import {
  askHint,
  isDone,
  layMove,
  type Legal,
  leastWalk,
  practiceBench,
  type PracticeBench,
  type PracticeState,
  type Refused,
  resumePractice,
  scoreOf,
  startLaid,
  startPractice,
  tryUnit,
  undoMove,
  withTime,
} from '../../core/assembly';
import type { Message } from '../../core/kernel';
import type { Commands } from '../commands';
import { ensureGraph } from '../graph/commands';
import { ensureCourse, ensureTopic } from '../lessons/commands';
import { applyStage, giveStageBack } from '../lent-stage';
import type { Ports } from '../ports';
import type { AppStore } from '../store';
import { requestFrame } from '../transient';
import { keptOf, PRACTICE_RECORDS, readKept, writeKept } from './kept';
import { type LessonHelp, lessonFor } from './lesson-help';
import { confirmations } from './confirmations';
import { holdOf } from './hold';
import { atRest, likeTheFirst, lookingAt, moving, partsOfBodies, stuckAt } from './stage';
import type { KeptRun, MadeMove, PracticeRun, PracticeSlice, PracticeStage, PracticeTask } from './state';

/** Finished runs that are kept; older ones make room. */
const FINISHED_MOST = 20;

export function createPracticeCommands(store: AppStore, ports: Ports, commands: Commands) {
  const get = (): PracticeSlice => store.getState().practice;
  const set = (part: Partial<PracticeSlice>): void => {
    store.setState({ practice: { ...get(), ...part } });
    requestFrame();
  };
  /** When the clock of the run was last read; null: it stands. */
  let read_ms: number | null = null;
  let bench: PracticeBench | null = null;

  /** The bench of the machine at hand, built once for it. */
  async function benchNow(): Promise<PracticeBench | null> {
    const graph = await ensureGraph(store, ports).catch(() => null);
    const { document } = store.getState();
    if (graph === null || document === null) return null;
    if (bench?.machine !== document.machine) bench = practiceBench(document.machine, graph, document.hash);
    return bench;
  }

  /** The state with the time that has passed since the clock was last read. */
  function timed(state: PracticeState): PracticeState {
    if (read_ms === null) return state;
    const now_ms = Date.now();
    const passed_s = Math.max(0, now_ms - read_ms) / 1000;
    read_ms = now_ms;
    return withTime(state, state.elapsed_s + passed_s);
  }

  function keep(run: PracticeRun): void {
    const { moves, wrong, hints, undone } = run.state;
    if (moves.length + wrong.length + hints.length + undone === 0) return;
    const kept = keptOf(run, Date.now(), leastWalk(run.bench, run.state.goal).moves.length);
    const known = get().kept;
    if (known !== null) {
      const others = known.filter((each) => each.id !== run.id);
      const old = others.filter((each) => each.score !== null).slice(FINISHED_MOST);
      for (const { id } of old) void ports.records.remove(PRACTICE_RECORDS, id);
      set({ kept: [kept, ...others.filter((each) => !old.includes(each))] });
    }
    void ports.records.write(PRACTICE_RECORDS, run.id, writeKept(kept));
  }

  function change(part: Partial<PracticeRun>, stage?: PracticeStage): void {
    const { run } = get();
    if (run === null) return;
    const next = { ...run, ...part };
    const guided = next.task.aid === 'guided' && next.score === null;
    const moved = next.state.moves !== run.state.moves;
    set({
      run: {
        ...next,
        serial: part.answer === undefined ? run.serial : run.serial + 1,
        next: !guided ? null : moved ? nextPart(next.bench, next.state) : run.next,
      },
      ...(stage === undefined ? {} : { stage }),
    });
  }

  const nextPart = (on: PracticeBench, state: PracticeState): string | null =>
    askHint(on, state)?.hint.unitId ?? null;

  const startOf = ({ bench: on, state }: PracticeRun) =>
    startLaid(on, store.getState().document!.explode, state);
  const laidNow = (run: PracticeRun) => run.made.at(-1)?.laying.to ?? startOf(run);

  /** Whether a run goes on: it is of the machine at hand, not paused, not finished. */
  function live(): PracticeRun | null {
    const { run } = get();
    const { document } = store.getState();
    const open = run !== null && run.bench.machine === document?.machine;
    return open && !run.paused && run.score === null ? run : null;
  }

  /** The person has gone to another place: the clock stands, the stage is theirs again. */
  function stepOut(): void {
    const { run } = get();
    if (run !== null && run.score === null) {
      change({ state: timed(run.state), pending: null });
      keep(get().run!);
    }
    read_ms = null;
    set({ stage: null });
    giveStageBack(store, commands);
  }

  /** Until the stage is given back: another place or another machine ends the run's hold on it. */
  let stopWatching = (): void => undefined;
  function watchStage(): void {
    stopWatching();
    const { document } = store.getState();
    stopWatching = store.subscribe((s, before) => {
      if (s.practice.stage === null) return stopWatching();
      const { grip, pull } = s.practice;
      if (grip !== null && grip !== before.practice.grip) hold(grip.partId);
      if (pull !== null && pull !== before.practice.pull) attempt(pull.partId);
      if (s.document === document && s.route.place === 'practice') return;
      stopWatching();
      if (s.document === document) return stepOut();
      read_ms = null;
      set({ run: null, stage: null, phase: 'choose' });
      giveStageBack(store, commands);
    });
  }

  function hold(partId: string): void {
    const run = live();
    const { stage } = get();
    const { document } = store.getState();
    if (run === null || stage === null || document === null) return;
    set({ hold: holdOf(run, stage, document.explode, partId) });
  }

  function begin(run: PracticeRun): void {
    applyStage(store, { labels: true });
    read_ms = run.paused || run.score !== null ? null : Date.now();
    set({ phase: 'run', run, refused: null, stage: atRest(run, startOf(run)) });
    commands.select(null);
    commands.go('practice', 'run', run.id);
    watchStage();
  }

  /** Makes a legal move: everything that it needs is confirmed. */
  function make(run: PracticeRun, legal: Legal, next: PracticeState): void {
    const { explode } = store.getState().document!;
    const from = laidNow(run);
    const laying = layMove(run.bench, explode, run.state, legal.move, legal.step, from);
    const state = timed(next);
    const score = legal.done ? scoreOf(run.bench, state) : null;
    if (score !== null) read_ms = null;
    commands.select(null);
    change(
      {
        state,
        made: [...run.made, { legal, from, laying }],
        pending: null,
        score,
        answer: { kind: 'moved', unitIds: legal.move.bodies, note: legal.note, after: legal.after },
      },
      moving(from, laying, false),
    );
    keep(get().run!);
  }

  function attempt(unitId: string): void {
    const run = live();
    const { stage } = get();
    const { document } = store.getState();
    if (run === null || stage === null || document === null) return;
    const { outcome, state } = tryUnit(run.bench, timed(run.state), unitId);
    if (outcome.kind === 'legal') {
      const pending = { unitId, legal: outcome, next: state, confirmed: [] };
      if (confirmations(outcome, run.made).length === 0) return make(run, outcome, state);
      change({ pending, state: { ...state, moves: run.state.moves } });
      return;
    }
    const exam = run.task.aid === 'exam' && outcome.counts;
    const blockers = exam ? [] : namedFirst(outcome);
    change(
      {
        state,
        pending: null,
        answer: {
          kind: 'refused',
          unitId,
          reason: exam ? null : outcome.reason,
          blockers,
          counts: outcome.counts,
        },
      },
      stuckAt(run, stage, document.explode, unitId, blockers),
    );
    keep(get().run!);
  }

  return {
    /** Reads what was kept, and fetches what blocks what ahead of the first run. */
    async open(): Promise<void> {
      void benchNow();
      if (get().kept !== null) return;
      const [records, lasting] = await Promise.all([
        ports.records.list(PRACTICE_RECORDS),
        ports.records.lasting(),
      ]);
      const kept = records.flatMap(({ text }) => readKept(text) ?? []);
      kept.sort((a, b) => b.saved_ms - a.saved_ms);
      if (get().kept === null) set({ kept, lasting });
    },
    choose: (task: Partial<PracticeTask>): void => set({ task: { ...get().task, ...task } }),
    /** What blocks what, for choosing a goal; null until it is known. */
    bench: benchNow,
    async start(): Promise<void> {
      if (get().phase === 'opening') return;
      set({ phase: 'opening', refused: null });
      const on = await benchNow();
      if (on === null) return set({ phase: store.getState().graph.phase === 'failed' ? 'failed' : 'choose' });
      const { task } = get();
      const state = startPractice(on, task.mode, task.goal);
      const started_ms = Date.now();
      begin({
        id: `${on.machine.id}-${started_ms.toString(36)}`,
        task,
        started_ms,
        bench: on,
        state,
        made: [],
        answer: { kind: 'begun' },
        serial: 0,
        pending: null,
        next: task.aid === 'guided' ? nextPart(on, state) : null,
        paused: false,
        score: null,
      });
    },
    /** Takes a kept run up again; where it cannot be, `refused` says why. */
    async resume(id: string): Promise<void> {
      const known = get().run;
      if (known?.id === id && known.bench.machine === store.getState().document?.machine)
        return begin({ ...known, paused: false, pending: null });
      if (get().phase === 'opening') return;
      set({ phase: 'opening', refused: null });
      const on = await benchNow();
      const text = await ports.records.read(PRACTICE_RECORDS, id);
      const kept = text === null ? null : readKept(text);
      if (on === null || kept === null) {
        set({ phase: store.getState().graph.phase === 'failed' ? 'failed' : 'choose' });
        commands.go('practice');
        return;
      }
      const read = resumePractice(on, kept.run);
      if (!read.ok) {
        set({ phase: 'choose', run: null, stage: null, refused: { id, faults: read.faults } });
        commands.go('practice');
        return;
      }
      const { explode } = store.getState().document!;
      let state = startPractice(on, kept.task.mode, kept.task.goal);
      let from = startLaid(on, explode, state);
      const made: MadeMove[] = [];
      for (const move of read.value.moves) {
        const { outcome, state: next } = tryUnit(on, state, move.lead);
        if (outcome.kind === 'refused') break;
        const laying = layMove(on, explode, state, outcome.move, outcome.step, from);
        made.push({ legal: outcome, from, laying });
        from = laying.to;
        state = next;
      }
      const done = kept.score !== null || isDone(on, read.value);
      begin({
        id,
        task: kept.task,
        started_ms: kept.started_ms,
        bench: on,
        state: read.value,
        made,
        answer: { kind: 'begun' },
        serial: 0,
        pending: null,
        next: kept.task.aid === 'guided' && !done ? nextPart(on, read.value) : null,
        paused: false,
        score: done ? scoreOf(on, read.value) : null,
      });
    },
    async forget(id: string): Promise<void> {
      set({ kept: (get().kept ?? []).filter((each: KeptRun) => each.id !== id) });
      await ports.records.remove(PRACTICE_RECORDS, id);
    },
    /** Takes a unit in hand: its part is selected; `show`: the camera goes there. */
    take(unitId: string, show = true): void {
      const run = live();
      const { stage } = get();
      if (run === null || stage === null) return;
      const parts = partsOfBodies(run.bench, [unitId]);
      const first = parts[0];
      if (first === undefined) return;
      commands.select(run.bench.machine.parts[first]!.id);
      if (show) set({ stage: lookingAt(stage, parts, []) });
    },
    /** Brings what stands in the way into view, with those alike, dashed. */
    lookAtBlocker(unitId: string): void {
      const { run, stage } = get();
      if (run === null || stage === null || run.answer.kind !== 'refused') return;
      const others = run.answer.blockers.filter((id) => id !== unitId);
      const parts = partsOfBodies(run.bench, likeTheFirst(run.bench, [unitId, ...others]));
      set({ stage: lookingAt(stage, parts, parts) });
    },
    /** Tries to take a unit off, or to put it on. */
    tryUnit: attempt,
    /** Confirms a point of the move that waits, or takes that back. */
    confirm(point: number, on: boolean): void {
      const { pending } = live() ?? {};
      if (pending == null) return;
      const others = pending.confirmed.filter((each) => each !== point);
      change({ pending: { ...pending, confirmed: on ? [...others, point] : others } });
    },
    /** Makes the move that waits, when everything that it needs is confirmed. */
    proceed(): void {
      const run = live();
      const pending = run?.pending;
      if (run === null || pending == null) return;
      const { legal, confirmed, next } = pending;
      if (confirmations(legal, run.made).some((_, point) => !confirmed.includes(point))) return;
      make(run, legal, { ...run.state, moves: next.moves });
    },
    /** Puts the tools down again: the move that waits is not made. */
    desist: (): void => change({ pending: null }),
    undo(): void {
      const run = live();
      const last = run?.made.at(-1);
      if (run === null || last === undefined) return;
      commands.select(null);
      change(
        {
          state: undoMove(timed(run.state)),
          made: run.made.slice(0, -1),
          pending: null,
          answer: { kind: 'back', unitIds: last.legal.move.bodies },
        },
        moving(last.from, last.laying, true),
      );
      keep(get().run!);
    },
    hint(): void {
      const run = live();
      if (run === null || run.task.aid !== 'free') return;
      const asked = askHint(run.bench, timed(run.state));
      if (asked === null) return;
      change({ state: asked.state, answer: { kind: 'hint', hint: asked.hint } });
      // The third step names the part: it may as well be seen.
      if (asked.hint.level === 3) this.take(asked.hint.unitId);
      keep(get().run!);
    },
    pause(on: boolean): void {
      const { run } = get();
      if (run === null || run.score !== null || run.paused === on) return;
      change({ state: timed(run.state), paused: on, pending: null });
      read_ms = on ? null : Date.now();
      if (on) keep(get().run!);
    },
    /** Ends the run before its goal: what went wrong is told now, and it is not gone on with. */
    end(): void {
      const { run } = get();
      if (run === null || run.score !== null) return;
      const state = timed(run.state);
      read_ms = null;
      commands.select(null);
      change({ state, paused: false, pending: null, score: scoreOf(run.bench, state) });
      keep(get().run!);
    },
    /** Reads the clock, so that the time shown goes on. */
    tick(): void {
      const run = live();
      if (run !== null && read_ms !== null) change({ state: timed(run.state) });
    },
    /** Leaves the run for the list of tasks; it is kept and can be taken up again. */
    leave(): void {
      stepOut();
      set({ run: null, phase: 'choose' });
      commands.go('practice');
    },
    /** The page is looked at again, or no longer: the clock goes or stands. */
    watch(looked: boolean): void {
      this.tick();
      read_ms = looked && live() !== null && get().stage !== null ? Date.now() : null;
    },
    /** Steps of lessons that help with what went wrong, by the number of the wrong try. */
    async lessonHelp(): Promise<readonly (LessonHelp | null)[]> {
      const { run } = get();
      if (run === null) return [];
      await ensureCourse(store, ports);
      const ids = store.getState().lessons.course?.lessons.map((lesson) => lesson.id) ?? [];
      const topics = (await Promise.all(ids.map((id) => ensureTopic(store, ports, id)))).filter(
        (topic) => topic !== null,
      );
      return run.state.wrong.map(({ unitId, reason }) =>
        lessonFor(topics, run.bench.machine, [unitId, ...namedIn(reason)]),
      );
    },
  };
}

/** Units that a reason names as standing in the way. */
function namedIn({ params }: Message): readonly string[] {
  const by = params?.['by'];
  return Array.isArray(by) ? (by as readonly unknown[]).filter((id) => typeof id === 'string') : [];
}

/** What stands in the way, what the reason names first. */
const namedFirst = ({ reason, blockers }: Refused): readonly string[] => [
  ...new Set([...namedIn(reason).filter((id) => blockers.includes(id)), ...blockers]),
];
