/** What the planner must find by itself on Alder One: nothing of this is written in the model. */
import { describe, expect, it } from 'vitest';
import {
  buildExplode,
  buildGraph,
  DIRECTIONS,
  explodeOffsetsAt,
  planOnGraph,
  straightBlockers,
  strikeDistance_m,
  verifyLayout,
  verifyPlan,
} from '../../src/core/assembly';
import { type Solid, type SolidScope, withSolids } from '../../src/core/geometry';
import { seededRandom } from '../../src/core/kernel';
import { kernel, machine, masses, solids } from '../models/alder-one';

const graph = buildGraph(machine, solids, masses);
const plan = planOnGraph(machine, graph);
const index = (id: string): number => graph.bodies.findIndex((b) => b.unitIds.includes(id));
/** Number of the first step that takes a unit off. */
const stepOf = (id: string): number =>
  plan.steps.find((s) => s.kind === 'remove' && s.unitIds.includes(id))?.index ?? NaN;
const benchStepOf = (id: string): number =>
  plan.steps.find((s) => s.kind === 'bench' && s.unitIds.includes(id))?.index ?? NaN;
const rising = (numbers: readonly number[]): boolean =>
  numbers.every((n, i) => !Number.isNaN(n) && (i === 0 || n > numbers[i - 1]!));

describe('the right-hand order', () => {
  it('comes out as a mechanic works', () => {
    expect(plan.orderExists).toBe(true);
    expect(plan.stuckIds).toEqual([]);
    const order = [
      'guard',
      'exciter-motor-bolts',
      'exciter-motor',
      'coupling-shaft',
      'isolator-bolts-right',
      'bracket',
      'shim-pack-1',
      'isolator-right-1',
      'mounting-plate-bolts',
      'mounting-plate',
      'hub-bolts',
      'hub',
      'exciter',
      'carrier-bolts-left',
      'bearing-carrier-left',
    ];
    expect(rising(order.map(stepOf))).toBe(true);
    expect(stepOf('bracket-bolts')).toBeLessThan(stepOf('bracket'));
  });

  it('takes the hub out as one cartridge, whose nut cannot be reached in place', () => {
    const step = plan.steps[stepOf('hub')]!;
    expect([...step.unitIds].sort()).toEqual(
      [
        'bearing-carrier-right',
        'carrier-bolts-right',
        'carrier-o-ring-right',
        'exciter-bearing-right',
        'hub',
        'hub-o-ring',
        'hub-seal',
        'lock-washer',
        'nose-seal',
        'spindle',
        'spindle-nut',
        'wheel-bearing-inner',
        'wheel-bearing-outer',
      ].sort(),
    );
    expect(step.mass_kg).toBeGreaterThan(280);
    expect(step.mass_kg).toBeLessThan(310);
    expect(step.why.map((m) => m.key)).toContain('why.together');
    const nut = step.why.find((m) => m.key === 'why.together-thread' && m.params?.part === 'spindle-nut');
    expect(nut).toBeDefined();
  });

  it('splits the cartridge on the bench', () => {
    expect(
      rising(
        [
          'carrier-bolts-right',
          'bearing-carrier-right',
          'spindle-nut',
          'spindle',
          'wheel-bearing-outer',
          'wheel-bearing-inner',
        ].map(benchStepOf),
      ),
    ).toBe(true);
    expect(benchStepOf('lock-washer')).toBeGreaterThan(benchStepOf('spindle-nut'));
  });

  it('cannot take the hub bolts before the mounting plate', () => {
    // Ways that run into the drum itself are none.
    const ways = graph.ways[index('hub-bolts')]!.filter((way) =>
      way.blockers.every((b) => b.body !== index('drum')),
    );
    expect(ways.length).toBeGreaterThan(0);
    for (const way of ways) expect(way.blockers.some((b) => b.body === index('mounting-plate'))).toBe(true);
  });
});

describe('what must be held', () => {
  it('carries the exciter before the cartridge takes away its right bearing', () => {
    const support = plan.steps.find((s) => s.supports.some((x) => x.kind === 'guide-bar'))!;
    expect(support.kind).toBe('support');
    expect(support.unitIds).toEqual(['exciter']);
    expect(support.index).toBeLessThan(stepOf('hub'));
    expect(support.index).toBeGreaterThan(stepOf('mounting-plate'));
    // Simple beam on two bearings 1.28 m apart.
    const exciter = graph.bodies[index('exciter')]!;
    const { left_x_m, right_x_m } = machine.operation.bearings;
    const wanted = (exciter.mass_kg * 9.80665 * (exciter.centre_m[0] - left_x_m)) / (right_x_m - left_x_m);
    expect(support.supports[0]!.force_N).toBeCloseTo(wanted, 3);
  });

  it('cribs a side plate before its weight path is opened', () => {
    for (const [plate, opens] of [
      ['side-plate-right', 'bracket-bolts'],
      ['side-plate-left', 'mount-ring-bolts'],
    ] as const) {
      const crib = plan.steps.find((s) => s.supports.some((x) => x.kind === 'crib' && x.what === plate))!;
      expect(crib.index).toBeLessThan(stepOf(opens));
      expect(crib.supports[0]!.force_N).toBeGreaterThan(8e3);
      expect(crib.supports[0]!.force_N).toBeLessThan(15e3);
    }
  });

  it('chocks the drum before its motor lets go', () => {
    const chock = plan.steps.find((s) => s.supports.some((x) => x.kind === 'chock'))!;
    expect(chock.index).toBeLessThan(stepOf('output-bolts'));
  });

  it('straps the exciter, whose heavy side swings down', () => {
    expect(plan.steps[stepOf('exciter')]!.supports.map((s) => s.kind)).toContain('strap');
  });

  it('lets the oil out before the hub opens the case', () => {
    const drain = plan.steps.find((s) => s.kind === 'drain')!;
    expect(drain.index).toBeLessThan(stepOf('hub'));
    expect(drain.index).toBeGreaterThan(stepOf('drain-plug'));
  });
});

describe('the left side', () => {
  it('needs the side plate off before the drive plate, and that before the isolators', () => {
    expect(rising(['side-plate-left', 'drive-plate', 'isolator-left-1'].map(stepOf))).toBe(true);
    const target = planOnGraph(machine, graph, { target: 'isolator-left-3' });
    expect(target.provenLeast).toBe(true);
    const taken = new Set(target.steps.flatMap((s) => s.unitIds));
    expect(taken.has('side-plate-left')).toBe(true);
    expect(taken.has('exciter')).toBe(false);
    expect(taken.has('isolator-left-4')).toBe(false);
  });
});

describe('independent judges', () => {
  it('find no contact in the whole teardown', () => {
    const verdict = verifyPlan(machine, solids, masses, plan, { samples: 60, stride_m: 0.02 });
    expect(verdict.contacts).toEqual([]);
    expect(verdict.pointsAsked).toBeGreaterThan(50_000);
  });

  it('find no part in another while the machine explodes', () => {
    const explode = buildExplode(machine, solids, masses, plan);
    const offsets = new Float32Array(machine.parts.length * 3);
    for (const s of [0.05, 0.3, 0.7, 1]) {
      explodeOffsetsAt(explode, s, offsets);
      expect(verifyLayout(machine, solids, masses, offsets, { samples: 40 })).toEqual([]);
    }
    expect(explode.spread_m / machine.drumWidth_m).toBeLessThan(3.3);
  });

  it('agree on 200 pairs by booleans of the solid kernel, before and behind the strike', () => {
    const random = seededRandom(5);
    const n = graph.bodies.length;
    const joined = new Set(graph.joints.flatMap((j) => [`${j.from} ${j.to}`, `${j.to} ${j.from}`]));
    const soft = (u: number): boolean => graph.bodies[u]!.hose || graph.bodies[u]!.seal;
    let asked = 0;
    const wrong: string[] = [];
    withSolids(kernel, (scope) => {
      const shapes = new Map<number, Solid>();
      const shape = (u: number): Solid => {
        const known = shapes.get(u) ?? scope.union(graph.bodies[u]!.parts.flatMap((p) => posed(scope, p)));
        shapes.set(u, known);
        return known;
      };
      const shared_m3 = (u: number, v: number, d: number, travel: number): number => {
        const [x, y, z] = DIRECTIONS[d]!;
        return scope
          .intersect(scope.translate(shape(u), [x * travel, y * travel, z * travel]), shape(v))
          .volume();
      };
      for (let tries = 0; asked < 200 && tries < 20_000; tries++) {
        const [u, v, d] = [random.index(n), random.index(n), random.index(6)];
        const [a, b] = [graph.bodies[u]!.bounds, graph.bodies[v]!.bounds];
        const axis = (d >> 1) as 0 | 1 | 2;
        if (u === v || soft(u) || soft(v) || joined.has(`${u} ${v}`)) continue;
        // Only pairs whose boxes pass each other say anything.
        const inLane = [0, 1, 2].every(
          (k) => k === axis || (a[2 * k]! < b[2 * k + 1]! && b[2 * k]! < a[2 * k + 1]!),
        );
        if (!inLane) continue;
        const strike = strikeDistance_m(graph, u, v, d);
        const lines = graph.lines[axis][(d & 1) === 0 ? u * n + v : v * n + u]!;
        // A graze narrower than the grid's spacing may go either way.
        if (strike < Infinity && lines < 6) continue;
        asked++;
        const name = `${graph.bodies[u]!.id} ${DIRECTIONS[d]!.join()} ${graph.bodies[v]!.id}`;
        if (strike < Infinity) {
          // Large parts are cut every 7.5 mm (x) or 12 mm, so a slanting face may be met that much sooner.
          const slack = axis === 0 ? 0.0075 : 0.012;
          if (strike > 2 * slack && shared_m3(u, v, d, strike - slack) > 1e-9)
            wrong.push(`${name}: strikes before ${strike}`);
          if (![0.002, 0.008, 0.02].some((more) => shared_m3(u, v, d, strike + more) > 1e-11))
            wrong.push(`${name}: passes ${strike}`);
          continue;
        }
        const span = a[2 * axis + 1]! - a[2 * axis]! + b[2 * axis + 1]! - b[2 * axis]!;
        const start = (d & 1) === 0 ? b[2 * axis]! - a[2 * axis + 1]! : a[2 * axis]! - b[2 * axis + 1]!;
        for (const share of [0.2, 0.5, 0.8]) {
          const travel = start + share * span;
          if (travel > 0 && shared_m3(u, v, d, travel) > 1e-8)
            wrong.push(`${name}: said free, shares at ${travel}`);
        }
      }
    });
    expect(asked).toBe(200);
    expect(wrong).toEqual([]);
  });

  it('sees the same blockers for a part whichever way its neighbours are asked', () => {
    for (let d = 0; d < 6; d++)
      for (const { body, strike_m } of straightBlockers(graph, index('hub'), d))
        expect(strikeDistance_m(graph, body, index('hub'), d ^ 1)).toBe(strike_m);
  });
});

/** Solids of a part at its place. */
function posed(scope: SolidScope, p: number): Solid[] {
  const part = machine.parts[p]!;
  return solids[part.kind]!.bodies.map((b) => scope.pose(scope.fromMesh(b.solid), part.pose));
}
