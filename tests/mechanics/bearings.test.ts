import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bearingDuty,
  bearingLife,
  bearingLoad,
  bearingSystem,
  endPlay,
  fittedClearance,
  staticSafety,
  type FittedClearanceInput,
} from '../../src/core/mechanics';
import { faultPaths, noteKeys, valueOf } from './value-of';

const SEED = { seed: 281, numRuns: 60 };
const load = fc.double({ min: 1, max: 1e6, noNaN: true });

describe('bearing life', () => {
  it('falls with load, by 2^p when the load doubles', () => {
    fc.assert(
      fc.property(load, fc.constantFrom('ball' as const, 'roller' as const), (P_N, p) => {
        const at = (force: number) => valueOf(bearingLife({ C_N: 1e5, P_N: force, p })).L10_Mrev;
        expect(at(P_N) / at(2 * P_N)).toBeCloseTo(2 ** (p === 'ball' ? 3 : 10 / 3), 6);
      }),
      SEED,
    );
  });

  it('never rises with reliability, without steps at the rows of the table', () => {
    const a1 = (reliability_percent: number, edition: '1990' | '2007') =>
      valueOf(bearingLife({ C_N: 2, P_N: 1, p: 3, reliability_percent, edition })).a1;
    for (const edition of ['1990', '2007'] as const) {
      const last = edition === '1990' ? 99 : 99.95;
      for (let r = 90; r < last - 0.02; r += 0.01) {
        expect(a1(r, edition)).toBeGreaterThan(a1(r + 0.01, edition));
        expect(a1(r, edition) - a1(r + 0.01, edition)).toBeLessThan(0.02);
      }
    }
  });

  it('gives null hours without a speed, and says so', () => {
    const result = bearingLife({ C_N: 100, P_N: 20, p: 3 });
    expect(valueOf(result)).toMatchObject({ L10_Mrev: 125, L10_h: null, Lnm_h: null, a1: 1 });
    expect(noteKeys(result)).toEqual(['mechanics.note.hours-need-speed']);
  });

  it('lists every fault', () => {
    expect(
      faultPaths(bearingLife({ C_N: 0, P_N: -1, p: 0, speed_rpm: NaN, reliability_percent: 80 })),
    ).toEqual(['C_N', 'P_N', 'speed_rpm', 'p', 'reliability_percent']);
  });

  it('refuses reliabilities outside the table, and takes them with a Weibull slope', () => {
    const input = { C_N: 10, P_N: 1, p: 3 };
    expect(faultPaths(bearingLife({ ...input, reliability_percent: 99.5, edition: '1990' }))).toEqual([
      'reliability_percent',
    ]);
    expect(faultPaths(bearingLife({ ...input, reliability_percent: 100, weibull_slope: 1.5 }))).toEqual([
      'reliability_percent',
    ]);
    expect(
      valueOf(bearingLife({ ...input, reliability_percent: 50, weibull_slope: 1.5 })).a1,
    ).toBeGreaterThan(1);
  });

  it('refuses a life that no number can hold', () => {
    expect(faultPaths(bearingLife({ C_N: 1e300, P_N: 1e-300, p: 3, speed_rpm: 1 }))).toContain('L10_Mrev');
  });
});

describe('equivalent load', () => {
  it('is noted when it falls below the radial load', () => {
    expect(noteKeys(bearingLoad({ Fr_N: 10, Fa_N: 1, X: 0.5, Y: 1 }))).toEqual([
      'mechanics.note.load-below-radial',
    ]);
  });
});

describe('duty cycle', () => {
  it('the mean load lies between the least and the greatest, and one segment is its own mean', () => {
    fc.assert(
      fc.property(load, load, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (a, b, share) => {
        const { Pm_N } = valueOf(
          bearingDuty({
            segments: [
              { fraction_of_time: share, load_N: a, speed_rpm: 1800 },
              { fraction_of_time: 1 - share, load_N: b, speed_rpm: 2040 },
            ],
            p: 'roller',
          }),
        );
        expect(Pm_N).toBeGreaterThanOrEqual(Math.min(a, b) * (1 - 1e-9));
        expect(Pm_N).toBeLessThanOrEqual(Math.max(a, b) * (1 + 1e-9));
      }),
      SEED,
    );
  });

  it('bearing of the required rating lives exactly as long as wanted', () => {
    const duty = valueOf(
      bearingDuty({
        segments: [
          { fraction_of_time: 0.25, load_N: 100, speed_rpm: 900 },
          { fraction_of_time: 0.75, load_N: 60, speed_rpm: 1200 },
        ],
        p: 'ball',
        life_h: 5000,
      }),
    );
    expect(duty.mean_speed_rpm).toBe(1125);
    const back = bearingLife({ C_N: duty.C_required_N ?? 0, P_N: duty.Pm_N, p: 3, speed_rpm: 1125 });
    expect(valueOf(back).L10_h).toBeCloseTo(5000, 6);
  });

  it('refuses shares that miss 1 and a cycle that never turns; scales thirds', () => {
    const segment = { load_N: 1, speed_rpm: 1 };
    const one = (fraction_of_time: number) => ({ ...segment, fraction_of_time });
    expect(faultPaths(bearingDuty({ segments: [one(0.5), one(0.4)], p: 3 }))).toHaveLength(1);
    expect(faultPaths(bearingDuty({ segments: [], p: 3 }))).toEqual(['segments[].fraction_of_time']);
    expect(faultPaths(bearingDuty({ segments: [{ ...one(1), speed_rpm: 0 }], p: 3 }))).toEqual([
      'segments[].speed_rpm',
    ]);
    expect(noteKeys(bearingDuty({ segments: [one(0.33), one(0.33), one(0.33)], p: 3 }))).toContain(
      'mechanics.note.shares-scaled',
    );
  });
});

describe('system of bearings', () => {
  it('lives shorter than its weakest, and longer with a larger exponent', () => {
    fc.assert(
      fc.property(fc.array(load, { minLength: 2, maxLength: 6 }), (lives_h) => {
        const life = (exponent: number) => valueOf(bearingSystem({ lives_h, exponent })).life_h;
        expect(life(10 / 9)).toBeLessThan(Math.min(...lives_h));
        expect(life(1.5)).toBeGreaterThan(life(10 / 9));
      }),
      SEED,
    );
  });

  it('refuses an empty list and a life of nothing', () => {
    expect(faultPaths(bearingSystem({ lives_h: [], exponent: 'ball' }))).toEqual(['lives_h']);
    expect(faultPaths(bearingSystem({ lives_h: [1, 0], exponent: 'ball' }))).toEqual(['lives_h[1]']);
  });
});

describe('static safety', () => {
  it('takes at least the radial load, and has no safety without load', () => {
    const input = { C0_N: 300, kind: 'roller' } as const;
    expect(valueOf(staticSafety({ ...input, Fr_N: 100, Fa_N: 10, X0: 0.5, Y0: 1 }))).toMatchObject({
      P0_N: 100,
      S0: 3,
      enough: true,
    });
    expect(valueOf(staticSafety({ ...input, P0_N: 250, running: 'shock' })).enough).toBe(false);
    expect(valueOf(staticSafety({ ...input, P0_N: 0 })).S0).toBeNull();
    expect(faultPaths(staticSafety(input))).toEqual(['P0_N / Fr_N']);
  });
});

describe('fitted clearance', () => {
  const exciter: FittedClearanceInput = {
    type: 'spherical-roller',
    clearance_class: 'C4',
    bore_m: 0.1,
    outside_m: 0.215,
    shaft: 'g6',
    housing: 'P6',
  };

  it('exciter bearing: loose on the journal, 11 to 70 um tight in its carrier', () => {
    const result = valueOf(fittedClearance(exciter));
    expect(result).toMatchObject({
      clearance_min_m: 0.000135,
      clearance_max_m: 0.00018,
      shaft_interference_min_m: -0.000034,
      shaft_interference_max_m: 0.000008,
      housing_interference_min_m: 0.000011,
      housing_interference_max_m: 0.00007,
    });
    const inner = 100 / (100 + 115 / 4);
    const outer = (215 - 115 / 4) / 215;
    expect(result.fitted_min_m * 1e6).toBeCloseTo(135 - 8 * inner - 70 * outer, 6);
    expect(result.fitted_max_m * 1e6).toBeCloseTo(180 - 11 * outer, 6);
  });

  it('a warmer inner ring, a thicker housing and a solid shaft take more clearance', () => {
    const least = (more: Partial<FittedClearanceInput>) =>
      valueOf(fittedClearance({ ...exciter, ...more })).fitted_min_m;
    expect(least({ temperature_difference_K: 10 })).toBeLessThan(least({}));
    expect(least({ housing_outside_m: 0.244 })).toBeGreaterThan(least({}));
    expect(least({ shaft_bore_m: 0.05 })).toBeGreaterThan(least({}));
  });

  it('says when a bearing may run preloaded', () => {
    const tight = fittedClearance({ ...exciter, clearance_class: 'CN', shaft: 'p6' });
    expect(noteKeys(tight)).toContain('mechanics.note.may-run-preloaded');
    expect(valueOf(tight).fitted_min_m).toBeLessThan(0);
  });

  it('refuses sizes out of order and outside the tables', () => {
    expect(faultPaths(fittedClearance({ ...exciter, outside_m: 0.09 }))).toContain('inner_raceway_m');
    expect(faultPaths(fittedClearance({ ...exciter, bore_m: 0.04 }))).toContain('bore_m');
    expect(faultPaths(fittedClearance({ ...exciter, shaft: 'zz9', housing: 'p6' }))).toEqual([
      'shaft',
      'housing',
    ]);
  });
});

describe('end play', () => {
  const hub = { target_min_m: 0.00003, target_max_m: 0.0001, thread_pitch_m: 0.002 };

  it('turns the nut to the middle of the band', () => {
    const loose = valueOf(endPlay({ ...hub, end_play_m: 0.000265 }));
    expect(loose).toMatchObject({ verdict: 'too-loose', turn_places: null });
    expect(loose.turn_deg).toBeCloseTo(36, 9);
    expect(loose.end_play_after_m).toBeCloseTo(0.000065, 12);
    expect(valueOf(endPlay({ ...hub, end_play_m: 0.00001 })).turn_deg).toBeLessThan(0);
    expect(valueOf(endPlay({ ...hub, end_play_m: 0.00005 }))).toMatchObject({
      verdict: 'within',
      turn_deg: 0,
    });
  });

  it('with lock places it predicts the play of the nearest one', () => {
    const result = valueOf(endPlay({ ...hub, end_play_m: 0.000265, lock_places: 36 }));
    expect(result.turn_places).toBe(4);
    expect(result.end_play_after_m).toBeCloseTo(0.000265 - (4 / 36) * 0.002, 12);
    expect(noteKeys(endPlay({ ...hub, end_play_m: 0.00013, lock_places: 4 }))).toContain(
      'mechanics.note.no-lock-place-in-band',
    );
  });

  it('warns that zero may be preload, and refuses an upside-down band', () => {
    expect(noteKeys(endPlay({ ...hub, end_play_m: 0 }))).toContain('mechanics.note.zero-may-be-preload');
    expect(faultPaths(endPlay({ ...hub, target_max_m: 0.00002, end_play_m: 0 }))).toEqual(['target_max_m']);
  });
});
