/** Packing fractions against published numbers; the exact ones against counting balls in a unit cell. */
import { describe, expect, it } from 'vitest';
import * as mechanics from '../../src/core/mechanics';

const ball = (r: number) => (4 / 3) * Math.PI * r ** 3;

describe('packing of balls', () => {
  it('close packing: "74.04 %" (general reference text), 0.740480', () => {
    expect(mechanics.PACKING_CLOSE).toBeCloseTo(0.74048, 6);
    // face-centred cube of side 1: four balls that touch along the face diagonal
    expect(mechanics.PACKING_CLOSE).toBeCloseTo(4 * ball(Math.SQRT2 / 4), 12);
  });
  it('body-centred 0.6802, simple cubic 0.5236', () => {
    expect(mechanics.PACKING_BODY_CENTRED).toBeCloseTo(0.6802, 4);
    expect(mechanics.PACKING_BODY_CENTRED).toBeCloseTo(2 * ball(Math.sqrt(3) / 4), 12);
    expect(mechanics.PACKING_SIMPLE_CUBIC).toBeCloseTo(0.5236, 4);
    expect(mechanics.PACKING_SIMPLE_CUBIC).toBeCloseTo(ball(0.5), 12);
  });
  it('random: Scott and Kilgour 1969 0.6366 +-0.0005; Scott 1960 0.60; Onoda and Liniger 1990 0.555', () => {
    expect(Math.abs(mechanics.PACKING_RANDOM_CLOSE - 0.6366)).toBeLessThanOrEqual(0.0005);
    expect(mechanics.PACKING_RANDOM_LOOSE).toBe(0.6);
    expect(mechanics.PACKING_RANDOM_LOOSEST).toBe(0.555);
  });
  it('shot is shown as a range from poured to close', () => {
    const [low, high] = mechanics.PACKING_SHOT_RANGE;
    expect(low).toBeGreaterThanOrEqual(mechanics.PACKING_RANDOM_LOOSE);
    expect(high).toBeLessThan(mechanics.PACKING_RANDOM_CLOSE + 0.005);
  });
});

describe('packing of discs', () => {
  it('hexagonal: "pi/2sqrt3 ~ 0.907" (Soft Matter 2023, D3SM01254A), 0.906900', () => {
    expect(mechanics.PACKING_DISCS_HEXAGONAL).toBeCloseTo(0.9069, 4);
  });
  it('random close lies below it', () => {
    const [low, high] = mechanics.PACKING_DISCS_RANDOM_CLOSE;
    expect([low, high]).toEqual([0.82, 0.84]);
    expect(high).toBeLessThan(mechanics.PACKING_DISCS_HEXAGONAL);
  });
});
