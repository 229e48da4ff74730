/** Whole-body vibration, width of contact, motors on one pressure. */
import { describe, expect, it } from 'vitest';
import {
  ACTION_M_S2,
  contactWidth,
  fadeDepth,
  LIMIT_M_S2,
  lineLoadStress,
  sharedPressure,
  verticalWeight,
  wholeBody,
} from '../../src/core/mechanics';
import { expectWithin, faultPaths, valueOf } from '../mechanics/value-of';

describe('ISO 2631-1:1997, table 3, weighting Wk (from memory)', () => {
  it.each([
    [1, 0.482],
    [2, 0.531],
    [4, 0.967],
    [5, 1.039],
    [8, 1.036],
    [10, 0.988],
    [12.5, 0.902],
    [16, 0.768],
    [20, 0.636],
    [25, 0.513],
    [31.5, 0.405],
    [40, 0.314],
  ])('%d Hz', (frequency_Hz, weight) => {
    // the table is made at the exact third-octave frequencies, a hair beside their names
    expect(verticalWeight(frequency_Hz)).toBeCloseTo(weight, 2);
  });
});

describe('Directive 2002/44/EC, Art. 3 (whole body)', () => {
  it('action 0.5, limit 1.15 m/s2 over 8 hours', () => {
    expect([ACTION_M_S2, LIMIT_M_S2]).toEqual([0.5, 1.15]);
  });

  it('A(8): half the time, 0.7 of the exposure; words at the two values', () => {
    const at = (weighted: number, hours_a_day: number) =>
      valueOf(
        wholeBody({ peak_m_s2: (weighted * Math.SQRT2) / verticalWeight(30), frequency_Hz: 30, hours_a_day }),
      );
    expect(at(1, 4).A8_m_s2).toBeCloseTo(Math.SQRT1_2, 12);
    expect(at(0.49, 8).level).toBe('below-action');
    expect(at(0.51, 8).level).toBe('above-action');
    expect(at(1.16, 8).level).toBe('above-limit');
    expect(at(1.16, 4).level).toBe('above-action');
    expect(faultPaths(wholeBody({ peak_m_s2: 1, frequency_Hz: 0, hours_a_day: 25 }))).toEqual([
      'frequency_Hz',
      'hours_a_day',
    ]);
  });
});

describe('K. L. Johnson, Contact Mechanics, ch. 4 (line contact, from memory)', () => {
  it('half width sqrt(4 q R / (pi E*)); greatest pressure sqrt(q E* / (pi R)) is 4/pi of the mean', () => {
    const [q, R, E] = [31.8e3, 0.75, 30e6];
    const contact = valueOf(contactWidth({ load_N_m: q, drum_radius_m: R, soil_modulus_Pa: E, poisson: 0 }));
    expectWithin(contact.width_m, 2 * Math.sqrt((4 * q * R) / (Math.PI * E)), 1e-9);
    expectWithin((contact.mean_pressure_Pa * 4) / Math.PI, Math.sqrt((q * E) / (Math.PI * R)), 1e-6);
  });

  it('own: at the fade depth the line stress is the share of the soil weight', () => {
    const depth = fadeDepth(30e3, 1900, 0.2);
    expectWithin(lineLoadStress(30e3, 0, depth), 0.2 * 1900 * 9.80665 * depth, 1e-9);
  });
});

describe('motors on one pressure (worked example, common practice, no source)', () => {
  const example = { pressure_low_Pa: 4000, pressure_high_Pa: 5000, slip_low_Pa: 3500 };

  it('equal motors, 4,000 psi needed, drum breaks away at 3,500 in low, climbs at 5,000 with the drum in high', () => {
    const result = valueOf(sharedPressure(example));
    expect(result.displacement_ratio).toBeCloseTo(0.6, 12);
    expect(result.changed_share).toBeCloseTo(0.375, 12);
    expect(result.other_share).toBeCloseTo(0.625, 12);
    expect(result.slip_high_Pa).toBeCloseTo(3500 / 0.6, 9);
    expect(result).toMatchObject({ climbs_low: false, climbs_high: true });
  });

  it('the heard 30 / 70 would be a ratio of 3/7 and 5,600 psi', () => {
    const heard = valueOf(sharedPressure({ ...example, pressure_high_Pa: 5600 }));
    expect(heard.displacement_ratio).toBeCloseTo(3 / 7, 12);
    expect(heard.changed_share).toBeCloseTo(0.3, 12);
  });

  it('refuses pressures that no ratio explains', () => {
    expect(faultPaths(sharedPressure({ ...example, pressure_high_Pa: 8000 }))).toEqual(['pressure_high_Pa']);
  });
});
