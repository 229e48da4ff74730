/**
 * Upper-lower 27 % on the public teaching data set for KR-20 (10 students x 10 items, `item-statistics.test.ts`), by
 * hand: n = 3. Upper: the two with 9 and half of each of the two with 8. Lower: the two with 2 and a quarter of each of
 * the four with 7. The groups are too small to report; the data set serves as arithmetic only.
 */
import { expect, it } from 'vitest';
import { bandOf, upperLower } from '../../src/core/classroom';
import { ROWS } from './kr20-data';

it('D of items 1, 3 and 9, and nothing for so few people unless asked', () => {
  expect(upperLower(ROWS)).toBeNull();
  const d = upperLower(ROWS, 10)!;
  expect(d[0]).toBeCloseTo((3 - 3 / 4) / 3, 12);
  expect(d[2]).toBeCloseTo((2.5 - 1.5) / 3, 12);
  // Upper: F 1, H 0, A and G half each. Lower: D 0, E 1, and of B, C, I, J only J.
  expect(d[8]).toBeCloseTo((2 - 1.25) / 3, 12);
});

it('bands of Ebel, from memory', () => {
  expect([0.45, 0.4, 0.35, 0.3, 0.25, 0.2, 0.19].map(bandOf)).toEqual([
    'very-good',
    'very-good',
    'good',
    'good',
    'marginal',
    'marginal',
    'poor',
  ]);
});
