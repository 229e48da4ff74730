import { z } from 'zod';
import { nonNegative, positive } from './common';

/**
 * A rubber isolator about x between two bonded plates, from x = 0 (the plate with ears) to its whole length (the
 * plate with the threaded insert in its middle).
 */
export const isolatorParams = z.strictObject({
  builder: z.literal('isolator'),
  rubber_diameter_m: positive,
  rubber_length_m: positive,
  /** How far the free surface of the rubber is drawn in at its middle. */
  waist_m: nonNegative,
  plate_thickness_m: positive,
  plate_diameter_m: positive,
  ears: z.strictObject({
    count: z.int().positive(),
    radius_m: positive,
    /** From the kind's +y, clockwise seen from +x. */
    start_deg: z.number(),
    hole_diameter_m: positive,
    ear_radius_m: positive,
  }),
  insert: z.strictObject({
    thread_diameter_m: positive,
    depth_m: positive,
    outside_m: positive,
    length_m: positive,
  }),
  plate_material: z.string(),
});
export type IsolatorParams = z.infer<typeof isolatorParams>;
