/**
 * Fits the settled shot of a machine from runs of the simulation (about twenty minutes on one core):
 *   npx tsx scripts/fit-shot.ts [models/alder-one]
 * Writes fit.yaml into the model's folder: where the shot's centre lies over fill, spin-up, friction and the state of
 * the baffle. Three sets of runs that share no seed: those of the rows, those anywhere in the table that set the width
 * of the band, and those that check it.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { Document, isScalar, parse, visit } from 'yaml';
import { seededRandom } from '../src/core/kernel';
import { parseMachine } from '../src/core/machine';
import {
  advance,
  BAND_SHARE,
  createSimulation,
  fillOf,
  massOfFill,
  pocketOf,
  readShot,
  rowBand_m,
  settledFitSchema,
  fittedShot,
  type SettledFit,
  type SettledGrid,
  type ShotParameters,
} from '../src/core/shot';
import { readModelFolder } from '../src/edge/content/model-files';
import { printFaults } from '../src/edge/cli/print-faults';
import { fitGeometryOf } from '../src/core/studies';
import { ownRun } from './lib/own-run';

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
    fill: [0.15, 0.19, 0.23, 0.31, 0.38, 0.47],
    time_s: [2, 3, 4, 5, 6, 8],
    friction: [0.15, 0.3, 0.5],
  },
  {
    state: 'high',
    law: 'quadratic',
    fill: [0.15, 0.23, 0.31, 0.38, 0.47],
    time_s: [2, 3, 4, 6],
    friction: [0.15, 0.3, 0.8],
  },
  { state: 'high', law: 'linear', fill: [0.15, 0.31, 0.47], time_s: [2, 4, 8], friction: [0.15, 0.3, 0.5] },
  {
    state: 'none',
    law: 'quadratic',
    fill: [0.15, 0.2, 0.25, 0.31, 0.38, 0.47],
    time_s: [2, 2.5, 3, 4, 6],
    friction: [0.15, 0.3, 0.8],
  },
];
const SEEDS = [101, 102, 103];
/** Runs off the rows and with seeds of their own, a grid: those that set the band, and those that check it. */
const BAND_RUNS = 66;
const CHECK_RUNS = 20;
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
  const keys = ['frequency_Hz', 'geometry', 'packing', 'seeds', 'slice_depth_m', 'restitution'] as const;
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
  // Scatter of one run about the true mean: the sample's own mean takes one of its runs' freedom away.
  const variance = mean(
    rows.map((row) => {
      const [x, y] = [mean(row.map((r) => r.x)), mean(row.map((r) => r.y))];
      return row.reduce((sum, r) => sum + (r.x - x) ** 2 + (r.y - y) ** 2, 0) / (row.length - 1);
    }),
  );
  return {
    ...axes,
    centre_x_m: table((r) => r.x, 5),
    centre_y_m: table((r) => r.y, 5),
    captured: table((r) => r.captured, 3),
    scatter_m: round(Math.sqrt(variance), 5),
    band_factor: 1,
    captured_band: 0,
  };
}

const fit: SettledFit = {
  schema_version: 2,
  name: machine.id,
  frequency_Hz,
  geometry: fitGeometryOf(own),
  packing: own.shot.packing,
  own: { law: 'quadratic', time_s: machine.operation.soft_start_s, friction: machine.operation.friction },
  seeds: SEEDS,
  slice_depth_m: SLICE_DEPTH_M,
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

interface Miss {
  readonly fill: number;
  readonly centre_m: number;
  readonly band_m: number;
  readonly spread_m: number;
  readonly captured: number;
}

/** How far runs with settings anywhere in the table and seeds of their own lie from what the table tells. */
function misses(grid: SettledGrid, runs: number, firstSeed: number): Miss[] {
  const random = seededRandom(firstSeed);
  const span = (axis: readonly number[]): number => random.between(axis[0]!, axis[axis.length - 1]!);
  return Array.from({ length: runs }, (_, n) => {
    const [fill, time_s, friction] = [span(grid.fill), span(grid.time_s), span(grid.friction)];
    const spin_up = { kind: grid.law, frequency_Hz, time_s };
    const told = fittedShot(fit, { state: grid.state, fill, spin_up, friction });
    if (!told.ok) throw new Error(printFaults(told.faults));
    const seen = run(grid, fill, time_s, friction, firstSeed + n);
    const { centre_m: at, band_m, spread_m, captured } = told.value;
    const centre_m = Math.hypot(seen.x - at[0], seen.y - at[1]);
    return { fill, centre_m, band_m, spread_m, captured: Math.abs(seen.captured - captured) };
  });
}

/** The value that at least the share of a further draw stays below, whatever the distribution (split conformal). */
function bound(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length, Math.ceil(share * (sorted.length + 1))) - 1]!;
}

fit.grids.forEach((grid, n) => {
  const apart = misses(grid, BAND_RUNS, 1000 * (n + 1));
  // What the scatter at a row leaves over is put down to the way between rows.
  const over = apart.map(
    (m) => Math.sqrt(Math.max(0, m.centre_m ** 2 - rowBand_m(fit, grid, m.fill) ** 2)) / m.spread_m,
  );
  const up = (value: number): number => Math.ceil(1e3 * value) / 1e3;
  grid.band_factor = up(bound(over, BAND_SHARE));
  grid.captured_band = up(bound(apart.map((m) => m.captured), BAND_SHARE)); // prettier-ignore
  const check = misses(grid, CHECK_RUNS, 1000 * (n + 1) + 500);
  const within = check.filter((m) => m.centre_m <= m.band_m).length;
  fit.check.runs += CHECK_RUNS;
  fit.check.within_band += within;
  const mm = (of: number): string => (1e3 * of).toFixed(1);
  console.log(
    `${grid.state} ${grid.law}: scatter ${mm(grid.scatter_m)} mm, factor ${grid.band_factor.toFixed(2)}, ` +
      `${within} of ${CHECK_RUNS} check runs within, worst miss ${mm(Math.max(...check.map((m) => m.centre_m)))} mm`,
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
