/** Hydraulic motors and traction against published worked examples. */
import { describe, expect, it } from 'vitest';
import { hydraulicMotor, traction, type TractionInput } from '../../src/core/mechanics';
import { expectWithin, valueOf } from '../mechanics/value-of';

const INCH = 0.0254;
const IN3 = INCH ** 3;
const LBF = 4.4482216152605;
const PSI = LBF / INCH ** 2;
const GPM = (231 * IN3) / 60;
const HP = 550 * 12 * INCH * LBF;

describe('hydraulic motor', () => {
  it('Esposito, Fluid Power with Applications, Ex 7-1, p. 248: vane motor, 1000 lb in at 1000 psi', () => {
    const displacement_m3_rev = Math.PI * (1.5 ** 2 - 0.5 ** 2) * IN3;
    const motor = valueOf(hydraulicMotor({ displacement_m3_rev, pressure_Pa: 1000 * PSI }));
    expectWithin(motor.torque_Nm, 1000 * LBF * INCH, 0.01);
  });

  it('Esposito, Ex 7-2, p. 259: 462 rpm; 795 lb in; 5.83 hp (book truncates)', () => {
    const motor = valueOf(
      hydraulicMotor({ displacement_m3_rev: 5 * IN3, pressure_Pa: 1000 * PSI, flow_m3_s: 10 * GPM }),
    );
    expectWithin(motor.speed_rpm, 462, 0.01);
    expectWithin(motor.torque_Nm, 795.8 * LBF * INCH, 0.02);
    expectWithin(motor.power_W, 5.83 * HP, 0.2);
  });

  it('Esposito, Ex 7-3, p. 262: efficiencies from a measurement', () => {
    const motor = valueOf(
      hydraulicMotor({
        displacement_m3_rev: 10 * IN3,
        pressure_Pa: 1000 * PSI,
        speed_rpm: 2000,
        flow_m3_s: 95 * GPM,
        measured_torque_Nm: 1500 * LBF * INCH,
      }),
    );
    expectWithin(motor.eta_volumetric, 0.911, 0.1);
    expectWithin(motor.eta_mechanical, 0.9425, 0.1);
    expectWithin(motor.eta_overall, 0.858, 0.2);
    expectWithin(motor.power_W, 47.6 * HP, 0.1);
  });

  it('Esposito, Ex 7-5, p. 267: 82 cm3, 70 bar, 0.0006 m3/s', () => {
    const motor = valueOf(
      hydraulicMotor({ displacement_m3_rev: 82e-6, pressure_Pa: 70e5, flow_m3_s: 0.0006 }),
    );
    expectWithin(motor.speed_rpm, 439, 0.05);
    expectWithin(motor.torque_Nm, 91.4, 0.1);
    expectWithin(motor.power_W, 4200, 0.1);
  });

  it('Sullivan, Fluid Power Theory & Applications, 4th ed., Ex 9.2 p. 194 and Ex 9.1 (prints 160 with 0.16 for 1 / 2 pi)', () => {
    const first = hydraulicMotor({ displacement_m3_rev: 2 * IN3, pressure_Pa: 0, flow_m3_s: 7.5 * GPM });
    expectWithin(valueOf(first).speed_rpm, 866.25, 0.01);
    const second = hydraulicMotor({ displacement_m3_rev: 0.5 * IN3, pressure_Pa: 2000 * PSI });
    expectWithin(valueOf(second).torque_Nm, 159.15 * LBF * INCH, 0.01);
  });

  it('own: 100 cm3 at 300 bar gives 477.5 N m', () => {
    expectWithin(
      valueOf(hydraulicMotor({ displacement_m3_rev: 100e-6, pressure_Pa: 300e5 })).torque_Nm,
      477.5,
      0.01,
    );
  });
});

describe('traction', () => {
  const end = { gear_ratio: 20, radius_m: 0.75, efficiency: 1 };
  /** Equal motors whose small displacement is 0.6 of the large one. */
  const motors = { displacement_low_m3_rev: 1e-3, displacement_high_m3_rev: 0.6e-3 };
  const pullPerPressure = (displacement: number) => (displacement * 20) / (2 * Math.PI * 0.75);

  /** Loads and adhesion chosen so that the grade needs 4,000 psi and the drum breaks away at 3,500 psi in low. */
  const climb = (drum_range: 'low' | 'high'): TractionInput => {
    const grade_percent = 25;
    const slope = Math.atan(0.25);
    const pull_N = 4000 * PSI * 2 * pullPerPressure(1e-3);
    const weight_N = pull_N / Math.sin(slope);
    const drumLoad_N = 0.55 * weight_N;
    const drumSlip_N = 3500 * PSI * pullPerPressure(1e-3);
    return {
      drum: { ...end, ...motors, load_N: drumLoad_N, adhesion: drumSlip_N / (drumLoad_N * Math.cos(slope)) },
      axle: { ...end, ...motors, load_N: weight_N - drumLoad_N, adhesion: 0.8 },
      drum_range,
      axle_range: 'low',
      grade_percent,
      rolling_resistance_N_per_N: 0,
      relief_Pa: 5500 * PSI,
    };
  };

  it('worked example: both in low, the drum spins at 3,500 psi before the 4,000 that the grade needs', () => {
    const low = valueOf(traction(climb('low')));
    expectWithin(low.pressure_needed_Pa, 4000 * PSI, 1e-6);
    expectWithin(low.slip_pressure_Pa, 3500 * PSI, 1e-6);
    expect(low).toMatchObject({ slips_first: 'drum', climbs: false, limit: 'slip' });
    expectWithin(low.drum_share, 0.5, 1e-9);
  });

  it('worked example: drum in high (displacement ratio 0.6) climbs at 5,000 psi, shares 37.5 / 62.5 %', () => {
    const high = valueOf(traction(climb('high')));
    expectWithin(high.pressure_needed_Pa, 5000 * PSI, 1e-6);
    expectWithin(high.drum_share, 0.375, 1e-9);
    expectWithin(high.axle_pull_N / high.pull_needed_N, 0.625, 1e-9);
    expectWithin(high.slip_pressure_Pa, (3500 / 0.6) * PSI, 1e-6);
    expect(high).toMatchObject({ slips_first: 'none', climbs: true, limit: 'none' });
  });

  it('worked example with the relief valve at 4,800 psi: held by the relief', () => {
    const held = valueOf(traction({ ...climb('high'), relief_Pa: 4800 * PSI }));
    expect(held).toMatchObject({ slips_first: 'none', climbs: false, limit: 'relief' });
  });

  it('own: 12 t, adhesion 0.45 on all wheels: at most 52.96 kN; 10 % and 50 kg/t need 17.65 kN (handbook, small slope)', () => {
    const share = { ...end, ...motors, load_N: 6000 * 9.80665, adhesion: 0.45 };
    const input: TractionInput = {
      drum: share,
      axle: share,
      drum_range: 'low',
      axle_range: 'low',
      grade_percent: 0,
      rolling_resistance_N_per_N: 0.05,
      relief_Pa: 1e9,
    };
    expectWithin(valueOf(traction(input)).pull_available_N, 52.96e3, 0.05);
    expectWithin(valueOf(traction({ ...input, grade_percent: 10 })).pull_needed_N, 17.65e3, 0.5);
  });

  it('grade: 1 % is 10 kg/t (S. W. Nunnally, Eq 4-4, as quoted); 20 % is 0.1961 exactly', () => {
    const share = { ...end, ...motors, load_N: 500, adhesion: 0.45 };
    const need = (grade_percent: number) =>
      valueOf(
        traction({
          drum: share,
          axle: share,
          drum_range: 'low',
          axle_range: 'low',
          grade_percent,
          rolling_resistance_N_per_N: 0,
          relief_Pa: 1e9,
        }),
      ).pull_needed_N / 1000;
    expectWithin(need(1), 0.01, 0.1);
    expect(need(20)).toBeCloseTo(0.1961, 4);
  });
});
