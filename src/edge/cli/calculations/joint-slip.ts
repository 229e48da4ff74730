/** `calc joint-slip`: the load at which a bolted friction joint slips. */
import { z } from 'zod';
import { jointSlip } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, outNumber, positive, whole } from '../fields';

export default defineCalculation({
  name: 'joint-slip',
  answers: 'calc.joint-slip.answers',
  source:
    'R. G. Budynas, J. K. Nisbett, Mechanical Engineering Design, ch. 8 (from memory): F = n mu Fi faces',
  input: z.object({
    count: whole(1),
    preload_N: notNegative('N'),
    friction: notNegative('1'),
    faces: whole(1).optional(),
    radius_m: positive('m').optional(),
    force_N: notNegative('N').optional(),
    torque_Nm: notNegative('N m').optional(),
  }),
  output: z.object({
    slip_force_N: outNumber('N'),
    slip_torque_Nm: outNumber('N m'),
    use: outNumber('1'),
    slips: z.boolean().nullable(),
  }),
  example: { count: 16, preload_N: 219700, friction: 0.12, radius_m: 0.29, torque_Nm: 21700 },
  run: jointSlip,
});
