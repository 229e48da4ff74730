/** `calc heating`: how much warmer a ring must be to grow by a wanted amount. */
import { z } from 'zod';
import { heatingForGrowth } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, number, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'heating',
  answers: 'calc.heating.answers',
  source:
    'T. H. Wentzell, Machine Design, ch. 6 (thermal expansion); limits for bearings: common practice, no source',
  input: z.object({
    diameter_m: positive('m'),
    growth_m: notNegative('m'),
    alpha_per_K: positive('1/K'),
    start_C: number('degC').optional(),
  }),
  output: z.object({
    delta_T_K: outNumber('K'),
    temperature_C: outNumber('degC'),
  }),
  example: { diameter_m: 0.1, growth_m: 0.00011, alpha_per_K: 0.000012, start_C: 20 },
  run: heatingForGrowth,
});
