/** `calc static-safety`: static safety of a rolling bearing against its guidance value. */
import { z } from 'zod';
import { staticSafety } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'static-safety',
  answers: 'calc.static-safety.answers',
  source: 'ISO 76:2006 and its guidance values (from memory)',
  input: z.object({
    C0_N: positive('N'),
    P0_N: notNegative('N').optional(),
    Fr_N: notNegative('N').optional(),
    Fa_N: notNegative('N').optional(),
    X0: notNegative('1').optional(),
    Y0: notNegative('1').optional(),
    kind: choice('ball', 'roller'),
    running: choice('quiet', 'normal', 'shock').optional(),
  }),
  output: z.object({
    P0_N: outNumber('N'),
    S0: outNumber('1'),
    S0_guide: outNumber('1'),
    enough: z.boolean(),
  }),
  example: { C0_N: 950000, Fr_N: 125000, kind: 'roller', running: 'shock' },
  run: staticSafety,
});
