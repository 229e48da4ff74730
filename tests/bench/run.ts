/**
 * npm run bench: figures of speed, each as a ratio to a named baseline of the same run. Prints them and adds them as
 * rows to tests/bench/results/bench.csv with the date and the machine's name (processor and number of cores).
 */
import { appendFileSync, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { dirname, join } from 'node:path';
import { buildGraph } from '../../src/core/assembly';
import { planeInPart, sliceSolid, withSolids } from '../../src/core/geometry';
import { buildSettledChamber } from '../../src/core/mechanics';
import { kernel, machine, masses, solids } from '../models/alder-one';

interface Row {
  readonly name: string;
  readonly ours_ms: number;
  readonly baseline: string;
  readonly baseline_ms: number;
}

/** Median time of one call, in milliseconds. */
function median_ms(times: number, run: () => void): number {
  run();
  const all = Array.from({ length: times }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return all[times >> 1]!;
}

const chamber = { radius_m: 0.11, eccentricity_m: 0.046, chord_x_m: null };
const baffle = {
  psi_deg: 66,
  beta_deg: 4,
  leg1_m: 0.09,
  leg2_m: 0.02,
  side: 1,
  pocket_side: 1,
  half_thickness_m: 0.004,
} as const;

/** Settling by a look-up against counting square cells of half a millimetre, the plain way to the same numbers. */
function settledRow(): Row {
  const settled = buildSettledChamber(chamber, baffle);
  const cell = 0.0005;
  const cells = (): number => {
    const found: number[] = [];
    for (let x = -0.07; x < 0.16; x += cell)
      for (let y = -0.115; y < 0.115; y += cell)
        if (Math.hypot(x - 0.046, y) < 0.11) found.push(Math.hypot(x, y));
    found.sort((a, b) => b - a);
    return found[Math.floor(0.01178 / cell ** 2)]!;
  };
  return {
    name: 'settle the shot for one fill',
    ours_ms: median_ms(200, () => void settled.settle(0.01178, 'low')),
    baseline: 'sorting square cells of 0.5 mm',
    baseline_ms: median_ms(5, () => void cells()),
  };
}

/** Cut faces of the whole machine against the solid kernel's own slices of the same solids. */
function sectionRow(): Row {
  const plane = { point_m: [0, 0, 1e-4], normal: [0, 0, 1] } as const;
  const parts = machine.parts.filter((p) => !p.context && p.option === null);
  const ours = (): void => {
    for (const part of parts)
      for (const body of solids[part.kind]!.bodies) sliceSolid(body.solid, planeInPart(plane, part.pose));
  };
  return withSolids(kernel, (scope) => {
    const posed = parts.flatMap((part) =>
      solids[part.kind]!.bodies.map((body) => scope.pose(scope.fromMesh(body.solid), part.pose)),
    );
    return {
      name: 'cut faces of the whole machine',
      ours_ms: median_ms(7, ours),
      baseline: 'slices by the solid kernel (manifold), solids already in it',
      baseline_ms: median_ms(3, () => {
        for (const solid of posed) solid.slice(plane.point_m[2]).delete();
      }),
    };
  });
}

/** What blocks what, against boolean intersections of a sample of swept pairs, scaled up to all pairs and directions. */
function graphRow(): Row {
  const units = machine.units.filter((u) =>
    u.partIds.some((id) => !machine.parts.find((p) => p.id === id)!.context),
  );
  const sample = 40;
  const step = Math.max(1, Math.floor(units.length / sample));
  const baseline = withSolids(kernel, (scope) => {
    const solidOf = (u: (typeof units)[number]) =>
      scope.union(
        u.partIds.flatMap((id) => {
          const part = machine.parts.find((p) => p.id === id)!;
          return solids[part.kind]!.bodies.map((body) => scope.pose(scope.fromMesh(body.solid), part.pose));
        }),
      );
    const chosen = units.filter((_, i) => i % step === 0).map(solidOf);
    let pairs = 0;
    const start = performance.now();
    for (let i = 0; i < chosen.length; i += 4) {
      for (let j = 0; j < chosen.length; j += 4) {
        if (i === j) continue;
        // Ten steps of 50 mm along +x: the coarsest sweep that still tells what is struck.
        for (let k = 1; k <= 10; k++)
          scope.intersect(scope.translate(chosen[i]!, [0.05 * k, 0, 0]), chosen[j]!).isEmpty();
        pairs++;
      }
    }
    const perPair = (performance.now() - start) / pairs;
    return perPair * units.length * (units.length - 1) * 6;
  });
  return {
    name: 'blocking graph of Alder One, cold',
    ours_ms: median_ms(1, () => void buildGraph(machine, solids, masses)),
    baseline:
      'stepped sweeps by the solid kernel, extrapolated from a sample of pairs to all pairs and six directions',
    baseline_ms: baseline,
  };
}

const rows = [settledRow(), sectionRow(), graphRow()];
const file = join(import.meta.dirname, 'results', 'bench.csv');
mkdirSync(dirname(file), { recursive: true });
if (!existsSync(file)) writeFileSync(file, 'date,machine,name,ours_ms,baseline,baseline_ms,ratio\n');
const processor = `${cpus()[0]?.model.trim() ?? 'unknown'} x ${cpus().length}`;
const date = new Date().toISOString().slice(0, 10);
for (const { name, ours_ms, baseline, baseline_ms } of rows) {
  const ratio = baseline_ms / ours_ms;
  console.log(
    `${name}: ${ours_ms.toPrecision(3)} ms, ${ratio.toPrecision(3)} times as fast as ${baseline} (${baseline_ms.toPrecision(3)} ms)`,
  );
  appendFileSync(
    file,
    `${date},"${processor}","${name}",${ours_ms.toPrecision(4)},"${baseline}",${baseline_ms.toPrecision(4)},${ratio.toPrecision(4)}\n`,
  );
}
