/** `calc impact-spacing`: how far apart the blows of a drum fall. */
import { z } from 'zod';
import { impactSpacing } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'impact-spacing',
  answers: 'calc.impact-spacing.answers',
  source: 'geometry, s = v / f; what spacing is wanted: common practice, no source',
  input: z.object({ frequency_Hz: positive('Hz'), speed_m_s: notNegative('m/s') }),
  output: z.object({
    spacing_m: outNumber('m'),
    per_metre: outNumber('1/m'),
    per_foot: outNumber('1/ft'),
  }),
  example: { frequency_Hz: 30, speed_m_s: 1.1111 },
  run: impactSpacing,
});
