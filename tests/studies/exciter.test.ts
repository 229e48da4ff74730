import { describe, expect, it } from 'vitest';
import { type ExciterChoice, exciterStudy, vibratingMass } from '../../src/core/studies';
import { machine, masses, solids } from '../models/alder-one';

const OWN: ExciterChoice = {
  frequencyHigh_Hz: null,
  frequencyLow_Hz: null,
  fill: null,
  bafflePsi_deg: null,
  baffleOn: true,
};
const study = (choice: Partial<ExciterChoice> = {}) =>
  exciterStudy(machine, solids, masses, { ...OWN, ...choice })!;

describe('exciter study of Alder One', () => {
  it('finds the design values from the solids', () => {
    const { high, own, vibratingMass_kg } = study();
    // Design basis of the training roller: U high about 7.03 kg m, fill 0.31, 125 kN on each bearing at 30 Hz.
    expect(high.U_kgm).toBeGreaterThan(6.95);
    expect(high.U_kgm).toBeLessThan(7.1);
    expect(own.fill).toBeCloseTo(0.31, 2);
    expect(Math.abs(high.bearing_left_N / 125e3 - 1)).toBeLessThan(0.02);
    expect(Math.abs(high.bearing_right_N / 125e3 - 1)).toBeLessThan(0.02);
    expect(Math.hypot(high.housing_kgm[0] - 0.6, high.housing_kgm[1])).toBeLessThan(0.01);
    expect(vibratingMass_kg).toBeGreaterThan(3900);
    expect(vibratingMass_kg).toBeLessThan(4150);
    expect(high.nominalAmplitude_m).toBeCloseTo(high.U_kgm / vibratingMass_kg, 12);
  });

  it('counts half the isolators, and nothing of the frame', () => {
    const whole = vibratingMass(machine, solids, masses);
    const isolators = machine.parts
      .filter((p) => p.side === 'isolator')
      .reduce((sum, p) => sum + masses[p.kind]!.mass_kg, 0);
    expect(whole.isolators_kg).toBeGreaterThan(0.4 * isolators);
    expect(whole.isolators_kg).toBeLessThan(0.6 * isolators);
  });

  it('carries the whole force on the two bearings', () => {
    for (const d of [study().high, study().low])
      expect(d.bearing_left_N + d.bearing_right_N).toBeCloseTo(d.force_N, 3);
  });

  it('has one unbalance without the baffle, and none of the shot when it is empty', () => {
    const bare = study({ baffleOn: false });
    expect(bare.low.U_kgm).toBe(bare.high.U_kgm);
    const empty = study({ fill: 0 });
    expect(empty.high.shot_U_kgm).toBe(0);
    expect(empty.high.U_kgm).toBeCloseTo(Math.hypot(...empty.high.housing_kgm), 12);
    expect(empty.vibratingMass_kg).toBeCloseTo(study().vibratingMass_kg - 60.2, 6);
  });

  it('follows the square of the speed', () => {
    const slow = study({ frequencyHigh_Hz: 15 });
    expect(study().high.force_N / slow.high.force_N).toBeCloseTo(4, 9);
  });

  it('draws outlines whose area is the shot', () => {
    const area = (loop: readonly (readonly [number, number])[]) =>
      Math.abs(
        loop.reduce(
          (sum, [x, y], i) => sum + x * loop[(i + 1) % loop.length]![1] - y * loop[(i + 1) % loop.length]![0],
          0,
        ) / 2,
      );
    const { high, shotMass_kg } = study();
    const drawn = high.shot.reduce(
      (sum, body) => sum + area(body.loop) - body.holes.reduce((s, hole) => s + area(hole), 0),
      0,
    );
    expect(Math.abs((drawn * 1.05 * 0.62 * 7850) / shotMass_kg - 1)).toBeLessThan(0.005);
  });
});
