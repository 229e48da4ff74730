/** `calc shared-pressure`: two motors on one pressure, what two readings on one hill tell. */
import { z } from 'zod';
import { sharedPressure } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'shared-pressure',
  answers: 'calc.shared-pressure.answers',
  source:
    'A. Esposito, Fluid Power with Applications, ch. 7; the example (in Pa): common practice, no source',
  input: z.object({
    pressure_low_Pa: positive('Pa'),
    pressure_high_Pa: positive('Pa'),
    slip_low_Pa: positive('Pa'),
    other_over_changed: positive('1').optional(),
  }),
  output: z.object({
    displacement_ratio: outNumber('1'),
    changed_share: outNumber('1'),
    other_share: outNumber('1'),
    slip_high_Pa: outNumber('Pa'),
    climbs_low: z.boolean(),
    climbs_high: z.boolean(),
  }),
  // 4,000, 5,000 and 3,500 psi
  example: { pressure_low_Pa: 27579029, pressure_high_Pa: 34473786, slip_low_Pa: 24131650 },
  run: sharedPressure,
});
