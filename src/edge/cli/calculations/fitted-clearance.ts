/** `calc fitted-clearance`: radial clearance left in a roller bearing, mounted and warm. */
import { z } from 'zod';
import { fittedClearance } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, notNegative, number, outNumber, positive, text } from '../fields';

export default defineCalculation({
  name: 'fitted-clearance',
  answers: 'calc.fitted-clearance.answers',
  source:
    'ISO 5753-1 (cylindrical: secondary listings; spherical: from memory); ISO 492, ISO 286 (see iso-fit); T. A. Harris, Rolling Bearing Analysis (from memory)',
  input: z.object({
    type: choice('cylindrical-roller', 'spherical-roller'),
    clearance_class: choice('CN', 'C3', 'C4'),
    bore_m: positive('m'),
    outside_m: positive('m'),
    inner_raceway_m: positive('m').optional(),
    outer_raceway_m: positive('m').optional(),
    shaft: text(),
    housing: text(),
    shaft_bore_m: notNegative('m').optional(),
    housing_outside_m: positive('m').optional(),
    temperature_difference_K: number('K').optional(),
    alpha_per_K: positive('1/K').optional(),
  }),
  output: z.object({
    clearance_min_m: outNumber('m'),
    clearance_max_m: outNumber('m'),
    shaft_interference_min_m: outNumber('m'),
    shaft_interference_max_m: outNumber('m'),
    housing_interference_min_m: outNumber('m'),
    housing_interference_max_m: outNumber('m'),
    temperature_loss_m: outNumber('m'),
    fitted_min_m: outNumber('m'),
    fitted_max_m: outNumber('m'),
  }),
  example: {
    type: 'spherical-roller',
    clearance_class: 'C4',
    bore_m: 0.1,
    outside_m: 0.215,
    shaft: 'g6',
    housing: 'P6',
    shaft_bore_m: 0.048,
    housing_outside_m: 0.244,
    temperature_difference_K: 10,
  },
  run: fittedClearance,
});
