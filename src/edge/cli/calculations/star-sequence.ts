/** `calc star-sequence`: the order in which to tighten a ring of bolts. */
import { z } from 'zod';
import { starSequence } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { number, whole } from '../fields';

export default defineCalculation({
  name: 'star-sequence',
  answers: 'calc.star-sequence.answers',
  source: 'common practice, no source',
  input: z.object({ count: whole(1) }),
  output: z.object({
    order: z.array(z.int().meta({ unit: '1' })).readonly(),
    angles_deg: z.array(number('deg')).readonly(),
  }),
  example: { count: 16 },
  run: starSequence,
});
