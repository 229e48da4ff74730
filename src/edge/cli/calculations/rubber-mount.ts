/** `calc rubber-mount`: stiffness of a bonded rubber mount. */
import { z } from 'zod';
import { rubberMount } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { missing } from '../missing-keys';
import { between, choice, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'rubber-mount',
  answers: 'calc.rubber-mount.answers',
  source: 'P. B. Lindley, Engineering Design with Natural Rubber, 4th ed. 1978 (table from memory)',
  input: z.object({
    shape: choice('block', 'disc'),
    a_m: positive('m').optional(),
    b_m: positive('m').optional(),
    d_m: positive('m').optional(),
    t_m: positive('m'),
    hardness_IRHD: between('IRHD', 30, 75),
  }),
  output: z.object({
    G_Pa: outNumber('Pa'),
    E_Pa: outNumber('Pa'),
    k: outNumber('1'),
    shape_factor: outNumber('1'),
    shear_N_m: outNumber('N/m'),
    compression_N_m: outNumber('N/m'),
  }),
  example: { shape: 'disc', d_m: 0.15, t_m: 0.066, hardness_IRHD: 60 },
  run: (input) => {
    const { shape, a_m, b_m, d_m, t_m, hardness_IRHD } = input;
    if (shape === 'disc' && d_m !== undefined) return rubberMount({ shape, d_m, t_m, hardness_IRHD });
    if (shape === 'block' && a_m !== undefined && b_m !== undefined) {
      return rubberMount({ shape, a_m, b_m, t_m, hardness_IRHD });
    }
    return missing(input, shape === 'disc' ? ['d_m'] : ['a_m', 'b_m']);
  },
});
