/** `calc rolling-time`: time to roll an area, and production. */
import { z } from 'zod';
import { rollingTime } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, notNegative, outNumber, positive, whole } from '../fields';

export default defineCalculation({
  name: 'rolling-time',
  answers: 'calc.rolling-time.answers',
  source:
    'S. W. Nunnally, Construction Methods and Management, compactor production (from memory); whole lanes and reversing: plain kinematics',
  input: z.object({
    length_m: positive('m'),
    width_m: positive('m').optional(),
    drum_width_m: positive('m'),
    overlap_m: notNegative('m').optional(),
    passes: whole(1),
    speed_m_s: positive('m/s'),
    reverse_s: notNegative('s').optional(),
    efficiency: between('1', 0.01, 1).optional(),
    lift_m: positive('m').optional(),
  }),
  output: z.object({
    lanes: z.int().meta({ unit: '1' }),
    distance_m: outNumber('m'),
    time_s: outNumber('s'),
    area_m2_h: outNumber('m2/h'),
    volume_m3_h: outNumber('m3/h'),
  }),
  example: {
    length_m: 100,
    width_m: 12,
    drum_width_m: 2.13,
    overlap_m: 0.15,
    passes: 6,
    speed_m_s: 1.1,
    reverse_s: 5,
    efficiency: 0.83,
    lift_m: 0.3,
  },
  run: rollingTime,
});
