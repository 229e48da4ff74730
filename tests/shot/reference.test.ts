/** Discrete elements with tangential history and the position-based step agree where it matters, on discs. */
import { describe, expect, it } from 'vitest';
import {
  advance,
  advanceReference,
  createReference,
  createSimulation,
  pocketOf,
  readShot,
  type Readings,
  type ShotParameters,
} from '../../src/core/shot';
import { ALDER_ONE } from './worlds';

const FLAT: ShotParameters = { ...ALDER_ONE, slice: { ...ALDER_ONE.slice, dimension: 2 }, stop_Hz: 4 };

function run(p: ShotParameters, reference: boolean): Readings {
  const sim = createSimulation(p);
  if (reference) advanceReference(sim, createReference(sim), sim.end_s);
  else advance(sim, sim.end_s);
  return readShot(p, pocketOf(p.chamber, p.baffle), sim.world.balls, sim.world.turning, sim.end_s);
}

describe('reference', () => {
  it('captures as much in low and nothing in high, means over three seeds', () => {
    const shares = [true, false].map((reference) => {
      const seeds = [1, 2, 3].map((seed) => run({ ...FLAT, seed }, reference).captured_below_spill);
      return seeds.reduce((a, b) => a + b, 0) / 3;
    });
    expect(Math.abs(shares[0]! - shares[1]!)).toBeLessThan(0.06);
    expect(shares[0]).toBeGreaterThan(0.45);
    const high = run({ ...FLAT, direction: 'high' }, true);
    expect(high.captured).toBeLessThan(0.05);
  });
});
