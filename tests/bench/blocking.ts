/**
 * What blocks what on Alder One, from solids that are already there, against stepped collision sweeps of the same
 * pairs with the bounding volume hierarchies of three-mesh-bvh; and the least teardown of a target on a known graph.
 */
import { BufferAttribute, BufferGeometry, Matrix4 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { type BlockingGraph, buildGraph, planOnGraph } from '../../src/core/assembly';
import { buildMachine } from '../../src/core/geometry';
import { add, rotate, seededRandom } from '../../src/core/kernel';
import { kernel, machine, masses, solids } from '../models/alder-one';
import { median_ms, type Measure } from './row';

/**
 * Steps of the sweeps along x, y, z: coarse ones, and ones as fine as the graph's own lines stand. The graph's strike
 * distances have no step.
 */
const STRIDES_M = { coarse: [0.01, 0.01, 0.01], fine: [0.0025, 0.004, 0.004] } as const;
type Strides = (typeof STRIDES_M)[keyof typeof STRIDES_M];
const SAMPLE = { short: 300, long: 3000 };
const TARGET = 'exciter';

/** A body's solids at their places, with a hierarchy of their triangles. */
function hierarchyOf(graph: BlockingGraph, u: number): { geometry: BufferGeometry; tree: MeshBVH } {
  const positions: number[] = [];
  const indices: number[] = [];
  for (const p of graph.bodies[u]!.parts) {
    const { kind, pose } = machine.parts[p]!;
    for (const { solid } of solids[kind]!.bodies) {
      const base = positions.length / 3;
      for (let i = 0; i < solid.positions.length; i += 3) {
        const [x, y, z] = [solid.positions[i]!, solid.positions[i + 1]!, solid.positions[i + 2]!];
        positions.push(...add(rotate(pose.rotation, [x, y, z]), pose.position_m));
      }
      for (const index of solid.indices) indices.push(base + index);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  geometry.setIndex(indices);
  const tree = new MeshBVH(geometry);
  // Two releases of the library are installed, whose types of this field exclude each other.
  Object.assign(geometry, { boundsTree: tree });
  return { geometry, tree };
}

interface Pair {
  readonly u: number;
  readonly v: number;
  readonly axis: number;
}

/**
 * Pairs that need a sweep: `u` along +axis against `v`, boxes in one lane and `v` not behind. A sweep the other way
 * is that of `v` against `u`, so three directions say all six.
 */
function pairsInLane(graph: BlockingGraph): Pair[] {
  const found: Pair[] = [];
  graph.bodies.forEach(({ bounds: a }, u) =>
    graph.bodies.forEach(({ bounds: b }, v) => {
      if (u === v) return;
      const meets = (k: number): boolean => a[2 * k]! < b[2 * k + 1]! && b[2 * k]! < a[2 * k + 1]!;
      for (const axis of [0, 1, 2])
        if (a[2 * axis]! < b[2 * axis + 1]! && [0, 1, 2].every((k) => k === axis || meets(k)))
          found.push({ u, v, axis });
    }),
  );
  return found;
}

/** Moves `u` step by step while the boxes overlap and stops at the first contact. */
function sweep(
  graph: BlockingGraph,
  trees: ReturnType<typeof hierarchyOf>[],
  pair: Pair,
  strides: Strides,
): boolean {
  const stride_m = strides[pair.axis as 0 | 1 | 2];
  const { u, v, axis } = pair;
  const [a, b] = [graph.bodies[u]!.bounds, graph.bodies[v]!.bounds];
  const first = Math.max(1, Math.ceil((b[2 * axis]! - a[2 * axis + 1]!) / stride_m));
  const last = Math.floor((b[2 * axis + 1]! - a[2 * axis]!) / stride_m);
  const place = new Matrix4();
  for (let step = first; step <= last; step++) {
    place.makeTranslation(
      axis === 0 ? step * stride_m : 0,
      axis === 1 ? step * stride_m : 0,
      axis === 2 ? step * stride_m : 0,
    );
    if (trees[v]!.tree.intersectsGeometry(trees[u]!.geometry, place)) return true;
  }
  return false;
}

/** Time of all sweeps from a seeded sample of them, in ms, with the standard error of the sum. */
function sweeps(
  graph: BlockingGraph,
  sample: number,
  strides: Strides,
): { all_ms: number; error_ms: number; note: string } {
  const start = performance.now();
  const trees = graph.bodies.map((_, u) => hierarchyOf(graph, u));
  const trees_ms = performance.now() - start;
  const pairs = pairsInLane(graph);
  const random = seededRandom(4);
  const chosen = Array.from({ length: sample }, () => pairs[random.index(pairs.length)]!);
  for (const pair of chosen.slice(0, 20)) sweep(graph, trees, pair, strides);
  const times = chosen.map((pair) => {
    const begun = performance.now();
    sweep(graph, trees, pair, strides);
    return performance.now() - begun;
  });
  const mean = times.reduce((sum, t) => sum + t, 0) / sample;
  const spread = times.reduce((sum, t) => sum + (t - mean) ** 2, 0) / (sample - 1);
  const error_ms = pairs.length * Math.sqrt(spread / sample);
  return {
    all_ms: mean * pairs.length,
    error_ms,
    note:
      `${sample} of ${pairs.length} pairs in one lane swept, extrapolated to all, standard error ` +
      `${(error_ms / 1000).toPrecision(2)} s; steps of ${strides.map((s) => s * 1000).join(', ')} mm along x, y, z, stopped at the first contact; ` +
      `hierarchies (${Math.round(trees_ms)} ms) not counted; it knows no fits, tools or oblique ways`,
  };
}

export const measure: Measure = (long) => {
  const timed = (run: () => void): number => {
    const start = performance.now();
    run();
    return performance.now() - start;
  };
  // The first call of the process has all code still to be compiled, as a worker has.
  const first_ms = timed(() => void buildGraph(machine, solids, masses));
  const again_ms = median_ms(5, () => void buildGraph(machine, solids, masses));
  const solids_ms = timed(() => void buildMachine(kernel, machine));
  const graph = buildGraph(machine, solids, masses);
  const planned_ms = timed(() => void planOnGraph(machine, graph, { target: TARGET }));
  const plan_ms = median_ms(20, () => void planOnGraph(machine, graph, { target: TARGET }));
  const swept = Object.entries(STRIDES_M).flatMap(([name, strides]) => {
    const baseline = sweeps(graph, long ? SAMPLE.long : SAMPLE.short, strides);
    const row = {
      unit: 'ms',
      baseline: `stepped sweeps with three-mesh-bvh, ${name} steps`,
      baseline_value: baseline.all_ms,
      more_is_better: false,
      note: `${baseline.note}; building the solids (once more: ${Math.round(solids_ms)} ms) not counted`,
    };
    return [
      { ...row, name: 'blocking graph of Alder One, first call of a process', ours: first_ms },
      { ...row, name: 'blocking graph of Alder One, code compiled', ours: again_ms },
    ];
  });
  return [
    ...swept,
    {
      name: `least teardown down to the ${TARGET}, graph known`,
      unit: 'ms',
      ours: plan_ms,
      baseline: 'the same from the solids: graph, moves, search',
      baseline_value: first_ms + planned_ms,
      more_is_better: false,
      note: `first plan on a graph, moves found: ${planned_ms.toFixed(1)} ms`,
    },
  ];
};
