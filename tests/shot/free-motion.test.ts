/** Free flight in the housing frame, against motion in the room. */
import { describe, expect, it } from 'vitest';
import { createTouched, P, stepPositions, V } from '../../src/core/shot';
import { runWorld, worldOf } from './worlds';

describe('free motion', () => {
  it('falls by g t^2 / 2', () => {
    const world = worldOf([{ at: [0, 0, 0] }], { gravity: [9.81, 0, 0] });
    const h = runWorld(world, 'positions', 0.4);
    // The leapfrog starts from rest half a step early: g h t / 2 more.
    expect(world.balls.position[0]).toBeCloseTo((9.81 * 0.4 * (0.4 + h)) / 2, 9);
  });

  it('stays at rest in the room as seen from a frame turning at 20 rad/s, to 0.25 mm in 0.5 s', () => {
    const w = 20;
    const h = 2e-4;
    const radius = 0.12;
    const drive = (
      t: number,
      out: { angle_rad: number; speed_rad_s: number; acceleration_rad_s2: number },
    ): void => {
      out.angle_rad = w * t;
      out.speed_rad_s = w;
      out.acceleration_rad_s2 = 0;
    };
    // Half a step before the start the ball stood at +w h / 2 and moved backwards.
    const back = (w * h) / 2;
    const velocity: [number, number, number] = [w * radius * Math.sin(back), -w * radius * Math.cos(back), 0];
    const world = worldOf([{ at: [radius, 0, 0], velocity, spin: [3, 0, -w] }], { drive });
    const touched = createTouched(1);
    for (let n = 0; n < 2500; n++) stepPositions(world, touched, h, 100);
    const angle = w * 0.5;
    const [x, y] = [world.balls.position[0]!, world.balls.position[1]!];
    const room = [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
    expect(Math.hypot(room[0]! - radius, room[1]!)).toBeLessThan(2.5e-4);
    // A spin that stands still in the room turns back in the housing.
    expect(world.balls.motion[3]).toBeCloseTo(3 * Math.cos(angle), 6);
    expect(world.balls.motion[4]).toBeCloseTo(-3 * Math.sin(angle), 6);
  });

  it('keeps a ball at rest in the room while the housing speeds up', () => {
    const alpha = 40;
    const h = 1e-4;
    const world = worldOf([{ at: [0.1, 0, 0] }], {
      drive: (t, out) => {
        out.angle_rad = (alpha * t * t) / 2;
        out.speed_rad_s = alpha * t;
        out.acceleration_rad_s2 = alpha;
      },
    });
    world.balls.motion[1] = 0.1 * alpha * (h / 2);
    world.balls.motion[5] = 0;
    const touched = createTouched(1);
    for (let n = 0; n < 5000; n++) stepPositions(world, touched, h, 100);
    const angle = (alpha * 0.25) / 2;
    const p = world.balls.position;
    const x = p[0]! * Math.cos(angle) - p[1]! * Math.sin(angle);
    const y = p[0]! * Math.sin(angle) + p[1]! * Math.cos(angle);
    expect(Math.hypot(x - 0.1, y)).toBeLessThan(2.5e-4);
    expect(world.balls.motion[5]).toBeCloseTo(-alpha * 0.5, 6);
    expect(world.balls.position.length).toBe(P);
    expect(world.balls.motion.length).toBe(V);
  });
});
