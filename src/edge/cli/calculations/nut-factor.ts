/** `calc nut-factor`: the nut factor K from friction in thread and collar. */
import { z } from 'zod';
import { nutFactor } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'nut-factor',
  answers: 'calc.nut-factor.answers',
  source:
    'U. C. Jindal, Machine Design, Ex 9-3; R. G. Budynas, J. K. Nisbett, Mechanical Engineering Design, ch. 8 (from memory)',
  input: z.object({
    diameter_m: positive('m'),
    pitch_m: positive('m'),
    thread_friction: notNegative('1'),
    collar_friction: notNegative('1'),
  }),
  output: z.object({
    K: outNumber('1'),
  }),
  example: { diameter_m: 0.018, pitch_m: 0.0025, thread_friction: 0.15, collar_friction: 0.13 },
  run: nutFactor,
});
