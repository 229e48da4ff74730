/** `calc bearing-load`: equivalent load of a rolling bearing. */
import { z } from 'zod';
import { bearingLoad } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'bearing-load',
  answers: 'calc.bearing-load.answers',
  source:
    'ISO 281, P = X V Fr + Y Fa; R. G. Budynas, J. K. Nisbett, Mechanical Engineering Design, ch. 11 (V)',
  input: z.object({
    Fr_N: notNegative('N'),
    Fa_N: notNegative('N'),
    X: notNegative('1'),
    Y: notNegative('1'),
    V: positive('1').default(1),
  }),
  output: z.object({
    P_N: outNumber('N'),
  }),
  example: { Fr_N: 7000, Fa_N: 3000, X: 0.56, Y: 1.53, V: 1.2 },
  run: bearingLoad,
});
