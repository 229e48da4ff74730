import { describe, expect, it } from 'vitest';
import {
  buildGraph,
  DIRECTIONS,
  planOnGraph,
  planTeardown,
  strikeDistance_m,
  verifyPlan,
} from '../../src/core/assembly';
import { box, screw, synthetic, turned } from './fixture';

const order = (plan: { steps: readonly { unitIds: readonly string[] }[] }): string[] =>
  plan.steps.map((s) => [...s.unitIds].sort().join('+'));

/** Open box of five walls, a lid, four screws from above, and something inside. */
function boxWithLid() {
  const wall = [
    box([-0.2, 0, -0.2], [0.2, 0.02, 0.2]),
    box([-0.2, 0.02, -0.2], [-0.18, 0.2, 0.2]),
    box([0.18, 0.02, -0.2], [0.2, 0.2, 0.2]),
    box([-0.18, 0.02, -0.2], [0.18, 0.2, -0.18]),
    box([-0.18, 0.02, 0.18], [0.18, 0.2, 0.2]),
  ];
  return synthetic(
    [
      { id: 'tub', solid: wall, fixed: true },
      { id: 'lid', solid: box([-0.2, 0.2, -0.2], [0.2, 0.22, 0.2]) },
      { id: 'content', solid: box([-0.05, 0.02, -0.05], [0.05, 0.1, 0.05]) },
    ],
    [
      {
        id: 'screws',
        // Head up: the kind's +x turned to +y.
        places: [-0.19, 0.19].flatMap((x) =>
          [-0.19, 0.19].map((z) => ({ at_m: [x, 0.22, z] as const, turn_deg: [0, 0, 90] as const })),
        ),
        solid: screw(0.003, 0.05, 0.004, 0.005),
        joins: ['lid', 'tub'],
        engaged_m: 0.03,
        diameter_m: 0.006,
        size_m: 0.01,
      },
    ],
  );
}

describe('box with lid and screws', () => {
  const { machine, solids, masses } = boxWithLid();
  const graph = buildGraph(machine, solids, masses);
  const index = (id: string): number => graph.bodies.findIndex((b) => b.id === id);

  it('takes screws, lid, content in that order', () => {
    const plan = planOnGraph(machine, graph);
    expect(plan.orderExists).toBe(true);
    expect(order(plan)).toEqual(['screws', 'lid', 'content']);
    expect(plan.steps.at(-1)?.legs.at(-1)?.direction).toEqual([0, 1, 0]);
  });

  it('knows strike distances', () => {
    const up = 2;
    expect(strikeDistance_m(graph, index('content'), index('lid'), up)).toBeCloseTo(0.1, 5);
    expect(strikeDistance_m(graph, index('content'), index('tub'), 0)).toBeCloseTo(0.13, 5);
    expect(strikeDistance_m(graph, index('content'), index('tub'), up)).toBe(Infinity);
    expect(DIRECTIONS[up]).toEqual([0, 1, 0]);
  });

  it('finds the least teardown for a target and proves it', () => {
    const plan = planOnGraph(machine, graph, { target: 'lid' });
    expect(order(plan)).toEqual(['screws', 'lid']);
    expect(plan.provenLeast).toBe(true);
    expect(plan.cost).toBe(2);
  });
});

describe('shaft, bearing and circlip in a housing', () => {
  // Housing bore stepped: the bearing's outer ring sits against a shoulder on the left, a circlip in a groove holds
  // it on the right; the circlip snaps inward, so it is declared free of the housing.
  const ring = (x0: number, x1: number, inner: number, outer: number) =>
    turned([
      [x0, inner, outer],
      [x1, inner, outer],
    ]);
  const parts = [
    {
      id: 'housing',
      fixed: true,
      solid: turned([
        [0, 0.03, 0.08],
        [0.02, 0.03, 0.08],
        [0.02, 0.05, 0.08],
        [0.05, 0.05, 0.08],
        [0.05, 0.053, 0.08],
        [0.053, 0.053, 0.08],
        [0.053, 0.05, 0.08],
        [0.08, 0.05, 0.08],
      ]),
    },
    { id: 'bearing', solid: ring(0.02, 0.05, 0.02, 0.05) },
    { id: 'circlip', solid: ring(0.05, 0.053, 0.045, 0.053) },
    {
      id: 'shaft',
      solid: turned([
        [-0.1, 0, 0.02],
        [0.05, 0, 0.02],
        [0.05, 0, 0.03],
        [0.2, 0, 0.03],
      ]),
    },
  ];
  const relations = [
    { type: 'seat', inner: 'bearing', outer: 'housing', diameter_m: 0.1, fit: 'H7/h6', axis: [1, 0, 0] },
    { type: 'seat', inner: 'shaft', outer: 'bearing', diameter_m: 0.04, fit: 'H7/g6', axis: [1, 0, 0] },
    { type: 'seal', seal: 'circlip', between: ['housing'] },
  ] as const;
  const { machine, solids, masses } = synthetic(parts, [], relations as never);

  it('shaft first, then circlip, then bearing, all to the open side', () => {
    const plan = planTeardown(machine, solids, masses);
    expect(order(plan)).toEqual(['shaft', 'circlip', 'bearing']);
    for (const step of plan.steps) expect(step.legs.at(-1)?.direction).toEqual([1, 0, 0]);
  });

  it('without the declared seat the touching bore would bar the bearing sideways only', () => {
    const graph = buildGraph(machine, solids, masses);
    const bearing = graph.bodies.findIndex((b) => b.id === 'bearing');
    const housing = graph.bodies.findIndex((b) => b.id === 'housing');
    expect(strikeDistance_m(graph, bearing, housing, 1)).toBeCloseTo(0, 5);
    expect(strikeDistance_m(graph, bearing, housing, 0)).toBe(Infinity);
    expect(strikeDistance_m(graph, bearing, housing, 2)).toBeLessThan(1e-3);
  });
});

describe('interlocked pieces', () => {
  it('reports that no order exists', () => {
    // Two closed links of a chain.
    const link = (y: number, flat: boolean) => {
      const at = (a: number, b: number, c: number): [number, number, number] =>
        flat ? [a, b + y, c] : [c, b + y, a];
      const bar = (lo: [number, number, number], hi: [number, number, number]) =>
        box(
          [Math.min(lo[0], hi[0]), Math.min(lo[1], hi[1]), Math.min(lo[2], hi[2])],
          [Math.max(lo[0], hi[0]), Math.max(lo[1], hi[1]), Math.max(lo[2], hi[2])],
        );
      return [
        bar(at(-0.1, -0.1, -0.01), at(-0.08, 0.1, 0.01)),
        bar(at(0.08, -0.1, -0.01), at(0.1, 0.1, 0.01)),
        bar(at(-0.08, -0.1, -0.01), at(0.08, -0.08, 0.01)),
        bar(at(-0.08, 0.08, -0.01), at(0.08, 0.1, 0.01)),
      ];
    };
    const { machine, solids, masses } = synthetic([
      { id: 'link-a', solid: link(0, true), fixed: true },
      { id: 'link-b', solid: link(0.1, false) },
      { id: 'loose', solid: box([0.3, 0, 0], [0.4, 0.1, 0.1]) },
    ]);
    const plan = planTeardown(machine, solids, masses);
    expect(plan.orderExists).toBe(false);
    expect(plan.stuckIds).toEqual(['link-b']);
    expect(order(plan)).toEqual(['loose']);
    const target = planTeardown(machine, solids, masses, { target: 'link-b' });
    expect(target.orderExists).toBe(false);
  });
});

describe('several that leave as one', () => {
  it('finds a nut that is reached only after the whole has been drawn, and splits it on the bench', () => {
    // A sleeve in a blind bore, a rod through it with a collar outside, a nut on the rod's inner end.
    const { machine, solids, masses } = synthetic(
      [
        {
          id: 'block',
          fixed: true,
          solid: turned([
            [0, 0, 0.2],
            [0.02, 0, 0.2],
            [0.02, 0.1, 0.2],
            [0.3, 0.1, 0.2],
          ]),
        },
        {
          id: 'sleeve',
          solid: turned([
            [0.1, 0.03, 0.1],
            [0.3, 0.03, 0.1],
          ]),
        },
        {
          id: 'rod',
          solid: turned([
            [0.05, 0, 0.03],
            [0.3, 0, 0.03],
            [0.3, 0, 0.06],
            [0.32, 0, 0.06],
          ]),
        },
        {
          id: 'nut',
          solid: turned([
            [0.07, 0.03, 0.05],
            [0.1, 0.03, 0.05],
          ]),
        },
      ],
      [],
      [
        { type: 'seat', inner: 'sleeve', outer: 'block', diameter_m: 0.2, fit: 'H7/g6' },
        { type: 'seat', inner: 'rod', outer: 'sleeve', diameter_m: 0.06, fit: 'H7/g6' },
        { type: 'thread', male: 'rod', female: 'nut', diameter_m: 0.06, pitch_m: 0.002, engaged_m: 0.03 },
      ] as never,
    );
    const plan = planTeardown(machine, solids, masses);
    expect(plan.orderExists).toBe(true);
    expect(order(plan)).toEqual(['nut+rod+sleeve', 'nut', 'rod']);
    expect(plan.steps.map((s) => s.kind)).toEqual(['remove', 'bench', 'bench']);
    expect(plan.steps[0]?.why.map((m) => m.key)).toContain('why.together');
    expect(plan.steps[1]?.legs[0]).toMatchObject({ kind: 'unscrew', pitch_m: 0.002 });
  });
});

describe('a part that needs two legs', () => {
  it('slides from under a lip, then lifts out', () => {
    const trough = [
      box([0, 0, 0], [0.4, 0.02, 0.2]),
      box([0, 0.02, 0], [0.02, 0.1, 0.2]),
      box([0.38, 0.02, 0], [0.4, 0.1, 0.2]),
      box([0.02, 0.02, 0], [0.38, 0.1, 0.02]),
      box([0.02, 0.02, 0.18], [0.38, 0.1, 0.2]),
      box([0, 0.1, 0], [0.2, 0.12, 0.2]),
    ];
    const { machine, solids, masses } = synthetic([
      { id: 'trough', fixed: true, solid: trough },
      { id: 'slug', solid: box([0.03, 0.021, 0.03], [0.13, 0.08, 0.17]) },
    ]);
    const plan = planTeardown(machine, solids, masses);
    expect(plan.orderExists).toBe(true);
    const legs = plan.steps[0]!.legs;
    expect(legs.map((l) => l.direction)).toEqual([
      [1, 0, 0],
      [0, 1, 0],
    ]);
    expect(legs[0]!.distance_m).toBeGreaterThan(0.17);
    expect(verifyPlan(machine, solids, masses, plan).contacts).toEqual([]);
  });
});
