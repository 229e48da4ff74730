/**
 * Fits the settled shot of a machine from runs of the simulation (a quarter of an hour on one core):
 *   npx tsx scripts/fit-shot.ts [models/alder-one]
 * Writes fit.yaml into the model's folder: where the shot's centre lies over fill, spin-up, friction and the state of
 * the baffle, with the scatter between seeds, and a check with settings and seeds that the table was not made from.
 */
import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Document, isScalar, visit } from 'yaml';
import { seededRandom } from '../src/core/kernel';
import { parseMachine } from '../src/core/machine';
import {
  advance,
  createSimulation,
  fillOf,
  massOfFill,
  pocketOf,
  readShot,
  settledShot,
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
    fill: [0.15, 0.23, 0.31, 0.38, 0.47],
    time_s: [2, 3, 4, 6],
    friction: [0.15, 0.3, 0.5, 0.8],
  },
  { state: 'low', law: 'linear', fill: [0.15, 0.31, 0.47], time_s: [2, 4, 8], friction: [0.15, 0.3, 0.5] },
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
    fill: [0.15, 0.31, 0.47],
    time_s: [2, 4, 6],
    friction: [0.15, 0.3, 0.8],
  },
];
const SEEDS = [101, 102];
const CHECK_RUNS = 24;
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

function fitGrid(axes: Axes): SettledGrid {
  const rows: Run[][] = [];
  for (const fill of axes.fill)
    for (const time_s of axes.time_s)
      for (const friction of axes.friction)
        rows.push(SEEDS.map((seed) => run(axes, fill, time_s, friction, seed)));
  /** Within the rows, pooled over all of them: (n - 1) degrees of freedom a row. */
  const pooled = (of: (r: Run) => number): number => {
    const squares = rows.flatMap((row) => row.map((r) => (of(r) - mean(row.map(of))) ** 2));
    return Math.sqrt(squares.reduce((sum, s) => sum + s, 0) / (rows.length * (SEEDS.length - 1)));
  };
  const table = (of: (r: Run) => number, digits: number): number[] =>
    rows.map((row) => round(mean(row.map(of)), digits));
  return {
    ...axes,
    centre_x_m: table((r) => r.x, 5),
    centre_y_m: table((r) => r.y, 5),
    captured: table((r) => r.captured, 3),
    centre_sd_m: round(Math.sqrt((pooled((r) => r.x) ** 2 + pooled((r) => r.y) ** 2) / 2), 5),
    captured_sd: round(
      pooled((r) => r.captured),
      4,
    ),
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
for (const axes of GRIDS) {
  const grid = fitGrid(axes);
  fit.grids.push(grid);
  console.log(
    `${axes.state} ${axes.law}: ${grid.centre_x_m.length} rows, scatter ${(grid.centre_sd_m * 1e3).toFixed(2)} mm`,
  );
}

const random = seededRandom(1);
const span = (axis: readonly number[]): number => random.between(axis[0]!, axis[axis.length - 1]!);
for (let n = 0; n < CHECK_RUNS; n++) {
  const axes = GRIDS[n % GRIDS.length]!;
  const [fill, time_s, friction] = [span(axes.fill), span(axes.time_s), span(axes.friction)];
  const spin_up = { kind: axes.law, frequency_Hz, time_s };
  const told = settledShot(fit, { state: axes.state, fill, spin_up, friction });
  if (!told.ok) throw new Error(printFaults(told.faults));
  const seen = run(axes, fill, time_s, friction, 1000 + n);
  const [dx, dy] = [seen.x - told.value.centre_m[0], seen.y - told.value.centre_m[1]];
  const within = Math.max(Math.abs(dx), Math.abs(dy)) <= told.value.band_m;
  fit.check.runs++;
  if (within) fit.check.within_band++;
  const miss = `${(dx * 1e3).toFixed(1)} ${(dy * 1e3).toFixed(1)} mm`;
  console.log(
    `${axes.state} ${axes.law} fill ${fill.toFixed(3)} T ${time_s.toFixed(2)} mu ${friction.toFixed(2)}: misses by ${miss}, ${within ? 'within' : 'OUTSIDE'} ${(told.value.band_m * 1e3).toFixed(1)}`,
  );
}
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
