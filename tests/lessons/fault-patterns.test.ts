/** What the lesson on finding faults says of each fault, against the fault bench's physics. */
import { describe, expect, it } from 'vitest';
import { faultyInputs, readingsOf, type ReadingName } from '../../src/core/faults';
import { plant } from '../faults/bench-of-alder-one';

const sound = readingsOf(plant, plant.sound).numbers;
/** A reading with the fault at a severity, 0 mild to 1 severe. */
function read(id: string, severity: number, name: ReadingName): number {
  const fault = plant.book.faults.find((each) => each.id === id)!;
  return readingsOf(plant, faultyInputs(plant, plant.sound, fault, severity)).numbers[name] ?? Number.NaN;
}
/** The same over that of the sound machine. */
const share = (id: string, severity: number, name: ReadingName): number =>
  read(id, severity, name) / (sound[name] ?? Number.NaN);

describe('patterns of the lesson', () => {
  it('shot lost: HIGH falls, LOW hardly changes, speeds stay', () => {
    expect(share('shot-lost', 0.3, 'amplitude-high')).toBeLessThan(0.92);
    expect(Math.abs(share('shot-lost', 0.3, 'amplitude-low') - 1)).toBeLessThan(0.1);
    expect(share('shot-lost', 0.3, 'vpm-high')).toBeCloseTo(1, 2);
  });
  it('baffle off: LOW about as large as HIGH', () => {
    const low = read('baffle-loose', 1, 'amplitude-low');
    expect(low / read('baffle-loose', 1, 'amplitude-high')).toBeGreaterThan(0.85);
  });
  it('hoses swapped: large and small change places', () => {
    expect(share('hoses-swapped', 1, 'amplitude-high')).toBeLessThan(0.7);
    expect(share('hoses-swapped', 1, 'amplitude-low')).toBeGreaterThan(1.5);
  });
  it('motor weak: both slow, amplitudes stay, much in the case drain', () => {
    expect(share('motor-weak', 0.5, 'vpm-high')).toBeLessThan(0.95);
    expect(share('motor-weak', 0.5, 'vpm-low')).toBeLessThan(0.95);
    expect(Math.abs(share('motor-weak', 0.5, 'amplitude-high') - 1)).toBeLessThan(0.06);
    expect(share('motor-weak', 0.5, 'case-drain')).toBeGreaterThan(2);
  });
  it('spun up too fast: LOW too large, HIGH right', () => {
    expect(share('spin-up-fast', 1, 'amplitude-low')).toBeGreaterThan(1.15);
    // right within the tenth that is allowed of an amplitude
    expect(Math.abs(share('spin-up-fast', 1, 'amplitude-high') - 1)).toBeLessThan(0.1);
    expect(share('spin-up-fast', 1, 'spin-up-time')).toBeLessThan(0.65);
  });
  it('warm ends: one bearing warms one, oil and class warm both', () => {
    const right = (id: string) => share(id, 0.7, 'temperature-right');
    const left = (id: string) => share(id, 0.7, 'temperature-left');
    expect(right('bearing-worn-right')).toBeGreaterThan(1.15);
    expect(left('bearing-worn-right')).toBeLessThan(1.05);
    for (const id of ['case-overfilled', 'clearance-class-wrong', 'water-in-oil']) {
      expect(right(id), id).toBeGreaterThan(1.05);
      expect(left(id), id).toBeGreaterThan(1.05);
    }
  });
  it('a torn isolator on the left lowers the left and leaves the right', () => {
    expect(share('isolator-broken-left', 0, 'sag-left')).toBeGreaterThan(1.1);
    expect(share('isolator-broken-left', 0, 'sag-right')).toBeCloseTo(1, 2);
  });
  it('a leaking seal lets the level rise, an overfilled case does not', () => {
    const rise = (id: string) => read(id, 0.7, 'level-rise');
    expect(rise('motor-seal-leaking')).toBeGreaterThan(0.001);
    expect(Math.abs(rise('case-overfilled'))).toBeLessThan(0.0005);
  });
});
