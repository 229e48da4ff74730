/** The fit that ships with Alder One: what it tells, what it does not know, and a run it was not made from. */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { geometryHash, ownRun } from '../../scripts/lib/own-run';
import { parseMachine } from '../../src/core/machine';
import {
  advance,
  createSimulation,
  pocketOf,
  readShot,
  settledFitSchema,
  fittedShot,
  type SettledFit,
  type SettledQuery,
} from '../../src/core/shot';
import { readModelFolder } from '../../src/edge/content/model-files';
import { ALDER_ONE } from './worlds';

const folder = resolve(import.meta.dirname, '../../models/alder-one');
const fit = settledFitSchema.parse(parse(readFileSync(join(folder, 'fit.yaml'), 'utf8')));
const OWN: SettledQuery = {
  state: 'low',
  fill: 0.31,
  spin_up: { kind: 'quadratic', frequency_Hz: 30, time_s: 4 },
  friction: 0.3,
};

describe('settled fit', () => {
  it('was made for the machine as it is, and most runs it was not made from lie within its band', () => {
    const parsed = parseMachine(readModelFolder(folder));
    if (!parsed.ok) throw new Error('the machine does not parse');
    expect(fit.geometry_hash).toBe(geometryHash(ownRun(parsed.value.machine, 'low')));
    expect(fit.check.runs).toBeGreaterThanOrEqual(24);
    expect(fit.check.within_band / fit.check.runs).toBeGreaterThan(0.85);
    for (const grid of fit.grids) {
      const rows = grid.fill.length * grid.time_s.length * grid.friction.length;
      for (const key of ['centre_x_m', 'centre_y_m', 'captured'] as const)
        expect(grid[key].length).toBe(rows);
    }
  });

  it('tells a run of a new seed between its rows within its band', () => {
    const query: SettledQuery = {
      ...OWN,
      friction: 0.27,
      spin_up: { kind: 'quadratic', frequency_Hz: 34, time_s: 4.1 },
    };
    const told = fittedShot(fit, query);
    if (!told.ok) throw new Error(JSON.stringify(told.faults));
    const p = { ...ALDER_ONE, spin_up: query.spin_up, friction: { ball: 0.27, wall: 0.27 }, seed: 77 };
    const sim = createSimulation(p);
    advance(sim, sim.end_s);
    const { balls, turning } = sim.world;
    const seen = readShot(p, pocketOf(p.chamber, p.baffle), balls, turning, sim.end_s);
    const { centre_m, band_m, captured, captured_band } = told.value;
    expect(Math.abs(seen.centre_m[0] - centre_m[0])).toBeLessThan(band_m);
    expect(Math.abs(seen.centre_m[1] - centre_m[1])).toBeLessThan(band_m);
    expect(Math.abs(seen.captured - captured)).toBeLessThan(captured_band);
    // The band says something: it is narrow beside the arm.
    expect(band_m).toBeLessThan(0.2 * Math.hypot(...centre_m));
  });

  it('makes LOW about half of HIGH with the machine’s fixed moment', () => {
    const U = (state: 'low' | 'high'): number => {
      const told = fittedShot(fit, { ...OWN, state });
      if (!told.ok) throw new Error(JSON.stringify(told.faults));
      return Math.hypot(60.2 * told.value.centre_m[0] + 0.6, 60.2 * told.value.centre_m[1]);
    };
    expect(U('low') / U('high')).toBeGreaterThan(0.45);
    expect(U('low') / U('high')).toBeLessThan(0.6);
  });

  it('does not know outside its table, and says what it knows', () => {
    const told = fittedShot(fit, {
      ...OWN,
      fill: 0.7,
      spin_up: { kind: 'quadratic', frequency_Hz: 30, time_s: 0.5 },
    });
    expect(told.ok ? [] : told.faults.map((f) => f.path)).toEqual(['fill', 'time_s']);
    expect(fittedShot(fit, { ...OWN, friction: Number.NaN }).ok).toBe(false);
  });

  it('takes straight lines between rows, and rows as they are', () => {
    const made: SettledFit = {
      ...fit,
      grids: [
        {
          state: 'low',
          law: 'linear',
          fill: [0.1, 0.3],
          time_s: [1, 3],
          friction: [0, 1],
          // x = fill + 2 time + 4 friction, over fill, then time, then friction.
          centre_x_m: [2.1, 6.1, 6.1, 10.1, 2.3, 6.3, 6.3, 10.3],
          centre_y_m: [0, 1, 0, 1, 0, 1, 0, 1],
          captured: [0, 0, 1, 1, 0, 0, 1, 1],
          centre_sd_m: 0.001,
          captured_sd: 0.01,
        },
      ],
    };
    const told = fittedShot(made, {
      state: 'low',
      fill: 0.15,
      // The same push as 60 Hz in 4 s.
      spin_up: { kind: 'linear', frequency_Hz: 60, time_s: 4 },
      friction: 0.25,
    });
    if (!told.ok) throw new Error(JSON.stringify(told.faults));
    expect(told.value.centre_m[0]).toBeCloseTo(0.15 + 4 + 1, 12);
    expect(told.value.centre_m[1]).toBeCloseTo(0.25, 12);
    expect(told.value.captured).toBeCloseTo(0.5, 12);
  });
});
