/** Public teaching data set for KR-20: 10 students x 10 items; the set prints totals, p and variance 5.84. */
import { expect, it } from 'vitest';
import { itemStatistics } from '../../src/core/quiz';
import { valueOf } from '../mechanics/value-of';
import { ROWS } from './kr20-data';

it('totals, p and population variance as printed; KR-20 and correlations recomputed', () => {
  const statistics = valueOf(itemStatistics(ROWS));
  expect(statistics.totals).toEqual([8, 7, 7, 2, 2, 9, 8, 9, 7, 7]);
  [0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6].forEach((p, i) => {
    expect(statistics.p[i]).toBeCloseTo(p, 12);
  });
  expect(statistics.variance_population).toBeCloseTo(5.84, 12);
  expect(statistics.kr20).toBeCloseTo(0.6963, 4);
  const picked = [0, 2, 5, 8];
  [0.7946, 0.2027, 0.4345, 0.0828].forEach((r, i) => {
    expect(statistics.point_biserial[picked[i] ?? 0]).toBeCloseTo(r, 4);
  });
  [0.7059, 0, 0.2861, -0.1236].forEach((r, i) => {
    expect(statistics.item_rest[picked[i] ?? 0]).toBeCloseTo(r, 4);
  });
});
