/** Ring fits, tight ring, rigging, how a load hangs, scrapers, isolator sets, amplitude check: properties and refusals. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amplitudeCheck,
  DAMAGE_MODES,
  hang,
  interferenceFit,
  isoFit,
  proofStrength_Pa,
  rigging,
  ringFit,
  scraperGap,
  setMatch,
  starSequence,
  tightRing,
} from '../../src/core/mechanics';
import { faultPaths, noteKeys, valueOf } from './value-of';

const SEED = { seed: 515, numRuns: 50 };

describe('tight ring', () => {
  it('an ordinary shaft: load still, shaft turns, inner ring tight', () => {
    expect(valueOf(tightRing({ shaft_rpm: 1500, housing_rpm: 0, load_rpm: 0 })).tight).toBe('inner');
  });
  it('a turning hub on a standing spindle: outer ring tight', () => {
    expect(valueOf(tightRing({ shaft_rpm: 0, housing_rpm: 40, load_rpm: 0 })).tight).toBe('outer');
  });
  it('an exciter: the load turns with the shaft, outer ring tight', () => {
    expect(valueOf(tightRing({ shaft_rpm: 1800, housing_rpm: 0, load_rpm: 1800 })).tight).toBe('outer');
  });
  it('knows only who turns against the load: the frame of reference does not matter', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -50, max: 50 }),
        fc.integer({ min: -50, max: 50 }),
        fc.integer({ min: -50, max: 50 }),
        fc.integer({ min: -9, max: 9 }),
        (s, h, l, w) => {
          const still = valueOf(tightRing({ shaft_rpm: s, housing_rpm: h, load_rpm: l }));
          const turned = valueOf(tightRing({ shaft_rpm: s + w, housing_rpm: h + w, load_rpm: l + w }));
          expect(turned.tight).toBe(still.tight);
        },
      ),
      SEED,
    );
  });
});

describe('ring fit', () => {
  it('agrees with an ISO fit that has the ring’s limits moved', () => {
    // ring outside 0 / -30 um against an h shaft 0 / -29 (h6 at 215): one micrometre apart at the loose end
    const ring = valueOf(ringFit({ ring: 'outside', size_m: 0.215, seat: 'H7' }));
    const shaft = valueOf(isoFit({ size_m: 0.215, hole: 'H7', shaft: 'h6' }));
    expect(ring.clearance_min_m).toBe(shaft.clearance_min_m);
    expect(ring.clearance_max_m - shaft.clearance_max_m).toBeCloseTo(1e-6, 12);
  });
  it('refuses classes and sizes outside the tables', () => {
    expect(faultPaths(ringFit({ ring: 'bore', size_m: 0.1, seat: 'P6' }))).toEqual(['seat']);
    expect(faultPaths(ringFit({ ring: 'bore', size_m: 2, seat: 'g6' }))).toEqual(['size_m', 'seat']);
  });
});

describe('rigging', () => {
  it('never carries more the further the pull leaves the line', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 90, noNaN: true }),
        (a, b) => {
          const [near, far] = [
            valueOf(rigging({ angle_deg: Math.min(a, b) })),
            valueOf(rigging({ angle_deg: Math.max(a, b) })),
          ];
          expect(far.eye_share).toBeLessThanOrEqual(near.eye_share);
          expect(far.shackle_share).toBeLessThanOrEqual(near.shackle_share);
        },
      ),
      SEED,
    );
  });
  it('refuses a pull from behind', () => {
    expect(faultPaths(rigging({ angle_deg: 120 }))).toEqual(['angle_deg']);
  });
});

describe('hang', () => {
  it('hangs level over its centre, tilts with the offset, turns over from below', () => {
    expect(valueOf(hang({ offset_m: 0, height_m: 0.5 })).tilt_deg).toBe(0);
    expect(valueOf(hang({ offset_m: 0.5, height_m: 0.5 })).tilt_deg).toBeCloseTo(45, 9);
    const below = hang({ offset_m: 0.1, height_m: -0.2 });
    expect(valueOf(below).stable).toBe(false);
    expect(noteKeys(below)).toContain('mechanics.note.turns-over');
  });
});

describe('scraper gap', () => {
  const length = fc.double({ min: 0, max: 0.05, noNaN: true });
  it('after the moves it asks for every gap is the wanted one and even', () => {
    fc.assert(
      fc.property(length, length, length, length, (fl, fr, rl, rr) => {
        const input = { target_m: 0.02, tolerance_m: 0.003, travel_m: 0.02 };
        const gaps_m = { front_left: fl, front_right: fr, rear_left: rl, rear_right: rr };
        const { front, rear } = valueOf(scraperGap({ ...input, gaps_m }));
        const after = valueOf(
          scraperGap({
            ...input,
            gaps_m: {
              front_left: Math.max(0, fl - front.move_left_m),
              front_right: Math.max(0, fr - front.move_right_m),
              rear_left: Math.max(0, rl - rear.move_left_m),
              rear_right: Math.max(0, rr - rear.move_right_m),
            },
          }),
        );
        expect(after.front.even && after.front.within && after.rear.even && after.rear.within).toBe(true);
      }),
      SEED,
    );
  });
  it('each bar cleans in its own travel, and wear beyond the slots is worn out', () => {
    const same = (v: number) => ({ front_left: v, front_right: v, rear_left: v, rear_right: v });
    const found = valueOf(
      scraperGap({
        gaps_m: same(0.02),
        target_m: 0.02,
        tolerance_m: 0.003,
        travel_m: 0.02,
        depths_m: { ...same(0.06), rear_right: 0.045 },
        new_depth_m: 0.07,
      }),
    );
    expect([found.front.works_in, found.rear.works_in]).toEqual(['reverse', 'forward']);
    expect([found.front.worn_out, found.rear.worn_out]).toEqual([false, true]);
    expect(found.rear.wear_right_m).toBeCloseTo(0.025, 12);
  });
});

describe('isolator set', () => {
  it('alike ones share alike; the stiffest never carries less than the mean', () => {
    expect(
      valueOf(setMatch({ hardness_IRHD: [60, 60, 60], d_m: 0.116, t_m: 0.055 })).stiffest_over_mean,
    ).toBeCloseTo(1, 12);
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 30, max: 75 }), { minLength: 2, maxLength: 8 }),
        (hardness_IRHD) => {
          const found = valueOf(setMatch({ hardness_IRHD, d_m: 0.15, t_m: 0.066 }));
          expect(found.stiffest_over_mean).toBeGreaterThanOrEqual(1 - 1e-12);
          expect(found.matched).toBe(found.spread_IRHD <= 5);
        },
      ),
      SEED,
    );
  });
  it('refuses one alone and hardness outside the table', () => {
    expect(faultPaths(setMatch({ hardness_IRHD: [80], d_m: 0.1, t_m: 0.05 }))).toEqual([
      'hardness_IRHD[0]',
      'hardness_IRHD',
    ]);
  });
});

describe('amplitude check', () => {
  const base = { expected_amplitude_m: 0.0018, expected_vibrations_per_minute: 1800 };
  it('passes the expected, and says which way the rest is off', () => {
    expect(
      valueOf(amplitudeCheck({ ...base, amplitude_m: 0.0018, vibrations_per_minute: 1800 })).passed,
    ).toBe(true);
    const off = valueOf(amplitudeCheck({ ...base, amplitude_m: 0.0015, vibrations_per_minute: 1900 }));
    expect([off.amplitude, off.rate, off.passed]).toEqual(['low', 'high', false]);
  });
  it('a band of the expected value widens what passes', () => {
    const input = { ...base, amplitude_m: 0.0015, vibrations_per_minute: 1800 };
    expect(valueOf(amplitudeCheck(input)).passed).toBe(false);
    expect(valueOf(amplitudeCheck({ ...input, band_m: 0.0002 })).passed).toBe(true);
  });
});

it('press force grows with the interference', () => {
  const force = (interference_diametral_m: number) =>
    valueOf(
      interferenceFit({
        inner_bore_m: 0.186,
        fit_diameter_m: 0.215,
        outer_diameter_m: 0.244,
        E_inner_Pa: 208e9,
        E_outer_Pa: 170e9,
        nu_inner: 0.3,
        nu_outer: 0.28,
        interference_diametral_m,
        length_m: 0.073,
        friction: 0.12,
      }),
    ).press_force_N ?? 0;
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e-4, noNaN: true }),
      fc.double({ min: 1e-7, max: 1e-4, noNaN: true }),
      (d, more) => {
        expect(force(d + more)).toBeGreaterThan(force(d));
      },
    ),
    SEED,
  );
});

it('a star sequence of any ring visits each bolt once; opposite ones follow each other in even rings', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 48 }), (count) => {
      const { order } = valueOf(starSequence({ count }));
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i + 1));
      if (count % 2 === 0)
        for (let i = 0; i < count; i += 2) expect(Math.abs(order[i]! - order[i + 1]!)).toBe(count / 2);
    }),
    SEED,
  );
});

it('names of damage are there once each, and a class that ISO 898 lacks has no proof strength', () => {
  expect(new Set(DAMAGE_MODES.map((m) => m.id)).size).toBe(DAMAGE_MODES.length);
  expect(new Set(DAMAGE_MODES.map((m) => m.class)).size).toBe(6);
  expect(proofStrength_Pa('4.6', 0.02)).toBeNull();
});
