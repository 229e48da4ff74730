import { describe, expect, it } from 'vitest';
import {
  buildSettledChamber,
  bearingLoads,
  exciterState,
  openChamberFill,
  settledShot,
  shotArea_m2,
  type ExciterRun,
} from '../../src/core/mechanics';
import { BAFFLE, CHAMBER, SHOT } from './alder-exciter';

const AREA = shotArea_m2(SHOT);
const RUN: ExciterRun = { direction: 'high', speed_rpm: 1800, fixed_kgm: [0.6, 0], vibrating_mass_kg: 3950 };
const keys = (notes: readonly { key: string }[]) =>
  notes.map((note) => note.key.replace('mechanics.unbalance.', ''));

describe('the exciter of the demonstration roller', () => {
  const chamber = buildSettledChamber(CHAMBER, BAFFLE);

  it('has a pocket that the near wall limits: it spills at R - e', () => {
    expect(chamber.spillRadius_m).toBeCloseTo(0.11 - 0.046, 12);
    expect(chamber.pocket.state).toBe('open');
  });

  it('high: U about 7.03 kg m, arm of the shot 107 mm, as the simulation within 1 %', () => {
    const high = exciterState(chamber, SHOT, RUN);
    expect(Math.abs(high.U_kgm / 7.03 - 1)).toBeLessThan(0.01);
    expect(Math.abs(high.shot_U_kgm / SHOT.mass_kg / 0.107 - 1)).toBeLessThan(0.01);
    expect(high.capture_fraction).toBe(0);
    expect(Math.abs(high.nominal_amplitude_m! * 1000 - 1.78)).toBeLessThan(0.02);
    expect(Math.abs(high.force_N / 250e3 - 1)).toBeLessThan(0.01);
    expect(high.frequency_Hz).toBe(30);
    expect(keys(high.notes)).toEqual(['pocket-empty']);
    expect(high.r0_pocket_m).toBeNull();
  });

  it('low: the pocket takes 0.49; the level moment is 41 to 74 % above the simulation', () => {
    const low = exciterState(chamber, SHOT, { ...RUN, direction: 'low', speed_rpm: 2040 });
    expect(Math.abs(low.capture_fraction! - 0.49)).toBeLessThan(0.005);
    // simulated arm of the shot 48 to 52 mm
    expect(low.shot_U_kgm / SHOT.mass_kg / 0.05).toBeGreaterThan(1.41);
    expect(low.shot_U_kgm / SHOT.mass_kg / 0.05).toBeLessThan(1.74);
    expect(low.r0_pocket_m).toBeCloseTo(0.064, 12);
    expect(low.notes).toEqual([]);
  });

  it('adds fixed parts as vectors', () => {
    const bare = exciterState(chamber, SHOT, { ...RUN, fixed_kgm: [0, 0] });
    const whole = exciterState(chamber, SHOT, { ...RUN, fixed_kgm: [-1, 2] });
    expect(bare.total_kgm).toEqual(bare.shot_kgm);
    expect(whole.total_kgm[0]).toBeCloseTo(bare.shot_kgm[0] - 1, 12);
    expect(whole.total_kgm[1]).toBeCloseTo(bare.shot_kgm[1] + 2, 12);
    expect(whole.angle_deg).toBeCloseTo(
      (Math.atan2(whole.total_kgm[1], whole.total_kgm[0]) * 180) / Math.PI,
      12,
    );
    expect(bare.shot_angle_deg).not.toBeNull();
  });
});

describe('a bare round chamber', () => {
  it.each([
    [0.11, 0.046],
    [0.11, 0.1],
    [0.05, 0.2],
  ])('R %f, e %f: agrees with the closed form', (radius_m, eccentricity_m) => {
    const chamber = buildSettledChamber({ radius_m, eccentricity_m, chord_x_m: null }, null);
    expect(chamber.freeArea_m2 / (Math.PI * radius_m ** 2)).toBeCloseTo(1, 11);
    const least = Math.abs(radius_m - eccentricity_m);
    for (let k = 1; k < 20; k++) {
      const surface = least + ((radius_m + eccentricity_m - least) * k) / 20;
      const exact = openChamberFill(radius_m, eccentricity_m, surface)!;
      const shot = chamber.settle(exact.area_m2, 'high');
      expect(shot.main.surface_m! / surface).toBeCloseTo(1, 10);
      expect(shot.moment_m3[0] / exact.momentX_m3).toBeCloseTo(1, 10);
      expect(Math.abs(shot.moment_m3[1])).toBeLessThan(1e-15);
    }
  });

  it('the surface found holds the area asked for, to 1e-9', () => {
    const chamber = buildSettledChamber(CHAMBER, null);
    for (const area of [1e-6, 1e-4, 0.005, 0.02]) {
      const surface = chamber.settle(area, 'high').main.surface_m!;
      expect(Math.abs(openChamberFill(0.11, 0.046, surface)!.area_m2 / area - 1)).toBeLessThan(1e-9);
    }
  });

  it('has a closed form only where the surface cuts the wall', () => {
    expect(openChamberFill(0.11, 0.046, 0.064)).toBeNull();
    expect(openChamberFill(0.11, 0.046, 0.156)).toBeNull();
  });

  it('about its own axis: the shot coats the wall evenly and is balanced', () => {
    const even = buildSettledChamber({ radius_m: 0.1, eccentricity_m: 0, chord_x_m: null }, null);
    const state = exciterState(even, SHOT, { ...RUN, fixed_kgm: [0, 0] });
    expect(state.r0_main_m!).toBeCloseTo(Math.sqrt(0.01 - AREA / Math.PI), 10);
    expect(state.U_kgm).toBeLessThan(1e-10);
    expect(state.angle_deg).toBeNull();
    expect(keys(state.notes)).toEqual(['no-leg', 'shot-balanced', 'balanced']);
  });
});

describe('a chamber with a flat face', () => {
  it('full: the area and moment of the circle less its segment', () => {
    const chord_x_m = -0.02;
    const chamber = buildSettledChamber({ ...CHAMBER, chord_x_m }, null);
    const half = Math.acos((0.046 - chord_x_m) / 0.11);
    const cut_m2 = 0.11 ** 2 * (half - Math.sin(half) * Math.cos(half));
    const cutMoment = 0.046 * cut_m2 - (2 / 3) * (0.11 * Math.sin(half)) ** 3;
    const area = Math.PI * 0.11 ** 2 - cut_m2;
    expect(chamber.freeArea_m2 / area).toBeCloseTo(1, 11);
    const shot = chamber.settle(area, 'high');
    expect(shot.moment_m3[0] / (0.046 * Math.PI * 0.11 ** 2 - cutMoment)).toBeCloseTo(1, 10);
  });

  it('a face that does not cut the circle changes nothing; one that leaves nothing is refused', () => {
    const round = settledShot(CHAMBER, BAFFLE, AREA, 'low');
    expect(settledShot({ ...CHAMBER, chord_x_m: -0.064 }, BAFFLE, AREA, 'low')).toEqual(round);
    expect(() => buildSettledChamber({ ...CHAMBER, chord_x_m: 0.156 }, null)).toThrow('chord_x_m');
  });

  it('a wall point beyond the face moves to where leg 1 comes in through it', () => {
    // the lower (+psi) corner of leg and face is a pocket that spills over the face's nearest point
    const chamber = { ...CHAMBER, chord_x_m: -0.04 };
    const baffle = { ...BAFFLE, psi_deg: 160, beta_deg: 0, leg1_m: 0.12, leg2_m: 0 };
    const lower = buildSettledChamber(chamber, baffle);
    expect(lower.pocket.state).toBe('open');
    expect(lower.spillRadius_m).toBeCloseTo(0.04, 9);
    expect(buildSettledChamber(chamber, { ...baffle, pocket_side: -1 }).pocket.state).toBe('never-separate');
    const short = buildSettledChamber(chamber, { ...baffle, leg1_m: 0.005 });
    expect(short.pocket.state).toBe('no-leg');
  });
});

describe('where no pocket is', () => {
  it('no baffle, or a leg 1 of no length: directions equal, with a note', () => {
    for (const baffle of [null, { ...BAFFLE, leg1_m: 0, leg2_m: 0 }]) {
      const low = exciterState(buildSettledChamber(CHAMBER, baffle), SHOT, { ...RUN, direction: 'low' });
      const high = exciterState(buildSettledChamber(CHAMBER, baffle), SHOT, RUN);
      expect(low).toEqual(high);
      expect(low).toMatchObject({
        capture_fraction: 0,
        r_spill_m: null,
        pocket_capacity_m2: null,
        r0_pocket_m: null,
      });
      expect(keys(low.notes)).toEqual(['no-leg']);
    }
  });

  it('pocket side towards the far point: never separate', () => {
    const chamber = buildSettledChamber(CHAMBER, { ...BAFFLE, pocket_side: -1 });
    expect(chamber.pocket.state).toBe('never-separate');
    expect(keys(chamber.settle(AREA, 'low').notes)).toContain('never-separate');
  });

  it('about its own axis a plate parts nothing', () => {
    const even = { ...CHAMBER, eccentricity_m: 0 };
    expect(buildSettledChamber(even, { ...BAFFLE, leg2_m: 0 }).pocket.state).toBe('never-separate');
  });
});

describe('where steel closes the pocket', () => {
  it('a hook that reaches the wall: never spills, capacity is the whole cell', () => {
    const chamber = buildSettledChamber(CHAMBER, { ...BAFFLE, leg1_m: 0.05, leg2_m: 0.12 });
    expect(chamber.pocket.state).toBe('closed');
    expect(chamber.spillRadius_m).toBe(0);
    const low = chamber.settle(AREA, 'low');
    expect(keys(low.notes)).toContain('closed');
    expect(low.pocket.area_m2).toBeCloseTo(Math.min(AREA, chamber.pocketCapacity_m2!), 12);
  });

  it('a plate right across the chamber', () => {
    const chamber = buildSettledChamber(CHAMBER, { ...BAFFLE, leg1_m: 0.25, leg2_m: 0 });
    expect(chamber.pocket.state).toBe('closed');
    expect(chamber.pocketCapacity_m2!).toBeGreaterThan(0.3 * chamber.freeArea_m2);
  });
});

describe('empty, full and over-full', () => {
  const chamber = buildSettledChamber(CHAMBER, BAFFLE);

  it('no shot: only the fixed moment, and what does not exist is null', () => {
    const state = exciterState(chamber, { ...SHOT, mass_kg: 0 }, { ...RUN, direction: 'low' });
    expect(state.U_kgm).toBeCloseTo(0.6, 15);
    expect(state).toMatchObject({
      shot_kgm: [0, 0],
      shot_U_kgm: 0,
      shot_angle_deg: null,
      angle_deg: 0,
      capture_fraction: null,
      r0_main_m: null,
      r0_pocket_m: null,
    });
    expect(keys(state.notes)).toEqual(['no-shot']);
  });

  it('less shot than the pocket holds: all of it is captured in low', () => {
    const shot = chamber.settle(0.5 * chamber.pocketCapacity_m2!, 'low');
    expect(shot.captureFraction).toBe(1);
    expect(shot.main.surface_m).toBeNull();
    expect(shot.pocket.surface_m!).toBeGreaterThan(0.064);
    expect(keys(shot.notes)).toEqual(['main-empty']);
  });

  it('full: the same in both directions, up to rounding', () => {
    const low = chamber.settle(chamber.freeArea_m2, 'low');
    const high = chamber.settle(chamber.freeArea_m2, 'high');
    expect(low.moment_m3[0]).toBeCloseTo(high.moment_m3[0], 12);
    expect(low.moment_m3[1]).toBeCloseTo(high.moment_m3[1], 12);
    expect(keys(high.notes)).toContain('main-full');
  });

  it('over-full: cut to what fits, with a note', () => {
    const full = chamber.settle(chamber.freeArea_m2, 'low');
    const over = chamber.settle(2 * chamber.freeArea_m2, 'low');
    expect(over.area_m2).toBeCloseTo(chamber.freeArea_m2, 12);
    expect(over.moment_m3[0]).toBeCloseTo(full.moment_m3[0], 12);
    expect(keys(over.notes)).toContain('overfull');
  });

  it('high with a surface inside the spill radius says that shot would run over', () => {
    expect(keys(chamber.settle(0.7 * chamber.freeArea_m2, 'high').notes)).toContain('runs-over');
    expect(keys(chamber.settle(0.7 * chamber.freeArea_m2, 'low').notes)).not.toContain('runs-over');
  });

  it('refuses numbers that make no chamber', () => {
    expect(() => buildSettledChamber({ ...CHAMBER, radius_m: 0 }, null)).toThrow('radius_m');
    expect(() => buildSettledChamber({ ...CHAMBER, eccentricity_m: -0.01 }, null)).toThrow('eccentricity_m');
    expect(() => buildSettledChamber(CHAMBER, { ...BAFFLE, half_thickness_m: 0 })).toThrow(
      'half_thickness_m',
    );
    expect(() => buildSettledChamber(CHAMBER, { ...BAFFLE, psi_deg: Number.NaN })).toThrow('psi_deg');
  });
});

describe('bearings of the exciter', () => {
  it('divide the force by the beam', () => {
    expect(bearingLoads(250e3, { force_m: 0, a_m: -0.6, b_m: 0.6 })).toEqual({ a_N: 125e3, b_N: 125e3 });
    const loads = bearingLoads(100, { force_m: 0.3, a_m: 0, b_m: 1 });
    expect(loads.a_N).toBeCloseTo(70, 12);
    expect(loads.b_N).toBeCloseTo(30, 12);
  });
  it('an overhung force pulls one bearing the other way', () => {
    expect(bearingLoads(100, { force_m: 1.5, a_m: 0, b_m: 1 })).toEqual({ a_N: -50, b_N: 150 });
    expect(() => bearingLoads(100, { force_m: 0, a_m: 1, b_m: 1 })).toThrow('bearings');
  });
});
