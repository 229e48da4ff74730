import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hydraulicMotor, traction, type TractionInput } from '../../src/core/mechanics';
import { faultPaths, noteKeys, valueOf } from './value-of';

const SEED = { seed: 11, numRuns: 60 };

const roller: TractionInput = {
  drum: {
    displacement_low_m3_rev: 3.7e-3,
    displacement_high_m3_rev: 2.22e-3,
    gear_ratio: 1,
    radius_m: 0.75,
    load_N: 67.7e3,
    efficiency: 0.92,
    adhesion: 0.5,
  },
  axle: {
    displacement_low_m3_rev: 160e-6,
    displacement_high_m3_rev: 100e-6,
    gear_ratio: 24,
    radius_m: 0.73,
    load_N: 52e3,
    efficiency: 0.85,
    adhesion: 0.6,
  },
  drum_range: 'low',
  axle_range: 'low',
  grade_percent: 15,
  rolling_resistance_N_per_N: 0.05,
  relief_Pa: 40e6,
};

describe('traction', () => {
  it('pulls add up to what is needed and share as the drive says', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), (grade_percent) => {
        const result = valueOf(traction({ ...roller, grade_percent }));
        const sum = result.drum_pull_N + result.axle_pull_N;
        expect(sum / result.pull_needed_N).toBeCloseTo(1, 12);
        expect(result.drum_pull_N / sum).toBeCloseTo(result.drum_share, 12);
        expect(result.climbs).toBe(result.limit === 'none');
        expect(result.climbs).toBe(result.pull_needed_N <= result.pull_available_N * (1 + 1e-9));
      }),
      SEED,
    );
  });

  it('a steeper grade never climbs where a gentler one does not', () => {
    let climbed = true;
    for (let grade_percent = 0; grade_percent <= 100; grade_percent += 5) {
      const { climbs } = valueOf(traction({ ...roller, grade_percent }));
      expect(climbs && !climbed).toBe(false);
      climbed = climbs;
    }
    expect(climbed).toBe(false);
  });

  it('training drum: slips at 25.4 kN m of torque on level ground (adhesion 0.5)', () => {
    const level = valueOf(traction({ ...roller, grade_percent: 0, relief_Pa: 100e6 }));
    expect(level.slips_first).toBe('axle');
    const drumOnly = { ...roller, grade_percent: 0, axle: { ...roller.axle, adhesion: 5 }, relief_Pa: 100e6 };
    const slip = valueOf(traction(drumOnly));
    expect(slip.slips_first).toBe('drum');
    const torque_Nm = (slip.slip_pressure_Pa * 3.7e-3 * 0.92) / (2 * Math.PI);
    expect(torque_Nm).toBeCloseTo(25.39e3, -2);
  });

  it('no adhesion: slips at once; no resistance on level ground: needs nothing and climbs', () => {
    const ice = { ...roller, drum: { ...roller.drum, adhesion: 0 } };
    expect(valueOf(traction(ice))).toMatchObject({ slips_first: 'drum', slip_pressure_Pa: 0, limit: 'slip' });
    const idle = { ...roller, grade_percent: 0, rolling_resistance_N_per_N: 0 };
    expect(valueOf(traction(idle))).toMatchObject({ pull_needed_N: 0, climbs: true });
  });

  it('names the place of every fault, and notes swapped ranges', () => {
    const bad = {
      ...roller,
      drum: { ...roller.drum, radius_m: 0 },
      axle: { ...roller.axle, efficiency: 1.2 },
    };
    expect(faultPaths(traction({ ...bad, grade_percent: -5 }))).toEqual([
      'drum.radius_m',
      'axle.efficiency',
      'grade_percent',
    ]);
    const swapped = { ...roller, drum: { ...roller.drum, displacement_high_m3_rev: 5e-3 } };
    expect(noteKeys(traction(swapped))).toContain('mechanics.note.high-range-displaces-more');
  });
});

describe('hydraulic motor', () => {
  const motor = { displacement_m3_rev: 62e-6, pressure_Pa: 200e5 };

  it('flow to speed and back is a round trip, and power in times efficiency is power out', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 1e-2, noNaN: true }),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        (flow_m3_s, eta) => {
          const etas = { eta_volumetric: eta, eta_mechanical: 0.9 };
          const there = valueOf(hydraulicMotor({ ...motor, ...etas, flow_m3_s }));
          const back = valueOf(hydraulicMotor({ ...motor, ...etas, speed_rpm: there.speed_rpm ?? NaN }));
          expect((back.flow_m3_s ?? NaN) / flow_m3_s).toBeCloseTo(1, 12);
          expect((there.power_W ?? NaN) / (200e5 * flow_m3_s * there.eta_overall)).toBeCloseTo(1, 12);
        },
      ),
      SEED,
    );
  });

  it('without flow and speed there is no power', () => {
    expect(valueOf(hydraulicMotor(motor))).toMatchObject({ speed_rpm: null, power_W: null, flow_m3_s: null });
  });

  it('refuses measurements that cannot be, and an efficiency stated twice', () => {
    const both = { ...motor, flow_m3_s: 1e-3, speed_rpm: 2000 };
    expect(faultPaths(hydraulicMotor(both))).toEqual(['eta_volumetric']);
    expect(faultPaths(hydraulicMotor({ ...both, flow_m3_s: 0 }))).toEqual(['eta_volumetric']);
    expect(faultPaths(hydraulicMotor({ ...motor, pressure_Pa: 0, measured_torque_Nm: 0 }))).toEqual([
      'eta_mechanical',
    ]);
    const twice = { ...motor, flow_m3_s: 3e-3, speed_rpm: 2000, eta_volumetric: 0.9 };
    expect(faultPaths(hydraulicMotor(twice))).toEqual(['eta_volumetric']);
  });
});
