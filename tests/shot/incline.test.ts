/** A sphere on an incline: it rolls at 5/7 g sin, and slips at g (sin - mu cos) beyond tan = 3.5 mu. */
import { describe, expect, it } from 'vitest';
import { PLANE } from '../../src/core/shot';
import { ENGINES, runWorld, worldOf } from './worlds';

const g = 9.81;

/** Mean acceleration along the incline over 0.3 s from rest, and the speed of the contact point over that of the centre. */
function slide(engine: 'positions' | 'elements', angle_deg: number, friction: number): [number, number] {
  const a = (angle_deg * Math.PI) / 180;
  const world = worldOf([{ at: [0, 0.006, 0] }], {
    friction,
    gravity: [g * Math.sin(a), -g * Math.cos(a), 0],
    walls: [[PLANE, 0, 1, 0, 0]],
  });
  runWorld(world, engine, 0.3);
  const v = world.balls.motion;
  return [v[0]! / 0.3, (v[0]! + 0.006 * v[5]!) / v[0]!];
}

describe.each(ENGINES)('incline, %s', (engine) => {
  it.each([10, 25, 40])('rolls at %d degrees', (angle) => {
    const [a, slip] = slide(engine, angle, 0.3);
    expect(a / ((5 / 7) * g * Math.sin((angle * Math.PI) / 180))).toBeCloseTo(1, 2);
    expect(Math.abs(slip)).toBeLessThan(0.01);
  });

  it.each([52, 60])('slips at %d degrees', (angle) => {
    const [a, slip] = slide(engine, angle, 0.3);
    const rad = (angle * Math.PI) / 180;
    expect(a / (g * (Math.sin(rad) - 0.3 * Math.cos(rad)))).toBeCloseTo(1, 2);
    expect(slip).toBeGreaterThan(0.05);
  });

  it('holds a ball that cannot roll below the friction angle and lets it slide above', () => {
    const slideBlock = (angle_deg: number): number => {
      const a = (angle_deg * Math.PI) / 180;
      const world = worldOf([{ at: [0, 0.006, 0] }], {
        friction: 0.3,
        gravity: [g * Math.sin(a), -g * Math.cos(a), 0],
        walls: [[PLANE, 0, 1, 0, 0]],
      });
      world.balls.motion[7] = 0;
      runWorld(world, engine, 0.5);
      return world.balls.position[0]!;
    };
    const limit = (Math.atan(0.3) * 180) / Math.PI;
    // A held block does not creep: less than 20 micrometres in half a second.
    expect(Math.abs(slideBlock(limit - 0.5))).toBeLessThan(2e-5);
    expect(slideBlock(limit + 2)).toBeGreaterThan(0.02);
  });
});
