import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alignment, type Corners } from '../../src/core/mechanics';
import { faultPaths, valueOf } from './value-of';

const SEED = { seed: 4, numRuns: 80 };
const gap = fc.double({ min: 0, max: 0.03, noNaN: true });
const corners = fc.record({ front_left: gap, front_right: gap, rear_left: gap, rear_right: gap });
const listOf = (c: Corners) => [c.front_left, c.front_right, c.rear_left, c.rear_right];
const twistOf = (c: Corners) => c.front_left - c.front_right - c.rear_left + c.rear_right;
const errorOf = (c: Corners, target: number) => listOf(c).reduce((sum, g) => sum + (g - target) ** 2, 0);

describe('corner shims', () => {
  it('are never negative, keep a stiff part plane, and leave only the twist when no target is set', () => {
    fc.assert(
      fc.property(corners, (gaps_m) => {
        const result = valueOf(alignment({ gaps_m }));
        const shims = listOf(result.shims_m);
        expect(Math.min(...shims)).toBe(0);
        expect(twistOf(result.shims_m)).toBeCloseTo(0, 12);
        expect(result.spread_after_m).toBeCloseTo(2 * Math.abs(result.twist_m), 12);
      }),
      SEED,
    );
  });

  it('with a target: no other plane set of shims that is not negative comes nearer', () => {
    fc.assert(
      fc.property(corners, gap, fc.array(gap, { minLength: 3, maxLength: 3 }), (gaps_m, target_m, other) => {
        const result = valueOf(alignment({ gaps_m, target_m }));
        expect(Math.min(...listOf(result.shims_m))).toBeGreaterThanOrEqual(0);
        expect(twistOf(result.shims_m)).toBeCloseTo(0, 12);
        const [a = 0, b = 0, c = 0] = other;
        const last = b + c - a;
        if (last < 0) return;
        const rival = {
          front_left: gaps_m.front_left + a,
          front_right: gaps_m.front_right + b,
          rear_left: gaps_m.rear_left + c,
          rear_right: gaps_m.rear_right + last,
        };
        expect(errorOf(result.gaps_after_m, target_m)).toBeLessThanOrEqual(errorOf(rival, target_m) + 1e-15);
      }),
      SEED,
    );
  });

  it('a tilted part comes level exactly', () => {
    const gaps_m = { front_left: 0.01, front_right: 0.012, rear_left: 0.013, rear_right: 0.015 };
    const free = valueOf(alignment({ gaps_m }));
    listOf(free.shims_m).forEach((shim, i) =>
      expect(shim).toBeCloseTo([0.005, 0.003, 0.002, 0][i] ?? NaN, 12),
    );
    expect(free).toMatchObject({ within_tolerance: true });
    const aimed = valueOf(alignment({ gaps_m, target_m: 0.016 }));
    listOf(aimed.gaps_after_m).forEach((after) => expect(after).toBeCloseTo(0.016, 12));
    const wide = valueOf(alignment({ gaps_m, target_m: 0 }));
    expect(listOf(wide.shims_m)).toEqual([0, 0, 0, 0]);
  });

  it('rounds to the shims at hand, and says when gaps stay apart', () => {
    const gaps_m = { front_left: 0.01, front_right: 0.0123, rear_left: 0.0123, rear_right: 0.0146 };
    const result = valueOf(alignment({ gaps_m, shim_step_m: 0.001 }));
    listOf(result.shims_m).forEach((shim, i) =>
      expect(shim).toBeCloseTo([0.005, 0.002, 0.002, 0][i] ?? NaN, 12),
    );
    const twisted = { front_left: 0.01, front_right: 0.02, rear_left: 0.02, rear_right: 0.01 };
    expect(valueOf(alignment({ gaps_m: twisted })).within_tolerance).toBe(false);
    expect(faultPaths(alignment({ gaps_m: { ...twisted, rear_left: -1 }, target_m: NaN }))).toEqual([
      'gaps_m.rear_left',
      'target_m',
    ]);
  });
});
