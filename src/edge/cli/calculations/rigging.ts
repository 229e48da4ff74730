/** `calc rigging`: what an eye bolt and a shackle still carry out of line. */
import { z } from 'zod';
import { rigging } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, number, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'rigging',
  answers: 'calc.rigging.answers',
  source: 'eye bolt: trade table that names no standard; shackle: ASME B30.26 (from memory)',
  input: z.object({
    angle_deg: between('deg', 0, 90),
    rated_kg: positive('kg').optional(),
    load_kg: positive('kg').optional(),
  }),
  output: z.object({
    eye_share: number('1'),
    shackle_share: number('1'),
    eye_kg: outNumber('kg'),
    shackle_kg: outNumber('kg'),
    eye_needed_kg: outNumber('kg'),
    shackle_needed_kg: outNumber('kg'),
  }),
  example: { angle_deg: 30, rated_kg: 1000, load_kg: 300 },
  run: rigging,
});
