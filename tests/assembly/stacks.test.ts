import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  buildExplode,
  buildGraph,
  buildTimeline,
  explodeOffsetsAt,
  planOnGraph,
  poseOffsetsAt,
  straightBlockers,
  verifyLayout,
  verifyPlan,
} from '../../src/core/assembly';
import { seededRandom } from '../../src/core/kernel';
import { box, screw, synthetic, turned, type Synthetic } from './fixture';

/** A post on a foot, rings on it in a known order, and a collar screwed on the post's end face. */
function stack(seed: number, count: number): { bench: Synthetic; expected: string[] } {
  const random = seededRandom(seed);
  const top = 0.3;
  const rings = Array.from({ length: count }, (_, i) => {
    const x0 = 0.02 + (top - 0.02) * (i / count);
    const x1 = 0.02 + (top - 0.02) * ((i + 1) / count);
    return {
      id: `ring-${i}`,
      solid: turned([
        [x0, 0.031, random.between(0.05, 0.15)],
        [x1, 0.031, random.between(0.05, 0.15)],
      ]),
    };
  });
  const bench = synthetic(
    [
      {
        id: 'foot',
        fixed: true,
        solid: turned([
          [0, 0, 0.16],
          [0.02, 0, 0.16],
          [0.02, 0, 0.03],
          [top, 0, 0.03],
        ]),
      },
      ...rings,
      {
        id: 'collar',
        solid: turned([
          [top, 0.006, 0.045],
          [top + 0.01, 0.006, 0.045],
        ]),
      },
    ],
    [
      {
        id: 'end-screw',
        places: [{ at_m: [top + 0.01, 0, 0] }],
        solid: screw(0.005, 0.01, 0.006, 0.009),
        joins: ['collar', 'foot'],
        engaged_m: 0.005,
        diameter_m: 0.01,
        size_m: 0.016,
      },
    ],
  );
  return {
    bench,
    expected: ['end-screw', 'collar', ...rings.map((r) => r.id).reverse()],
  };
}

const runs = { numRuns: 6, seed: 11 };

describe('random stacks', () => {
  it('come apart in the one order they have, and the judge agrees', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), fc.integer({ min: 1, max: 5 }), (seed, count) => {
        const { bench, expected } = stack(seed, count);
        const { machine, solids, masses } = bench;
        const graph = buildGraph(machine, solids, masses);
        const plan = planOnGraph(machine, graph);
        expect(plan.steps.filter((s) => s.kind === 'remove').map((s) => s.unitIds[0])).toEqual(expected);
        expect(plan.provenLeast).toBe(true);
        expect(verifyPlan(machine, solids, masses, plan, { seed, samples: 60 }).contacts).toEqual([]);
      }),
      runs,
    );
  });

  it('explode without one part in another at any opening, and the timeline ends there', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
        const { machine, solids, masses } = stack(seed, 4).bench;
        const plan = planOnGraph(machine, buildGraph(machine, solids, masses));
        const explode = buildExplode(machine, solids, masses, plan);
        const offsets = new Float32Array(machine.parts.length * 3);
        for (const s of [0.02, 0.1, 0.3, 0.5, 0.8, 1]) {
          explodeOffsetsAt(explode, s, offsets);
          expect(verifyLayout(machine, solids, masses, offsets, { seed, samples: 60 })).toEqual([]);
        }
        const timeline = buildTimeline(plan, machine, explode);
        const pose = new Float32Array(machine.parts.length * 4);
        poseOffsetsAt(timeline, timeline.duration_s, pose);
        machine.parts.forEach((_, p) => {
          for (let k = 0; k < 3; k++) expect(pose[p * 4 + k]).toBeCloseTo(offsets[p * 3 + k]!, 5);
        });
        poseOffsetsAt(timeline, 0, pose);
        expect(Math.max(...pose.map(Math.abs))).toBeLessThan(1e-6);
      }),
      runs,
    );
  });
});

describe('adding a part', () => {
  it('never frees a blocked one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
        const random = seededRandom(seed);
        const boxes = Array.from({ length: 6 }, (_, i) => {
          const low = [0, 1, 2].map(() => random.between(0, 0.4)) as [number, number, number];
          const high = low.map((x) => x + random.between(0.02, 0.1)) as [number, number, number];
          return { id: `box-${i}`, solid: box(low, high) };
        });
        const few = synthetic(boxes.slice(0, 5));
        const all = synthetic(boxes);
        const before = buildGraph(few.machine, few.solids, few.masses);
        const after = buildGraph(all.machine, all.solids, all.masses);
        for (let u = 0; u < 5; u++)
          for (let d = 0; d < 6; d++) {
            const had = straightBlockers(before, u, d).map((b) => b.body);
            const has = new Set(straightBlockers(after, u, d).map((b) => b.body));
            for (const b of had) expect(has.has(b)).toBe(true);
          }
      }),
      runs,
    );
  });
});

describe('a plan', () => {
  it('respects every blocking arc: nothing moves while what it strikes is there', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
        const { machine, solids, masses } = stack(seed, 5).bench;
        const graph = buildGraph(machine, solids, masses);
        const plan = planOnGraph(machine, graph);
        const index = new Map(graph.bodies.map((b, i) => [b.id, i]));
        const gone = new Set<number>();
        for (const step of plan.steps) {
          const [u] = step.unitIds.map((id) => index.get(id)!);
          const way = graph.ways[u!]!.find((w) => w.blockers.every((b) => gone.has(b.body)));
          expect(way).toBeDefined();
          gone.add(u!);
        }
        // Together with the fixed foot, that is all of them.
        expect(gone.size).toBe(graph.bodies.length - 1);
      }),
      runs,
    );
  });
});
