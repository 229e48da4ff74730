import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heatingForGrowth, interferenceFit, isoFit, isoLimits } from '../../src/core/mechanics';
import { faultPaths, noteKeys, valueOf } from './value-of';

const SEED = { seed: 286, numRuns: 80 };
const size = fc.double({ min: 0.01, max: 500, noNaN: true });

describe('ISO limits', () => {
  it('every class spans exactly its tolerance, and widens with the grade', () => {
    const letters = [
      'd',
      'e',
      'f',
      'g',
      'h',
      'js',
      'k',
      'm',
      'n',
      'p',
      'r',
      's',
      'H',
      'JS',
      'M',
      'N',
      'P',
      'S',
    ];
    fc.assert(
      fc.property(size, fc.constantFrom(...letters), (size_mm, letter) => {
        let last = 0;
        for (let grade = 5; grade <= 12; grade += 1) {
          const found = isoLimits(
            size_mm,
            `${letter}${grade}`,
            letter === letter.toUpperCase() ? 'hole' : 'shaft',
          );
          if (!found.ok) throw new Error(JSON.stringify(found));
          const width = found.limits.upper_um - found.limits.lower_um;
          expect(width).toBeGreaterThan(last);
          last = width;
        }
      }),
      SEED,
    );
  });

  it('holes D to H mirror their shaft; letters follow each other', () => {
    fc.assert(
      fc.property(size, (size_mm) => {
        for (const letter of ['d', 'e', 'f', 'g', 'h']) {
          const shaft = isoLimits(size_mm, `${letter}7`, 'shaft');
          const hole = isoLimits(size_mm, `${letter.toUpperCase()}7`, 'hole');
          if (!shaft.ok || !hole.ok) throw new Error('refused');
          expect(hole.limits.upper_um + shaft.limits.lower_um).toBe(0);
          expect(hole.limits.lower_um + shaft.limits.upper_um).toBe(0);
        }
        const lower = ['d', 'e', 'f', 'g', 'h', 'k', 'm', 'n', 'p', 'r', 's'].map((letter) => {
          const found = isoLimits(size_mm, `${letter}6`, 'shaft');
          return found.ok ? found.limits.lower_um : NaN;
        });
        expect([...lower].sort((a, b) => a - b)).toEqual(lower);
      }),
      SEED,
    );
  });

  it('H7/p6 and P7/h6 are equally tight above 3 mm, which is what the delta of the rule is for', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0031, max: 0.5, noNaN: true }), (size_m) => {
        const a = valueOf(isoFit({ size_m, hole: 'H7', shaft: 'p6' }));
        const b = valueOf(isoFit({ size_m, hole: 'P7', shaft: 'h6' }));
        expect(b.clearance_min_m).toBeCloseTo(a.clearance_min_m, 12);
        expect(b.clearance_max_m).toBeCloseTo(a.clearance_max_m, 12);
      }),
      SEED,
    );
  });

  it('a range ends with its upper size', () => {
    const upper = (size_m: number) => valueOf(isoFit({ size_m, hole: 'H7', shaft: 'h6' })).hole_upper_m;
    expect(upper(0.08)).toBe(0.00003);
    expect(upper(0.080001)).toBe(0.000035);
    expect(upper(0.1 + 0.02)).toBe(0.000035);
  });

  it('refuses what the tables do not hold, and says where', () => {
    expect(faultPaths(isoFit({ size_m: 0.6, hole: 'H7', shaft: 'p6' }))).toEqual(['size_m']);
    expect(faultPaths(isoFit({ size_m: 0, hole: 'H7', shaft: 'p6' }))).toEqual(['size_m']);
    expect(faultPaths(isoFit({ size_m: NaN, hole: 'H7', shaft: 'p6' }))).toEqual(['size_m']);
    expect(faultPaths(isoFit({ size_m: 0.05, hole: 'h7', shaft: 'P6' }))).toEqual(['hole', 'shaft']);
    expect(faultPaths(isoFit({ size_m: 0.05, hole: 'X7', shaft: 'p13' }))).toEqual(['hole', 'shaft']);
    expect(faultPaths(isoFit({ size_m: 0.05, hole: 'K9', shaft: 'j9' }))).toEqual(['hole', 'shaft']);
    expect(faultPaths(isoFit({ size_m: 0.05, hole: '', shaft: 'p' }))).toEqual(['hole', 'shaft']);
  });
});

const base = {
  inner_bore_m: 0.03,
  fit_diameter_m: 0.1,
  outer_diameter_m: 0.16,
  E_inner_Pa: 206e9,
  E_outer_Pa: 110e9,
  nu_inner: 0.3,
  nu_outer: 0.26,
};

describe('interference fit', () => {
  it('press force grows with interference, in proportion', () => {
    const force = (interference_diametral_m: number) =>
      valueOf(interferenceFit({ ...base, interference_diametral_m, length_m: 0.08, friction: 0.12 }))
        .press_force_N ?? NaN;
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 2e-4, noNaN: true }), (d) => {
        expect(force(1.1 * d)).toBeGreaterThan(force(d));
        expect(force(2 * d) / force(d)).toBeCloseTo(2, 9);
      }),
      SEED,
    );
  });

  it('pressure and interference are each other’s inverse', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2e-4, noNaN: true }), (interference_diametral_m) => {
        const there = valueOf(interferenceFit({ ...base, interference_diametral_m }));
        const back = valueOf(interferenceFit({ ...base, pressure_Pa: there.pressure_Pa }));
        expect(back.interference_diametral_m).toBeCloseTo(interference_diametral_m, 15);
      }),
      SEED,
    );
  });

  it('a thicker hub grips harder; a hollow shaft less', () => {
    const pressure = (more: Partial<typeof base>) =>
      valueOf(interferenceFit({ ...base, ...more, interference_diametral_m: 5e-5 })).pressure_Pa;
    expect(pressure({ outer_diameter_m: 0.2 })).toBeGreaterThan(pressure({}));
    expect(pressure({ inner_bore_m: 0.06 })).toBeLessThan(pressure({}));
  });

  it('hoop forces balance the pressure (equilibrium of half a ring)', () => {
    const fit = valueOf(interferenceFit({ ...base, pressure_Pa: 1e6 }));
    // mean hoop stress of Lame's field over the wall, by Simpson's rule on A + B / r^2
    const [a, b] = [0.05, 0.08];
    const B = (fit.hoop_outer_at_fit_Pa - fit.hoop_outer_at_outside_Pa) / (1 / a ** 2 - 1 / b ** 2);
    const A = fit.hoop_outer_at_fit_Pa - B / a ** 2;
    expect(A * (b - a) + B * (1 / a - 1 / b)).toBeCloseTo(1e6 * a, 4);
  });

  it('a solid shaft has no bore; press force needs length and friction', () => {
    const solid = interferenceFit({ ...base, inner_bore_m: 0, pressure_Pa: 1e6 });
    expect(valueOf(solid)).toMatchObject({
      hoop_inner_at_fit_Pa: -1e6,
      hoop_inner_at_bore_Pa: null,
      press_force_N: null,
      torque_Nm: null,
    });
    expect(noteKeys(solid)).toEqual([
      'mechanics.note.solid-has-no-bore',
      'mechanics.note.press-needs-length-friction',
    ]);
  });

  it('lists every fault', () => {
    expect(
      faultPaths(interferenceFit({ ...base, inner_bore_m: 0.1, outer_diameter_m: 0.1, nu_inner: 0.5 })),
    ).toEqual(['nu_inner', 'interference_diametral_m / pressure_Pa', 'inner_bore_m', 'outer_diameter_m']);
  });
});

describe('heating', () => {
  it('notes a ring that would get too hot', () => {
    const input = { diameter_m: 0.1, growth_m: 0.00013, alpha_per_K: 12e-6 };
    expect(noteKeys(heatingForGrowth({ ...input, start_C: 20 }))).toEqual([
      'mechanics.note.too-hot-for-bearing',
    ]);
    expect(valueOf(heatingForGrowth(input)).temperature_C).toBeNull();
    expect(faultPaths(heatingForGrowth({ ...input, diameter_m: 0, alpha_per_K: 0 }))).toEqual([
      'diameter_m',
      'alpha_per_K',
    ]);
  });
});
