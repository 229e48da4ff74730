/**
 * Fast values of the shot that is watched: the playhead and where the balls are at it. Preallocated; whoever moves the
 * playhead asks for a frame, and panel and stage read the same balls.
 */
import { driveOf, inPocket, pocketOf, type Pocket, type Readings, type Turning } from '../core/shot';
import { requestFrame } from './transient';
import type { ShotTake } from './shot';

/** Numbers a ball: x, y, z, radius. */
export const BALL_STRIDE = 4;

export interface ShotTransient {
  take: ShotTake | null;
  time_s: number;
  /** Rises whenever the balls are in other places. */
  version: number;
  count: number;
  /** Body frame of the housing, m: x, y, z, radius a ball. */
  balls: Float32Array;
  /** 1 where a ball counts as held behind the baffle. */
  held: Uint8Array;
  /** Angle of the housing at the playhead, rad. */
  angle_rad: number;
}

export const shotTransient: ShotTransient = {
  take: null,
  time_s: 0,
  version: 0,
  count: 0,
  balls: new Float32Array(0),
  held: new Uint8Array(0),
  angle_rad: 0,
};

let pocket: Pocket | null = null;

/** Puts the playhead to a time of a take and works out where its balls are; null clears. */
export function showShot(take: ShotTake | null, time_s: number): void {
  const t = shotTransient;
  if (take !== t.take) {
    t.take = take;
    t.count = take?.count ?? 0;
    if (t.balls.length < t.count * BALL_STRIDE) {
      t.balls = new Float32Array(t.count * BALL_STRIDE);
      t.held = new Uint8Array(t.count);
    }
    pocket = take === null ? null : pocketOf(take.parameters.chamber, take.parameters.baffle);
  } else if (take !== null && time_s === t.time_s) return;
  t.time_s = take === null ? 0 : Math.min(take.duration_s, Math.max(0, time_s));
  t.version++;
  if (take !== null) {
    take.placeAt(t.time_s, t.balls);
    markHeld(take);
    t.angle_rad = turningAt(take, t.time_s).angle_rad;
  } else t.angle_rad = 0;
  requestFrame();
}

function markHeld(take: ShotTake): void {
  const { balls, held, count } = shotTransient;
  if (pocket === null) {
    held.fill(0);
    return;
  }
  const least = pocket.lip_m - take.parameters.shot.ball_diameter_m / 2;
  for (let i = 0; i < count; i++) {
    const o = i * BALL_STRIDE;
    held[i] = inPocket(pocket, balls[o]!, balls[o + 1]!, least) ? 1 : 0;
  }
}

/** Moves the playhead on by a time on the wall, slowed; returns whether the take has come to its end. */
export function playShot(wall_s: number, slow: number): boolean {
  const { take, time_s } = shotTransient;
  if (take === null) return true;
  showShot(take, time_s + wall_s / slow);
  return shotTransient.time_s >= take.duration_s;
}

/** How the housing turns at a time, by the run's own spin-up law. */
export function turningAt(take: ShotTake, time_s: number): Turning {
  const turning: Turning = { angle_rad: 0, speed_rad_s: 0, acceleration_rad_s2: 0 };
  driveOf(take.parameters)(time_s, turning);
  return turning;
}

/** Readings at a time between those that were recorded: straight lines between neighbours. */
export function readingAt(take: ShotTake, time_s: number): Readings {
  const { readings } = take;
  let after = 0;
  let last = readings.length - 1;
  // First reading that is not earlier.
  while (after < last) {
    const middle = (after + last) >> 1;
    if (readings[middle]!.time_s < time_s) after = middle + 1;
    else last = middle;
  }
  const b = readings[after]!;
  const a = readings[after - 1];
  if (a === undefined || b.time_s <= time_s) return b;
  const s = (time_s - a.time_s) / (b.time_s - a.time_s);
  const mix = (p: number, q: number): number => p + s * (q - p);
  const both = (p: readonly [number, number], q: readonly [number, number]): [number, number] => [
    mix(p[0], q[0]),
    mix(p[1], q[1]),
  ];
  const shot_kgm = both(a.shot_kgm, b.shot_kgm);
  return {
    time_s,
    angle_rad: mix(a.angle_rad, b.angle_rad),
    speed_rad_s: mix(a.speed_rad_s, b.speed_rad_s),
    gravity_ratio: mix(a.gravity_ratio, b.gravity_ratio),
    captured: mix(a.captured, b.captured),
    captured_below_spill: mix(a.captured_below_spill, b.captured_below_spill),
    centre_m: both(a.centre_m, b.centre_m),
    shot_kgm,
    shot_U_kgm: Math.hypot(...shot_kgm),
    packing: mix(a.packing, b.packing),
    kinetic_J: mix(a.kinetic_J, b.kinetic_J),
  };
}
