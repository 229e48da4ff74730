import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemStatistics } from '../../src/core/quiz';
import { faultPaths, noteKeys, valueOf } from '../mechanics/value-of';

const SEED = { seed: 20, numRuns: 80 };
const responses = fc
  .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 8 }))
  .chain(([people, items]) =>
    fc.array(fc.array(fc.constantFrom(0, 1), { minLength: items, maxLength: items }), {
      minLength: people,
      maxLength: people,
    }),
  );

describe('item statistics', () => {
  it('stay in their ranges, with null for what does not exist', () => {
    fc.assert(
      fc.property(responses, (rows) => {
        const result = valueOf(itemStatistics(rows));
        expect(result.kr20 === null).toBe(rows[0]?.length === 1 || result.variance_population === 0);
        expect(result.kr20 ?? 0).toBeLessThanOrEqual(1 + 1e-12);
        for (const r of [...result.point_biserial, ...result.item_rest]) {
          expect(Math.abs(r ?? 0)).toBeLessThanOrEqual(1 + 1e-9);
        }
        // the mean total is the sum of the item means
        const mean = result.totals.reduce((a, b) => a + b, 0) / result.totals.length;
        expect(result.p.reduce((a, b) => a + b, 0)).toBeCloseTo(mean, 12);
      }),
      SEED,
    );
  });

  it('two equal items are wholly reliable', () => {
    const result = valueOf(itemStatistics([[1, 1], [0, 0], [1, 1], [0, 0]])); // prettier-ignore
    expect(result.kr20).toBeCloseTo(1, 12);
    expect(result.item_rest).toEqual([1, 1]);
  });

  it('point-biserial is (M1 - M) / s sqrt(p / q)', () => {
    const rows = [[1, 1, 0], [1, 0, 0], [1, 1, 1], [0, 0, 1]]; // prettier-ignore
    const { totals, variance_population, point_biserial, p } = valueOf(itemStatistics(rows));
    const mean = totals.reduce((a, b) => a + b, 0) / 4;
    const right = (2 + 1 + 3) / 3;
    const share = p[0] ?? NaN;
    expect(point_biserial[0]).toBeCloseTo(
      ((right - mean) / Math.sqrt(variance_population)) * Math.sqrt(share / (1 - share)),
      12,
    );
  });

  it('all right has no correlation and no reliability; single item likewise', () => {
    const result = itemStatistics([[1, 1], [1, 1]]); // prettier-ignore
    expect(valueOf(result)).toMatchObject({
      kr20: null,
      point_biserial: [null, null],
      item_rest: [null, null],
    });
    expect(noteKeys(result)).toEqual([
      'quiz.note.few-people',
      'quiz.note.no-reliability',
      'quiz.note.no-correlation',
    ]);
    expect(valueOf(itemStatistics([[1], [0]])).kr20).toBeNull();
  });

  it('refuses nothing, ragged rows and other marks', () => {
    expect(faultPaths(itemStatistics([]))).toEqual(['responses']);
    expect(faultPaths(itemStatistics([[]]))).toEqual(['responses']);
    expect(faultPaths(itemStatistics([[1, 0], [1], [2, NaN]]))).toEqual([
      'responses[1]',
      'responses[2][0]',
      'responses[2][1]',
    ]);
  });
});
