import { z } from 'zod';
import { positive } from './common';

/** Double-row spherical roller bearing about x, its middle at x = 0. Diameters and widths as in the trade's lists. */
export const sphericalRollerBearingParams = z.strictObject({
  builder: z.literal('spherical-roller-bearing'),
  bore_m: positive,
  outside_m: positive,
  width_m: positive,
  /** Radius of the sphere that the outer ring's raceway is part of. */
  sphere_m: positive,
  rollers_per_row: z.int().min(3),
  roller_diameter_m: positive,
  roller_length_m: positive,
  /** Angle of the line of contact from the plane across the axis. */
  contact_deg: positive,
  cage_material: z.string(),
});
export type SphericalRollerBearingParams = z.infer<typeof sphericalRollerBearingParams>;
