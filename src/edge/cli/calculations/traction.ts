/** `calc traction`: does a roller with driven drum and axle climb a grade, and what stops it? */
import { z } from 'zod';
import { traction } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, choice, notNegative, outNumber, positive } from '../fields';

const drivenEnd = () =>
  z.object({
    displacement_low_m3_rev: positive('m3/rev'),
    displacement_high_m3_rev: positive('m3/rev'),
    gear_ratio: positive('1'),
    radius_m: positive('m'),
    load_N: notNegative('N'),
    efficiency: between('1', 0.01, 1),
    adhesion: notNegative('1'),
  });

export default defineCalculation({
  name: 'traction',
  answers: 'calc.traction.answers',
  source:
    'A. Esposito, Fluid Power with Applications, ch. 7 (torque); S. W. Nunnally, Construction Methods and Management, ch. 4 (grade, rolling resistance, traction)',
  input: z.object({
    drum: drivenEnd(),
    axle: drivenEnd(),
    drum_range: choice('low', 'high'),
    axle_range: choice('low', 'high'),
    grade_percent: between('%', 0, 100),
    rolling_resistance_N_per_N: notNegative('1'),
    relief_Pa: positive('Pa'),
  }),
  output: z.object({
    pull_needed_N: outNumber('N'),
    pressure_needed_Pa: outNumber('Pa'),
    drum_pull_N: outNumber('N'),
    axle_pull_N: outNumber('N'),
    drum_share: outNumber('1'),
    slips_first: choice('drum', 'axle', 'none'),
    slip_pressure_Pa: outNumber('Pa'),
    climbs: z.boolean(),
    limit: choice('slip', 'relief', 'none'),
    pull_available_N: outNumber('N'),
  }),
  example: {
    drum: {
      displacement_low_m3_rev: 0.0037,
      displacement_high_m3_rev: 0.00222,
      gear_ratio: 1,
      radius_m: 0.75,
      load_N: 67700,
      efficiency: 0.92,
      adhesion: 0.5,
    },
    axle: {
      displacement_low_m3_rev: 0.00016,
      displacement_high_m3_rev: 0.0001,
      gear_ratio: 24,
      radius_m: 0.73,
      load_N: 52000,
      efficiency: 0.85,
      adhesion: 0.6,
    },
    drum_range: 'low',
    axle_range: 'low',
    grade_percent: 20,
    rolling_resistance_N_per_N: 0.05,
    relief_Pa: 40e6,
  },
  run: traction,
});
