/** `calc iso-fit`: limit deviations and clearance of an ISO fit. */
import { z } from 'zod';
import { isoFit } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, choice, outNumber, text } from '../fields';

export default defineCalculation({
  name: 'iso-fit',
  answers: 'calc.iso-fit.answers',
  source:
    'ISO 286-1, ISO 286-2: secondary listings that agree (grades 5 to 8, g to p over 30 mm); the rest from memory',
  input: z.object({ size_m: between('m', 0, 0.5), hole: text(), shaft: text() }),
  output: z.object({
    hole_upper_m: outNumber('m'),
    hole_lower_m: outNumber('m'),
    shaft_upper_m: outNumber('m'),
    shaft_lower_m: outNumber('m'),
    clearance_max_m: outNumber('m'),
    clearance_min_m: outNumber('m'),
    character: choice('clearance', 'transition', 'interference'),
  }),
  example: { size_m: 0.06, hole: 'H7', shaft: 'p6' },
  run: isoFit,
});
