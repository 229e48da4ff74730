/** Rubber mounts and one mass on a spring: Lindley's table (from memory), Bevan, transmissibility rows. */
import { describe, expect, it } from 'vitest';
import { rubberModuli, rubberMount, singleDof } from '../../src/core/mechanics';
import { expectWithin, valueOf } from '../mechanics/value-of';

describe('rubber mounts (P. B. Lindley, Engineering Design with Natural Rubber, 4th ed.; table from memory)', () => {
  it('own: block 100 x 100 x 50 mm, 50 IRHD', () => {
    const mount = valueOf(rubberMount({ shape: 'block', a_m: 0.1, b_m: 0.1, t_m: 0.05, hardness_IRHD: 50 }));
    expectWithin(mount.shear_N_m, 128.0e3, 0.01);
    expect(mount.shape_factor).toBeCloseTo(0.5, 12);
    expectWithin(mount.compression_N_m, 600.6e3, 0.01);
  });

  it('second published design text, author not stated: 830 psi and k 0.54 at 65, 1340 psi and 0.52 at 75, within 5 %', () => {
    const PSI = 6894.757;
    expectWithin(rubberModuli(65)?.E_Pa ?? null, 830 * PSI, 5);
    expectWithin(rubberModuli(75)?.E_Pa ?? null, 1340 * PSI, 5);
    expect([rubberModuli(65)?.k, rubberModuli(75)?.k]).toEqual([0.54, 0.52]);
  });

  it('own: training roller, the two sets of eight in shear make about 3.9 MN/m', () => {
    const left = valueOf(rubberMount({ shape: 'disc', d_m: 0.15, t_m: 0.066, hardness_IRHD: 60 }));
    const right = valueOf(rubberMount({ shape: 'disc', d_m: 0.116, t_m: 0.055, hardness_IRHD: 60 }));
    expectWithin(8 * (left.shear_N_m + right.shear_N_m), 3.9e6, 2);
  });
});

describe('one mass on a spring', () => {
  it('T. Bevan, The Theory of Machines, Ex 15.4, p. 552: 50 lb on 100 lb/in, 4.424 Hz', () => {
    const g = 32.2 * 12; // in/s2, as the book
    const mass_kg = 1;
    const stiffness_N_m = (100 * g) / 50;
    const { natural_rad_s } = valueOf(singleDof({ mass_kg, stiffness_N_m, damping_Ns_m: 0 }));
    expectWithin(natural_rad_s / (2 * Math.PI), 4.424, 0.1);
  });

  it('T. Bevan, Ex 15.7, p. 563, recomputed (the worked solution lost a bracket): TR 0.03583; 14.135 at resonance', () => {
    const system = { mass_kg: 1, stiffness_N_m: 1, damping_Ns_m: 1 / 14.1 };
    const run = valueOf(singleDof({ ...system, omega_rad_s: Math.sqrt(31) }));
    expectWithin(run.transmissibility, 0.03583, 0.1);
    expectWithin(214.6 * (run.transmissibility ?? NaN), 7.69, 0.1);
    const resonance = valueOf(singleDof({ ...system, omega_rad_s: 1 }));
    expectWithin(6.92 * (resonance.transmissibility ?? NaN), 97.8, 0.1);
  });

  it.each([
    [0.5, [1.332, 1.328, 1.314]],
    [1, [10.05, 5.099, 2.693]],
    [Math.SQRT2, [1, 1, 1]],
    [2, [0.3392, 0.3559, 0.4125]],
    [3, [0.1304, 0.1454, 0.1931]],
    [5, [0.0466, 0.0589, 0.0928]],
  ])('transmissibility at r = %d (recomputed rows)', (r, row) => {
    [0.05, 0.1, 0.2].forEach((z, i) => {
      const system = { mass_kg: 1, stiffness_N_m: 1, damping_Ns_m: 2 * z };
      expectWithin(valueOf(singleDof({ ...system, omega_rad_s: r })).transmissibility, row[i] ?? NaN, 0.1);
    });
  });
});
