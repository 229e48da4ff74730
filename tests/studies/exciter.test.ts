import { describe, expect, it } from 'vitest';
import { type ExciterChoice, exciterStudy, OWN_CHOICE, vibratingMass } from '../../src/core/studies';
import { fit, machine, masses, solids } from '../models/alder-one';

const study = (choice: Partial<ExciterChoice> = {}) =>
  exciterStudy(machine, solids, masses, { ...OWN_CHOICE, ...choice }, fit)!;

describe('exciter study of Alder One', () => {
  it('finds the design values from the solids', () => {
    const { high: direction, own, vibratingMass_kg } = study();
    const high = direction.value!;
    // Design basis of the training roller: U high about 7.03 kg m, fill 0.31, 125 kN on each bearing at 30 Hz.
    expect(high.U_kgm).toBeGreaterThan(6.95);
    expect(high.U_kgm).toBeLessThan(7.1);
    expect(own.fill).toBeCloseTo(0.31, 2);
    expect(Math.abs(high.bearing_left_N / 125e3 - 1)).toBeLessThan(0.02);
    expect(Math.abs(high.bearing_right_N / 125e3 - 1)).toBeLessThan(0.02);
    expect(Math.hypot(direction.housing_kgm[0] - 0.6, direction.housing_kgm[1])).toBeLessThan(0.01);
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
    for (const d of [study().high.value!, study().low.value!, study().low.level])
      expect(d.bearing_left_N + d.bearing_right_N).toBeCloseTo(d.force_N, 3);
  });

  it('has no shot to unbalance it when it is empty', () => {
    const empty = study({ fill: 0 });
    for (const d of [empty.high, empty.low]) {
      expect(d.value!.shot_U_kgm).toBe(0);
      expect(d.value!.U_kgm).toBeCloseTo(Math.hypot(...d.housing_kgm), 12);
    }
    expect(empty.vibratingMass_kg).toBeCloseTo(study().vibratingMass_kg - 60.2, 6);
  });

  it('shows HIGH as the level surface, which the simulated runs bear out, and LOW as they tell it', () => {
    const { high, low, ratio } = study();
    expect(high.surface).toBe('level');
    expect(high.value).toBe(high.level);
    expect(Math.abs(high.simulated!.U_kgm / high.level.U_kgm - 1)).toBeLessThan(0.02);
    expect(low.surface).toBe('settled');
    expect(low.value).toBe(low.simulated);
    expect(low.level.U_kgm / low.value!.U_kgm).toBeGreaterThan(1.4);
    expect(ratio).toBeGreaterThan(0.45);
    expect(ratio).toBeLessThan(0.6);
    // Force and amplitude carry the same relative band as U.
    const { band } = low.simulated!;
    expect(band.force_N / low.value!.force_N).toBeCloseTo(band.U_kgm / low.value!.U_kgm, 12);
    expect(band.nominalAmplitude_m! / low.value!.nominalAmplitude_m!).toBeCloseTo(
      band.U_kgm / low.value!.U_kgm,
      12,
    );
    expect(band.U_kgm / low.value!.U_kgm).toBeLessThan(0.15);
  });

  it('does not know LOW where the table does not reach, and puts nothing in its place', () => {
    for (const [choice, key] of [
      [{ fill: 0.6 }, 'settled.outside-fill'],
      [{ bafflePsi_deg: 70 }, 'settled.other-baffle'],
    ] as const) {
      const { low, high, ratio } = study(choice);
      expect(low).toMatchObject({ surface: 'unknown', value: null, simulated: null, reasons: [{ key }] });
      expect(low.level.U_kgm).toBeGreaterThan(0);
      expect(high.value).toBe(high.level);
      expect(ratio).toBeNull();
    }
    const bare = exciterStudy(machine, solids, masses, OWN_CHOICE, undefined)!;
    expect(bare.low).toMatchObject({ value: null, reasons: [{ key: 'settled.no-fit' }] });
  });

  it('takes both directions without a baffle from the table, the shot of one the mirror image of the other', () => {
    const { high, low } = study({ baffleOn: false });
    expect([high.surface, low.surface]).toEqual(['settled', 'settled']);
    expect(high.value!.shot_kgm).toEqual([low.value!.shot_kgm[0], -low.value!.shot_kgm[1]]);
    expect(high.level.U_kgm).toBe(low.level.U_kgm);
  });

  it('follows the square of the speed', () => {
    const slow = study({ frequencyHigh_Hz: 15 });
    expect(study().high.value!.force_N / slow.high.value!.force_N).toBeCloseTo(4, 9);
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
