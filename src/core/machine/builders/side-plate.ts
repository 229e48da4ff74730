import { z } from 'zod';
import { holePattern, positive } from './common';

/**
 * The frame's side plate: a straight plate along z with a round eye on the drum axis and an opening in it. The eye
 * runs into the arms by arcs that touch both (radius `blend_m`).
 */
export const sidePlateParams = z.strictObject({
  builder: z.literal('side-plate'),
  from_x_m: z.number(),
  to_x_m: z.number(),
  /** Along z, centred on the drum axis. */
  length_m: positive,
  /** Along y, centred on the drum axis. */
  height_m: positive,
  eye_radius_m: positive,
  opening_radius_m: positive,
  blend_m: positive,
  /** Radius of the four corners. */
  corner_radius_m: positive,
  holes: z.array(holePattern).optional(),
});
export type SidePlateParams = z.infer<typeof sidePlateParams>;
