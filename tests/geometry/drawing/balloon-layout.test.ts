import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Anchor, crosses, layoutBalloons, spaced } from '../../../src/core/geometry';

const columns = { leftX: 40, rightX: 960, top: 30, bottom: 670, gap: 32 };
const anchors = fc
  .array(
    fc.record({
      x: fc.double({ min: 60, max: 940, noNaN: true }),
      y: fc.double({ min: 0, max: 700, noNaN: true }),
    }),
    { minLength: 1, maxLength: 24 },
  )
  .map((list): Anchor[] => list.map((p, i) => ({ id: `p${i}`, ...p })));

describe('balloons', () => {
  it('never cross their leaders', () => {
    fc.assert(
      fc.property(anchors, (list) => {
        const balloons = layoutBalloons(list, columns);
        for (let i = 0; i < balloons.length; i++)
          for (let j = i + 1; j < balloons.length; j++) {
            const a = balloons[i]!;
            const b = balloons[j]!;
            expect(crosses(a.bx, a.by, a, b.bx, b.by, b)).toBe(false);
          }
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it('keep their distance, stay on the stage, and all have a place', () => {
    fc.assert(
      fc.property(anchors, (list) => {
        const balloons = layoutBalloons(list, columns);
        expect(new Set(balloons.map((b) => b.id)).size).toBe(list.length);
        for (const x of [columns.leftX, columns.rightX]) {
          const heights = balloons
            .filter((b) => b.bx === x)
            .map((b) => b.by)
            .sort((p, q) => p - q);
          heights.forEach((y, i) => {
            expect(y).toBeGreaterThan(columns.top - 1e-6);
            expect(y).toBeLessThan(columns.bottom + 1e-6);
            if (i > 0) expect(y - heights[i - 1]!).toBeGreaterThan(columns.gap - 1e-6);
          });
        }
      }),
      { seed: 8, numRuns: 200 },
    );
  });

  it('stand level with their points where there is room', () => {
    expect(spaced([100, 300, 500], 30, 670, 32)).toEqual([100, 300, 500]);
  });

  it('share the room when points crowd: evenly about their mean', () => {
    expect(spaced([300, 300, 300], 30, 670, 32)).toEqual([268, 300, 332]);
  });

  it('detects a crossing and lets leaders that only touch pass', () => {
    expect(crosses(0, 0, { x: 10, y: 10 }, 0, 10, { x: 10, y: 0 })).toBe(true);
    expect(crosses(0, 0, { x: 10, y: 0 }, 0, 10, { x: 10, y: 10 })).toBe(false);
  });
});
