import fc from 'fast-check';
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
import { faultPaths, noteKeys, valueOf } from './value-of';

const SEED = { seed: 30, numRuns: 60 };
const roller = {
  drum_mass_kg: 4000,
  frame_mass_kg: 2500,
  unbalance_kgm: 5,
  frequency_Hz: 30,
  mount_stiffness_N_m: 4e6,
  mount_damping_Ns_m: 8e3,
  soil_stiffness_N_m: 20e6,
  soil_damping_Ns_m: 1e5,
};

describe('roller on soil', () => {
  it('the answer solves both equations of motion', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e8, noNaN: true }),
        fc.double({ min: 5, max: 60, noNaN: true }),
        (soil_stiffness_N_m, frequency_Hz) => {
          const response = valueOf(rollerResponse({ ...roller, soil_stiffness_N_m, frequency_Hz }));
          const w = 2 * Math.PI * frequency_Hz;
          const swing = (amplitude: number | null, phase_deg: number | null, t: number) => {
            const at = w * t + ((phase_deg ?? NaN) * Math.PI) / 180;
            const A = amplitude ?? NaN;
            return [A * Math.cos(at), -A * w * Math.sin(at), -A * w * w * Math.cos(at)] as const;
          };
          for (const t of [0, 0.004, 0.013]) {
            const [z, zv, za] = swing(response.drum_amplitude_m, response.drum_phase_deg, t);
            const [f, fv, fa] = swing(response.frame_amplitude_m, response.frame_phase_deg, t);
            const mount = 4e6 * (z - f) + 8e3 * (zv - fv);
            const drum = 4000 * za + mount + soil_stiffness_N_m * z + 1e5 * zv;
            expect(Math.abs(drum - response.force_N * Math.cos(w * t)) / response.force_N).toBeLessThan(1e-9);
            expect(Math.abs(2500 * fa - mount) / response.force_N).toBeLessThan(1e-9);
          }
        },
      ),
      SEED,
    );
  });

  it('amplitude and soil force are in proportion to the unbalance', () => {
    const one = valueOf(rollerResponse(roller));
    const two = valueOf(rollerResponse({ ...roller, unbalance_kgm: 10 }));
    expect((two.drum_amplitude_m ?? NaN) / (one.drum_amplitude_m ?? NaN)).toBeCloseTo(2, 12);
    expect([one.contact, two.contact]).toEqual(['kept', 'lost']);
    expect(noteKeys(rollerResponse({ ...roller, unbalance_kgm: 10 }))).toEqual([
      'mechanics.note.contact-lost',
    ]);
  });

  it('undamped resonance of a hung drum gives null, never infinity', () => {
    const w = 2 * Math.PI * 30;
    // with a mount too soft to matter the drum resonates where soil stiffness = m w^2
    const result = rollerResponse({
      ...roller,
      mount_stiffness_N_m: 0,
      mount_damping_Ns_m: 0,
      soil_damping_Ns_m: 0,
      soil_stiffness_N_m: 4000 * w * w,
    });
    expect(valueOf(result)).toMatchObject({
      drum_amplitude_m: null,
      soil_force_amplitude_N: null,
      contact: null,
    });
    expect(noteKeys(result)).toEqual(['mechanics.note.undamped-resonance']);
  });

  it('lists every fault', () => {
    expect(faultPaths(rollerResponse({ ...roller, drum_mass_kg: 0, soil_damping_Ns_m: -1 }))).toEqual([
      'drum_mass_kg',
      'soil_damping_Ns_m',
    ]);
  });
});

describe('soil stress', () => {
  it('carries the whole load: the stress at a depth adds up to it', () => {
    const step = 0.01;
    let line = 0;
    let strip = 0;
    let point = 0;
    for (let x = -60; x < 60; x += step) {
      line += lineLoadStress(30e3, x, 0.5) * step;
      strip += stripLoadStress(1e4, 2, x, 0.5) * step;
    }
    for (let r = step / 2; r < 60; r += step) point += pointLoadStress(5e3, r, 0.5) * 2 * Math.PI * r * step;
    expect(line / 30e3).toBeCloseTo(1, 3);
    expect(strip / 2e4).toBeCloseTo(1, 3);
    expect(point / 5e3).toBeCloseTo(1, 3);
  });

  it('fades with depth below the load; a narrow strip is a line', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 20, noNaN: true }), (z) => {
        expect(lineLoadStress(1, 0, 1.1 * z)).toBeLessThan(lineLoadStress(1, 0, z));
        expect(stripLoadStress(1e4, 1e-4, z / 3, z) / lineLoadStress(1, z / 3, z)).toBeCloseTo(1, 3);
      }),
      SEED,
    );
  });

  it('refuses the surface itself and notes an idle y', () => {
    expect(faultPaths(soilStress({ kind: 'line', load_N_m: 1, x_m: 0, z_m: 0 }))).toEqual(['z_m']);
    expect(
      noteKeys(soilStress({ kind: 'strip', pressure_Pa: 1, width_m: 1, x_m: 0, y_m: 2, z_m: 1 })),
    ).toEqual(['mechanics.note.y-has-no-say']);
  });
});

describe('impact spacing', () => {
  it('at standstill blows a metre do not exist', () => {
    expect(valueOf(impactSpacing({ frequency_Hz: 30, speed_m_s: 0 }))).toMatchObject({
      spacing_m: 0,
      per_metre: null,
      per_foot: null,
    });
    expect(faultPaths(impactSpacing({ frequency_Hz: 0, speed_m_s: -1 }))).toEqual([
      'frequency_Hz',
      'speed_m_s',
    ]);
  });
});

describe('rolling time', () => {
  const plain = { length_m: 100, drum_width_m: 2, passes: 4, speed_m_s: 1 };

  it('one lane: passes x length / speed', () => {
    expect(valueOf(rollingTime(plain))).toMatchObject({
      lanes: 1,
      distance_m: 400,
      time_s: 400,
      area_m2_h: 1800,
    });
  });

  it('counts whole lanes and adds stops and waiting', () => {
    expect(valueOf(rollingTime({ ...plain, width_m: 6 })).lanes).toBe(3);
    expect(valueOf(rollingTime({ ...plain, width_m: 6.01 })).lanes).toBe(4);
    expect(valueOf(rollingTime({ ...plain, width_m: 5.6, overlap_m: 0.2 })).lanes).toBe(3);
    expect(valueOf(rollingTime({ ...plain, reverse_s: 5, efficiency: 0.5 })).time_s).toBe(840);
    expect(faultPaths(rollingTime({ ...plain, overlap_m: 2, passes: 1.5 }))).toEqual(['passes', 'overlap_m']);
  });
});
