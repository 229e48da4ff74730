/**
 * Speed of the loose shot: npx tsx tests/bench/shot.ts [seeds]. Prints the share captured over the seeds (the long
 * version of the emergence test), ball-steps a second, and simulated time a wall second of the position-based step
 * against discrete elements made for the same bound on the overlap, with the overlaps both reached.
 */
import {
  advance,
  advanceReference,
  createReference,
  createSimulation,
  type Direction,
  P,
  pocketOf,
  type Readings,
  readShot,
  type Simulation,
} from '../../src/core/shot';
import { ALDER_ONE } from '../shot/worlds';

/** Mean and 95th percentile of the overlaps of touching balls, as shares of the diameter. */
function overlaps(sim: Simulation): { mean: number; p95: number } {
  const { position: p, count } = sim.world.balls;
  const period = sim.world.period_m;
  const found: number[] = [];
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < i; j++) {
      let dz = p[i * P + 2]! - p[j * P + 2]!;
      if (period > 0) dz -= period * Math.round(dz / period);
      const reach = p[i * P + 3]! + p[j * P + 3]!;
      const d = Math.hypot(p[i * P]! - p[j * P]!, p[i * P + 1]! - p[j * P + 1]!, dz);
      if (d < reach) found.push((reach - d) / reach);
    }
  }
  found.sort((a, b) => a - b);
  return {
    mean: found.reduce((sum, v) => sum + v, 0) / found.length,
    p95: found[Math.floor(0.95 * found.length)] ?? 0,
  };
}

interface Timed {
  readonly readings: Readings;
  readonly steps_s: number;
  readonly simulated: number;
  readonly mean: number;
  readonly p95: number;
}

/** One run; speeds by processor time, so that other work on the machine counts less. */
function time(direction: Direction, seed: number, reference: boolean): Timed {
  const p = { ...ALDER_ONE, direction, seed };
  const sim = createSimulation(p);
  const elements = reference ? createReference(sim) : null;
  const start = process.cpuUsage();
  if (elements === null) advance(sim, sim.end_s);
  else advanceReference(sim, elements, sim.end_s);
  const spent_s = process.cpuUsage(start).user / 1e6;
  const readings = readShot(p, pocketOf(p.chamber, p.baffle), sim.world.balls, sim.world.turning, sim.end_s);
  const steps_s = (sim.steps * sim.world.balls.count) / spent_s;
  return { readings, steps_s, simulated: sim.end_s / spent_s, ...overlaps(sim) };
}

const seeds = Number(process.argv[2] ?? 5);
const spread = (values: readonly number[]): string => {
  const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
  return `${mean.toFixed(3)} (${Math.min(...values).toFixed(3)} to ${Math.max(...values).toFixed(3)})`;
};
for (const direction of ['low', 'high'] satisfies Direction[]) {
  const runs = Array.from({ length: seeds }, (_, i) => time(direction, i + 1, false));
  const of = (read: (r: Readings) => number): string => spread(runs.map((r) => read(r.readings)));
  console.log(
    `${direction}, ${seeds} seeds: captured below the spill radius ${of((r) => r.captured_below_spill)}, ` +
      `with heap ${of((r) => r.captured)}, U of the shot ${of((r) => r.shot_U_kgm)} kg m`,
  );
}
time('low', 1, true);
const [ours, theirs] = [time('low', 1, false), time('low', 1, true)];
for (const [name, t] of [
  ['position-based', ours],
  ['discrete elements', theirs],
] as const)
  console.log(
    `${name}: ${(t.steps_s / 1e6).toFixed(2)} million ball-steps/s, ${t.simulated.toFixed(2)} s simulated a second, ` +
      `overlap at the end ${(100 * t.mean).toFixed(2)} % mean, ${(100 * t.p95).toFixed(2)} % p95`,
  );
console.log(`position-based over discrete elements: ${(ours.simulated / theirs.simulated).toFixed(1)} times`);
