/** What faults do to the readings: limits and directions that follow from the physics. */
import { describe, expect, it } from 'vitest';
import { faultyInputs, readingsOf, severities } from '../../src/core/faults';
import type { ReadingName } from '../../src/core/faults';
import { plant } from './bench-of-alder-one';

const sound = readingsOf(plant, plant.sound);
const withFault = (id: string, severity: number) =>
  readingsOf(
    plant,
    faultyInputs(
      plant,
      plant.sound,
      plant.book.faults.find((f) => f.id === id)!,
      severity,
    ),
  );
const number = (of: typeof sound, name: ReadingName): number => {
  const value = of.numbers[name];
  if (value === null) throw new Error(`${name} is not known`);
  return value;
};

describe('the sound machine', () => {
  it('shakes as its design basis says: about 1.8 mm in HIGH, about half in LOW, on its speeds', () => {
    expect(number(sound, 'amplitude-high')).toBeGreaterThan(1.75e-3);
    expect(number(sound, 'amplitude-high')).toBeLessThan(1.95e-3);
    const ratio = number(sound, 'amplitude-low') / number(sound, 'amplitude-high');
    expect(ratio).toBeGreaterThan(0.42);
    expect(ratio).toBeLessThan(0.6);
    expect(number(sound, 'vpm-high')).toBe(30);
    expect(number(sound, 'vpm-low')).toBe(34);
  });
  it('sags on its isolators as they are stiff, and climbs the grade', () => {
    expect(number(sound, 'sag-left')).toBeCloseTo(6.1e-3, 3);
    expect(number(sound, 'sag-right')).toBeCloseTo(8.5e-3, 3);
    expect(sound.signs.grade?.['climbs']).toBeGreaterThan(0.9);
  });
});

describe('faults', () => {
  it('shot lost: HIGH falls with every step; past the table nothing is claimed', () => {
    let before = number(sound, 'amplitude-high');
    for (const severity of severities(plant.book.faults.find((f) => f.id === 'shot-lost')!)) {
      const here = number(withFault('shot-lost', severity), 'amplitude-high');
      expect(here).toBeLessThan(before);
      before = here;
    }
    const beyond = readingsOf(plant, { ...plant.sound, shot_share: 0.3 });
    expect(beyond.numbers['amplitude-high']).toBeNull();
    expect(beyond.numbers['amplitude-low']).toBeNull();
    expect(beyond.numbers['vpm-high']).toBe(30);
  });
  it('baffle torn loose: LOW is no longer low', () => {
    const loose = withFault('baffle-loose', 0.5);
    expect(number(loose, 'amplitude-low') / number(loose, 'amplitude-high')).toBeGreaterThan(0.85);
  });
  it('spun up too fast: LOW rises, HIGH does not', () => {
    const fast = withFault('spin-up-fast', 1);
    expect(number(fast, 'amplitude-low')).toBeGreaterThan(1.15 * number(sound, 'amplitude-low'));
    expect(number(fast, 'amplitude-high')).toBeLessThan(1.02 * number(sound, 'amplitude-high'));
  });
  it('hoses swapped: large and small change places, speeds do not', () => {
    const swapped = withFault('hoses-swapped', 0.5);
    expect(number(swapped, 'amplitude-high')).toBeLessThan(number(swapped, 'amplitude-low'));
    expect(number(swapped, 'vpm-high')).toBe(30);
    expect(number(swapped, 'temperature-left')).toBeLessThan(number(sound, 'temperature-left'));
  });
  it('spline sheared: the motor idles and the drum stands still', () => {
    const sheared = withFault('spline-sheared', 0.5);
    for (const name of ['amplitude-high', 'vpm-high', 'frame-left'] as const)
      expect(number(sheared, name)).toBe(0);
    expect(number(sheared, 'vibration-pressure')).toBeLessThan(0.2 * number(sound, 'vibration-pressure'));
  });
  it('motor weak: as much slower as its flow leaks away', () => {
    const weak = withFault('motor-weak', 1);
    expect(number(weak, 'vpm-high')).toBeCloseTo((30 * 0.7) / 0.95, 9);
    expect(number(weak, 'case-drain') / number(sound, 'case-drain')).toBeCloseTo(0.3 / 0.05, 6);
    expect(number(weak, 'charge-pressure')).toBeLessThan(number(sound, 'charge-pressure'));
  });
  it('a broken isolator: its own side sags more and shakes less', () => {
    const broken = withFault('isolator-broken-left', 1);
    expect(number(broken, 'sag-left')).toBeCloseTo((number(sound, 'sag-left') * 8) / 5, 9);
    expect(number(broken, 'sag-right')).toBeCloseTo(number(sound, 'sag-right'), 9);
    expect(number(broken, 'frame-left')).toBeLessThan(number(sound, 'frame-left'));
  });
  it('oil in the chamber: a film is known, more is not, and the case lacks it', () => {
    expect(withFault('housing-cracked', 0).numbers['amplitude-low']).not.toBeNull();
    const much = withFault('housing-cracked', 1);
    expect(much.numbers['amplitude-low']).toBeNull();
    expect(much.numbers['amplitude-high']).not.toBeNull();
    expect(number(much, 'oil-level')).toBeLessThan(-5e-3);
    expect(number(much, 'level-rise')).toBe(0);
  });
  it('overfilled: hotter both sides, and dearer to turn; a leaking seal adds that it rises', () => {
    const full = withFault('case-overfilled', 1);
    const seal = withFault('motor-seal-leaking', 1);
    expect(number(full, 'temperature-right')).toBeGreaterThan(number(sound, 'temperature-right') + 5);
    expect(number(full, 'vibration-pressure')).toBeGreaterThan(number(sound, 'vibration-pressure'));
    expect(number(full, 'level-rise')).toBe(0);
    expect(number(seal, 'level-rise')).toBeGreaterThan(3e-3);
  });
  it('too little clearance runs hot on both sides, wear on its own', () => {
    const tight = withFault('clearance-class-wrong', 1);
    expect(number(tight, 'temperature-left')).toBeGreaterThan(1.3 * number(sound, 'temperature-left'));
    const worn = withFault('bearing-worn-left', 1);
    expect(number(worn, 'temperature-left') - number(worn, 'temperature-right')).toBeGreaterThan(20);
  });
  it('relief low: stops on the grade; brake dragging: costs pressure on the level', () => {
    expect(withFault('relief-low', 1).signs.grade?.['stops']).toBeGreaterThan(0.9);
    const drags = withFault('brake-dragging', 1);
    expect(number(drags, 'travel-pressure')).toBeGreaterThan(1.4 * number(sound, 'travel-pressure'));
    expect(number(drags, 'brake-temperature')).toBeGreaterThan(100);
  });
  it('loose hub bolts: the joint slips under the exciter', () => {
    expect(withFault('hub-bolts-loose', 1).signs['bolt-marks']?.['moved']).toBeGreaterThan(0.9);
    expect(sound.signs['bolt-marks']?.['moved']).toBeLessThan(0.05);
  });
});
