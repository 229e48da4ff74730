/** The direction dependence out of first principles, in short: one slice, one seed. More seeds: npm run bench shot-emergence -- --long. */
import { describe, expect, it } from 'vitest';
import {
  advance,
  createSimulation,
  mirrorBaffle,
  pocketOf,
  readShot,
  type Readings,
  type ShotParameters,
} from '../../src/core/shot';
import { ALDER_ONE } from './worlds';

const SHORT: ShotParameters = {
  ...ALDER_ONE,
  slice: { dimension: 3, depth_m: 0.04, ends: 'periodic' },
  stop_Hz: 4.5,
};

function settled(p: ShotParameters): Readings {
  const sim = createSimulation(p);
  advance(sim, sim.end_s);
  return readShot(p, pocketOf(p.chamber, p.baffle), sim.world.balls, sim.world.turning, sim.world.time_s);
}

describe('direction dependence', () => {
  it('captures the shot in low and sheds it in high', () => {
    const low = settled(SHORT);
    const high = settled({ ...SHORT, direction: 'high' });
    expect(low.captured_below_spill).toBeGreaterThan(0.45);
    expect(low.captured_below_spill).toBeLessThan(0.65);
    expect(high.captured).toBeLessThan(0.05);
    expect(low.shot_U_kgm / high.shot_U_kgm).toBeLessThan(0.6);
  });

  it('swaps the directions when the baffle is welded mirrored', () => {
    const low = settled({ ...SHORT, baffle: mirrorBaffle(SHORT.baffle!) });
    expect(low.captured).toBeLessThan(0.05);
  });

  it('repeats bit by bit from its seed, and not from another', () => {
    const until = (seed: number): Float64Array => {
      const sim = createSimulation({ ...SHORT, seed });
      advance(sim, 0.2);
      return sim.world.balls.position;
    };
    const first = until(5);
    expect(until(5)).toEqual(first);
    expect(until(6)).not.toEqual(first);
  });
});
