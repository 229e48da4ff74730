import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { fail, message } from '../../src/core/kernel';
import {
  createAppStore,
  createCommands,
  EXPERIMENTS,
  parametersOf,
  type Ports,
  selectShownRun,
  shotBase,
  type ShotBase,
  shotTransient,
  showShot,
  verdict,
} from '../../src/store';
import { memoryRecords, noSchool, noCourse, noClass, noJobs } from '../panels/fixture';
import { due, exciterDocument, fakeWorker, stillTake } from './fixture';

let document: MachineDocument;
let base: ShotBase;
beforeAll(async () => {
  document = await exciterDocument();
  base = shotBase(document)!;
});
beforeEach(() => showShot(null, 0));

async function bench() {
  const takes = {
    high: stillTake(parametersOf(base, { ...base.own, direction: 'high' }), 0.1),
    low: stillTake(parametersOf(base, base.own), 0.05),
  };
  const worker = fakeWorker(takes);
  const store = createAppStore({ document });
  const ports = {
    loadShipped: () => Promise.reject(new Error('not in this test')),
    importFiles: () => Promise.resolve(fail([])),
    keep: { read: () => null, write: () => true },
    graph: () => ({ result: Promise.resolve(null), cancel: () => undefined }),
    loadFaults: () => Promise.resolve(null),
    course: noCourse,
    jobs: noJobs,
    classroom: noClass,
    records: memoryRecords(),
    ...noSchool,
    shot: worker.port,
  } satisfies Ports;
  const commands = createCommands(store, ports);
  commands.watchShot(true);
  await due();
  return { store, commands, worker, takes, shot: () => store.getState().shot };
}

describe('watching the shot', () => {
  it('opens the exciter on the stage and puts everything back', async () => {
    const { store, commands } = await bench();
    expect([...store.getState().isolatedParts!]).toEqual(['exciter', 'shot']);
    expect(store.getState().ghostedParts.has('exciter')).toBe(true);
    expect(store.getState().hiddenParts.has('shot')).toBe(true);
    commands.watchShot(false);
    expect(store.getState().isolatedParts).toBeNull();
    expect(store.getState().ghostedParts.size + store.getState().hiddenParts.size).toBe(0);
  });

  it('shows the recording of the lever, from its beginning, and ends when the drum spins', async () => {
    const { store, commands, takes, shot } = await bench();
    expect(shotTransient.take).toBe(takes.high);
    commands.setExciter({ direction: 'low' });
    expect(selectShownRun(store.getState())?.take).toBe(takes.low);
    expect(shotTransient.take).toBe(takes.low);
    commands.scrubShot(0.7);
    expect(shotTransient.time_s).toBe(0.7);
    commands.scrubShot(99);
    expect(shotTransient.time_s).toBe(takes.low.duration_s);
    commands.playShot(true);
    expect(shot().playing).toBe(true);
    expect(shotTransient.time_s).toBe(0);
    commands.setSpinning(true);
    expect(shot().open).toBe(false);
    expect(shot().playing).toBe(false);
  });

  it('ends with Escape, and when everything is shown again', async () => {
    const { store, commands, shot } = await bench();
    commands.back();
    expect(shot().open).toBe(false);
    expect(store.getState().isolatedParts).toBeNull();
    commands.watchShot(true);
    commands.showAll();
    expect(shot()).toMatchObject({ open: false, before: null });
    expect(store.getState().hiddenParts.size).toBe(0);
  });

  it('says when no recording ships, and can run both ways itself', async () => {
    const worker = fakeWorker();
    const store = createAppStore({ document });
    const commands = createCommands(store, { shot: worker.port } as Ports);
    commands.watchShot(true);
    await due();
    expect(store.getState().shot.loading).toBe('none-shipped');
    const running = commands.runOwn();
    worker.answer(0.1);
    await due();
    expect(store.getState().shot.job?.id).toBe('own-low');
    worker.answer(0.05);
    await running;
    expect(worker.asked.map((p) => p.direction)).toEqual(['high', 'low']);
    expect(store.getState().shot.own.low?.outcome.ofOwnHigh).toBeLessThan(1);
    expect(store.getState().shot.own.high?.outcome.ofOwnHigh).toBe(1);
  });

  it('drops everything when another machine comes', async () => {
    const { store, commands, shot } = await bench();
    commands.setDocument({ ...document });
    expect(shot()).toMatchObject({ open: false, runs: [], own: { high: null, low: null } });
    expect(shotTransient.take).toBeNull();
    expect(store.getState().isolatedParts).toBeNull();
  });
});

describe('experiments', () => {
  it('change one thing of the machine as built, in the direction of the lever', async () => {
    const { commands, shot } = await bench();
    const own = { ...base.own, direction: 'high' as const };
    for (const id of EXPERIMENTS) {
      commands.draftRun(id);
      const { setup, prediction, comparedWith } = shot().draft!;
      const changed = Object.keys(own).filter(
        (key) => own[key as keyof typeof own] !== setup[key as keyof typeof own],
      );
      expect(
        changed.filter((key) => key !== 'spinUpTime_s'),
        id,
      ).toHaveLength(1);
      expect([prediction, comparedWith]).toEqual([null, 'high']);
    }
  });

  it('become a run of one’s own when changed, but not by another seed', async () => {
    const { commands, shot } = await bench();
    commands.draftRun('half-lost');
    commands.changeDraft({ seed: 7 });
    expect(shot().draft?.experiment).toBe('half-lost');
    commands.changeDraft({ friction: 0.5 });
    expect(shot().draft).toMatchObject({ experiment: 'free', setup: { seed: 7, friction: 0.5 } });
  });

  it('run in the worker, tell how far they are, and end shown beside the rest', async () => {
    const { store, commands, worker, shot } = await bench();
    commands.draftRun('half-lost');
    commands.predictRun('less');
    const running = commands.runDraft();
    worker.progress(0.25, 9);
    expect(shot().job).toMatchObject({ share: 0.25, left_s: 9 });
    expect(worker.asked[0]).toMatchObject({ direction: 'high', seed: 1, gravity: true });
    expect(worker.asked[0]!.shot.mass_kg).toBeCloseTo(30.1, 9);
    worker.answer(0.1);
    await running;
    const run = selectShownRun(store.getState())!;
    expect(run).toMatchObject({ experiment: 'half-lost', prediction: 'less', comparedWith: 'high' });
    expect(verdict(run.outcome.ofCompared!)).toBe('less');
    expect(run.outcome.ofOwnHigh).toBe(run.outcome.ofCompared);
    expect(shot()).toMatchObject({ job: null, draft: null, playing: true });
  });

  it('can be given up, and a late answer changes nothing', async () => {
    const { commands, worker, shot } = await bench();
    commands.draftRun('sticky');
    const running = commands.runDraft();
    commands.cancelRun();
    await running;
    expect(shot().job).toBeNull();
    expect(shot().runs).toEqual([]);
    worker.progress(0.9, 1);
    expect(shot().job).toBeNull();
    expect(shot().draft?.experiment).toBe('sticky');
  });

  it('list what is wrong with a setting', async () => {
    const { commands, worker, shot } = await bench();
    commands.draftRun('free');
    const running = commands.runDraft();
    worker.fail(fail([{ path: 'shot.mass_kg', expected: message('expected.within'), found: '0' }]));
    await running;
    expect(shot().faults.map((f) => f.path)).toEqual(['shot.mass_kg']);
    expect(shot().draft).not.toBeNull();
  });
});

describe('verdict', () => {
  it('counts the scatter between seeds as the same', () => {
    expect([0.89, 0.91, 1, 1.09, 1.11].map(verdict)).toEqual(['less', 'same', 'same', 'same', 'more']);
  });
});
