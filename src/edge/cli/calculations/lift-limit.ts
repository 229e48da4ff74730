/** `calc lift-limit`: may one person lift this by hand? */
import { z } from 'zod';
import { liftLimit } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, choice, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'lift-limit',
  answers: 'calc.lift-limit.answers',
  source:
    'T. R. Waters, V. Putz-Anderson, A. Garg, Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) 94-110; ISO 11228-1 reference mass (from memory)',
  input: z.object({
    mass_kg: positive('kg'),
    horizontal_m: between('m', 0, 0.63).optional(),
    vertical_m: between('m', 0, 1.75).optional(),
    travel_m: between('m', 0, 1.75).optional(),
    twist_deg: between('deg', 0, 135).optional(),
    coupling: choice('good', 'fair', 'poor').optional(),
  }),
  output: z.object({
    limit_kg: outNumber('kg'),
    lifting_index: outNumber('1'),
    reference_kg: outNumber('kg'),
    by_hand: z.boolean(),
  }),
  example: { mass_kg: 28, horizontal_m: 0.35, vertical_m: 0.5, coupling: 'fair' },
  run: liftLimit,
});
