/**
 * Free motion seen from the turning housing: gravity, centrifugal, Coriolis and Euler terms as one kick.
 *
 * Leapfrog: velocities stand half a step behind positions. The Coriolis term turns velocity without changing its
 * size, so the kick is halved around an exact turn (Boris 1970); a ball at rest in the room then stays at rest in
 * the room to second order of the step.
 */
import { P, V } from './balls';
import type { World } from './world';

/** Kicks all velocities and spins by one step `h` at the world's time; returns the greatest speed in m/s. */
export function kick(world: World, h: number): number {
  const { balls, gravity, turning } = world;
  world.drive(world.time_s, turning);
  const w = turning.speed_rad_s;
  const angle = turning.angle_rad;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const gx = (gravity[0] * c + gravity[1] * s) * 0.5 * h;
  const gy = (gravity[1] * c - gravity[0] * s) * 0.5 * h;
  const gz = gravity[2] * h;
  const centrifugal = w * w * 0.5 * h;
  const euler = turning.acceleration_rad_s2 * 0.5 * h;
  const c2 = Math.cos(2 * w * h);
  const s2 = Math.sin(2 * w * h);
  const c1 = Math.cos(w * h);
  const s1 = Math.sin(w * h);
  const { position: p, motion: v } = balls;
  let fastest = 0;
  for (let i = 0, o = 0, k = 0; i < balls.count; i++, o += P, k += V) {
    const x = p[o]!;
    const y = p[o + 1]!;
    const ax = gx + centrifugal * x + euler * y;
    const ay = gy + centrifugal * y - euler * x;
    const ux = v[k]! + ax;
    const uy = v[k + 1]! + ay;
    const vx = ux * c2 + uy * s2 + ax;
    const vy = uy * c2 - ux * s2 + ay;
    const vz = v[k + 2]! + gz;
    v[k] = vx;
    v[k + 1] = vy;
    v[k + 2] = vz;
    // A free ball keeps its spin in the room: seen from the housing it turns back and loses what the housing gains.
    const qx = v[k + 3]!;
    const qy = v[k + 4]!;
    v[k + 3] = qx * c1 + qy * s1;
    v[k + 4] = qy * c1 - qx * s1;
    v[k + 5]! -= 2 * euler;
    const speed2 = vx * vx + vy * vy + vz * vz;
    if (speed2 > fastest) fastest = speed2;
  }
  return Math.sqrt(fastest);
}

/** Moves all balls by their velocities over `h` and notes how far they are from where the lists were made. */
export function drift(world: World, h: number): void {
  const { balls, neighbours } = world;
  const { position: p, motion: v } = balls;
  const { built } = neighbours;
  let farthest = 0;
  for (let o = 0, k = 0; o < balls.count * P; o += P, k += V) {
    const x = p[o]! + h * v[k]!;
    const y = p[o + 1]! + h * v[k + 1]!;
    const z = p[o + 2]! + h * v[k + 2]!;
    p[o] = x;
    p[o + 1] = y;
    p[o + 2] = z;
    const dx = x - built[o]!;
    const dy = y - built[o + 1]!;
    const dz = z - built[o + 2]!;
    const d2 = dx * dx + dy * dy + dz * dz;
    if (d2 > farthest) farthest = d2;
  }
  neighbours.moved_m = Math.sqrt(farthest);
}
