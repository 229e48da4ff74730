/** `calc oil-volume`: oil in a lying round case, from level to volume and back. */
import { z } from 'zod';
import { oilVolume } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, number, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'oil-volume',
  answers: 'calc.oil-volume.answers',
  source: "Machinery's Handbook, Areas and volumes, circular segment (from memory; re-derived)",
  input: z.object({
    radius_m: positive('m'),
    length_m: positive('m'),
    depth_m: notNegative('m').optional(),
    level_m: number('m').optional(),
    volume_m3: notNegative('m3').optional(),
    displaced_m3: notNegative('m3').optional(),
    density_kg_m3: positive('kg/m3').optional(),
  }),
  output: z.object({
    volume_m3: outNumber('m3'),
    depth_m: outNumber('m'),
    level_m: outNumber('m'),
    section_share: outNumber('1'),
    mass_kg: outNumber('kg'),
  }),
  example: { radius_m: 0.215, length_m: 1.28, level_m: -0.16, density_kg_m3: 870 },
  run: oilVolume,
});
