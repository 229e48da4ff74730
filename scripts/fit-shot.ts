/**
 * Fits the settled shot of a machine from runs of the simulation (a quarter of an hour on one core):
 *   npx tsx scripts/fit-shot.ts [models/alder-one]
 * Writes fit.yaml into the model's folder: where the shot's centre lies over fill, spin-up, friction and the state of
 * the baffle, with the scatter between seeds, and a check with settings and seeds that the table was not made from.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { Document, isScalar, parse, visit } from 'yaml';
import { seededRandom } from '../src/core/kernel';
import { parseMachine } from '../src/core/machine';
import {
  advance,
  BAND_SD,
  createSimulation,
  fillOf,
  massOfFill,
  pocketOf,
  readShot,
  settledFitSchema,
  fittedShot,
  type SettledFit,
  type SettledGrid,
  type ShotParameters,
} from '../src/core/shot';
import { readModelFolder } from '../src/edge/content/model-files';
import { printFaults } from '../src/edge/cli/print-faults';
import { geometryHash, ownRun } from './lib/own-run';

type Axes = Pick<SettledGrid, 'state' | 'law' | 'fill' | 'time_s' | 'friction'>;
const GRIDS: readonly Axes[] = [
  {
    state: 'low',
    law: 'quadratic',
    fill: [0.15, 0.2, 0.25, 0.31, 0.36, 0.41, 0.47],
    time_s: [2, 2.5, 3, 3.5, 4, 5, 6],
    friction: [0.15, 0.3, 0.5, 0.8],
  },
  {
    state: 'low',
    law: 'linear',
    fill: [0.15, 0.23, 0.31, 0.38, 0.47],
    time_s: [2, 3, 4, 6, 8],
    friction: [0.15, 0.3, 0.5],
  },
  {
    state: 'high',
    law: 'quadratic',
    fill: [0.15, 0.23, 0.31, 0.38, 0.47],
    time_s: [2, 4, 6],
    friction: [0.15, 0.3, 0.8],
  },
  { state: 'high', law: 'linear', fill: [0.15, 0.31, 0.47], time_s: [2, 4, 8], friction: [0.15, 0.3, 0.5] },
  {
    state: 'none',
    law: 'quadratic',
    fill: [0.15, 0.2, 0.25, 0.31, 0.38, 0.47],
    time_s: [2, 4, 6],
    friction: [0.15, 0.3, 0.8],
  },
];
const SEEDS = [101, 102];
/** Runs off the rows and with seeds of their own, a grid: those that set the band, and those that check it. */
const BAND_RUNS = 12;
const CHECK_RUNS = 6;
const SLICE_DEPTH_M = 0.045;

const folder = resolve(process.argv[2] ?? join(import.meta.dirname, '..', 'models', 'alder-one'));
const parsed = parseMachine(readModelFolder(folder));
if (!parsed.ok) {
  console.error(printFaults(parsed.faults));
  process.exit(1);
}
const { machine } = parsed.value;
const own = ownRun(machine, 'low');
const frequency_Hz = machine.operation.frequency_high_Hz;

interface Run {
  readonly x: number;
  readonly y: number;
  readonly captured: number;
}

function run(
  axes: Pick<Axes, 'state' | 'law'>,
  fill: number,
  time_s: number,
  friction: number,
  seed: number,
): Run {
  const p: ShotParameters = {
    ...own,
    baffle: axes.state === 'none' ? null : own.baffle,
    direction: axes.state === 'high' ? 'high' : 'low',
    shot: { ...own.shot, mass_kg: massOfFill(own.chamber, own.shot, fill) },
    slice: { ...own.slice, depth_m: SLICE_DEPTH_M },
    spin_up: { kind: axes.law, frequency_Hz, time_s },
    friction: { ball: friction, wall: friction },
    seed,
  };
  const sim = createSimulation(p);
  advance(sim, sim.end_s);
  const { balls, turning, time_s: at } = sim.world;
  const { centre_m, captured } = readShot(p, pocketOf(p.chamber, p.baffle), balls, turning, at);
  return { x: centre_m[0], y: centre_m[1], captured };
}

const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
const round = (value: number, digits: number): number => Number(value.toFixed(digits));

const AXES = ['state', 'law', 'fill', 'time_s', 'friction'] as const;

/** The fit in the folder where it was made for the same exciter, slice and seeds, so that its rows can be kept. */
function readKnown(): SettledFit | null {
  const file = join(folder, 'fit.yaml');
  if (!existsSync(file)) return null;
  const old = settledFitSchema.safeParse(parse(readFileSync(file, 'utf8')));
  const keys = ['frequency_Hz', 'geometry_hash', 'seeds', 'slice_depth_m', 'restitution'] as const;
  return old.success && keys.every((key) => isDeepStrictEqual(old.data[key], fit[key])) ? old.data : null;
}

function fitGrid(axes: Axes): SettledGrid {
  const rows: Run[][] = [];
  for (const fill of axes.fill)
    for (const time_s of axes.time_s)
      for (const friction of axes.friction)
        rows.push(SEEDS.map((seed) => run(axes, fill, time_s, friction, seed)));
  const table = (of: (r: Run) => number, digits: number): number[] =>
    rows.map((row) => round(mean(row.map(of)), digits));
  return {
    ...axes,
    centre_x_m: table((r) => r.x, 5),
    centre_y_m: table((r) => r.y, 5),
    captured: table((r) => r.captured, 3),
    centre_sd_m: 0,
    captured_sd: 0,
  };
}

const fit: SettledFit = {
  schema_version: 1,
  name: machine.id,
  frequency_Hz,
  geometry_hash: geometryHash(own),
  seeds: SEEDS,
  slice_depth_m: SLICE_DEPTH_M,
  ball_diameter_m: own.shot.ball_diameter_m,
  restitution: own.restitution,
  grids: [],
  check: { runs: 0, within_band: 0 },
};
const known = readKnown();
for (const axes of GRIDS) {
  const same = known?.grids.find((grid) => AXES.every((key) => isDeepStrictEqual(grid[key], axes[key])));
  fit.grids.push(same ?? fitGrid(axes));
  console.log(`${axes.state} ${axes.law}: rows ${same === undefined ? 'made' : 'kept'}`);
}

/** How far runs with settings anywhere in the table and seeds of their own lie from what the table tells. */
function misses(grid: SettledGrid, runs: number, firstSeed: number): { centre: number; captured: number }[] {
  const random = seededRandom(firstSeed);
  const span = (axis: readonly number[]): number => random.between(axis[0]!, axis[axis.length - 1]!);
  return Array.from({ length: runs }, (_, n) => {
    const [fill, time_s, friction] = [span(grid.fill), span(grid.time_s), span(grid.friction)];
    const spin_up = { kind: grid.law, frequency_Hz, time_s };
    const told = fittedShot(fit, { state: grid.state, fill, spin_up, friction });
    if (!told.ok) throw new Error(printFaults(told.faults));
    const seen = run(grid, fill, time_s, friction, firstSeed + n);
    const { centre_m, captured } = told.value;
    const centre = Math.max(Math.abs(seen.x - centre_m[0]), Math.abs(seen.y - centre_m[1]));
    return { centre, captured: Math.abs(seen.captured - captured) };
  });
}

const rms = (values: readonly number[]): number => Math.sqrt(mean(values.map((v) => v * v)));
fit.grids.forEach((grid, n) => {
  // Scatter between seeds and the error of the straight lines between rows, both.
  const apart = misses(grid, BAND_RUNS, 1000 * (n + 1));
  grid.centre_sd_m = round(rms(apart.map((m) => m.centre)), 5);
  grid.captured_sd = round(rms(apart.map((m) => m.captured)), 4);
  const check = misses(grid, CHECK_RUNS, 1000 * (n + 1) + 500);
  const within = check.filter((m) => m.centre <= BAND_SD * grid.centre_sd_m).length;
  fit.check.runs += CHECK_RUNS;
  fit.check.within_band += within;
  const band_mm = (BAND_SD * grid.centre_sd_m * 1e3).toFixed(1);
  const worst_mm = (Math.max(...check.map((m) => m.centre)) * 1e3).toFixed(1);
  console.log(
    `${grid.state} ${grid.law}: band ${band_mm} mm, ${within} of ${CHECK_RUNS} check runs within, worst ${worst_mm} mm`,
  );
});
const note = `# The settled shot of ${machine.name}, from runs of the simulation; made by scripts/fit-shot.ts, not by hand.\n`;
const fillNow = fillOf(own.chamber, own.shot).toFixed(3);
const document = new Document(fit);
visit(document, {
  Seq: (_key, node) => {
    if (node.items.every(isScalar)) node.flow = true;
  },
});
const text = document.toString({ lineWidth: 110 });
writeFileSync(join(folder, 'fit.yaml'), `${note}# The machine's own fill is ${fillNow}.\n${text}`);
console.log(`${fit.check.within_band} of ${fit.check.runs} check runs within the band`);
