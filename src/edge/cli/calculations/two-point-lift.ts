/** `calc two-point-lift`: how two hooks share a load. */
import { z } from 'zod';
import { twoPointLift } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'two-point-lift',
  answers: 'calc.two-point-lift.answers',
  source: 'statics: sum of moments about one hook',
  input: z.object({ mass_kg: positive('kg'), distance_m: positive('m'), cog_from_a_m: notNegative('m') }),
  output: z.object({
    a_kg: outNumber('kg'),
    b_kg: outNumber('kg'),
    a_N: outNumber('N'),
    b_N: outNumber('N'),
  }),
  example: { mass_kg: 4500, distance_m: 2.4, cog_from_a_m: 0.9 },
  run: twoPointLift,
});
