import { z } from 'zod';
import { positive } from './common';

/** A hydraulic cylinder along +x from its barrel's eye (axis y, at the origin) to its rod's eye, `pin_to_pin_m` away. */
export const hydraulicCylinderParams = z.strictObject({
  builder: z.literal('hydraulic-cylinder'),
  pin_to_pin_m: positive,
  barrel_outer_m: positive,
  barrel_length_m: positive,
  rod_m: positive,
  eye_radius_m: positive,
  eye_bore_radius_m: positive,
  eye_width_m: positive,
});
export type HydraulicCylinderParams = z.infer<typeof hydraulicCylinderParams>;
