/** `calc sling`: tension in the legs of a sling. */
import { z } from 'zod';
import { sling } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'sling',
  answers: 'calc.sling.answers',
  source: 'ASME B30.9 (secondary listing): T = m g / (n sin a), not below 30 degrees from the horizontal',
  input: z.object({
    mass_kg: positive('kg'),
    legs: z.int().gte(1).lte(4).meta({ unit: '1' }),
    angle_from_horizontal_deg: between('deg', 30, 90),
  }),
  output: z.object({
    leg_tension_N: outNumber('N'),
    leg_mass_kg: outNumber('kg'),
    factor: outNumber('1'),
    legs_counted: outNumber('1'),
  }),
  example: { mass_kg: 3000, legs: 2, angle_from_horizontal_deg: 60 },
  run: sling,
});
