import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RUBBER_TABLE, rubberModuli, rubberMount, singleDof } from '../../src/core/mechanics';
import { faultPaths, noteKeys, valueOf } from './value-of';

const SEED = { seed: 15, numRuns: 60 };

describe('rubber', () => {
  it('rows come out as they are, stiffness rises with hardness, nothing outside the table', () => {
    for (const [hardness, E, G, k] of RUBBER_TABLE) {
      const moduli = rubberModuli(hardness);
      expect((moduli?.E_Pa ?? NaN) / 1e6).toBeCloseTo(E, 12);
      expect((moduli?.G_Pa ?? NaN) / 1e6).toBeCloseTo(G, 12);
      expect(moduli?.k).toBeCloseTo(k, 12);
    }
    for (let h = 30; h < 75; h += 0.5) {
      expect(rubberModuli(h + 0.5)?.G_Pa).toBeGreaterThan(rubberModuli(h)?.G_Pa ?? Infinity);
    }
    expect([rubberModuli(29.9), rubberModuli(75.1), rubberModuli(NaN)]).toEqual([null, null, null]);
    expect((rubberModuli(52.5)?.E_Pa ?? NaN) / 1e6).toBeCloseTo((2.2 + 3.25) / 2, 12);
  });

  it('a disc and a square block of equal area shear alike; the disc has the larger shape factor', () => {
    const disc = valueOf(rubberMount({ shape: 'disc', d_m: 0.1, t_m: 0.05, hardness_IRHD: 60 }));
    const side = 0.05 * Math.sqrt(Math.PI);
    const block = valueOf(
      rubberMount({ shape: 'block', a_m: side, b_m: side, t_m: 0.05, hardness_IRHD: 60 }),
    );
    expect(disc.shear_N_m).toBeCloseTo(block.shear_N_m, 6);
    expect(disc.shape_factor).toBeCloseTo(0.1 / (4 * 0.05), 12);
    expect(disc.shape_factor).toBeGreaterThan(block.shape_factor);
  });

  it('lists every fault', () => {
    expect(faultPaths(rubberMount({ shape: 'disc', d_m: 0, t_m: -1, hardness_IRHD: 80 }))).toEqual([
      'd_m',
      't_m',
      'hardness_IRHD',
    ]);
  });
});

describe('one mass', () => {
  const system = { mass_kg: 4, stiffness_N_m: 100, damping_Ns_m: 2, force_N: 3 };

  it('the answer solves the equation of motion', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 50, noNaN: true }), (w) => {
        const { amplitude_m, phase_deg } = valueOf(singleDof({ ...system, omega_rad_s: w }));
        const [A, ph] = [amplitude_m ?? NaN, ((phase_deg ?? NaN) * Math.PI) / 180];
        for (const t of [0, 0.3, 1.1]) {
          const x = A * Math.cos(w * t + ph);
          const v = -A * w * Math.sin(w * t + ph);
          expect(4 * -w * w * x + 2 * v + 100 * x).toBeCloseTo(3 * Math.cos(w * t), 8);
        }
      }),
      SEED,
    );
  });

  it('lags 90 degrees at resonance, none at rest, 180 far above', () => {
    const at = (omega_rad_s: number) => valueOf(singleDof({ ...system, omega_rad_s })).phase_deg;
    expect(at(0)).toBe(0);
    expect(at(5)).toBeCloseTo(-90, 9);
    expect(at(5000)).toBeCloseTo(-180, 1);
  });

  it('undamped resonance has no amplitude; critical damping has no damped frequency', () => {
    const undamped = singleDof({ ...system, damping_Ns_m: 0, omega_rad_s: Math.sqrt(100 / 4) });
    expect(valueOf(undamped)).toMatchObject({ amplitude_m: null, phase_deg: null, transmissibility: null });
    expect(noteKeys(undamped)).toEqual(['mechanics.note.undamped-resonance']);
    expect(valueOf(singleDof({ ...system, damping_Ns_m: 40 })).damped_rad_s).toBeNull();
  });

  it('refuses no mass and no spring', () => {
    expect(faultPaths(singleDof({ ...system, mass_kg: 0, stiffness_N_m: 0 }))).toEqual([
      'mass_kg',
      'stiffness_N_m',
    ]);
  });
});
