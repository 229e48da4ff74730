import { describe, expect, it } from 'vitest';
import { planTeardown, reversePlan, verifyPlan } from '../../src/core/assembly';
import { box, synthetic, turned } from './fixture';

const tube = (x0: number, x1: number, inner: number, outer: number) =>
  turned([
    [x0, inner, outer],
    [x1, inner, outer],
  ]);

describe('verifier', () => {
  const { machine, solids, masses } = synthetic(
    [
      { id: 'cup', fixed: true, solid: turned([[0, 0, 0.1], [0.02, 0, 0.1], [0.02, 0.06, 0.1], [0.2, 0.06, 0.1]]) }, // prettier-ignore
      { id: 'plug', solid: tube(0.02, 0.15, 0, 0.06) },
      { id: 'cover', solid: box([0.2, -0.1, -0.1], [0.21, 0.1, 0.1]) },
    ],
    [],
    [{ type: 'seat', inner: 'plug', outer: 'cup', diameter_m: 0.12, fit: 'H7/g6' }] as never,
  );
  const plan = planTeardown(machine, solids, masses);

  it('passes what the planner found, forward and reversed', () => {
    const verdict = verifyPlan(machine, solids, masses, plan);
    expect(verdict.contacts).toEqual([]);
    expect(verdict.positionsLookedAt).toBeGreaterThan(20);
    expect(verdict.pointsAsked).toBeGreaterThan(100);
    const back = reversePlan(plan);
    expect(back.steps.map((s) => s.unitIds[0])).toEqual(['plug', 'cover']);
    expect(back.steps[0]!.legs[0]!.direction[0]).toBe(-1);
  });

  it('catches a plan in the wrong order', () => {
    const wrong = { ...plan, steps: [...plan.steps].reverse() };
    const { contacts } = verifyPlan(machine, solids, masses, wrong);
    expect(contacts.map((c) => [c.partId, c.otherId])).toContainEqual(['plug', 'cover']);
    // Plug and cover are 50 mm apart.
    expect(Math.min(...contacts.map((c) => c.travel_m))).toBeCloseTo(0.05, 1);
  });

  it('catches a part drawn the wrong way', () => {
    const steps = plan.steps.map((s) =>
      s.unitIds[0] === 'plug'
        ? { ...s, legs: [{ direction: [0, 1, 0] as const, distance_m: 0.3, kind: 'slide' as const }] }
        : s,
    );
    expect(verifyPlan(machine, solids, masses, { ...plan, steps }).contacts.length).toBeGreaterThan(0);
  });
});
