import { z } from 'zod';
import { holePattern, nonNegative, positive } from './common';

/** A flat plate of any outline, its thickness along x between two stations. */
export const plateOutlineParams = z.strictObject({
  builder: z.literal('plate-outline'),
  from_x_m: z.number(),
  to_x_m: z.number(),
  /** Corners as [y, z], in order round the outline, either way; no two edges may cross. */
  corners_m: z.array(z.tuple([z.number(), z.number()])).min(3),
  /** Radius of every corner (cut down where an edge is too short for it). */
  corner_radius_m: nonNegative.optional(),
  /** Round eyes joined to the outline. */
  eyes: z.array(z.strictObject({ at_m: z.tuple([z.number(), z.number()]), radius_m: positive })).optional(),
  holes: z.array(holePattern).optional(),
});
export type PlateOutlineParams = z.infer<typeof plateOutlineParams>;
