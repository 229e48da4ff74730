/** The grid finds what a look at every pair finds. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/kernel';
import {
  buildNeighbours,
  createBalls,
  createNeighbours,
  P,
  setBall,
  wallTable,
  PLANE,
} from '../../src/core/shot';

describe('neighbours', () => {
  it.each([0, 0.04, 0.06, 0.13])('lists every near pair once, period %d m', (period) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120 }), fc.integer(), (count, seed) => {
        const random = seededRandom(seed);
        const balls = createBalls(count);
        const depth = period || 0.1;
        for (let i = 0; i < count; i++) {
          const at: [number, number, number] = [
            random.between(-0.1, 0.1),
            random.between(0, 0.07),
            random.between(-depth, 2 * depth),
          ];
          setBall(balls, i, at, random.between(0.0054, 0.0066), 1);
        }
        const nb = createNeighbours(count);
        buildNeighbours(nb, balls, wallTable([[PLANE, 0, 1, 0, 0]]), period);
        const listed = new Set<string>();
        for (let row = 0; row < count; row++) {
          for (let k = nb.first[row]!; k < nb.first[row + 1]!; k++) {
            const [a, b] = [nb.order[row]!, nb.partner[k]!].sort((x, y) => x - y);
            expect(listed.has(`${a} ${b}`)).toBe(false);
            listed.add(`${a} ${b}`);
          }
        }
        const p = balls.position;
        for (let a = 0; a < count; a++) {
          for (let b = a + 1; b < count; b++) {
            let dz = p[a * P + 2]! - p[b * P + 2]!;
            if (period > 0) dz -= period * Math.round(dz / period);
            const d = Math.hypot(p[a * P]! - p[b * P]!, p[a * P + 1]! - p[b * P + 1]!, dz);
            if (d < p[a * P + 3]! + p[b * P + 3]! + 2 * nb.slack_m)
              expect(listed.has(`${a} ${b}`)).toBe(true);
          }
          const near = p[a * P + 1]! < p[a * P + 3]! + nb.slack_m;
          expect(nb.wallFirst[a + 1]! - nb.wallFirst[a]!).toBe(near ? 1 : 0);
        }
      }),
      { numRuns: 15, seed: 3 },
    );
  });
});
