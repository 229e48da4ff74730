/** The fit that ships with Alder One: what it tells, what it does not know, and a run it was not made from. */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownRun } from '../../scripts/lib/own-run';
import { seededRandom } from '../../src/core/kernel';
import { parseMachine } from '../../src/core/machine';
import {
  advance,
  createSimulation,
  geometryDiffers,
  massOfFill,
  mirrorBaffle,
  pocketOf,
  readShot,
  fittedShot,
  type SettledFit,
  type SettledQuery,
} from '../../src/core/shot';
import { fitGeometryOf, parseFit, settledMoment, type SettledCase } from '../../src/core/studies';
import { readModelFolder } from '../../src/edge/content/model-files';
import { ALDER_ONE } from './worlds';

const folder = resolve(import.meta.dirname, '../../models/alder-one');
const text = readFileSync(join(folder, 'fit.yaml'), 'utf8');
const read = parseFit({ name: 'fit.yaml', text });
if (!read.ok) throw new Error(JSON.stringify(read.faults));
const fit = read.value;
const CASE: SettledCase = {
  chamber: ALDER_ONE.chamber,
  baffle: ALDER_ONE.baffle,
  shot: ALDER_ONE.shot,
  ball_diameter_m: 0.012,
  size_spread: 0.1,
  direction: 'low',
  spin_up: { kind: 'quadratic', frequency_Hz: 30, time_s: 4 },
  friction: 0.3,
};
const OWN: SettledQuery = {
  state: 'low',
  fill: 0.31,
  spin_up: { kind: 'quadratic', frequency_Hz: 30, time_s: 4 },
  friction: 0.3,
};

describe('settled fit', () => {
  it('was made for the machine as it is, and 19 of 20 runs it was not made from lie within its band', () => {
    const parsed = parseMachine(readModelFolder(folder));
    if (!parsed.ok) throw new Error('the machine does not parse');
    expect(geometryDiffers(fit.geometry, fitGeometryOf(ownRun(parsed.value.machine, 'low')))).toBeNull();
    expect(fit.check.runs).toBeGreaterThanOrEqual(100);
    expect(fit.check.within_band / fit.check.runs).toBeGreaterThanOrEqual(0.95);
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
    expect(Math.hypot(seen.centre_m[0] - centre_m[0], seen.centre_m[1] - centre_m[1])).toBeLessThan(band_m);
    expect(Math.abs(seen.captured - captured)).toBeLessThan(captured_band);
    // The band says something: it is narrow beside the arm.
    expect(band_m).toBeLessThan(0.2 * Math.hypot(...centre_m));
  });

  it('tells most of a few runs anywhere in its table within its band', () => {
    const grid = fit.grids.find((g) => g.state === 'low' && g.law === 'quadratic')!;
    const random = seededRandom(424242);
    const span = (axis: readonly number[]): number => random.between(axis[0]!, axis[axis.length - 1]!);
    let within = 0;
    for (let n = 0; n < 4; n++) {
      // Low fills only, so that the runs stay short.
      const [fill, time_s, friction] = [random.between(0.15, 0.25), span(grid.time_s), span(grid.friction)];
      const spin_up = { kind: 'quadratic', frequency_Hz: 30, time_s } as const;
      const told = fittedShot(fit, { state: 'low', fill, spin_up, friction });
      if (!told.ok) throw new Error(JSON.stringify(told.faults));
      const p = {
        ...ALDER_ONE,
        shot: { ...ALDER_ONE.shot, mass_kg: massOfFill(ALDER_ONE.chamber, ALDER_ONE.shot, fill) },
        slice: { ...ALDER_ONE.slice, depth_m: fit.slice_depth_m },
        spin_up,
        friction: { ball: friction, wall: friction },
        seed: 7000 + n,
      };
      const sim = createSimulation(p);
      advance(sim, sim.end_s);
      const seen = readShot(p, pocketOf(p.chamber, p.baffle), sim.world.balls, sim.world.turning, sim.end_s);
      const [x, y] = told.value.centre_m;
      if (Math.hypot(seen.centre_m[0] - x, seen.centre_m[1] - y) <= told.value.band_m) within++;
    }
    // 19 of 20 lie within: three or four of four nearly always do (binomial, 0.99).
    expect(within).toBeGreaterThanOrEqual(3);
  }, 30000);

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
          scatter_m: 0.001,
          band_factor: 0,
          captured_band: 0.01,
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

describe('moment of the settled shot', () => {
  const moment = (changes: Partial<SettledCase> = {}) => {
    const told = settledMoment(fit, { ...CASE, ...changes });
    if (!told.known) throw new Error(JSON.stringify(told.reasons));
    return told.moment;
  };
  const reasons = (changes: Partial<SettledCase>): readonly string[] => {
    const told = settledMoment(fit, { ...CASE, ...changes });
    return told.known ? [] : told.reasons.map((reason) => reason.key);
  };

  it('is mirrored with the baffle, and without a baffle with the direction', () => {
    const [x, y] = moment().shot_kgm;
    expect(moment({ baffle: mirrorBaffle(ALDER_ONE.baffle!) }).shot_kgm).toEqual([x, -y]);
    const [u, v] = moment({ baffle: null }).shot_kgm;
    expect(moment({ baffle: null, direction: 'high' }).shot_kgm).toEqual([u, -v]);
  });

  it('counts balls, not the packing that someone else takes for the bulk', () => {
    // Half the length with half the shot is the same section.
    const { mass_kg, length_m } = ALDER_ONE.shot;
    const half = moment({ shot: { ...ALDER_ONE.shot, mass_kg: mass_kg / 2, length_m: length_m / 2 } });
    expect(half.shot_kgm[0]).toBeCloseTo(moment().shot_kgm[0] / 2, 9);
    expect(half.band_kgm).toBeCloseTo(moment().band_kgm / 2, 9);
  });

  it('is not known for another machine, and says what is other', () => {
    expect(settledMoment(undefined, CASE)).toMatchObject({
      known: false,
      reasons: [{ key: 'settled.no-fit' }],
    });
    expect(reasons({ chamber: { ...CASE.chamber, radius_m: 0.111 } })).toEqual(['settled.other-chamber']);
    expect(reasons({ baffle: { ...ALDER_ONE.baffle!, psi_deg: 67 } })).toEqual(['settled.other-baffle']);
    expect(reasons({ ball_diameter_m: 0.01 })).toEqual(['settled.other-balls']);
    expect(reasons({ friction: 2, shot: { ...ALDER_ONE.shot, mass_kg: 120 } })).toEqual([
      'settled.outside-fill',
      'settled.outside-friction',
    ]);
  });

  it('has no moment without shot', () => {
    expect(moment({ shot: { ...ALDER_ONE.shot, mass_kg: 0 } })).toMatchObject({
      shot_kgm: [0, 0],
      band_kgm: 0,
    });
  });
});

describe('a fit file with faults', () => {
  it('names every one with its line', () => {
    const lines = text.split('\n');
    const at = (word: string): number => lines.findIndex((line) => line.includes(word)) + 1;
    const bad = text
      .replace(/packing: .*/, 'packing: 1.4')
      .replace(/fill: \[ 0.15, 0.2,/, 'fill: [ 0.2, 0.15,')
      .replace(/scatter_m: .*/, 'scatter_m: none');
    const found = parseFit({ name: 'fit.yaml', text: bad });
    if (found.ok) throw new Error('accepted');
    expect(found.faults.map(({ file, line, path }) => [file, line, path])).toEqual([
      ['fit.yaml', at('packing:'), 'packing'],
      ['fit.yaml', at('scatter_m:'), 'grids[0].scatter_m'],
    ]);
    const order = parseFit({
      name: 'fit.yaml',
      text: text.replace(/fill: \[ 0.15, 0.2,/, 'fill: [ 0.2, 0.15,'),
    });
    if (order.ok) throw new Error('accepted');
    expect(order.faults).toMatchObject([{ path: 'grids[0].fill', expected: { key: 'fault.rising' } }]);
  });
});
