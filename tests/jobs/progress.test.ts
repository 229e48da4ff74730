/** Progress: hold points, export and import without loss, verdict, history; job files with faults. */
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  addToHistory,
  exportHistory,
  exportProgress,
  historyEntry,
  importHistory,
  importProgress,
  jobVerdict,
  type JobProgress,
  judgeField,
  mayTick,
  parseJob,
  reduceProgress,
  startProgress,
} from '../../src/core/jobs';
import { machine } from '../models/alder-one';
import { jobNamed, sheetOf, study } from './alder-jobs';

const sheet = sheetOf(jobNamed('exciter-oil'));
const start = startProgress(sheet, 'p-1', 1000);
const fill = (p: JobProgress, fieldId: string, value: number | string | boolean | null): JobProgress =>
  reduceProgress(sheet, p, { type: 'fill', fieldId, value, at_ms: 2000 });
const tick = (p: JobProgress, stepId: string): JobProgress =>
  reduceProgress(sheet, p, { type: 'tick', stepId, at_ms: 3000 });

describe('hold points', () => {
  it('need their fields before they are ticked, and stop what follows', () => {
    expect(tick(start, 'secure')).toBe(start);
    expect(tick(start, 'index-drum')).toBe(start);
    const secured = tick(fill(fill(start, 'locked-out', true), 'chocked', true), 'secure');
    expect(secured.done).toEqual(['secure']);
    expect(tick(secured, 'index-drum').done).toEqual(['secure', 'index-drum']);
  });

  it('a bad value holds until it is signed, and an emptied field opens the hold again', () => {
    let p = tick(fill(fill(start, 'locked-out', true), 'chocked', true), 'secure');
    for (const id of ['index-drum', 'clean-round']) p = tick(p, id);
    p = tick(fill(p, 'fill-opens', true), 'open-fill');
    p = tick(fill(fill(p, 'oil-out', 0.0125), 'sample', true), 'drain');
    const bad = fill(fill(p, 'magnet', 'flakes'), 'oil-look', 'clear');
    expect(mayTick(sheet, bad, 'magnet').map((m) => m.key)).toEqual(['job.hold.outside']);
    const signed = reduceProgress(sheet, bad, {
      type: 'sign',
      stepId: 'magnet',
      text: 'Instructor: it stands',
      at_ms: 4,
    });
    expect(tick(signed, 'magnet').done).toContain('magnet');
    const reopened = fill(tick(signed, 'magnet'), 'sample', null);
    expect(reopened.done).toEqual(['secure', 'index-drum', 'clean-round', 'open-fill']);
  });

  it('a value outside limits is bad, an unknown choice too', () => {
    const end = sheetOf(jobNamed('hub-grease')).fields.find((f) => f.id === 'end-play')!;
    expect(judgeField(end, 0.00005)).toBe('good');
    expect(judgeField(end, 0.0005)).toBe('bad');
    expect(judgeField(end, undefined)).toBe('empty');
    expect(
      judgeField(
        sheet.fields.find((f) => f.id === 'magnet')!,
        'sand',
      ),
    ).toBe('bad');
  });
});

describe('export and import', () => {
  const progress = fc.record({
    machineId: fc.constant('alder-one'),
    jobId: fc.constant('exciter-oil'),
    id: fc.string({ minLength: 1 }),
    started_ms: fc.nat(),
    changed_ms: fc.nat(),
    done: fc.subarray(sheet.steps.map((s) => s.id)),
    values: fc.dictionary(
      fc.constantFrom(...sheet.fields.map((f) => f.id)),
      fc.oneof(
        fc.double({ noNaN: true, noDefaultInfinity: true }).map((v) => v + 0),
        fc.string(),
        fc.boolean(),
      ),
      { noNullPrototype: true },
    ),
    notes: fc.dictionary(fc.constantFrom(...sheet.steps.map((s) => s.id)), fc.string(), {
      noNullPrototype: true,
    }),
    signed: fc.dictionary(fc.constantFrom(...sheet.steps.map((s) => s.id)), fc.string(), {
      noNullPrototype: true,
    }),
  });
  it('loses nothing on the way there and back', () => {
    fc.assert(
      fc.property(progress, (p) => {
        const back = importProgress(exportProgress(p), sheet);
        expect(back.faults).toEqual([]);
        expect(back.progress).toEqual(p);
      }),
      { seed: 505, numRuns: 40 },
    );
  });

  it('lists every fault of a corrupted file and keeps what is good', () => {
    const good: JobProgress = { ...start, done: ['secure'], values: { 'locked-out': true, 'oil-in': 0.013 } };
    const data = JSON.parse(exportProgress(good)) as { progress: Record<string, unknown> };
    data.progress['done'] = ['secure', 7];
    data.progress['values'] = { 'locked-out': true, 'oil-in': 0.013, magnet: null };
    data.progress['extra'] = 1;
    const back = importProgress(JSON.stringify(data), sheet, 'mine.json');
    expect(back.faults.map((f) => f.path).sort()).toEqual([
      'progress',
      'progress.done[1]',
      'progress.values.magnet',
    ]);
    expect(back.faults.every((f) => f.file === 'mine.json')).toBe(true);
    expect(back.progress?.done).toEqual(['secure']);
    expect(back.progress?.values).toEqual({ 'locked-out': true, 'oil-in': 0.013 });
  });

  it('never throws on mutilated text', () => {
    const text = exportProgress({ ...start, done: ['secure'], notes: { secure: 'wet floor' } });
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(text.length), fc.string(), (a, b, put) => {
        const { progress: found, faults } = importProgress(
          text.slice(0, Math.min(a, b)) + put + text.slice(Math.max(a, b)),
          sheet,
        );
        expect(found !== null || faults.length > 0).toBe(true);
      }),
      { seed: 506, numRuns: 60 },
    );
  });

  it('notes fields and steps of another version, and keeps them', () => {
    const old = { ...start, done: ['gone'], values: { old: 1 } };
    const back = importProgress(exportProgress(old), sheet);
    expect(back.faults.map((f) => [f.path, f.level])).toEqual([
      ['progress.done[0]', 'note'],
      ['progress.values.old', 'note'],
    ]);
    expect(back.progress).toEqual(old);
  });
});

describe('after the job', () => {
  const high = { amplitude_m: study!.high.value!.nominalAmplitude_m!, vibrations_per_minute: 1800 };

  it('passes what agrees, fails what does not, stays open without a direction', () => {
    expect(jobVerdict(study, { high, low: null }).result).toBe('open');
    const slow = jobVerdict(study, { high: { ...high, vibrations_per_minute: 1600 }, low: null });
    expect(slow.result).toBe('failed');
    expect(slow.directions[0]?.check?.rate).toBe('low');
    const weak = jobVerdict(study, { high: { ...high, amplitude_m: 0.8 * high.amplitude_m }, low: null });
    expect(weak.directions[0]?.check?.amplitude).toBe('low');
  });

  it('goes into the history and back', () => {
    const measured = { high, low: null };
    const entry = historyEntry(sheet, start, measured, jobVerdict(study, measured), 5000);
    const history = addToHistory(addToHistory([], entry), { ...entry, id: 'p-2', at_ms: 4000 });
    expect(history.map((e) => e.id)).toEqual(['p-2', 'p-1']);
    expect(importHistory(exportHistory(history))).toEqual({ entries: history, faults: [] });
    const broken = importHistory(exportHistory(history).replace('"open"', '"splendid"'));
    expect(broken.entries).toHaveLength(1);
    expect(broken.faults.map((f) => f.path)).toEqual(['entries[0].result']);
  });
});

describe('job files with faults', () => {
  const file = resolve(import.meta.dirname, '../../models/alder-one/jobs/exciter-oil.yaml');
  const text = readFileSync(file, 'utf8');
  const lineOf = (part: string, of: string): number => of.slice(0, of.indexOf(part)).split('\n').length;

  it('name line and path, all of them at once', () => {
    const bad = text
      .replace('units: [fill-plug]', 'units: [fill-plugg]')
      .replace('cautions: [hot-oil]', 'cautions: [hot-soup]')
      .replace('fluid: exciter-oil', 'fluid: soup');
    const parsed = parseJob({ name: 'exciter-oil.yaml', text: bad }, machine);
    expect(parsed.ok).toBe(false);
    if (parsed.ok) return;
    expect(parsed.faults.map((f) => f.expected.key).sort()).toEqual([
      'fault.job.caution',
      'fault.job.fluid',
      'fault.job.unit',
    ]);
    const unit = parsed.faults.find((f) => f.expected.key === 'fault.job.unit')!;
    expect(unit.line).toBe(lineOf('fill-plugg', bad));
  });

  it('refuse unknown keys', () => {
    const parsed = parseJob({ name: 'x.yaml', text: text.replace('people: 1', 'persons: 1') }, machine);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parsed.faults.map((f) => f.found)).toContain('persons');
  });
});
