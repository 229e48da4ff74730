/** Bolts against published worked examples and the table of ISO 898-1 (table from memory). */
import { describe, expect, it } from 'vitest';
import { bolt, jointSlip, nutFactor, stressArea } from '../../src/core/mechanics';
import { expectWithin, valueOf } from '../mechanics/value-of';

const INCH = 0.0254;
const LBF = 4.4482216152605;
const KSI = (1000 * LBF) / INCH ** 2;

describe('stress area', () => {
  it('U. C. Jindal, Machine Design, Ex 9-1, p. 266: M16 x 2 and x 1.5', () => {
    expectWithin(stressArea(0.016, 0.002), 156.7e-6, 0.05);
    expectWithin(stressArea(0.016, 0.0015), 167.2e-6, 0.05);
  });

  it('ISO 898-1 table (from memory), within 0.3 %', () => {
    const rows = [
      [8, 1.25, 36.6], [10, 1.5, 58.0], [12, 1.75, 84.3], [14, 2, 115], [16, 2, 157], [18, 2.5, 192],
      [20, 2.5, 245], [22, 2.5, 303], [24, 3, 353], [27, 3, 459], [30, 3.5, 561], [33, 3.5, 694], [36, 4, 817],
    ] as const; // prettier-ignore
    for (const [d, p, area] of rows) expectWithin(stressArea(d / 1e3, p / 1e3), area * 1e-6, 0.4);
  });

  it('ASME B1.1 coarse threads (from memory)', () => {
    const rows = [
      [3 / 8, 16, 0.0775], [7 / 16, 14, 0.1063], [1 / 2, 13, 0.1419], [9 / 16, 12, 0.182], [5 / 8, 11, 0.226],
      [3 / 4, 10, 0.334], [7 / 8, 9, 0.462], [1, 8, 0.606], [1.125, 7, 0.763], [1.25, 7, 0.969],
    ] as const; // prettier-ignore
    for (const [d, n, area] of rows) {
      expectWithin(stressArea(d * INCH, INCH / n, 'unified'), area * INCH ** 2, 0.3);
    }
  });
});

describe('preload and torque', () => {
  it('U. C. Jindal, Machine Design, Ex 9-5, p. 268', () => {
    const result = valueOf(
      bolt({ diameter_m: 0.014, stress_area_m2: 115e-6, proof_Pa: 650e6, preload_fraction: 0.75, K: 0.2 }),
    );
    expectWithin(result.preload_N, 56062, 0.01);
    expectWithin(result.torque_Nm, 156.97, 0.01);
  });

  it('Shigley, ch. 8 (from memory): 3/4-16 at 25 kip', () => {
    const result = valueOf(
      bolt({
        diameter_m: 0.75 * INCH,
        stress_area_m2: 0.373 * INCH ** 2,
        proof_Pa: 85 * KSI,
        preload_N: 25000 * LBF,
        K: 0.2,
      }),
    );
    expectWithin(result.torque_Nm, 3750 * LBF * INCH, 0.01);
    expectWithin(result.stress_initial_Pa, 67.0 * KSI, 0.1);
  });

  it.each([
    ['M20 8.8', 0.02, 245e-6, 600e6, 110.25e3, 441],
    ['M16 10.9', 0.016, 157e-6, 830e6, 97.7e3, 312.7],
    ['3/4-10 grade 8', 0.75 * INCH, 0.334 * INCH ** 2, 120 * KSI, 30060 * LBF, 375.8 * LBF * 12 * INCH],
  ] as const)(
    'own: %s at 75 %% of proof, K 0.2',
    (_what, diameter_m, stress_area_m2, proof_Pa, force, torque) => {
      const result = valueOf(bolt({ diameter_m, stress_area_m2, proof_Pa, preload_fraction: 0.75, K: 0.2 }));
      expectWithin(result.preload_N, force, 0.05);
      expectWithin(result.torque_Nm, torque, 0.05);
    },
  );

  it('U. C. Jindal, Machine Design, Ex 9-3, p. 267: nut factor of M18 x 2.5', () => {
    const input = { diameter_m: 0.018, pitch_m: 0.0025, thread_friction: 0.15, collar_friction: 0.13 };
    expect(valueOf(nutFactor(input)).K).toBeCloseTo(0.18343, 4);
  });
});

it('own: 16 x M24 10.9 at 75 % of proof, friction 0.12, slip at about 420 kN', () => {
  const { preload_N } = valueOf(
    bolt({ diameter_m: 0.024, pitch_m: 0.003, proof_Pa: 830e6, preload_fraction: 0.75, K: 0.2 }),
  );
  expectWithin(valueOf(jointSlip({ count: 16, preload_N, friction: 0.12 })).slip_force_N, 420e3, 1);
});
