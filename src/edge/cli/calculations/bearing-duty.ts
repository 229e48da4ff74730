/** `calc bearing-duty`: mean load of a duty cycle and the rating that a life asks for. */
import { z } from 'zod';
import { bearingDuty } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, choice, notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'bearing-duty',
  answers: 'calc.bearing-duty.answers',
  source: 'ISO 281, Pm = (sum n t P^p / sum n t)^(1/p); T. A. Harris, Rolling Bearing Analysis (from memory)',
  input: z.object({
    segments: z
      .array(
        z.object({
          fraction_of_time: between('1', 0, 1),
          load_N: notNegative('N'),
          speed_rpm: notNegative('rpm'),
        }),
      )
      .min(1),
    p: z.union([positive('1'), choice('ball', 'roller')]).meta({ unit: '1' }),
    life_h: positive('h').optional(),
  }),
  output: z.object({
    mean_speed_rpm: outNumber('rpm'),
    Pm_N: outNumber('N'),
    life_Mrev: outNumber('10^6 rev'),
    C_required_N: outNumber('N'),
  }),
  example: {
    segments: [
      { fraction_of_time: 0.6, load_N: 125000, speed_rpm: 1800 },
      { fraction_of_time: 0.4, load_N: 81500, speed_rpm: 2040 },
    ],
    p: 'roller',
    life_h: 5000,
  },
  run: bearingDuty,
});
