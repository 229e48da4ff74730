import { z } from 'zod';
import { positive } from './common';

/** A hexagon nut on x, from x = 0 (its bearing face, the washer's where it has one) towards +x. */
export const nutParams = z.strictObject({
  builder: z.literal('nut'),
  bore_m: positive,
  across_flats_m: positive,
  height_m: positive,
  /** Hard washer under the nut, between x = 0 and its thickness. */
  washer: z.strictObject({ diameter_m: positive, thickness_m: positive }).optional(),
  hex_phase_deg: z.number().optional(),
});
export type NutParams = z.infer<typeof nutParams>;
