/** `calc ring-fit`: how loose or tight a bearing's ring sits. */
import { z } from 'zod';
import { ringFit } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, number, positive, text } from '../fields';

export default defineCalculation({
  name: 'ring-fit',
  answers: 'calc.ring-fit.answers',
  source: 'ISO 286-1; ISO 492 class Normal (from memory)',
  input: z.object({ ring: choice('bore', 'outside'), size_m: positive('m'), seat: text() }),
  output: z.object({
    seat_upper_m: number('m'),
    seat_lower_m: number('m'),
    ring_upper_m: number('m'),
    ring_lower_m: number('m'),
    clearance_max_m: number('m'),
    clearance_min_m: number('m'),
    character: choice('clearance', 'transition', 'interference'),
  }),
  example: { ring: 'outside', size_m: 0.215, seat: 'P6' },
  run: ringFit,
});
