/** Simulation and closed form side by side: the pocket's spill radius, and HIGH, where the level model holds. */
import { describe, expect, it } from 'vitest';
import { buildSettledChamber, exciterState } from '../../src/core/mechanics';
import { advance, createSimulation, pocketOf, readShot } from '../../src/core/shot';
import { ALDER_ONE } from './worlds';

const { chamber, baffle, shot } = ALDER_ONE;
const closed = buildSettledChamber(chamber, baffle);

describe('closed form', () => {
  it('has the same spill radius as the readings, found on another way', () => {
    expect(closed.spillRadius_m).toBeCloseTo(pocketOf(chamber, baffle)!.spill_m, 6);
  });

  it('agrees with the simulation on U in HIGH to 2 per cent', () => {
    const p = { ...ALDER_ONE, direction: 'high' as const, slice: { ...ALDER_ONE.slice, depth_m: 0.045 } };
    const sim = createSimulation(p);
    advance(sim, sim.end_s);
    const { shot_kgm } = readShot(
      p,
      pocketOf(chamber, baffle),
      sim.world.balls,
      sim.world.turning,
      sim.end_s,
    );
    const fixed: [number, number] = [0.6, 0];
    const told = exciterState(closed, shot, {
      direction: 'high',
      speed_rpm: 1800,
      fixed_kgm: fixed,
      vibrating_mass_kg: null,
    });
    const U_kgm = Math.hypot(shot_kgm[0] + fixed[0], shot_kgm[1] + fixed[1]);
    expect(Math.abs(U_kgm / told.U_kgm - 1)).toBeLessThan(0.02);
  });
});
