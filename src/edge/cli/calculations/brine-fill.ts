/** `calc brine-fill`: masses of salt and water in a fill of brine. */
import { z } from 'zod';
import { brineFill } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'brine-fill',
  answers: 'calc.brine-fill.answers',
  source: 'definition of mass percent',
  input: z.object({
    volume_m3: notNegative('m3'),
    density_kg_m3: positive('kg/m3'),
    salt_mass_percent: between('%', 0, 100),
  }),
  output: z.object({
    total_kg: outNumber('kg'),
    salt_kg: outNumber('kg'),
    water_kg: outNumber('kg'),
  }),
  example: { volume_m3: 1.2, density_kg_m3: 1231, salt_mass_percent: 25 },
  run: brineFill,
});
