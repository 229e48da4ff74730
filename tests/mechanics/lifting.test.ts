import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liftLimit, sling, twoPointLift } from '../../src/core/mechanics';
import { faultPaths, noteKeys, valueOf } from './value-of';

const SEED = { seed: 309, numRuns: 60 };

describe('sling', () => {
  it('tension is least when the legs hang straight and rises as they spread', () => {
    const tension = (angle_from_horizontal_deg: number, legs = 2) =>
      valueOf(sling({ mass_kg: 1000, legs, angle_from_horizontal_deg })).leg_tension_N;
    fc.assert(
      fc.property(fc.double({ min: 30, max: 89.9, noNaN: true }), (angle) => {
        expect(tension(angle)).toBeGreaterThan(tension(90));
        expect(tension(angle)).toBeGreaterThan(tension(Math.min(90, angle + 0.1)));
        // vertical parts carry the load
        const vertical = 2 * tension(angle) * Math.sin((angle * Math.PI) / 180);
        expect(vertical).toBeCloseTo(9806.65, 6);
      }),
      SEED,
    );
  });

  it('counts 3 and 4 legs as 2', () => {
    for (const legs of [3, 4]) {
      const result = sling({ mass_kg: 900, legs, angle_from_horizontal_deg: 60 });
      expect(valueOf(result).leg_mass_kg).toBeCloseTo(450 / Math.sin(Math.PI / 3), 9);
      expect(noteKeys(result)).toEqual(['mechanics.note.two-legs-count']);
    }
  });

  it('is refused below 30 degrees, above 90, and for a single leg off the vertical', () => {
    for (const angle of [29.999, 0, -60, 90.1, NaN]) {
      expect(faultPaths(sling({ mass_kg: 1, legs: 2, angle_from_horizontal_deg: angle }))).toEqual([
        'angle_from_horizontal_deg',
      ]);
    }
    expect(faultPaths(sling({ mass_kg: 1, legs: 1, angle_from_horizontal_deg: 60 }))).toHaveLength(1);
    expect(faultPaths(sling({ mass_kg: 0, legs: 5, angle_from_horizontal_deg: 20 }))).toEqual([
      'mass_kg',
      'legs',
      'angle_from_horizontal_deg',
    ]);
  });
});

describe('two hooks', () => {
  it('carry the whole, in balance about the centre of mass', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const lift = valueOf(twoPointLift({ mass_kg: 700, distance_m: 3, cog_from_a_m: 3 * share }));
        expect(lift.a_kg + lift.b_kg).toBeCloseTo(700, 9);
        expect(lift.a_kg * 3 * share).toBeCloseTo(lift.b_kg * 3 * (1 - share), 6);
        expect(Math.min(lift.a_kg, lift.b_kg)).toBeGreaterThanOrEqual(0);
      }),
      SEED,
    );
  });

  it('refuse a centre of mass outside the hooks', () => {
    expect(faultPaths(twoPointLift({ mass_kg: 1, distance_m: 2, cog_from_a_m: 2.1 }))).toEqual([
      'cog_from_a_m',
    ]);
  });
});

describe('lifting by hand', () => {
  it('is 23 kg at best, and never more in a worse posture', () => {
    const limit = (posture: object) => valueOf(liftLimit({ mass_kg: 10, ...posture })).limit_kg;
    expect(limit({})).toBe(23);
    for (const worse of [{ horizontal_m: 0.5 }, { vertical_m: 0 }, { travel_m: 1 }, { twist_deg: 45 }]) {
      expect(limit(worse)).toBeLessThan(23);
    }
    expect(limit({ coupling: 'poor' })).toBeCloseTo(20.7, 9);
    expect(limit({ travel_m: 0, horizontal_m: 0.1 })).toBe(23);
  });

  it('asks for a hoist beyond it', () => {
    expect(valueOf(liftLimit({ mass_kg: 22 })).by_hand).toBe(true);
    expect(noteKeys(liftLimit({ mass_kg: 24 }))).toEqual(['mechanics.note.use-hoist']);
    expect(faultPaths(liftLimit({ mass_kg: 24, horizontal_m: 0.7 }))).toEqual(['horizontal_m']);
  });
});
