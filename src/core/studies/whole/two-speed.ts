/**
 * Study: two-speed traction. Drum and axle motors in parallel share the pressure; the four combinations of their
 * ranges on a slope, which end breaks loose first and at what pressure, where relief sits, and the flows at a speed.
 */
import { message, STANDARD_GRAVITY, type Message } from '../../kernel';
import type { Drive, DriveEnd, Machine } from '../../machine';
import {
  sharedPressure,
  traction,
  type DrivenEnd,
  type DriveRange,
  type SharedPressure,
  type Traction,
} from '../../mechanics';

export interface TwoSpeedChoice {
  readonly grade_percent: number;
  readonly drum_adhesion: number;
  readonly axle_adhesion: number;
  readonly rolling_resistance_N_per_N: number;
  readonly relief_Pa: number;
  readonly speed_m_s: number;
}

export interface Combination {
  readonly drum_range: DriveRange;
  readonly axle_range: DriveRange;
  readonly traction: Traction;
  /** Pressure at which each end would break loose by itself. */
  readonly drum_slip_Pa: number;
  readonly axle_slip_Pa: number;
  /** Flows that the wanted speed asks for; what the pump gives bounds the speed. */
  readonly drum_flow_m3_s: number;
  readonly axle_flow_m3_s: number;
  readonly top_speed_m_s: number;
  /** Speed that is driven: the wanted one or the top speed; 0 where it does not climb. */
  readonly speed_m_s: number;
}

export interface TwoSpeedStudy {
  readonly drum: DrivenEnd;
  readonly axle: DrivenEnd;
  readonly charge_Pa: number;
  readonly pump_flow_m3_s: number;
  readonly combinations: readonly Combination[];
  readonly assumptions: readonly Message[];
  readonly limits: readonly Message[];
}

const RANGES: readonly DriveRange[] = ['low', 'high'];

/** The study; null where the machine file holds no travel drive, or for values that the formulas refuse. */
export function twoSpeedStudy(machine: Machine, choice: TwoSpeedChoice): TwoSpeedStudy | null {
  const { drive, operation } = machine;
  if (drive === undefined) return null;
  const drumLoad_N = operation.drum_axle_mass_kg * STANDARD_GRAVITY;
  const axleLoad_N = (operation.operating_mass_kg - operation.drum_axle_mass_kg) * STANDARD_GRAVITY;
  const drum = drivenEnd(drive.drum, drumLoad_N, choice.drum_adhesion);
  const axle = drivenEnd(drive.axle, axleLoad_N, choice.axle_adhesion);
  const combinations: Combination[] = [];
  for (const drum_range of RANGES)
    for (const axle_range of RANGES) {
      const one = combination(drive, drum, axle, drum_range, axle_range, choice);
      if (one === null) return null;
      combinations.push(one);
    }
  return {
    drum,
    axle,
    charge_Pa: drive.charge_Pa,
    pump_flow_m3_s: drive.pump_flow_m3_s,
    combinations,
    assumptions: ['shared-pressure', 'training-drive', 'adhesion-table', 'true-grade', 'pressure-across'].map(
      (word) => message(`study.two-speed.assume.${word}`),
    ),
    limits: ['no-load-transfer', 'steady', 'speed-from-pump', 'set-your-own-adhesion'].map((word) =>
      message(`study.two-speed.limit.${word}`),
    ),
  };
}

const drivenEnd = (end: DriveEnd, load_N: number, adhesion: number): DrivenEnd => ({
  displacement_low_m3_rev: end.displacement_low_m3_rev,
  displacement_high_m3_rev: end.displacement_high_m3_rev,
  gear_ratio: end.gear_ratio,
  radius_m: end.rolling_radius_m,
  load_N,
  efficiency: end.efficiency,
  adhesion,
});

/** Volume that an end swallows per metre of travel. */
function volumePerMetre(end: DrivenEnd, range: DriveRange, volumetric: number): number {
  const displacement = range === 'low' ? end.displacement_low_m3_rev : end.displacement_high_m3_rev;
  return (displacement * end.gear_ratio) / (2 * Math.PI * end.radius_m) / volumetric;
}

function combination(
  drive: Drive,
  drum: DrivenEnd,
  axle: DrivenEnd,
  drum_range: DriveRange,
  axle_range: DriveRange,
  choice: TwoSpeedChoice,
): Combination | null {
  const input = {
    drum,
    axle,
    drum_range,
    axle_range,
    grade_percent: choice.grade_percent,
    rolling_resistance_N_per_N: choice.rolling_resistance_N_per_N,
    relief_Pa: choice.relief_Pa,
  };
  const both = traction(input);
  // each end's own breaking point: the other one held by a ground that never gives way
  const drumOnly = traction({ ...input, axle: { ...axle, adhesion: 1e6 } });
  const axleOnly = traction({ ...input, drum: { ...drum, adhesion: 1e6 } });
  if (!both.ok || !drumOnly.ok || !axleOnly.ok) return null;
  const drumPer = volumePerMetre(drum, drum_range, drive.drum.volumetric_efficiency);
  const axlePer = volumePerMetre(axle, axle_range, drive.axle.volumetric_efficiency);
  const top_speed_m_s = drive.pump_flow_m3_s / (drumPer + axlePer);
  const speed_m_s = both.value.climbs ? Math.min(choice.speed_m_s, top_speed_m_s) : 0;
  return {
    drum_range,
    axle_range,
    traction: both.value,
    drum_slip_Pa: drumOnly.value.slip_pressure_Pa,
    axle_slip_Pa: axleOnly.value.slip_pressure_Pa,
    drum_flow_m3_s: drumPer * speed_m_s,
    axle_flow_m3_s: axlePer * speed_m_s,
    top_speed_m_s,
    speed_m_s,
  };
}

const PSI = 6894.757293168361;

/** A worked example of the trade (common practice, no source): equal motors, pressures in psi read on one hill. */
export const WORKED_EXAMPLE = {
  pressure_low_Pa: 4000 * PSI,
  pressure_high_Pa: 5000 * PSI,
  slip_low_Pa: 3500 * PSI,
} as const;
/** Rule of thumb heard for the same case: drum about 30 %, axle about 70 %. */
export const HEARD_DRUM_SHARE = 0.3;

export function workedExample(): SharedPressure {
  const result = sharedPressure(WORKED_EXAMPLE);
  if (!result.ok) throw new Error('studies/workedExample: the example must compute');
  return result.value;
}
