/** Laws of many balls: packing, slow drum, critical speed, level surface, overlap within its bound. */
import { describe, expect, it } from 'vitest';
import {
  advance,
  BORE,
  bulkPacking,
  createBalls,
  createSimulation,
  createTouched,
  P,
  readShot,
  setBall,
  stepPositions,
  V,
  type ShotParameters,
  type World,
} from '../../src/core/shot';
import { seededRandom } from '../../src/core/kernel';
import { ALDER_ONE, worldOf } from './worlds';

/** A round drum about its own axis, half full of 12 mm balls. */
const drum = (over: Partial<ShotParameters>): ShotParameters => ({
  ...ALDER_ONE,
  chamber: { radius_m: 0.08, eccentricity_m: 0, chord_x_m: null },
  baffle: null,
  shot: { ...ALDER_ONE.shot, mass_kg: 45 },
  slice: { dimension: 3, depth_m: 0.04, ends: 'periodic' },
  ...over,
});

/** Mean overlap of touching balls over their mean diameter. */
function meanOverlap(world: World, diameter_m: number, period: number): number {
  const p = world.balls.position;
  let sum = 0;
  let n = 0;
  for (let i = 0; i < world.balls.count; i++) {
    for (let j = 0; j < i; j++) {
      let dz = Math.abs(p[i * P + 2]! - p[j * P + 2]!);
      dz = Math.min(dz, Math.abs(period - dz));
      const gap =
        Math.hypot(p[i * P]! - p[j * P]!, p[i * P + 1]! - p[j * P + 1]!, dz) - p[i * P + 3]! - p[j * P + 3]!;
      if (gap >= 0) continue;
      sum -= gap;
      n++;
    }
  }
  return sum / n / diameter_m;
}

describe('packing', () => {
  it('reads the solid share of a cubic lattice', () => {
    const balls = createBalls(8 * 8 * 3);
    let i = 0;
    for (let x = 0; x < 8; x++)
      for (let y = 0; y < 8; y++)
        for (let z = 0; z < 3; z++)
          setBall(balls, i++, [0.012 * (x - 3.5), 0.012 * (y - 3.5), 0.012 * (z + 0.5)], 0.006, 1);
    const p = drum({ slice: { dimension: 3, depth_m: 0.036, ends: 'periodic' } });
    expect(bulkPacking(p, balls)).toBeCloseTo(Math.PI / 6, 2);
  });

  it('lies between 0.56 and 0.64 in a settled bed, with overlaps within the bound', () => {
    const p = drum({});
    const sim = createSimulation(p);
    const { packing, kinetic_J } = readShot(p, null, sim.world.balls, sim.world.turning, 0);
    expect(packing).toBeGreaterThan(0.56);
    expect(packing).toBeLessThan(0.64);
    expect(kinetic_J).toBe(0);
    const overlap = meanOverlap(sim.world, p.shot.ball_diameter_m, p.slice.depth_m);
    expect(overlap).toBeGreaterThan(0);
    expect(overlap).toBeLessThan(p.tolerance);
  });
});

describe('drum', () => {
  it('holds its bed at 18 to 30 degrees when it turns slowly, friction 0.3', () => {
    const p = drum({
      spin_up: {
        kind: 'table',
        points: [
          { time_s: 0, frequency_Hz: 0.2 },
          { time_s: 2, frequency_Hz: 0.2001 },
        ],
      },
      stop_Hz: 0.2001,
    });
    const sim = createSimulation(p);
    let sum = 0;
    let n = 0;
    for (let t = 0.9; t < 1.91; t += 0.1) {
      advance(sim, t);
      const r = readShot(p, null, sim.world.balls, sim.world.turning, t);
      // Down in the room is the body direction -angle.
      let lag = Math.atan2(r.centre_m[1], r.centre_m[0]) + r.angle_rad;
      lag -= 2 * Math.PI * Math.round(lag / (2 * Math.PI));
      sum += lag;
      n++;
    }
    const bed = ((sum / n) * 180) / Math.PI;
    expect(bed).toBeGreaterThan(18);
    expect(bed).toBeLessThan(30);
  });

  /** A ball that cannot roll, at the bottom of a drum at rest in it; least distance from the wall's contact over 2 turns. */
  const leaves = (ratio: number): number => {
    const [R, r, g] = [0.1, 0.006, 9.81];
    const w = ratio * Math.sqrt(g / (R - r));
    const world = worldOf([{ at: [R - r, 0, 0] }], {
      friction: 20,
      gravity: [g, 0, 0],
      walls: [[BORE, 0, 0, R]],
      drive: (t, out) => {
        out.angle_rad = w * t;
        out.speed_rad_s = w;
        out.acceleration_rad_s2 = 0;
      },
    });
    world.balls.motion[7] = 0;
    const touched = createTouched(1);
    let least = Infinity;
    for (let t = 0; t < (4 * Math.PI) / w; t += 2e-4) {
      stepPositions(world, touched, 2e-4, 20);
      least = Math.min(least, Math.hypot(world.balls.position[0]!, world.balls.position[1]!));
    }
    return R - r - least;
  };

  it('carries a pinned ball round above w_c = sqrt(g / (R - r)) and drops it below', () => {
    expect(leaves(1.02)).toBeLessThan(1e-4);
    expect(leaves(0.95)).toBeGreaterThan(0.002);
  });
});

describe('level surface', () => {
  it('is a circle about a centre g / w^2 from the axis when gravity turns along with the housing', () => {
    // The field of w^2 r about O and a steady g towards +x is that of w^2 r about (-g / w^2, 0).
    // Shaken first: even without friction a bed keeps a slope of some degrees.
    const w = 14;
    const d = 0.008;
    const p = drum({
      slice: { dimension: 3, depth_m: 0.026, ends: 'periodic' },
      friction: { ball: 0, wall: 0 },
    });
    const sim = createSimulation({ ...p, shot: { ...p.shot, ball_diameter_m: d, mass_kg: 50 } });
    const steady = worldLike(sim.world, w);
    const touched = createTouched(steady.balls.count);
    const random = seededRandom(2);
    for (let n = 0; n < 5000; n++) {
      stepPositions(steady, touched, 2e-4, 30);
      if (n >= 3500 || n % 50 > 0) continue;
      const kick = 0.4 * (1 - n / 3500);
      for (let i = 0; i < steady.balls.count; i++)
        for (let c = 0; c < 2; c++) steady.balls.motion[i * V + c]! += kick * random.between(-1, 1);
    }
    const centre = -9.80665 / (w * w);
    // Innermost ball in each direction about the expected centre, where it does not lie on the wall itself.
    const bins = new Array<number>(24).fill(Infinity);
    const onWall = new Array<boolean>(24).fill(true);
    for (let i = 0; i < steady.balls.count; i++) {
      const x = steady.balls.position[i * P]! - centre;
      const y = steady.balls.position[i * P + 1]!;
      const bin = Math.floor(((Math.atan2(y, x) + Math.PI) / (2 * Math.PI)) * 24);
      const r = Math.hypot(x, y);
      if (r >= bins[bin]!) continue;
      bins[bin] = r;
      onWall[bin] = Math.hypot(x + centre, y) > 0.08 - 1.5 * d;
    }
    const surface = bins.filter((r, bin) => Number.isFinite(r) && onWall[bin] === false);
    const mean = surface.reduce((a, b) => a + b, 0) / surface.length;
    expect(surface.length).toBeGreaterThan(6);
    const spread = Math.sqrt(surface.reduce((a, r) => a + (r - mean) ** 2, 0) / surface.length);
    // About O itself the same surface is far from round: the offset is 50 mm.
    expect(spread).toBeLessThan(0.6 * d);
  });
});

const worldLike = (world: World, w: number): World => ({
  ...world,
  restitution: 0,
  time_s: 0,
  drive: (_t, out) => {
    out.angle_rad = 0;
    out.speed_rad_s = w;
    out.acceleration_rad_s2 = 0;
  },
});
