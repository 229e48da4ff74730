/** Rolling bearings against published worked examples; 'own' rows are recomputations, not publications. */
import { describe, expect, it } from 'vitest';
import {
  bearingDuty,
  bearingLife,
  bearingLoad,
  bearingSystem,
  CLEARANCE_UM,
  clearanceBand,
  innerRacewayShare,
  outerRacewayShare,
  staticSafety,
} from '../../src/core/mechanics';
import { expectWithin, valueOf } from '../mechanics/value-of';

const LBF = 4.4482216152605;

describe('bearing life', () => {
  it.each([
    ['T. H. Wentzell, Machine Design, Ex 20.1, p. 431', 5050 * LBF, 2400 * LBF, 3, 1750, 'h', 88.73],
    ['T. H. Wentzell, Machine Design, Ex 20.4, p. 436', 3350 * LBF, 1095 * LBF, 'ball', 1750, 'Mrev', 28.63],
    ['U. C. Jindal, Machine Design, Ex 18-4, p. 509', 41e3, 20e3, 3, 720, 'h', 199.4],
    ['published exercise, author not stated', 16e3, 2e3, 'ball', 1000, 'Mrev', 512],
    ['own: roller, C/P = 5', 500e3, 100e3, 'roller', 1800, 'Mrev', 213.75],
    ['own: roller, C/P = 5', 500e3, 100e3, 10 / 3, 1800, 'h', 1979],
    ['own: roller, C/P = 4', 400e3, 100e3, 'roller', 1800, 'Mrev', 101.59],
    ['own: roller, C/P = 4', 400e3, 100e3, 'roller', 1800, 'h', 940.7],
  ] as const)('%s', (_source, C_N, P_N, p, speed_rpm, unit, expected) => {
    const life = valueOf(bearingLife({ C_N, P_N, p, speed_rpm }));
    expectWithin(unit === 'h' ? life.L10_h : life.L10_Mrev, expected, 0.05);
  });

  it('T. H. Wentzell, Machine Design, Ex 20.2, p. 432: rating for 200 h', () => {
    const duty = valueOf(
      bearingDuty({
        segments: [{ fraction_of_time: 1, load_N: 2400 * LBF, speed_rpm: 1750 }],
        p: 'ball',
        life_h: 200,
      }),
    );
    expectWithin(duty.life_Mrev, 21);
    expectWithin((duty.C_required_N ?? 0) / LBF, 6621, 0.05);
  });

  it.each([
    ['1990', [1, 0.62, 0.53, 0.44, 0.33, 0.21]],
    ['2007', [1, 0.64, 0.55, 0.47, 0.37, 0.25]],
  ] as const)('ISO 281:%s factor a1 for reliability (2007 from memory)', (edition, column) => {
    [90, 95, 96, 97, 98, 99].forEach((reliability_percent, i) => {
      const life = valueOf(bearingLife({ C_N: 2, P_N: 1, p: 3, reliability_percent, edition }));
      expect(life.a1).toBeCloseTo(column[i] ?? NaN, 12);
      expect(life.Lnm_Mrev).toBeCloseTo(8 * (column[i] ?? NaN), 12);
    });
  });

  it('U. C. Jindal, Machine Design, Ex 18-7, p. 511: Weibull slope 1.17', () => {
    const life_Mrev = 504;
    const { a1 } = valueOf(
      bearingLife({ C_N: 10, P_N: 1, p: 3, reliability_percent: 98, weibull_slope: 1.17 }),
    );
    expectWithin(life_Mrev / a1, 2067.7, 0.1);
    expectWithin(3500 * (life_Mrev / a1) ** (1 / 3), 44589, 0.05);
  });

  it('U. C. Jindal, Machine Design, Ex 18-8, p. 512: three in series', () => {
    const each = 0.83 ** (1 / 3);
    expectWithin(each, 0.9398, 0.01);
    const { a1 } = valueOf(
      bearingLife({ C_N: 10, P_N: 1, p: 3, reliability_percent: each * 100, weibull_slope: 1.17 }),
    );
    expectWithin(3 * (6 / a1) ** (1 / 3), 6.337, 0.1);
  });
});

describe('several bearings (formula: Harris, from memory; rows recomputed)', () => {
  it.each([
    [
      [10000, 10000],
      [5359, 5400, 6300],
    ],
    [
      [10000, 20000],
      [7101, 7150, 8172],
    ],
    [
      [10000, 10000, 10000, 10000],
      [2872, 2916, 3969],
    ],
  ])('lives %j', (lives_h, row) => {
    (['ball', 'roller', 1.5] as const).forEach((exponent, i) =>
      expectWithin(valueOf(bearingSystem({ lives_h, exponent })).life_h, row[i] ?? NaN, 0.02),
    );
  });

  it('training roller: a pair of 4,500 h lives about 2,450 h', () => {
    expectWithin(valueOf(bearingSystem({ lives_h: [4500, 4500], exponent: 'roller' })).life_h, 2450, 1);
  });
});

it('equivalent load: problem on a 02-series ball bearing with turning outer ring, Shigley, ch. 11, as quoted elsewhere', () => {
  expectWithin(valueOf(bearingLoad({ Fr_N: 7000, Fa_N: 3000, X: 0.56, Y: 1.53, V: 1.2 })).P_N, 9294, 0.01);
});

it('static safety guidance of ISO 76:2006 (from memory): roller 3 / 1.5 / 3, ball 2 / 1 / 1.5', () => {
  const guide = (kind: 'ball' | 'roller') =>
    (['quiet', 'normal', 'shock'] as const).map(
      (running) => valueOf(staticSafety({ C0_N: 10, P0_N: 1, kind, running })).S0_guide,
    );
  expect(guide('roller')).toEqual([3, 1.5, 3]);
  expect(guide('ball')).toEqual([2, 1, 1.5]);
});

describe('clearance of roller bearings, ISO 5753-1', () => {
  it('cylindrical (secondary listing) and spherical (from memory) at 100 mm', () => {
    expect(clearanceBand('cylindrical-roller', 100, 'C4')).toEqual([105, 140]);
    expect(clearanceBand('cylindrical-roller', 100.001, 'C4')).toEqual([125, 165]);
    expect(clearanceBand('spherical-roller', 100, 'C4')).toEqual([135, 180]);
    expect(clearanceBand('spherical-roller', 50, 'CN')).toBeNull();
    expect(clearanceBand('spherical-roller', 201, 'CN')).toBeNull();
  });

  it('spherical: each class ends where the next begins; cylindrical: classes touch or overlap', () => {
    for (const { bands } of CLEARANCE_UM['spherical-roller']) {
      expect(bands[0][1]).toBe(bands[1][0]);
      expect(bands[1][1]).toBe(bands[2][0]);
    }
    for (const { bands } of CLEARANCE_UM['cylindrical-roller']) {
      expect(bands[0][1]).toBeGreaterThan(bands[1][0]);
      expect(bands[1][1]).toBeGreaterThanOrEqual(bands[2][0]);
    }
  });

  it('share of an interference that reaches the raceway (T. A. Harris, Rolling Bearing Analysis, from memory)', () => {
    expect(innerRacewayShare(0, 0.1, 0.125)).toBeCloseTo(0.1 / 0.125, 12);
    expect(outerRacewayShare(0.185, 0.215, Infinity)).toBeCloseTo(0.185 / 0.215, 12);
  });
});
