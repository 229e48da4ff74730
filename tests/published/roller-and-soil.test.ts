/** Roller on soil (own set; no full published set exists), soil stress, impact spacing. */
import { describe, expect, it } from 'vitest';
import {
  impactSpacing,
  lineLoadStress,
  pointLoadStress,
  rollerResponse,
  rollingTime,
  soilStress,
  stripLoadStress,
} from '../../src/core/mechanics';
import { expectWithin, valueOf } from '../mechanics/value-of';

describe('two-mass roller (model: Yoo & Selig 1979, from memory; own set)', () => {
  const roller = {
    drum_mass_kg: 4000,
    frame_mass_kg: 2500,
    unbalance_kgm: 5,
    frequency_Hz: 30,
    mount_stiffness_N_m: 4e6,
    mount_damping_Ns_m: 8e3,
  };
  it.each([
    [0, 0, 1.2876, -179.31, 0.0649, 0, null],
    [20, 100e3, 1.4838, -170.14, 0.0748, 40.78, 'kept'],
    [40, 100e3, 1.775, -168.18, 0.0894, 78.49, 'lost'],
    [80, 100e3, 2.8895, -160.52, 0.1456, 237.5, 'lost'],
  ] as const)('soil %d MN/m', (ks, soil_damping_Ns_m, drum_mm, phase, frame_mm, soil_kN, contact) => {
    const response = valueOf(rollerResponse({ ...roller, soil_stiffness_N_m: ks * 1e6, soil_damping_Ns_m }));
    expectWithin(response.drum_amplitude_m, drum_mm / 1e3, 0.2);
    expect(response.drum_phase_deg).toBeCloseTo(phase, 1);
    expectWithin(response.frame_amplitude_m, frame_mm / 1e3, 0.2);
    expectWithin(response.soil_force_amplitude_N, soil_kN * 1e3, 0.2);
    expect(response.contact).toBe(contact);
    expectWithin(response.static_load_N, 63.77e3, 0.1);
    expectWithin(response.force_N, 177.65e3, 0.01);
  });

  it('soil and mounts gone: nominal amplitude 1.250 mm', () => {
    const free = {
      mount_stiffness_N_m: 0,
      mount_damping_Ns_m: 0,
      soil_stiffness_N_m: 0,
      soil_damping_Ns_m: 0,
    };
    const response = valueOf(rollerResponse({ ...roller, ...free }));
    expectWithin(response.drum_amplitude_m, 0.00125, 0.2);
    expect(response.nominal_amplitude_m).toBe(0.00125);
  });
});

describe('soil stress (B. M. Das, Principles of Geotechnical Engineering, ch. 10)', () => {
  it('Ex 10.3, p. 262: point load 5 kN at x 3, y 4, z 2 m', () => {
    const input = { kind: 'point', force_N: 5000, x_m: 3, y_m: 4, z_m: 2 } as const;
    expect(valueOf(soilStress(input)).sigma_z_Pa / 1000).toBeCloseTo(0.0042, 4);
  });

  it('Ex 10.6, p. 270: strip 6 m at 3 m depth (geometry inferred from the numbers)', () => {
    expect(stripLoadStress(1, 6, 0, 3)).toBeCloseTo(0.818, 3);
    expect(stripLoadStress(1, 6, 3, 3)).toBeCloseTo(0.48, 3);
  });

  it('two line loads (from memory): 12.12 + 3.03 lb/ft2', () => {
    expect(lineLoadStress(500, 5, 4)).toBeCloseTo(12.12, 2);
    expect(lineLoadStress(1000, 10, 4)).toBeCloseTo(3.03, 2);
  });

  it('own: line 30 kN/m and strip 2 m, by depth', () => {
    [
      [0.15, 127.3],
      [0.3, 63.7],
      [0.6, 31.8],
      [1, 19.1],
    ].forEach(([z = 1, kPa = NaN]) => expectWithin(lineLoadStress(30e3, 0, z), kPa * 1e3, 0.2));
    [
      [1, 0.818],
      [2, 0.55],
      [4, 0.306],
    ].forEach(([z = 1, share = NaN]) => expect(stripLoadStress(1, 2, 0, z)).toBeCloseTo(share, 3));
    expectWithin(pointLoadStress(1, 0, 1), 3 / (2 * Math.PI), 1e-9);
  });
});

describe('impact spacing', () => {
  it.each([
    [30, 3, 27.8, 36.0, 11.0],
    [30, 4, 37.0, 27.0, 8.2],
    [30, 5, 46.3, 21.6, 6.6],
    [28, 3, 29.8, 33.6, 10.2],
  ])('own: %d Hz at %d km/h', (frequency_Hz, km_h, mm, per_metre, per_foot) => {
    const spacing = valueOf(impactSpacing({ frequency_Hz, speed_m_s: km_h / 3.6 }));
    expectWithin(spacing.spacing_m, mm / 1e3, 0.5);
    expectWithin(spacing.per_metre, per_metre, 0.5);
    expectWithin(spacing.per_foot, per_foot, 0.6);
  });

  it('Scherocman, Roads & Bridges 2000: 2400 a minute at 2.5 mph and 3600 at 4 mph are 10.9 and 10.2 a foot', () => {
    const mph = 0.44704;
    expectWithin(valueOf(impactSpacing({ frequency_Hz: 40, speed_m_s: 2.5 * mph })).per_foot, 10.9, 0.5);
    expectWithin(valueOf(impactSpacing({ frequency_Hz: 60, speed_m_s: 4 * mph })).per_foot, 10.2, 0.5);
  });
});

it('production: 16.3 W S L E / P cubic yards an hour (S. W. Nunnally, from memory)', () => {
  const [feet, mph, inches, passes] = [7, 3, 8, 5];
  const result = valueOf(
    rollingTime({
      length_m: 100,
      drum_width_m: feet * 0.3048,
      passes,
      speed_m_s: mph * 0.44704,
      efficiency: 0.75,
      lift_m: inches * 0.0254,
    }),
  );
  expectWithin((result.volume_m3_h ?? NaN) / 0.9144 ** 3, (16.3 * feet * mph * inches * 0.75) / passes, 0.1);
});
