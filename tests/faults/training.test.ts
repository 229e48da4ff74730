/** Training runs: repeatable by seed, kept and read back, marked honestly. */
import { describe, expect, it } from 'vitest';
import {
  feedbackOf,
  hiddenCase,
  minutesOf,
  resumeTraining,
  startTraining,
  train,
  trainingReading,
} from '../../src/core/faults';
import { plant, signatures } from './bench-of-alder-one';

const measure = (measurement: string, method = 0) => ({ type: 'measure', measurement, method }) as const;

describe('a training run', () => {
  it('hides the same fault and shows the same readings for one seed', () => {
    const one = hiddenCase(plant, 12);
    expect(hiddenCase(plant, 12).inputs).toEqual(one.inputs);
    const read = () => trainingReading(plant, one, 12, 'amplitude-high');
    expect(read()).toEqual(read());
    expect(trainingReading(plant, one, 12, 'no-such')).toBeNull();
  });
  it('counts minutes, takes nothing twice, and ends with the commitment', () => {
    let run = startTraining(5);
    run = train(run, measure('vpm-high'));
    run = train(run, measure('vpm-high'));
    run = train(run, measure('noise'));
    expect(run.taken).toHaveLength(2);
    expect(minutesOf(plant, run)).toBe(7);
    expect(train(run, { type: 'commit', hypothesis: 'motor-weak', confidence: 2 })).toBe(run);
    const done = train(run, { type: 'commit', hypothesis: 'motor-weak', confidence: 0.6 });
    expect(train(done, measure('grade'))).toBe(done);
  });
  it('is the same after it was kept and read back; anything else is refused', () => {
    let run = train(startTraining(9), measure('amplitude-high', 1));
    expect(resumeTraining(JSON.stringify(run), signatures)).toEqual(run);
    run = train(run, { type: 'commit', hypothesis: 'shot-lost', confidence: 0.75 });
    expect(resumeTraining(JSON.stringify(run), signatures)).toEqual(run);
    for (const text of [
      '',
      '{}',
      'null',
      '{"seed":"x","taken":[],"committed":null}',
      '{"seed":1,"taken":[{"measurement":"x","method":0}]}',
      '{"seed":1,"taken":[{"measurement":"noise","method":3}]}',
      '{"seed":1,"taken":[],"committed":{"hypothesis":"x","confidence":1}}',
    ])
      expect(resumeTraining(text, signatures)).toBeNull();
  });
  it('tells nothing before the commitment, then the truth, what the readings bear out and a way that finds it', () => {
    let found = 0;
    for (const seed of [2, 3, 4]) {
      const run = startTraining(seed);
      expect(feedbackOf(plant, signatures, run)).toBeNull();
      const truth = hiddenCase(plant, seed).hypothesis;
      const right = feedbackOf(
        plant,
        signatures,
        train(run, { type: 'commit', hypothesis: truth, confidence: 0.9 }),
      )!;
      expect(right.right).toBe(true);
      expect(right.brier).toBeCloseTo(0.01, 12);
      expect(right.best.length).toBeGreaterThan(0);
      expect(new Set(right.best.map((s) => s.measurement)).size).toBe(right.best.length);
      if (right.best.at(-1)!.probability > 0.5) found++;
      const other = truth === 'shot-lost' ? 'motor-weak' : 'shot-lost';
      const wrong = feedbackOf(
        plant,
        signatures,
        train(run, { type: 'commit', hypothesis: other, confidence: 0.9 }),
        right.best,
      )!;
      expect(wrong.right).toBe(false);
      expect(wrong.brier).toBeCloseTo(0.81, 12);
    }
    expect(found).toBeGreaterThanOrEqual(3);
  });
});
