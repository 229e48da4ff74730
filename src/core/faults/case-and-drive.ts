/**
 * Warmth of the exciter bearings, oil in the case, pressures of both drives, and how the machine takes the grade.
 *
 * Bearing heat is friction torque times speed, M = f F d / 2 (T. A. Harris, Rolling Bearing Analysis, from memory);
 * how clearance, oil and water add to it is a training model: common practice, no source.
 */
import { STANDARD_GRAVITY } from '../kernel';
import {
  bearingLoads,
  CLEARANCE_CLASSES,
  fittedClearance,
  jointSlip,
  oilVolume,
  traction,
} from '../mechanics';
import { twoSpeedStudy } from '../studies';
import type { BenchInputs } from './inputs';
import type { Plant } from './plant';
import type { Shaking } from './shaking';

/** Wear at which a bearing runs twice as warm, clearance lacking at which it runs three times as warm. */
const WEAR_DOUBLES_M = 0.25e-3;
const TIGHT_GAIN = 2;
/** Water spoils the film: share of extra heat for each share of water. */
const WATER_GAIN = 5;
/** An unloaded motor still turns its own seals and pistons. */
const IDLE_TORQUE_NM = 1.5;

const middleClearance = new Map<string, number>();

/** Middle of the clearance left in the exciter bearings as fitted and warm, by class. */
function fittedMiddle(plant: Plant, steps: number): number {
  const { bearing } = plant.book.bench;
  const at = Math.min(2, Math.max(0, Math.round(steps)));
  const clearance_class = [...CLEARANCE_CLASSES].reverse()[at]!;
  const key = JSON.stringify([bearing, clearance_class]);
  let middle = middleClearance.get(key);
  if (middle === undefined) {
    const fitted = fittedClearance({
      type: 'spherical-roller',
      clearance_class,
      bore_m: bearing.bore_m,
      outside_m: bearing.outside_m,
      shaft: bearing.shaft,
      housing: bearing.housing,
      temperature_difference_K: bearing.inner_warmer_K,
    });
    middle = fitted.ok ? (fitted.value.fitted_min_m + fitted.value.fitted_max_m) / 2 : bearing.needed_m;
    middleClearance.set(key, middle);
  }
  return middle;
}

/** Level of the oil over the axis, and how much it changes in an hour. */
export function oilOf(plant: Plant, v: BenchInputs): { mark_m: number; level_m: number; rise_m: number } {
  const { case_radius_m: radius_m, case_length_m: length_m } = plant.book.bench;
  const level = (volume_m3: number): number => {
    const oil = oilVolume({ radius_m, length_m, volume_m3: Math.max(0, volume_m3) });
    return oil.ok ? oil.value.level_m : radius_m;
  };
  const volume_m3 = plant.oilVolume_m3 + v.oil_added_m3 - v.chamber_oil_m3;
  const level_m = level(volume_m3);
  return {
    mark_m: level(plant.oilVolume_m3),
    level_m,
    rise_m: level(volume_m3 + v.oil_rate_m3_h) - level_m,
  };
}

export interface ExciterSide {
  /** Rise over the surroundings after half an hour in HIGH, K; null where the force is not known. */
  readonly left_K: number | null;
  readonly right_K: number | null;
  readonly pressure_Pa: number | null;
  readonly caseDrain_m3_s: number;
  readonly charge_Pa: number;
  /** Chance that the marks over the hub joint have moved. */
  readonly marksMoved: number | null;
}

/** Exciter bearings, motor and hub joint with the lever in HIGH. */
export function exciterSideOf(plant: Plant, v: BenchInputs, high: Shaking): ExciterSide {
  const { book, exciter, machine } = plant;
  const { bench } = book;
  const omega = 2 * Math.PI * high.frequency_Hz;
  const flow_m3_s =
    (bench.motor_displacement_m3_rev * exciter.rest.frequency_high_Hz) / plant.sound.motor_volumetric;
  const caseDrain_m3_s = flow_m3_s * (1 - v.motor_volumetric);
  const supply = machine.drive?.charge_Pa ?? 0;
  // A gap passes flow in proportion to its pressure: beyond what the pump makes good, the pressure falls.
  const charge_Pa = supply * Math.min(1, bench.charge_flow_m3_s / Math.max(1e-9, caseDrain_m3_s));
  const pressureOf = (torque_Nm: number): number =>
    (2 * Math.PI * torque_Nm) / (bench.motor_displacement_m3_rev * bench.motor_mechanical);
  if (high.U_kgm === null || high.drum_m === null)
    return { left_K: null, right_K: null, pressure_Pa: null, caseDrain_m3_s, charge_Pa, marksMoved: null };
  const force_N = high.U_kgm * omega * omega;
  const loads = bearingLoads(force_N, {
    force_m: exciter.chamberMiddle_m,
    a_m: exciter.rest.bearings.left_x_m,
    b_m: exciter.rest.bearings.right_x_m,
  });
  const oil = oilOf(plant, v);
  const churning_W =
    omega > 0 ? Math.max(0, bench.churning_W_m * (oil.level_m - oil.mark_m)) * (omega / 188.5) ** 2 : 0;
  const side = (load_N: number, wear_m: number): { torque_Nm: number; rise_K: number } => {
    const clearance_m = fittedMiddle(plant, v.clearance_steps) + wear_m;
    const tight = Math.max(0, (bench.bearing.needed_m - clearance_m) / bench.bearing.needed_m);
    const extra = (1 + TIGHT_GAIN * tight) * (1 + wear_m / WEAR_DOUBLES_M) * (1 + WATER_GAIN * v.water_share);
    const torque_Nm = 0.5 * bench.bearing_friction * load_N * bench.bearing.bore_m * extra;
    return { torque_Nm, rise_K: (torque_Nm * omega + churning_W) / (bench.seat_W_K * v.cooling_share) };
  };
  const left = side(loads.a_N, v.wear_left_m);
  const right = side(loads.b_N, v.wear_right_m);
  const bed_Nm = omega > 0 ? 0.5 * bench.bed_damping_Ns_m * omega * high.drum_m ** 2 : 0;
  const churning_Nm = omega > 0 ? (2 * churning_W) / omega : 0;
  const torque_Nm = IDLE_TORQUE_NM + left.torque_Nm + right.torque_Nm + bed_Nm + churning_Nm;
  const slip = jointSlip({
    count: plant.hubBolts,
    preload_N: bench.hub_preload_N * v.hub_preload_share,
    friction: bench.hub_friction,
    force_N: loads.b_N,
  });
  const use = slip.ok ? slip.value.use : null;
  return {
    left_K: left.rise_K,
    right_K: right.rise_K,
    pressure_Pa: pressureOf(high.frequency_Hz > 0 ? torque_Nm : IDLE_TORQUE_NM),
    caseDrain_m3_s,
    charge_Pa,
    marksMoved: use === null ? null : Math.min(0.97, Math.max(0.03, normalCdf((use - 0.85) / 0.12))),
  };
}

export interface Travel {
  readonly levelPressure_Pa: number;
  readonly brake_K: number;
  /** Chances of the outcomes of the grade test. */
  readonly grade: Readonly<Record<string, number>>;
}

/** Share of the pressure by which ground and driver differ from one run on the grade to the next. */
const GRADE_SCATTER = 0.07;

/** Travel on level ground and on the test grade, both ends in low range; null where the formulas refuse. */
export function travelOf(plant: Plant, v: BenchInputs): Travel | null {
  const { bench } = plant.book;
  const { drive, operation } = plant.machine;
  if (drive === undefined) return null;
  const weight_N = operation.operating_mass_kg * STANDARD_GRAVITY;
  // A dragging brake is one more resistance at the drum's rim.
  const rolling_resistance_N_per_N =
    v.rolling_resistance + v.brake_drag_Nm / (drive.drum.rolling_radius_m * weight_N);
  const study = twoSpeedStudy(plant.machine, {
    grade_percent: bench.grade_percent,
    drum_adhesion: bench.drum_adhesion,
    axle_adhesion: bench.axle_adhesion,
    rolling_resistance_N_per_N,
    relief_Pa: v.relief_Pa,
    speed_m_s: bench.travel_m_s,
  });
  const both = study?.combinations.find((c) => c.drum_range === 'low' && c.axle_range === 'low');
  if (study === null || both === undefined) return null;
  const level = traction({
    drum: study.drum,
    axle: study.axle,
    drum_range: 'low',
    axle_range: 'low',
    grade_percent: 0,
    rolling_resistance_N_per_N,
    relief_Pa: v.relief_Pa,
  });
  if (!level.ok) return null;
  const need = both.traction.pressure_needed_Pa;
  const passes = (limit_Pa: number): number => normalCdf((limit_Pa - need) / (GRADE_SCATTER * need));
  const [drum, axle, relief] = [passes(both.drum_slip_Pa), passes(both.axle_slip_Pa), passes(v.relief_Pa)];
  const stops = 1 - relief;
  const drumSpins = relief * (1 - drum);
  const axleSpins = relief * drum * (1 - axle);
  const floor = 0.01;
  return {
    levelPressure_Pa: level.value.pressure_needed_Pa,
    brake_K: 12 + (v.brake_drag_Nm * (bench.travel_m_s / drive.drum.rolling_radius_m)) / bench.brake_W_K,
    grade: {
      climbs: relief * drum * axle + floor,
      'drum-spins': drumSpins + floor,
      'axle-spins': axleSpins + floor,
      stops: stops + floor,
    },
  };
}

/** Standard normal distribution function (Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17). */
export function normalCdf(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    0.3989422804014327 *
    Math.exp((-z * z) / 2) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
}
