/** `calc isolator-set`: how well the isolators of a set agree. */
import { z } from 'zod';
import { setMatch } from '../../../core/mechanics';
import { ok } from '../../../core/kernel';
import { defineCalculation } from '../calculation';
import { number, positive } from '../fields';

export default defineCalculation({
  name: 'isolator-set',
  answers: 'calc.isolator-set.answers',
  source:
    'P. B. Lindley, Engineering Design with Natural Rubber (table from memory); matching: common practice',
  input: z.object({
    hardness_IRHD: z.array(number('1')),
    d_m: positive('m'),
    t_m: positive('m'),
    tolerance_IRHD: positive('1').optional(),
  }),
  output: z.object({
    spread_IRHD: number('1'),
    mean_IRHD: number('1'),
    shear_N_m: z.array(number('N/m')),
    total_N_m: number('N/m'),
    stiffest_over_mean: number('1'),
    matched: z.boolean(),
  }),
  example: { hardness_IRHD: [58, 60, 62, 60], d_m: 0.116, t_m: 0.055 },
  run: (input) => {
    const found = setMatch(input);
    return found.ok ? ok({ ...found.value, shear_N_m: [...found.value.shear_N_m] }) : found;
  },
});
