/** `calc segment`: area and centroid of a circular segment. */
import { z } from 'zod';
import { ok } from '../../../core/kernel';
import { circularSegment } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { outNumber, positive } from '../fields';

const DEGREE = Math.PI / 180;

export default defineCalculation({
  name: 'segment',
  answers: 'calc.segment.answers',
  source: "Machinery's Handbook, Areas and volumes, circular segment (from memory; re-derived and checked)",
  input: z.object({
    radius_m: positive('m'),
    angle_deg: z.number().gt(0).lte(360).meta({ unit: 'deg' }),
  }),
  output: z.object({
    area_m2: outNumber('m2'),
    height_m: outNumber('m'),
    chord_m: outNumber('m'),
    centroid_m: outNumber('m'),
  }),
  example: { radius_m: 0.11, angle_deg: 120 },
  run: ({ radius_m, angle_deg }) => ok(circularSegment(radius_m, angle_deg * DEGREE)),
});
