/** ISO 286 fits, interference fits and heating against published rows; tags as in the tables' comments. */
import { describe, expect, it } from 'vitest';
import {
  bearingRingLimits,
  heatingForGrowth,
  interferenceFit,
  isoFit,
  isoLimits,
} from '../../src/core/mechanics';
import { expectWithin, valueOf } from '../mechanics/value-of';

const limitsOf = (size_mm: number, name: string): readonly [number, number] => {
  const found = isoLimits(size_mm, name, /[A-Z]/.test(name) ? 'hole' : 'shaft');
  if (!found.ok) throw new Error(JSON.stringify(found.expected));
  return [found.limits.upper_um, found.limits.lower_um];
};

describe('ISO 286 shafts (secondary listing; r from memory)', () => {
  const names = ['g6', 'h6', 'k5', 'm6', 'n6', 'p6', 'r6'];
  it.each([
    [40, [-9, -25], [0, -16], [13, 2], [25, 9], [33, 17], [42, 26], [50, 34]],
    [60, [-10, -29], [0, -19], [15, 2], [30, 11], [39, 20], [51, 32], [60, 41]],
    [90, [-12, -34], [0, -22], [18, 3], [35, 13], [45, 23], [59, 37], [73, 51]],
    [110, [-12, -34], [0, -22], [18, 3], [35, 13], [45, 23], [59, 37], [76, 54]],
    [150, [-14, -39], [0, -25], [21, 3], [40, 15], [52, 27], [68, 43], [90, 65]],
    [190, [-15, -44], [0, -29], [24, 4], [46, 17], [60, 31], [79, 50], [106, 77]],
    [280, [-17, -49], [0, -32], [27, 4], [52, 20], [66, 34], [88, 56], [126, 94]],
    [350, [-18, -54], [0, -36], [29, 4], [57, 21], [73, 37], [98, 62], [144, 108]],
  ] as const)('%d mm', (size_mm, ...rows) => {
    expect(names.map((name) => limitsOf(size_mm, name))).toEqual(rows);
  });

  it('r by sub-range (from memory)', () => {
    const rows = [
      [65, 41], [80, 43], [100, 51], [120, 54], [140, 63], [160, 65], [180, 68], [200, 77],
      [225, 80], [250, 84], [280, 94], [315, 98], [355, 108], [400, 114],
    ] as const; // prettier-ignore
    for (const [size_mm, lower] of rows) expect(limitsOf(size_mm, 'r6')[1]).toBe(lower);
  });

  it('f6 at 100 mm (from memory)', () => {
    expect(limitsOf(100, 'f6')).toEqual([-36, -58]);
  });
});

describe('ISO 286 holes (rule from memory, numbers recomputed)', () => {
  it.each([
    [50, [25, 0], [0, -25], [-8, -33], [-17, -42]],
    [80, [30, 0], [0, -30], [-9, -39], [-21, -51]],
    [120, [35, 0], [0, -35], [-10, -45], [-24, -59]],
    [180, [40, 0], [0, -40], [-12, -52], [-28, -68]],
    [250, [46, 0], [0, -46], [-14, -60], [-33, -79]],
    [315, [52, 0], [0, -52], [-14, -66], [-36, -88]],
    [400, [57, 0], [0, -57], [-16, -73], [-41, -98]],
  ] as const)('up to %d mm', (size_mm, ...rows) => {
    expect(['H7', 'M7', 'N7', 'P7'].map((name) => limitsOf(size_mm, name))).toEqual(rows);
  });

  it('P6 at 215 mm (from memory), K7, J7, JS7 and M6 with its exception (from memory)', () => {
    expect(limitsOf(215, 'P6')).toEqual([-41, -70]);
    expect(limitsOf(50, 'K7')).toEqual([7, -18]);
    expect(limitsOf(50, 'J7')).toEqual([14, -11]);
    expect(limitsOf(50, 'JS7')).toEqual([12.5, -12.5]);
    expect(limitsOf(300, 'M6')).toEqual([-9, -41]);
  });

  it('bearing of 215 mm in P6 is 11 to 70 um tight (ISO 492 from memory)', () => {
    const ring = bearingRingLimits('outside', 215);
    const hole = limitsOf(215, 'P6');
    expect(ring).toEqual({ upper_um: 0, lower_um: -30 });
    expect([(ring?.lower_um ?? NaN) - hole[0], (ring?.upper_um ?? NaN) - hole[1]]).toEqual([11, 70]);
    expect(bearingRingLimits('bore', 100)).toEqual({ upper_um: 0, lower_um: -20 });
  });
});

describe('ISO fits', () => {
  it('U. C. Jindal, Machine Design, Ex 4-3: 50 H8/g7', () => {
    expect(valueOf(isoFit({ size_m: 0.05, hole: 'H8', shaft: 'g7' }))).toMatchObject({
      hole_upper_m: 0.000039,
      hole_lower_m: 0,
      shaft_upper_m: -0.000009,
      shaft_lower_m: -0.000034,
      clearance_max_m: 0.000073,
      clearance_min_m: 0.000009,
      character: 'clearance',
    });
  });

  it('U. C. Jindal, Machine Design, Ex 4-1: 70 H8 is +0.046 (the worked solution slips and prints 0.013)', () => {
    expect(valueOf(isoFit({ size_m: 0.07, hole: 'H8', shaft: 'g7' })).hole_upper_m).toBe(0.000046);
  });

  it('60 H7/p6: 2 to 51 um interference (recomputed)', () => {
    expect(valueOf(isoFit({ size_m: 0.06, hole: 'H7', shaft: 'p6' }))).toMatchObject({
      clearance_max_m: -0.000002,
      clearance_min_m: -0.000051,
      character: 'interference',
    });
  });
});

describe('interference fits', () => {
  const steel = { E_inner_Pa: 200e9, E_outer_Pa: 200e9, nu_inner: 0.3, nu_outer: 0.3 };
  const rings = { inner_bore_m: 0.3, fit_diameter_m: 0.4, outer_diameter_m: 0.5, ...steel };

  it('Ugural & Fenster, Advanced Strength and Applied Elasticity, Ex 8.3, p. 243 = Bhavikatti, Strength of Materials, Ex 8.17, p. 350', () => {
    const fit = valueOf(interferenceFit({ ...rings, interference_diametral_m: 0.0002 }));
    expectWithin(fit.pressure_Pa, 12.305e6, 0.01);
  });

  it('Ugural & Fenster, Ex 8.3: hoop stresses at 12.3 MPa', () => {
    const fit = valueOf(interferenceFit({ ...rings, pressure_Pa: 12.3e6 }));
    expectWithin(fit.hoop_outer_at_fit_Pa, 56.03e6, 0.02);
    expectWithin(fit.hoop_outer_at_outside_Pa, 43.73e6, 0.02);
    expectWithin(fit.hoop_inner_at_bore_Pa, -56.23e6, 0.02);
    expectWithin(fit.hoop_inner_at_fit_Pa, -43.93e6, 0.02);
  });

  it('own: solid 100 mm in hub 160 mm, 0.060 mm: 37.66 MPa; 113.6 kN at mu 0.12 over 80 mm', () => {
    const fit = valueOf(
      interferenceFit({
        ...steel,
        E_inner_Pa: 206e9,
        E_outer_Pa: 206e9,
        inner_bore_m: 0,
        fit_diameter_m: 0.1,
        outer_diameter_m: 0.16,
        interference_diametral_m: 0.00006,
        length_m: 0.08,
        friction: 0.12,
      }),
    );
    expectWithin(fit.pressure_Pa, 37.66e6, 0.02);
    expectWithin(fit.press_force_N, 113.6e3, 0.1);
    expectWithin(fit.torque_Nm, 113.6e3 * 0.05, 0.1);
  });
});

describe('heating', () => {
  it('own: 0.06 + 0.05 mm on 100 mm, 12e-6 per K: 91.7 K', () => {
    expectWithin(
      valueOf(heatingForGrowth({ diameter_m: 0.1, growth_m: 0.00011, alpha_per_K: 12e-6 })).delta_T_K,
      91.7,
      0.05,
    );
  });

  it('Bhavikatti, Ex 8.17, at the 400 mm junction: 41.7 K (the worked solution divides by 250 mm and prints 66.67)', () => {
    expectWithin(
      valueOf(heatingForGrowth({ diameter_m: 0.4, growth_m: 0.0002, alpha_per_K: 12e-6 })).delta_T_K,
      41.7,
      0.1,
    );
  });
});
