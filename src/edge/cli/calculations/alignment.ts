/** `calc alignment`: shims that bring four corner gaps to one value. */
import { z } from 'zod';
import { alignment } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, outNumber, positive } from '../fields';

const corners = () =>
  z.object({
    front_left: notNegative('m'),
    front_right: notNegative('m'),
    rear_left: notNegative('m'),
    rear_right: notNegative('m'),
  });

export default defineCalculation({
  name: 'alignment',
  answers: 'calc.alignment.answers',
  source: 'least squares on the plane of a stiff part; 2 to 3 mm between corners: common practice, no source',
  input: z.object({
    gaps_m: corners(),
    target_m: notNegative('m').optional(),
    shim_step_m: positive('m').optional(),
    tolerance_m: positive('m').optional(),
  }),
  output: z.object({
    shims_m: corners(),
    gaps_after_m: corners(),
    spread_before_m: outNumber('m'),
    spread_after_m: outNumber('m'),
    twist_m: outNumber('m'),
    within_tolerance: z.boolean(),
  }),
  example: {
    gaps_m: { front_left: 0.008, front_right: 0.012, rear_left: 0.009, rear_right: 0.0125 },
    target_m: 0.013,
    shim_step_m: 0.0005,
  },
  run: alignment,
});
