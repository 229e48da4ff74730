/** Commands of the jobs: every change kept at once, hold points, files in and out without loss, the stage given back. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { exportProgress, importProgress, type JobProgress } from '../../src/core/jobs';
import {
  createAppStore,
  createCommands,
  createJobCommands,
  JOB_DAMAGED,
  JOB_HISTORY,
  JOB_RECORDS,
  type Ports,
  type RecordPort,
} from '../../src/store';
import { memoryRecords, smallDocument } from '../panels/fixture';
import { smallJobs } from './small-job';

let document: MachineDocument;
beforeAll(async () => {
  document = await smallDocument();
});

/** The app as it is after a reload: a store of its own over the same records. */
function bench(records: RecordPort = memoryRecords()) {
  const ports = {
    records,
    jobs: smallJobs(document),
    keep: { read: () => null, write: () => true },
  } as unknown as Ports;
  const store = createAppStore({ document });
  const commands = createCommands(store, ports);
  const jobs = createJobCommands(store, ports, commands);
  return { store, jobs, records, state: () => store.getState().jobs };
}

async function secured(records?: RecordPort) {
  const made = bench(records);
  await made.jobs.open('end-off');
  made.jobs.fill('locked-out', true);
  expect(made.jobs.happen({ type: 'tick', stepId: 'secure' })).toBe(true);
  return made;
}
/** Lets writes that were begun come to their end. */
const due = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
const keptText = async (records: RecordPort): Promise<string> =>
  (await records.list(JOB_RECORDS))[0]?.text ?? '';

describe('a sheet under way', () => {
  it('holds at its hold points and goes on after a reload where it stood', async () => {
    const first = bench();
    await first.jobs.open('end-off');
    expect(first.state().progress).toBeNull();
    expect(first.jobs.happen({ type: 'tick', stepId: 'look' })).toBe(false);
    expect(first.jobs.happen({ type: 'tick', stepId: 'secure' })).toBe(false);
    expect(first.state().kept).toEqual([]);
    first.jobs.fill('locked-out', true);
    first.jobs.fill('hours', 3600 * 1234.5);
    first.jobs.happen({ type: 'tick', stepId: 'secure' });
    first.jobs.happen({ type: 'note', stepId: 'secure', text: 'lamp broken' });
    await due();

    const again = bench(first.records);
    await again.jobs.open('end-off');
    expect(again.state().progress).toEqual(first.state().progress);
    expect(again.state().progress).toMatchObject({
      done: ['secure'],
      values: { 'locked-out': true, hours: 3600 * 1234.5 },
      notes: { secure: 'lamp broken' },
    });
  });

  it('makes its numbers anew with the values: the manual’s torque, pass by pass', async () => {
    const { jobs, state } = await secured();
    const bolts = () => state().open?.sheet.steps.find((s) => s.id === 'tighten')?.bolts[0];
    expect(bolts()?.ownTorque_Nm).toBeNull();
    jobs.fill('torque-end-bolts', 85);
    expect(bolts()?.ownTorque_Nm).toBe(85);
    jobs.fill('torque-end-bolts', null);
    expect(bolts()?.ownTorque_Nm).toBeNull();
  });

  it('says when the browser does not keep it', async () => {
    const refusing = { ...memoryRecords(), write: () => Promise.resolve(false) };
    const { jobs, state } = bench(refusing);
    await jobs.open('end-off');
    jobs.fill('locked-out', true);
    await due();
    expect(state().keptSafely).toBe(false);
  });

  it('a fresh sheet stands beside the old one, and either can be taken up', async () => {
    const { jobs, state } = await secured();
    const old = state().progress!;
    jobs.startAnew();
    const fresh = state().progress!;
    expect(fresh.id).not.toBe(old.id);
    expect(fresh.done).toEqual([]);
    expect(state().kept.map((p) => p.id)).toEqual([fresh.id, old.id]);
    await jobs.takeUp(old.id);
    expect(state().progress).toEqual(old);
  });
});

describe('the history', () => {
  it('takes a filed job with what was measured, and gives it back', async () => {
    const { jobs, state, records } = await secured();
    const { id } = state().progress!;
    jobs.measure({ high: { amplitude_m: 0.0017, vibrations_per_minute: 1800 }, low: null });
    expect(await jobs.file()).toBe(true);
    expect(state().progress).toBeNull();
    expect(await records.list(JOB_RECORDS)).toEqual([]);
    expect(state().history).toMatchObject([
      { id, complete: false, measured: { high: { amplitude_m: 0.0017 } } },
    ]);

    const again = bench(records);
    await again.jobs.load();
    expect(again.state().history).toEqual(state().history);
    await again.jobs.reopen(id);
    expect(again.state().progress).toMatchObject({ id, done: ['secure'] });
    expect(again.state().measured.high?.vibrations_per_minute).toBe(1800);
    expect(again.state().history).toHaveLength(1);
  });

  it('a sheet stays under way when the history could not be kept', async () => {
    const records = memoryRecords();
    const { jobs } = await secured({
      ...records,
      write: (collection, key, text) =>
        collection === JOB_HISTORY ? Promise.resolve(false) : records.write(collection, key, text),
    });
    await due();
    await jobs.file();
    expect(await records.list(JOB_RECORDS)).toHaveLength(1);
  });
});

describe('files', () => {
  const whole = async (): Promise<{ text: string; progress: JobProgress }> => {
    const { jobs, state } = await secured();
    return { text: jobs.exportText()!, progress: state().progress! };
  };

  it('a whole file is taken over; one that is here already changes nothing', async () => {
    const { text, progress } = await whole();
    const { jobs, state } = bench();
    await jobs.importFile('sheet.json', text);
    expect(state().imported).toMatchObject({ result: 'taken', faults: [], jobId: 'end-off' });
    expect(state().kept).toEqual([progress]);
    await jobs.importFile('sheet.json', text);
    expect(state().kept).toEqual([progress]);
  });

  it('one that differs from the sheet of its name stays beside it', async () => {
    const { text, progress } = await whole();
    const { jobs, state, records } = bench();
    await jobs.importFile('sheet.json', text);
    await jobs.open('end-off');
    jobs.fill('hours', 7200);
    await due();
    await jobs.importFile('sheet.json', text);
    await due();
    expect(
      state()
        .kept.map((p) => p.id)
        .sort(),
    ).toEqual([progress.id, `${progress.id}-2`]);
    expect((await records.list(JOB_RECORDS)).map((r) => importProgress(r.text).progress)).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ id: progress.id, values: { 'locked-out': true, hours: 7200 } }),
      ]),
    );
  });

  it('a damaged one lists every fault with its line and touches nothing until a person says so', async () => {
    const { text } = await whole();
    const bad = text.replace('"locked-out": true', '"locked-out": [1]').replace('"notes": {}', '"notes": 7');
    expect(bad).not.toBe(text);
    const { jobs, state, records } = await secured();
    await due();
    const before = { kept: state().kept, progress: state().progress, text: await keptText(records) };
    await jobs.importFile('sheet.json', bad);
    const report = state().imported!;
    expect(report.result).toBe('in-part');
    const lineOf = (word: string): number => 1 + bad.split('\n').findIndex((line) => line.includes(word));
    expect(report.faults.map(({ file, line, path }) => [file, line, path])).toEqual([
      ['sheet.json', lineOf('locked-out'), 'progress.values.locked-out'],
      ['sheet.json', lineOf('"notes"'), 'progress.notes'],
    ]);
    expect({ kept: state().kept, progress: state().progress, text: await keptText(records) }).toEqual(before);
    jobs.takeOffered();
    expect(state().kept).toHaveLength(2);
    expect(state().kept[0]).toMatchObject({ done: ['secure'], values: {} });
  });

  it('no JSON, an unknown job, another machine: refused with the reason', async () => {
    const { text } = await whole();
    const { jobs, state } = bench();
    await jobs.importFile('cut.json', text.slice(0, 60));
    expect(state().imported).toMatchObject({
      result: 'refused',
      faults: [{ file: 'cut.json', path: '(whole file)' }],
    });
    await jobs.importFile('x.json', text.replace('"end-off"', '"no-such-job"'));
    expect(state().imported?.faults).toMatchObject([
      { path: 'progress.jobId', expected: { key: 'fault.job.known-job' } },
    ]);
    await jobs.importFile('x.json', text.replace('"small"', '"other"'));
    expect(state().imported?.result).toBe('refused');
    expect(state().imported?.faults).toMatchObject([{ path: 'progress.machineId' }]);
    expect(state().kept).toEqual([]);
  });

  it('a plan that cannot be had is said, not swallowed', async () => {
    const { text } = await whole();
    const { store, jobs } = bench();
    await jobs.load();
    const other = createJobCommands(
      store,
      {
        records: memoryRecords(),
        jobs: { ...smallJobs(document), loadPlan: () => Promise.reject(new Error('offline')) },
      } as unknown as Ports,
      {} as never,
    );
    await other.importFile('sheet.json', text);
    expect(store.getState().jobs.imported).toMatchObject({
      result: 'refused',
      faults: [{ file: 'sheet.json', line: 6, expected: { key: 'fault.job.can-be-loaded' } }],
    });
  });

  it('good entries of a damaged history are added, the others named', async () => {
    const { jobs } = await secured();
    await jobs.file();
    const text = jobs.historyText();
    const { entries } = JSON.parse(text) as { entries: object[] };
    const other = bench();
    await other.jobs.importFile(
      'history.json',
      JSON.stringify(
        { ...JSON.parse(text), entries: [...entries, { ...entries[0], result: 'fine' }] },
        null,
        2,
      ),
    );
    expect(other.state().imported).toMatchObject({ result: 'in-part', entries: 1 });
    expect(other.state().imported?.faults.map((f) => f.path)).toEqual(['entries[1].result']);
    expect(other.state().history).toHaveLength(1);
  });

  it('a kept record that is damaged is laid aside before its sheet goes on', async () => {
    const { text, progress } = await whole();
    const records = memoryRecords();
    const bad = text.replace('"signed": {}', '"signed": 3');
    await records.write(JOB_RECORDS, progress.id, bad);
    const { jobs, state } = bench(records);
    await jobs.open('end-off');
    expect(state().progress).toMatchObject({ done: ['secure'] });
    jobs.fill('hours', 1);
    await due();
    expect(await records.list(JOB_DAMAGED)).toMatchObject([{ key: progress.id, text: bad }]);
    expect(state().damaged[0]?.faults).toMatchObject([{ path: 'progress.signed' }]);
    await jobs.forgetDamaged(progress.id);
    expect(await records.list(JOB_DAMAGED)).toEqual([]);
  });

  it('what is exported is what is kept', async () => {
    const { state, records } = await secured();
    await due();
    expect(await keptText(records)).toBe(exportProgress(state().progress!));
  });
});

describe('the stage', () => {
  it('plays the plan of the job and is given back', async () => {
    const { store, jobs, state } = await secured();
    store.setState({ explode: 0.4, showContext: true });
    const steps = state().open!.sheet.steps;
    const off = steps.findIndex((s) => s.phase === 'apart' && s.unitIds.includes('end-right'));
    jobs.show(off + 1);
    expect(state().stage).toMatchObject({ leads: steps[off]!.planStep, step: steps[off]!.planStep });
    expect(store.getState()).toMatchObject({ explode: 0, teardown: { open: true, reverse: false } });
    const back = steps.findIndex((s) => s.phase === 'together' && s.unitIds.includes('end-right'));
    jobs.show(back + 1);
    expect(state().stage).toMatchObject({ leads: steps[off]!.planStep, step: steps[off]!.planStep! - 1 });
    jobs.show(steps.length);
    expect(state().stage?.step).toBe(-1);
    jobs.leaveStage();
    expect(state().stage).toBeNull();
    expect(store.getState()).toMatchObject({ explode: 0.4, showContext: true, selectedPart: null });
  });
});
