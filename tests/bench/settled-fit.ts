/**
 * How often fresh runs of the shot lie within the band of a machine's table of simulated runs:
 *   npx tsx tests/bench/settled-fit.ts [runs a grid, 40] [first seed, 600000]
 * Settings anywhere in the table, seeds that neither table nor band was made from. Prints one line a grid, by fill.
 */
import { join, resolve } from 'node:path';
import { ownRun } from '../../scripts/lib/own-run';
import { seededRandom } from '../../src/core/kernel';
import {
  advance,
  createSimulation,
  fittedShot,
  massOfFill,
  pocketOf,
  readShot,
  type ShotParameters,
} from '../../src/core/shot';
import { parseModel } from '../../src/core/studies';
import { printFaults } from '../../src/edge/cli/print-faults';
import { readFitFiles, readModelFolder } from '../../src/edge/content/model-files';

const RUNS = Number(process.argv[2] ?? 40);
const FIRST = Number(process.argv[3] ?? 600000);
const folder = join(resolve(import.meta.dirname, '../..'), 'models', 'alder-one');
const parsed = parseModel([...readModelFolder(folder), ...readFitFiles(folder)]);
if (!parsed.ok) throw new Error(printFaults(parsed.faults));
const { source, fit } = parsed.value;
if (fit === undefined) throw new Error('bench/settled-fit: the machine brings no fit');
const own = ownRun(source.machine, 'low');

let all = 0;
fit.grids.forEach((grid, n) => {
  const random = seededRandom(FIRST + n);
  const span = (axis: readonly number[]): number => random.between(axis[0]!, axis[axis.length - 1]!);
  const misses: { fill: number; share: number }[] = [];
  for (let i = 0; i < RUNS; i++) {
    const [fill, time_s, friction] = [span(grid.fill), span(grid.time_s), span(grid.friction)];
    const spin_up = { kind: grid.law, frequency_Hz: fit.frequency_Hz, time_s };
    const told = fittedShot(fit, { state: grid.state, fill, spin_up, friction });
    if (!told.ok) throw new Error(printFaults(told.faults));
    const p: ShotParameters = {
      ...own,
      baffle: grid.state === 'none' ? null : own.baffle,
      direction: grid.state === 'high' ? 'high' : 'low',
      shot: { ...own.shot, mass_kg: massOfFill(own.chamber, own.shot, fill) },
      slice: { ...own.slice, depth_m: fit.slice_depth_m },
      spin_up,
      friction: { ball: friction, wall: friction },
      seed: FIRST + 1000 * n + i,
    };
    const sim = createSimulation(p);
    advance(sim, sim.end_s);
    const { balls, turning, time_s: at } = sim.world;
    const { centre_m } = readShot(p, pocketOf(p.chamber, p.baffle), balls, turning, at);
    const miss_m = Math.hypot(centre_m[0] - told.value.centre_m[0], centre_m[1] - told.value.centre_m[1]);
    misses.push({ fill, share: miss_m / told.value.band_m });
  }
  const within = (of: typeof misses): string => `${of.filter((m) => m.share <= 1).length} of ${of.length}`;
  all += misses.filter((m) => m.share <= 1).length;
  console.log(
    `${grid.state} ${grid.law}: ${within(misses)} within; fill below 0.25 ${within(misses.filter((m) => m.fill < 0.25))}`,
  );
});
console.log(`${all} of ${RUNS * fit.grids.length} runs within the band`);
