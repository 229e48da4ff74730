import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromShown, type Quantity, toShown, UNITS } from '../../src/core/kernel';

const quantities = Object.keys(UNITS) as Quantity[];

describe('units at the border', () => {
  it('come back from either system as they went', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...quantities),
        fc.constantFrom('si' as const, 'us' as const),
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        (quantity, system, si) => {
          const back = fromShown(toShown(si, quantity, system), quantity, system);
          // An offset (degrees) costs a few digits next to nothing.
          expect(Math.abs(back - si)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(si)));
        },
      ),
      { seed: 20260101, numRuns: 400 },
    );
  });

  // NIST Special Publication 811, Guide for the Use of the International System of Units, appendix B (from memory).
  it.each([
    ['length-small', 'us', 0.0254, 1],
    ['mass', 'us', 0.45359237, 1],
    ['force', 'us', 4.4482216152605, 1],
    ['pressure', 'us', 6894.757293168, 1],
    ['torque', 'us', 1.3558179483314, 1],
    ['energy', 'us', 1.3558179483314, 1],
    ['volume', 'us', 3.785411784e-3, 1],
    ['power', 'us', 745.69987158227, 1],
    ['unbalance', 'us', 0.45359237 * 0.0254, 1],
    ['temperature', 'us', 100, 212],
    ['temperature-difference', 'us', 100, 180],
    ['speed', 'us', 0.44704, 1],
    ['rotation', 'si', 2 * Math.PI, 60],
    ['linear-load', 'si', 980.665, 1],
  ] as const)('%s in %s', (quantity, system, si, shown) => {
    expect(toShown(si, quantity, system) / shown).toBeCloseTo(1, 9);
  });
});
