/** `calc amplitude-check`: verdict on a measured amplitude and vibration rate. */
import { z } from 'zod';
import { amplitudeCheck } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, notNegative, number, positive } from '../fields';

export default defineCalculation({
  name: 'amplitude-check',
  answers: 'calc.amplitude-check.answers',
  source: 'ISO 8811 for the terms (from memory); tolerances: common practice, no source',
  input: z.object({
    amplitude_m: positive('m'),
    vibrations_per_minute: positive('1/min'),
    expected_amplitude_m: positive('m'),
    expected_vibrations_per_minute: positive('1/min'),
    band_m: notNegative('m').optional(),
    amplitude_tolerance: positive('1').optional(),
    rate_tolerance: positive('1').optional(),
  }),
  output: z.object({
    amplitude: choice('within', 'low', 'high'),
    rate: choice('within', 'low', 'high'),
    amplitude_ratio: number('1'),
    rate_ratio: number('1'),
    amplitude_from_m: number('m'),
    amplitude_to_m: number('m'),
    rate_from: number('1/min'),
    rate_to: number('1/min'),
    passed: z.boolean(),
  }),
  example: {
    amplitude_m: 0.0017,
    vibrations_per_minute: 1790,
    expected_amplitude_m: 0.00173,
    expected_vibrations_per_minute: 1800,
  },
  run: amplitudeCheck,
});
