/** A run of practice through the store: tries, what the stage is told, hints, undo, the clock, keeping and resuming. */
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { BlockingGraph } from '../../src/core/assembly';
import { documentGraph, graphSource, type MachineDocument } from '../../src/core/document';
import { ok } from '../../src/core/kernel';
import {
  type AppStore,
  createAppStore,
  createCommands,
  createPracticeCommands,
  type KeptRun,
  type Ports,
  PRACTICE_RECORDS,
  type RecordPort,
} from '../../src/store';
import { memoryRecords, noCourse, smallDocument } from '../panels/fixture';
import { course, topic } from '../panels/learn-fixture';

let document: MachineDocument;
let graph: BlockingGraph;
beforeAll(async () => {
  document = await smallDocument();
  graph = documentGraph(graphSource(document));
});

function bench(records: RecordPort = memoryRecords(), course: Ports['course'] = noCourse, of = document) {
  const store = createAppStore({ document: of });
  const ports = {
    graph: () => ({ result: Promise.resolve(ok(graph)), cancel: () => undefined }),
    records,
    course,
    keep: { read: () => null, write: () => true },
  } as unknown as Ports;
  const commands = createCommands(store, ports);
  return { store, commands, records, practice: createPracticeCommands(store, ports, commands) };
}

const now = (store: AppStore) => store.getState().practice;
const runOf = (store: AppStore) => now(store).run!;
const textsOf = async (records: RecordPort) => (await records.list(PRACTICE_RECORDS)).map(({ text }) => text);

describe('a run', () => {
  it('starts with everything at its seat, at an address of its own, and is not kept before anything is done', async () => {
    const { store, practice, records } = bench();
    await practice.start();
    expect(now(store).phase).toBe('run');
    expect(store.getState().route).toEqual({ place: 'practice', path: ['run', runOf(store).id] });
    expect(Math.max(...now(store).stage!.to)).toBe(0);
    practice.leave();
    expect(await textsOf(records)).toEqual([]);
    expect(store.getState().route).toEqual({ place: 'practice', path: [] });
    expect(now(store).stage).toBeNull();
  });

  it('says why a part cannot go, shows what holds it, and counts the mistake once', async () => {
    const { store, practice, commands } = bench();
    await practice.start();
    practice.tryUnit('end-right');
    const { answer, state } = runOf(store);
    expect(answer).toMatchObject({
      kind: 'refused',
      blockers: ['end-bolts'],
      reason: { key: 'practice.why.clamped', params: { by: ['end-bolts'] } },
    });
    expect(state.wrong).toHaveLength(1);
    const { stage } = now(store);
    const name = (part: number): string => document.machine.parts[part]!.id;
    expect(stage!.blockers.map(name)).toEqual([
      'end-bolts/01',
      'end-bolts/02',
      'end-bolts/03',
      'end-bolts/04',
    ]);
    expect(stage!.stuck!.parts.map(name)).toEqual(['end-right']);
    expect(stage!.laying).toBeNull();
    practice.tryUnit('end-right');
    expect(runOf(store).state.wrong).toHaveLength(1);
    // A pull on the stage is a try as well.
    commands.pull('end-bolts/02');
    expect(runOf(store).made).toHaveLength(1);
    practice.undo();
    // The drum stays: no mistake to try it.
    practice.tryUnit('body');
    expect(runOf(store).answer).toMatchObject({ kind: 'refused', counts: false });
    expect(runOf(store).state.wrong).toHaveLength(1);
  });

  it('holds what can go by its whole way, what cannot go by a little, and counts neither', async () => {
    const { store, practice, commands } = bench();
    await practice.start();
    commands.grip('end-bolts/02');
    const free = now(store).hold!;
    expect(free).toMatchObject({ partId: 'end-bolts/02', laid: now(store).stage!.to });
    expect(free.way!.parts).toContain(free.lead);
    expect(free.clear_m).toBeGreaterThan(0);
    commands.grip('end-right');
    expect(now(store).hold).toMatchObject({ way: null, partId: 'end-right' });
    // What stays is no hold: a drag on it turns the view.
    commands.grip('body');
    expect(now(store).hold).toBeNull();
    expect(runOf(store)).toMatchObject({ made: [], answer: { kind: 'begun' }, state: { wrong: [] } });
    practice.pause(true);
    commands.grip('end-bolts/02');
    expect(now(store).hold).toBeNull();
  });

  it('moves what can go, takes it back, and ends with a plain sum', async () => {
    const { store, practice } = bench();
    await practice.start();
    practice.tryUnit('end-right');
    practice.tryUnit('end-bolts');
    const bolt = document.machine.parts.findIndex((part) => part.id === 'end-bolts/01');
    expect(now(store).stage!.laying!.parts).toContain(bolt);
    expect(now(store).stage!.to[4 * bolt]).toBeGreaterThan(0.1);
    practice.undo();
    expect(now(store).stage!.back).toBe(true);
    expect(Math.max(...now(store).stage!.to)).toBe(0);
    expect(runOf(store).state).toMatchObject({ moves: [], undone: 1 });
    for (const unit of ['end-bolts', 'end-right', 'foot-1']) practice.tryUnit(unit);
    expect(runOf(store).score).toMatchObject({ wrong: 1, hints: 0, extra: 0, lost: 3 });
    // What is over stays over.
    practice.undo();
    practice.hint();
    expect(runOf(store).made).toHaveLength(3);
    expect(runOf(store).state.hints).toEqual([]);
  });

  it('puts together from where everything was laid, back to its seat', async () => {
    const { store, practice } = bench();
    practice.choose({ mode: 'put-together' });
    await practice.start();
    expect(Math.max(...now(store).stage!.to)).toBeGreaterThan(0.1);
    practice.tryUnit('end-bolts');
    expect(runOf(store).answer).toMatchObject({ kind: 'refused' });
    for (const unit of ['foot-1', 'end-right', 'end-bolts']) practice.tryUnit(unit);
    expect(runOf(store).score).not.toBeNull();
    expect(Math.max(...now(store).stage!.to.map(Math.abs))).toBe(0);
  });

  it('hints in three steps, the third takes the part in hand; a guided run names the next, an exam says nothing', async () => {
    const { store, practice } = bench();
    await practice.start();
    const levels = [1, 2, 3].map(() => {
      practice.hint();
      const { answer } = runOf(store);
      return answer.kind === 'hint' ? answer.hint.level : 0;
    });
    expect(levels).toEqual([1, 2, 3]);
    expect(store.getState().selectedPart).toBe('end-bolts/01');
    expect(runOf(store).next).toBeNull();

    practice.choose({ aid: 'guided' });
    await practice.start();
    expect(runOf(store).next).toBe('end-bolts');
    expect(runOf(store).state.hints).toEqual([]);
    practice.tryUnit('end-bolts');
    expect(runOf(store).next).toBe('end-right');

    practice.choose({ aid: 'exam' });
    await practice.start();
    practice.hint();
    expect(runOf(store).state.hints).toEqual([]);
    practice.tryUnit('end-right');
    expect(runOf(store).answer).toMatchObject({ kind: 'refused', reason: null, blockers: [] });
    expect(now(store).stage!.blockers).toEqual([]);
    expect(runOf(store).state.wrong[0]!.reason.key).toBe('practice.why.clamped');
  });

  it('can be ended before its goal, and is over then', async () => {
    const { store, practice, records } = bench();
    practice.choose({ aid: 'exam' });
    await practice.start();
    practice.tryUnit('end-right');
    practice.tryUnit('end-bolts');
    const { id } = runOf(store);
    practice.pause(true);
    practice.end();
    expect(runOf(store)).toMatchObject({ paused: false, score: { wrong: 1, moves: 1, leastMoves: 3 } });
    practice.tryUnit('end-right');
    expect(runOf(store).made).toHaveLength(1);
    const later = bench(records);
    await later.practice.resume(id);
    expect(runOf(later.store).score).toMatchObject({ wrong: 1, lost: 3 });
  });

  it('waits until every point is confirmed, and asks the same caution once a run', async () => {
    const { machine } = document;
    const warned = (caution: string) => ({
      ...document,
      machine: {
        ...machine,
        units: machine.units.map((unit) =>
          unit.id === 'body'
            ? unit
            : { ...unit, entries: unit.entries.map((entry) => ({ ...entry, cautions: [caution] })) },
        ),
      },
    });
    const { store, practice } = bench(undefined, undefined, warned('lock-out'));
    await practice.start();
    practice.tryUnit('end-bolts');
    expect(runOf(store).pending).toMatchObject({ unitId: 'end-bolts', confirmed: [] });
    practice.proceed();
    expect(runOf(store).made).toHaveLength(0);
    practice.confirm(0, true);
    practice.confirm(0, false);
    practice.proceed();
    expect(runOf(store).made).toHaveLength(0);
    practice.confirm(0, true);
    practice.proceed();
    expect(runOf(store).made).toHaveLength(1);
    practice.tryUnit('end-right');
    expect(runOf(store).pending).toBeNull();
    expect(runOf(store).made).toHaveLength(2);
  });
});

describe('the clock', () => {
  it('counts while the run is looked at, and stands in a pause and in other places', async () => {
    vi.useFakeTimers({ toFake: ['Date'] });
    try {
      const { store, practice, commands } = bench();
      await practice.start();
      const pass = (minutes: number): void => void vi.setSystemTime(Date.now() + 60_000 * minutes);
      const minutes = (): number => Math.round(runOf(store).state.elapsed_s / 60);
      pass(2);
      practice.tick();
      expect(minutes()).toBe(2);
      practice.pause(true);
      pass(10);
      practice.tryUnit('end-bolts');
      expect(runOf(store).made).toHaveLength(0);
      practice.pause(false);
      pass(1);
      practice.tryUnit('end-bolts');
      expect(minutes()).toBe(3);
      practice.watch(false);
      pass(10);
      practice.watch(true);
      commands.go('bench');
      expect(now(store).stage).toBeNull();
      pass(10);
      const { id } = runOf(store);
      await practice.resume(id);
      expect(minutes()).toBe(3);
      expect(runOf(store).made).toHaveLength(1);
    } finally {
      vi.useRealTimers();
    }
  });
});

describe('keeping', () => {
  it('takes a run up again after a reload, with everything where it lay', async () => {
    const first = bench();
    await first.practice.start();
    first.practice.tryUnit('end-right');
    first.practice.tryUnit('end-bolts');
    const { id } = runOf(first.store);
    const lay = now(first.store).stage!.to;

    const second = bench(first.records);
    await second.practice.open();
    expect(now(second.store).kept).toMatchObject([{ id, moves: 1, leastMoves: 3, score: null }]);
    await second.practice.resume(id);
    expect(runOf(second.store).state).toMatchObject({ wrong: [{ unitId: 'end-right' }] });
    expect(now(second.store).stage!.to).toEqual(lay);
    second.practice.tryUnit('end-right');
    second.practice.tryUnit('foot-2');
    expect(runOf(second.store).score).toMatchObject({ wrong: 1 });

    const third = bench(first.records);
    await third.practice.open();
    expect(now(third.store).kept![0]!.score).toMatchObject({ lost: 3 });
    await third.practice.forget(id);
    expect(now(third.store).kept).toEqual([]);
    expect(await textsOf(first.records)).toEqual([]);
  });

  it('refuses a run of a machine whose files have changed, and leaves out what cannot be read', async () => {
    const first = bench();
    await first.practice.start();
    first.practice.tryUnit('end-bolts');
    const { id } = runOf(first.store);
    await first.records.write(PRACTICE_RECORDS, 'broken', '{not json');
    await first.records.write(PRACTICE_RECORDS, 'odd', '{"version":1}');

    const other = { ...document, hash: 'another' };
    const second = bench(first.records, undefined, other);
    await second.practice.open();
    expect(now(second.store).kept!.map((kept: KeptRun) => kept.id)).toEqual([id]);
    await second.practice.resume(id);
    expect(now(second.store)).toMatchObject({
      phase: 'choose',
      run: null,
      refused: { id, faults: [{ expected: { key: 'practice.saved.model' } }] },
    });
    expect(second.store.getState().route.path).toEqual([]);
  });

  it('lets go of the stage when another machine comes', async () => {
    const { store, practice, commands } = bench();
    await practice.start();
    commands.setDocument({ ...document, hash: 'another' });
    expect(now(store)).toMatchObject({ run: null, stage: null, phase: 'choose' });
  });

  it('tells what failed when the graph cannot be had', async () => {
    const { store, commands } = bench();
    const ports = {
      graph: () => ({ result: Promise.reject(new Error('no')), cancel: () => undefined }),
      records: memoryRecords(),
    } as unknown as Ports;
    const practice = createPracticeCommands(store, ports, commands);
    await practice.start();
    expect(now(store).phase).toBe('failed');
  });
});

describe('lessons that help', () => {
  it('name the step about the parts of a wrong try, else none', async () => {
    const steps = topic.lesson.steps.map((step) =>
      step.id === 'set-it' ? { ...step, stage: { highlight: ['end-bolts'] } } : step,
    );
    const shows = { ...topic, lesson: { ...topic.lesson, steps } };
    for (const [loaded, found] of [
      [topic, null],
      [shows, { topic: 'small', step: 'set-it', title: 'Set it' }],
    ] as const) {
      const { practice } = bench(undefined, { ...course, loadTopic: () => Promise.resolve(loaded) });
      await practice.start();
      practice.tryUnit('end-right');
      expect(await practice.lessonHelp()).toEqual([found]);
    }
  });
});
