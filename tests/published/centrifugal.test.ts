/** Centrifugal force of a turning unbalance against printed examples. Tolerance 0.5 % unless said. */
import { describe, expect, it } from 'vitest';
import {
  centrifugalForce,
  combinedUnbalance,
  nominalAmplitude,
  rpmToRadPerS,
  unbalanceOf,
} from '../../src/core/mechanics';

const INCH_M = 0.0254;
const POUND_KG = 0.45359237;
/** Standard gravity, exact by definition. */
const G = 9.80665;
const LBF_N = POUND_KG * G;

/** F in lbf of a weight in lb at a radius in feet: SI inside, the US form only for comparison. */
const forceLbf = (weight_lb: number, radius_ft: number, rpm: number) =>
  centrifugalForce(unbalanceOf(weight_lb * POUND_KG, radius_ft * 12 * INCH_M), rpmToRadPerS(rpm)) / LBF_N;

describe('T. Bevan, The Theory of Machines, Ex 15.7, p. 563', () => {
  it('3 lb at 3.5/2 in, 1200 rpm: 214.6 lbf', () => {
    // the book takes g = 32.2 ft/s2 for the pound force
    const bookLbf = POUND_KG * 32.2 * 12 * INCH_M;
    const force_N = centrifugalForce(unbalanceOf(3 * POUND_KG, (3.5 / 2) * INCH_M), rpmToRadPerS(1200));
    expect(force_N / bookLbf).toBeCloseTo(214.56, 1);
    expect(Math.abs(force_N / bookLbf - 214.6)).toBeLessThan(0.1);
  });

  it("agrees with the form of Machinery's Handbook (from memory), F = 0.000341 W R n^2, to 0.1 %", () => {
    const handbook = 0.000341 * 3 * (3.5 / 2 / 12) * 1200 ** 2;
    expect(handbook).toBeCloseTo(214.83, 2);
    expect(forceLbf(3, 3.5 / 2 / 12, 1200) / handbook).toBeCloseTo(1, 3);
    expect(Math.abs(forceLbf(1, 1, 1) - 0.00034084)).toBeLessThan(1e-8);
  });
});

describe('R. S. Khurmi, Engineering Mechanics, ch. 28, p. 574', () => {
  it('Ex 28.1: 5 kg at 1.5 m, 2 rad/s: 30 N', () => {
    expect(centrifugalForce(unbalanceOf(5, 1.5), 2)).toBeCloseTo(30, 12);
  });
  it('Ex 28.2: 1 kg at 1 m, 10 m/s: 100 N', () => {
    expect(centrifugalForce(unbalanceOf(1, 1), 10 / 1)).toBeCloseTo(100, 12);
  });
});

describe('own cases (recomputed, not published)', () => {
  it('5.0 kg m at 30 Hz: 177.65 kN', () => {
    expect(centrifugalForce(5, rpmToRadPerS(30 * 60)) / 1000).toBeCloseTo(177.65, 2);
  });

  it.each([
    [0, 5],
    [90, 3.6056],
    [180, 1],
  ])('3 and 2 kg m at %d deg: %f kg m', (phase_deg, U) => {
    expect(combinedUnbalance(3, 2, (phase_deg * Math.PI) / 180)).toBeCloseTo(U, 4);
  });

  it('two equal masses at a phase angle: 2 m e cos(phi / 2)', () => {
    for (const phi of [0, 0.4, 1.3, 2.2, Math.PI]) {
      expect(combinedUnbalance(1.7, 1.7, phi)).toBeCloseTo(2 * 1.7 * Math.cos(phi / 2), 12);
    }
  });

  it('power rule: 10 % more speed, 21 % more force; twice the speed, four times', () => {
    expect(centrifugalForce(2, 1.1 * 188) / centrifugalForce(2, 188)).toBeCloseTo(1.21, 12);
    expect(centrifugalForce(2, 2 * 188) / centrifugalForce(2, 188)).toBeCloseTo(4, 12);
  });

  it('nominal amplitude U / m: 7.03 kg m on 3950 kg: 1.78 mm; none without a mass', () => {
    expect(nominalAmplitude(7.03, 3950)! * 1000).toBeCloseTo(1.78, 2);
    expect(nominalAmplitude(7.03, 0)).toBeNull();
  });
});
