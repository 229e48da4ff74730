/**
 * Certainty-based marking: A. R. Gardner-Medwin, Association for Learning Technology Journal 3 (1995) 80 (values from
 * memory); Leitner boxes: S. Leitner, So lernt man lernen (1972; from memory).
 */
import { describe, expect, it } from 'vitest';
import {
  bestCertainty,
  BOX_GAPS_days,
  CERTAINTIES,
  certaintyMark,
  expectedMark,
  reviewed,
} from '../../src/core/quiz';

describe('Gardner-Medwin 1995', () => {
  it('gives 1, 2, 3 when right and 0, -2, -6 when wrong', () => {
    expect(CERTAINTIES.map((c) => certaintyMark(true, c))).toEqual([1, 2, 3]);
    expect(CERTAINTIES.map((c) => certaintyMark(false, c))).toEqual([0, -2, -6]);
  });

  it('pays best to say sure above 80 %, fairly sure from 67 %, guess below', () => {
    expect([0.2, 0.5, 0.66, 0.68, 0.79, 0.81, 1].map(bestCertainty)).toEqual([1, 1, 1, 2, 2, 3, 3]);
    // The thresholds are where two of the lines cross: 2/3 and 4/5.
    expect(expectedMark(2 / 3, 1)).toBeCloseTo(expectedMark(2 / 3, 2), 12);
    expect(expectedMark(4 / 5, 2)).toBeCloseTo(expectedMark(4 / 5, 3), 12);
  });
});

describe('Leitner 1972', () => {
  it('moves one box up when right and back to the first when wrong, with growing gaps', () => {
    let card = reviewed('x', undefined, true, 3, 100);
    expect([card.box, card.due]).toEqual([1, 101]);
    for (let box = 2; box <= BOX_GAPS_days.length; box++) {
      card = reviewed('x', card, true, 3, card.due);
      expect(card.box).toBe(box);
    }
    card = reviewed('x', card, false, 2, 300);
    expect([card.box, card.due]).toEqual([1, 301]);
    for (let i = 1; i < BOX_GAPS_days.length; i++)
      expect(BOX_GAPS_days[i]).toBeGreaterThan(BOX_GAPS_days[i - 1]!);
  });
});
