/** `calc bearing-system`: life of several bearings of which none may fail. */
import { z } from 'zod';
import { bearingSystem } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'bearing-system',
  answers: 'calc.bearing-system.answers',
  source:
    'G. Lundberg, A. Palmgren; T. A. Harris, Rolling Bearing Analysis (from memory): e = 10/9 ball, 9/8 roller',
  input: z.object({
    lives_h: z.array(positive('h')).min(1),
    exponent: z.union([positive('1'), choice('ball', 'roller')]).meta({ unit: '1' }),
  }),
  output: z.object({
    life_h: outNumber('h'),
  }),
  example: { lives_h: [4500, 4500], exponent: 'roller' },
  run: bearingSystem,
});
