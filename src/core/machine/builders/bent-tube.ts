import { z } from 'zod';
import { positive, vec3 } from './common';

/** A tube along straight legs with mitred corners, its ends square. */
export const bentTubeParams = z.strictObject({
  builder: z.literal('bent-tube'),
  path_m: z.array(vec3).min(2),
  outside_m: positive,
  wall_m: positive,
  /** Cut off where it would stand inside this radius about x (flush with a bore). */
  clear_radius_m: positive.optional(),
});
export type BentTubeParams = z.infer<typeof bentTubeParams>;
