/** Published checks behind job sheets: ring fits, proof strengths, eyes and shackles, damage names. */
import { expect, it } from 'vitest';
import { DAMAGE_MODES, proofStrength_Pa, rigging, ringFit } from '../../src/core/mechanics';
import { valueOf } from '../mechanics/value-of';

it('ISO 286 P6 (180 to 250 mm: -41 / -70) with ISO 492 class Normal (0 / -30), from memory: 11 to 70 um tight', () => {
  const fit = valueOf(ringFit({ ring: 'outside', size_m: 0.215, seat: 'P6' }));
  expect([fit.seat_upper_m, fit.seat_lower_m]).toEqual([-41e-6, -70e-6]);
  expect([fit.ring_upper_m, fit.ring_lower_m]).toEqual([0, -30e-6]);
  expect(-fit.clearance_max_m).toBeCloseTo(11e-6, 12);
  expect(-fit.clearance_min_m).toBeCloseTo(70e-6, 12);
  expect(fit.character).toBe('interference');
});

it('ISO 286 f6 (80 to 120 mm: -36 / -58) with ISO 492 bore (0 / -20), from memory: 16 to 58 um loose', () => {
  const fit = valueOf(ringFit({ ring: 'bore', size_m: 0.1, seat: 'f6' }));
  expect(fit.clearance_min_m).toBeCloseTo(16e-6, 12);
  expect(fit.clearance_max_m).toBeCloseTo(58e-6, 12);
});

it.each([
  ['8.8', 0.016, 580e6],
  ['8.8', 0.02, 600e6],
  ['10.9', 0.024, 830e6],
  ['12.9', 0.012, 970e6],
])('ISO 898-1 (from memory): proof strength of %s at %d m', (propertyClass, diameter_m, proof_Pa) => {
  expect(proofStrength_Pa(propertyClass, diameter_m)).toBe(proof_Pa);
});

it.each([
  [5, 1],
  [15, 0.8],
  [30, 0.65],
  [45, 0.3],
  [90, 0.25],
])(
  'trade table of shouldered eye bolts (names no standard): %d degrees from the axis',
  (angle_deg, share) => {
    expect(valueOf(rigging({ angle_deg, rated_kg: 1000 })).eye_kg).toBeCloseTo(1000 * share, 9);
  },
);

it.each([
  [0, 1],
  [45, 0.7],
  [90, 0.5],
])('ASME B30.26 (from memory): shackle at %d degrees', (angle_deg, share) => {
  expect(valueOf(rigging({ angle_deg })).shackle_share).toBe(share);
});

it('ISO 15243:2017 (secondary listing): six classes and their modes', () => {
  const count = (name: string) => DAMAGE_MODES.filter((m) => m.class === name).length;
  expect(
    ['fatigue', 'wear', 'corrosion', 'electrical-erosion', 'plastic-deformation', 'fracture'].map(count),
  ).toEqual([2, 2, 3, 2, 3, 3]);
});
