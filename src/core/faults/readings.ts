/** All readings of the bench for one set of inputs: numbers (null: not known), and chances of what is seen. */
import type { BenchInputs, InputName } from './inputs';
import { exciterSideOf, oilOf, travelOf } from './case-and-drive';
import type { Plant } from './plant';
import type { ComputedSign, ReadingName } from './reading-names';
import { sagOf, shakingOf, type Shaking } from './shaking';
import type { Chances } from './schema';

export interface Readings {
  readonly numbers: Readonly<Record<ReadingName, number | null>>;
  readonly signs: Readonly<Record<ComputedSign, Chances | null>>;
  readonly high: Shaking;
  readonly low: Shaking;
}

/** Length over which drift is paced out, and distance of the corners where the gap to the frame is read. */
const DRIFT_OVER_M = 10;
const CORNERS_APART_M = 1.5;

const FRAME = [
  'hardness_IRHD',
  'isolators_missing_left',
  'isolators_missing_right',
  'bed_stiffness_N_m',
] as const;
const SHAKING = [
  ...FRAME,
  'shot_share',
  'friction',
  'spin_up_s',
  'baffle_fitted',
  'chamber_oil_m3',
  'motor_volumetric',
  'hoses_swapped',
  'spline_intact',
  'settled_low_sd',
  'settled_high_sd',
] as const;
const TRAVEL = ['rolling_resistance', 'brake_drag_Nm', 'relief_Pa'] as const;

/** Results by what they depend on: of the many inputs most change only one corner of the machine. */
const known = new WeakMap<Plant, Map<string, unknown>>();
const ROOM = 4000;

function remembered<T>(
  plant: Plant,
  name: string,
  v: BenchInputs,
  inputs: readonly InputName[],
  make: () => T,
): T {
  let map = known.get(plant);
  if (map === undefined) known.set(plant, (map = new Map<string, unknown>()));
  let key = name;
  for (const input of inputs) key += ` ${v[input]}`;
  if (!map.has(key)) {
    if (map.size > ROOM) map.clear();
    map.set(key, make());
  }
  return map.get(key) as T;
}

export function readingsOf(plant: Plant, v: BenchInputs): Readings {
  const shaking = (lever: 'high' | 'low') =>
    remembered(plant, lever, v, SHAKING, () => shakingOf(plant, v, lever));
  const high = shaking('high');
  const low = shaking('low');
  const exciter = exciterSideOf(plant, v, high);
  const travel = remembered(plant, 'travel', v, TRAVEL, () => travelOf(plant, v));
  const oil = oilOf(plant, v);
  const [sagLeft, sagRight] = remembered(plant, 'sag', v, FRAME, () => sagOf(plant, v));
  return {
    numbers: {
      'amplitude-high': high.drum_m,
      'amplitude-low': low.drum_m,
      'vpm-high': high.frequency_Hz,
      'vpm-low': low.frequency_Hz,
      'frame-left': high.frameLeft_m_s2,
      'frame-right': high.frameRight_m_s2,
      'spin-up-time': v.spin_up_s,
      'temperature-left': exciter.left_K,
      'temperature-right': exciter.right_K,
      'brake-temperature': travel?.brake_K ?? null,
      'vibration-pressure': exciter.pressure_Pa,
      'charge-pressure': exciter.charge_Pa,
      'relief-pressure': v.relief_Pa,
      'travel-pressure': travel?.levelPressure_Pa ?? null,
      'case-drain': exciter.caseDrain_m3_s,
      drift: DRIFT_OVER_M * Math.tan(v.yaw_rad),
      'gap-spread': CORNERS_APART_M * Math.tan(v.yaw_rad),
      squeeze: v.squeeze_m,
      'sag-left': sagLeft,
      'sag-right': sagRight,
      'oil-level': oil.level_m - oil.mark_m,
      'level-rise': oil.rise_m,
      'scraper-gap': v.scraper_gap_m,
      'end-play': v.end_play_m,
    },
    signs: {
      grade: travel?.grade ?? null,
      'bolt-marks':
        exciter.marksMoved === null ? null : { 'in-line': 1 - exciter.marksMoved, moved: exciter.marksMoved },
    },
    high,
    low,
  };
}
