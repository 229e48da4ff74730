import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Readings } from '../../src/core/shot';
import type { ShotRun } from '../../src/store';
import { CHART, chartPath, chartScale, niceStep } from '../../src/view/panels/shot/chart-lines';
import { runsCsv } from '../../src/view/panels/shot/runs-csv';

const reading = (time_s: number): Readings =>
  ({ time_s, gravity_ratio: 5 * time_s * time_s, captured: time_s / 4 }) as Readings;
const readings = Array.from({ length: 41 }, (_, i) => reading(i / 20));
const U = readings.map((_, i) => 7 - i / 10);

describe('chart of a run', () => {
  it('lays both scales out inside its frame, rising to the right and upwards', () => {
    for (const over of ['time', 'gravity'] as const) {
      const scale = chartScale(readings, U, over, 5.6);
      const xs = readings.map(scale.x);
      xs.slice(1).forEach((x, i) => expect(x).toBeGreaterThanOrEqual(xs[i]!));
      expect(xs[0]).toBe(CHART.left);
      expect(xs.at(-1)).toBeCloseTo(CHART.width - CHART.right, 9);
      expect(scale.share(1)).toBeLessThan(scale.share(0));
      for (const kgm of U) expect(scale.U(kgm)).toBeGreaterThan(CHART.top);
      for (const { x } of scale.ticks) expect(x).toBeLessThanOrEqual(CHART.width - CHART.right + 1e-9);
    }
  });

  it('marks where spin and gravity are alike at the same moment on both axes', () => {
    const over = chartScale(readings, U, 'gravity', null);
    expect(over.critical_x).toBeCloseTo(over.x({ time_s: 0, gravity_ratio: 1 }), 9);
    const time = chartScale(readings, U, 'time', null);
    // 5 t^2 = 1; straight between readings 50 ms apart.
    const t = ((time.critical_x! - CHART.left) / (CHART.width - CHART.left - CHART.right)) * 2;
    expect(t).toBeCloseTo(Math.sqrt(0.2), 2);
  });

  it('has round numbers on the scale of U in the reader’s own unit', () => {
    const pound_inch = 0.45359237 * 0.0254;
    const { U_ticks_kgm } = chartScale(readings, U, 'time', null, pound_inch);
    expect(U_ticks_kgm.map((kgm) => Math.round(kgm / pound_inch))).toEqual([0, 200, 400, 600]);
  });

  it('steps by one, two or five times a power of ten', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        fc.integer({ min: 2, max: 8 }),
        (span, count) => {
          const step = niceStep(span, count);
          const lead = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
          expect([1, 2, 5].some((v) => Math.abs(lead - v) < 1e-6)).toBe(true);
          expect(span / step).toBeGreaterThan(count / 2.6);
          expect(span / step).toBeLessThan(count * 2.6);
        },
      ),
      { seed: 5, numRuns: 100 },
    );
  });

  it('draws a path through every reading', () => {
    const scale = chartScale(readings, U, 'time', null);
    expect(chartPath(readings, scale.x, (r) => scale.share(r.captured)).split('L')).toHaveLength(41);
  });
});

describe('table of runs for a spreadsheet', () => {
  const run = {
    id: 'run-1',
    experiment: 'free',
    comparedWith: 'low',
    prediction: 'more',
    setup: {
      direction: 'low',
      fill: 0.31,
      spinUp: 'linear',
      spinUpTime_s: 2,
      friction: 0.3,
      baffle: 'off',
      gravity: false,
      seed: 3,
    },
    outcome: {
      captured: 0,
      U_kgm: 6.04321098,
      shot_U_kgm: 5.5,
      ofOwnHigh: 0.84,
      ofCompared: null,
      level_U_kgm: 6.4,
    },
    take: { count: 480, parameters: { stop_Hz: 6 } },
  } as unknown as ShotRun;

  it('has a cell for every heading, inputs and seed included', () => {
    const [head, line, end] = runsCsv([run]).split('\r\n');
    expect(end).toBe('');
    const row = Object.fromEntries(head!.split(',').map((name, i) => [name, line!.split(',')[i]]));
    expect(line!.split(',')).toHaveLength(head!.split(',').length);
    expect(row).toMatchObject({
      experiment: 'free',
      direction: 'low',
      fill: '0.31',
      spin_up: 'linear',
      baffle: 'off',
      gravity: 'off',
      seed: '3',
      captured: '0',
      U_kgm: '6.04321',
      U_over_own_high: '0.84',
      U_over_compared: '',
      predicted: 'more',
    });
  });

  it('quotes what would break a cell', () => {
    const odd = { ...run, id: 'a,"b"' } as ShotRun;
    expect(runsCsv([odd])).toContain('"a,""b"""');
  });
});
