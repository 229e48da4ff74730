/** One simulated world: balls, walls, the law of contact and the turning of the housing they are seen from. */
import type { Balls } from './balls';
import { createNeighbours, type Neighbours } from './neighbours';
import type { Turning } from './spin-up';
import type { Walls } from './walls';

/** The housing's turning against time; writes into `out`. */
export type Drive = (time_s: number, out: Turning) => void;

export interface World {
  readonly balls: Balls;
  readonly walls: Walls;
  /** Length after which the slice repeats along z; 0 when it does not. */
  readonly period_m: number;
  /** Gravity, m/s2, in the body frame at angle 0; it turns against the housing. */
  readonly gravity: readonly [number, number, number];
  readonly friction_ball: number;
  readonly friction_wall: number;
  restitution: number;
  readonly drive: Drive;
  readonly neighbours: Neighbours;
  /** State of the turning at the last kick. */
  readonly turning: Turning;
  time_s: number;
}

export interface WorldInput {
  readonly balls: Balls;
  readonly walls: Walls;
  readonly period_m?: number;
  readonly gravity?: readonly [number, number, number];
  readonly friction?: number | { readonly ball: number; readonly wall: number };
  readonly restitution?: number;
  readonly drive?: Drive;
}

/** A housing that stands still at angle 0. */
export const atRest: Drive = (_time, out) => {
  out.angle_rad = out.speed_rad_s = out.acceleration_rad_s2 = 0;
};

/** Puts a world together; left out: no gravity, no friction, no rebound, a housing at rest. */
export function createWorld(input: WorldInput): World {
  const friction = input.friction ?? 0;
  return {
    balls: input.balls,
    walls: input.walls,
    period_m: input.period_m ?? 0,
    gravity: input.gravity ?? [0, 0, 0],
    friction_ball: typeof friction === 'number' ? friction : friction.ball,
    friction_wall: typeof friction === 'number' ? friction : friction.wall,
    restitution: input.restitution ?? 0,
    drive: input.drive ?? atRest,
    neighbours: createNeighbours(input.balls.count),
    turning: { angle_rad: 0, speed_rad_s: 0, acceleration_rad_s2: 0 },
    time_s: 0,
  };
}
