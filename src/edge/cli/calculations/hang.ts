/** `calc hang`: how a load hangs when the hook is not over its centre of mass. */
import { z } from 'zod';
import { hang } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, number, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'hang',
  answers: 'calc.hang.answers',
  source: 'statics; 5 degrees: common practice, no source',
  input: z.object({
    offset_m: notNegative('m'),
    height_m: number('m'),
    mass_kg: positive('kg').optional(),
    allowed_deg: positive('deg').optional(),
  }),
  output: z.object({
    tilt_deg: outNumber('deg'),
    stable: z.boolean(),
    level: z.boolean(),
    moment_Nm: outNumber('N m'),
  }),
  example: { offset_m: 0.05, height_m: 0.4, mass_kg: 290 },
  run: hang,
});
