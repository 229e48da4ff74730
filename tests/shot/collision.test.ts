/** Two balls, a ball and a wall: restitution, momentum, energy. */
import { describe, expect, it } from 'vitest';
import { kineticEnergy, massOf, P, PLANE, V, type World } from '../../src/core/shot';
import { seededRandom } from '../../src/core/kernel';
import { box, ENGINES, runWorld, worldOf, type Placed } from './worlds';

/** Linear and angular momentum (about O) of all balls, kg m/s and kg m2/s. */
function momentum(world: World): number[] {
  const sum = [0, 0, 0, 0, 0, 0];
  const { position: p, motion: v, count } = world.balls;
  for (let i = 0; i < count; i++) {
    const m = massOf(world.balls, i);
    const inertia = 1 / v[i * V + 7]!;
    for (let c = 0; c < 3; c++) {
      const [d, e] = [(c + 1) % 3, (c + 2) % 3];
      sum[c]! += m * v[i * V + c]!;
      sum[3 + c]! +=
        m * (p[i * P + d]! * v[i * V + e]! - p[i * P + e]! * v[i * V + d]!) + inertia * v[i * V + 3 + c]!;
    }
  }
  return sum;
}

describe.each(ENGINES)('collision, %s', (engine) => {
  // Twelve steps a contact: where in a step it begins scatters the rebound of the discrete elements.
  const within = engine === 'positions' ? 1e-9 : 0.03;

  it.each([0.3, 0.5, 0.7, 0.85, 0.95])('rebounds head-on with e = %d', (e) => {
    const balls: Placed[] = [
      { at: [0, 0, 0], velocity: [1, 0, 0] },
      { at: [0.0213, 0, 0], radius_m: 0.0066 },
    ];
    const world = worldOf(balls, { restitution: e });
    runWorld(world, engine, 0.04);
    expect(Math.abs(world.balls.motion[V]! - world.balls.motion[0]! - e)).toBeLessThan(within);
  });

  it.each([0.3, 0.95])('rebounds from a wall with e = %d', (e) => {
    const world = worldOf([{ at: [0.02, 0, 0], velocity: [-1, 0, 0] }], {
      restitution: e,
      walls: [[PLANE, 1, 0, 0, 0]],
    });
    runWorld(world, engine, 0.04);
    expect(Math.abs(world.balls.motion[0]! - e)).toBeLessThan(engine === 'positions' ? 1e-9 : 0.03);
  });

  it.each([0, 0.1, 0.5, 10])(
    'keeps linear and angular momentum to rounding in an oblique hit, friction %d',
    (friction) => {
      const balls: Placed[] = [
        { at: [0.01, 0.02, 0], velocity: [1, 0.1, -0.05], spin: [5, -20, 60] },
        { at: [0.0253, 0.0255, 0.003], velocity: [-0.4, 0, 0.1], spin: [-30, 4, 9], radius_m: 0.0066 },
      ];
      const world = worldOf(balls, { restitution: 0.7, friction });
      const before = momentum(world);
      const spin = world.balls.motion[5]!;
      const energy = kineticEnergy(world.balls);
      runWorld(world, engine, 0.03);
      const after = momentum(world);
      before.forEach((value, c) => expect(Math.abs(after[c]! - value)).toBeLessThan(1e-15));
      // It did hit, and friction did turn the balls.
      expect(kineticEnergy(world.balls)).toBeLessThan(0.98 * energy);
      if (friction > 0) expect(Math.abs(world.balls.motion[5]! - spin)).toBeGreaterThan(1);
    },
  );

  it('never gains energy in a closed box', () => {
    const random = seededRandom(7);
    const balls: Placed[] = [];
    for (let i = 0; i < 64; i++) {
      const at: [number, number, number] = [
        0.012 + 0.018 * (i % 4),
        0.012 + 0.018 * ((i >> 2) % 4),
        0.012 + 0.018 * (i >> 4),
      ];
      const velocity: [number, number, number] = [
        random.between(-1, 1),
        random.between(-1, 1),
        random.between(-1, 1),
      ];
      balls.push({ at, velocity });
    }
    const world = worldOf(balls, { restitution: 0.9, friction: 0.3, walls: box(0.078) });
    const start = kineticEnergy(world.balls);
    let last = start;
    let worst = 0;
    runWorld(world, engine, engine === 'positions' ? 1 : 0.25, 9.81, () => {
      const now = kineticEnergy(world.balls);
      worst = Math.max(worst, engine === 'positions' ? now - last : now - start);
      last = now;
    });
    expect(worst).toBeLessThan(1e-6 * start);
    expect(last).toBeLessThan(0.7 * start);
  });
});
