/**
 * The direction dependence out of first principles, in short: one thin slice, one seed. More seeds:
 * npm run bench shot-emergence -- --long.
 */
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

/** Unbalance with the machine's fixed moment, kg m. */
const totalU = ({ shot_kgm: [x, y] }: Readings): number => Math.hypot(x + 0.6, y);

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
    expect(low.captured_below_spill).toBeLessThan(0.62);
    expect(low.captured).toBeGreaterThan(0.64);
    expect(low.captured).toBeLessThan(0.76);
    expect(high.captured).toBeLessThan(0.05);
    const ratio = totalU(low) / totalU(high);
    expect(ratio).toBeGreaterThan(0.45);
    expect(ratio).toBeLessThan(0.6);
    // Without weight there is less to tell the directions apart.
    const afloat = settled({ ...SHORT, gravity: false });
    expect(afloat.captured_below_spill).toBeLessThan(low.captured_below_spill - 0.05);
  });

  it('is destroyed by a fast linear ramp', () => {
    const fast = settled({ ...SHORT, spin_up: { kind: 'linear', frequency_Hz: 30, time_s: 2 } });
    expect(fast.captured_below_spill).toBeLessThan(0.4);
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
