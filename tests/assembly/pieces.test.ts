import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildGraph, planOnGraph } from '../../src/core/assembly';
import { reaction_N } from '../../src/core/assembly/carrying';
import { cutLines, type GridFrame, type LineGrid } from '../../src/core/assembly/lines';
import { socketOutside_m } from '../../src/core/assembly/sizes';
import { meshIntegrals } from '../../src/core/geometry';
import { seededRandom } from '../../src/core/kernel';
import { box, screw, synthetic, turned } from './fixture';

describe('line grid', () => {
  const ring = turned([
    [0, 0.05, 0.12],
    [0.1, 0.05, 0.12],
    [0.1, 0.05, 0.07],
    [0.16, 0.05, 0.07],
  ]);
  const frame = (depth: 0 | 1 | 2, cell_m: number): GridFrame => ({
    a: ((depth + 1) % 3) as 0 | 1 | 2,
    b: ((depth + 2) % 3) as 0 | 1 | 2,
    depth,
    cell_m,
    a0_m: -0.2137,
    b0_m: -0.2091,
    countA: Math.ceil(0.43 / cell_m),
    countB: Math.ceil(0.43 / cell_m),
  });
  const filled = (grid: LineGrid): number => {
    let sum = 0;
    for (let i = 0; i < grid.from.length; i++) sum += grid.to[i]! - grid.from[i]!;
    return sum * grid.cell_m ** 2;
  };

  it('holds the volume of a solid, whichever way its lines run', () => {
    const { volume_m3 } = meshIntegrals(ring);
    for (const depth of [0, 1, 2] as const) {
      const grid = cutLines(frame(depth, 0.002), [{ ...ring, part: 0 }]);
      expect(filled(grid) / volume_m3).toBeCloseTo(1, 2);
    }
  });

  it('cuts large parts on every line near a small one and on one line a block elsewhere', () => {
    const pin = box([0, 0, 0], [0.1, 0.01, 0.01]);
    const fine = cutLines(frame(0, 0.002), [{ ...ring, part: 0 }]);
    const mixed = cutLines(frame(0, 0.002), [{ ...pin, part: 1 }], [{ ...ring, part: 0 }], 4);
    const count = (grid: LineGrid, part: number): number => grid.part.filter((p) => p === part).length;
    expect(count(mixed, 0)).toBeGreaterThan(count(fine, 0) / 20);
    expect(count(mixed, 0)).toBeLessThan(count(fine, 0) / 10);
    expect(count(mixed, 1)).toBe(count(cutLines(frame(0, 0.002), [{ ...pin, part: 1 }]), 1));
  });
});

describe('statics', () => {
  it('shares a weight between two supports by levers, and gives all of it to one', () => {
    // 100 N a quarter of the way from the kept support: a quarter of it at the lost one.
    expect(reaction_N(100, [1, 0, 0], [4, 0, 0], [0, 0, 0])).toBeCloseTo(25, 9);
    expect(reaction_N(100, [1, 0, 0], [4, 0, 0], null)).toBe(100);
    // Beyond the kept support the lost end lifts: nothing to hold there.
    expect(reaction_N(100, [-1, 0, 0], [4, 0, 0], [0, 0, 0])).toBe(0);
  });
});

describe('tools', () => {
  it('sockets grow with the wrench size', () => {
    let before = 0;
    for (let size = 0.006; size < 0.09; size += 0.001) {
      const outside = socketOutside_m(size);
      expect(outside).toBeGreaterThan(before);
      expect(outside).toBeGreaterThan(size);
      before = outside;
    }
  });

  /** A plate with one M10 screw (16 mm hexagon, axis +x) and a wall beside it, `gap_m` from the screw's axis. */
  const besideWall = (gap_m: number, roof: boolean) =>
    synthetic(
      [
        { id: 'plate', fixed: true, solid: box([-0.02, -0.3, -0.3], [0, 0.3, 0.3]) },
        { id: 'wall', solid: box([0.001, gap_m, -0.3], [0.2, gap_m + 0.02, 0.3]) },
        ...(roof ? [{ id: 'roof', solid: box([0.08, -0.3, -0.3], [0.09, gap_m - 0.001, 0.3]) }] : []),
      ],
      [
        {
          id: 'screw',
          places: [{ at_m: [0.0001, 0, 0] }],
          solid: screw(0.005, 0.015, 0.0064, 0.0088),
          joins: ['plate'],
          engaged_m: 0.015,
          diameter_m: 0.01,
          size_m: 0.016,
        },
      ],
    );
  const barredBy = (gap_m: number, roof: boolean): string[][] => {
    const { machine, solids, masses } = besideWall(gap_m, roof);
    const graph = buildGraph(machine, solids, masses);
    const screwAt = graph.bodies.findIndex((b) => b.id === 'screw');
    return graph.ways[screwAt]!.map((w) =>
      w.blockers.filter((b) => b.cause === 'tool').map((b) => graph.bodies[b.body]!.id),
    );
  };

  it('a wall outside the socket bars nothing', () => {
    // Socket of 22.5 mm outside: 11.25 mm from the axis.
    expect(barredBy(0.014, false)).toEqual([[]]);
  });

  it('a wall too near for socket and jaws bars the tool, though the screw itself would pass', () => {
    const ways = barredBy(0.0089, false);
    expect(ways.length).toBeGreaterThan(0);
    for (const names of ways) expect(names).toContain('wall');
  });

  it('under a roof too low for a ratchet a spanner on the head still does', () => {
    // The roof bars the screw's straight way and the socket; sideways the screw is free and a spanner swings below.
    const ways = barredBy(0.2, true);
    expect(ways.some((names) => !names.includes('roof'))).toBe(true);
  });
});

describe('least teardown', () => {
  it('is as good as trying all subsets', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
        const random = seededRandom(seed);
        const count = 7;
        const boxes = Array.from({ length: count }, (_, i) => {
          const low = [0, 1, 2].map(() => 0.02 + 0.01 * random.index(12)) as [number, number, number];
          const high = low.map((x) => x + 0.0299 + 0.01 * random.index(5)) as [number, number, number];
          return { id: `b-${i}`, solid: box(low, high) };
        });
        // A floor and two walls that stay.
        const corner = [
          box([-0.01, -0.01, -0.01], [0.25, 0, 0.25]),
          box([-0.01, 0, -0.01], [0, 0.25, 0.25]),
          box([0, 0, -0.01], [0.25, 0.25, 0]),
        ];
        const bench = synthetic([{ id: 'corner', fixed: true, solid: corner }, ...boxes]);
        const graph = buildGraph(bench.machine, bench.solids, bench.masses);
        const goal = 1 + random.index(count);
        const plan = planOnGraph(bench.machine, graph, { target: graph.bodies[goal]!.id });

        // Brute force: the smallest set that holds the goal and comes apart one by one, each in a free direction.
        const straight = graph.ways.map((ways) =>
          ways.filter((w) => w.kind === 'straight').map((w) => w.blockers.map((b) => b.body)),
        );
        let best = Infinity;
        for (let set = 0; set < 1 << count; set++) {
          if (((set >> (goal - 1)) & 1) === 0) continue;
          const size = [...Array(count).keys()].filter((i) => (set >> i) & 1).length;
          if (size >= best) continue;
          const gone = new Set<number>();
          for (let again = true; again;) {
            again = false;
            for (let i = 0; i < count; i++)
              if (
                (set >> i) & 1 &&
                !gone.has(i + 1) &&
                straight[i + 1]!.some((blockers) => blockers.every((b) => gone.has(b)))
              ) {
                gone.add(i + 1);
                again = true;
              }
          }
          if (gone.has(goal)) best = size;
        }
        // Boxes that share space are held for ever, and so may be the goal; moves of several can be cheaper.
        if (best === Infinity || plan.steps.some((s) => s.unitIds.length > 1)) return;
        expect(plan.provenLeast).toBe(true);
        expect(plan.cost).toBe(best);
      }),
      { numRuns: 12, seed: 3 },
    );
  });
});
