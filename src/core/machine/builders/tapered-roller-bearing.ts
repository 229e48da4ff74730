import { z } from 'zod';
import { positive } from './common';

/**
 * Single-row tapered roller bearing about x: the cone's back face (the rollers' large ends) at x = 0, the cup's back
 * face at x = width.
 */
export const taperedRollerBearingParams = z.strictObject({
  builder: z.literal('tapered-roller-bearing'),
  bore_m: positive,
  outside_m: positive,
  /** Over cone and cup. */
  width_m: positive,
  cone_width_m: positive,
  cup_width_m: positive,
  rollers: z.int().min(3),
  /** At the middle of the roller. */
  roller_diameter_m: positive,
  roller_length_m: positive,
  /** Half angle of the cup's raceway. */
  contact_deg: positive,
  /** Radius of the circle through the rollers' middles, and where along x it lies. */
  pitch_radius_m: positive,
  pitch_x_m: z.number(),
});
export type TaperedRollerBearingParams = z.infer<typeof taperedRollerBearingParams>;
