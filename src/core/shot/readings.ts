/** What can be read off the balls at one moment, scaled from the slice to the whole chamber. */
import { STANDARD_GRAVITY } from '../kernel';
import { kineticEnergy, massOf, P, type Balls } from './balls';
import { bulkPacking } from './packing';
import type { ShotParameters } from './parameters';
import { inPocket, type Pocket } from './pocket';
import type { Turning } from './spin-up';

export interface Readings {
  readonly time_s: number;
  /** Of the housing: angle about the body axis (rad) and speed (rad/s), counter-clockwise positive. */
  readonly angle_rad: number;
  readonly speed_rad_s: number;
  /** w^2 R / g with the bore radius R. */
  readonly gravity_ratio: number;
  /** Mass share in the pocket, heap over the spill radius included; 0 without a baffle. */
  readonly captured: number;
  /** The same without the heap: centres no nearer to O than the spill radius less 0.7 ball diameters. */
  readonly captured_below_spill: number;
  /** Centre of the shot's mass in the body frame, m. */
  readonly centre_m: readonly [number, number];
  /** Moment of the whole shot about O in the body frame, kg m, and its size. */
  readonly shot_kgm: readonly [number, number];
  readonly shot_U_kgm: number;
  /** Solid share inside the bed. */
  readonly packing: number;
  /** Kinetic energy of the whole shot seen from the housing, J. */
  readonly kinetic_J: number;
}

/** How far below the spill radius a ball still counts as in the level pocket, in ball diameters. */
const BELOW_SPILL = 0.7;

/** Reads the balls. `pocket` is `pocketOf` of the same parameters. */
export function readShot(
  p: ShotParameters,
  pocket: Pocket | null,
  balls: Balls,
  turning: Turning,
  time_s: number,
): Readings {
  const d = p.shot.ball_diameter_m;
  let mass = 0,
    mx = 0,
    my = 0,
    held = 0,
    level = 0;
  for (let i = 0; i < balls.count; i++) {
    const x = balls.position[i * P]!;
    const y = balls.position[i * P + 1]!;
    const m = massOf(balls, i);
    mass += m;
    mx += m * x;
    my += m * y;
    if (pocket === null) continue;
    if (inPocket(pocket, x, y, pocket.lip_m - d / 2)) held += m;
    if (inPocket(pocket, x, y, pocket.spill_m - BELOW_SPILL * d)) level += m;
  }
  const scale = p.shot.mass_kg / mass;
  const w = turning.speed_rad_s;
  return {
    time_s,
    angle_rad: turning.angle_rad,
    speed_rad_s: w,
    gravity_ratio: (w * w * p.chamber.radius_m) / STANDARD_GRAVITY,
    captured: held / mass,
    captured_below_spill: level / mass,
    centre_m: [mx / mass, my / mass],
    shot_kgm: [mx * scale, my * scale],
    shot_U_kgm: Math.hypot(mx, my) * scale,
    packing: bulkPacking(p, balls),
    kinetic_J: kineticEnergy(balls) * scale,
  };
}
