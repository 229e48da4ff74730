import { z } from 'zod';
import { nonNegative, positive } from './common';

/**
 * A screw, bolt, plug or headless pin. Own frame: origin at the underside of the head (of its washer where it has
 * one), shank along -x, head towards +x. The thread is a plain cylinder at the major diameter.
 */
export const boltParams = z.strictObject({
  builder: z.literal('bolt'),
  diameter_m: positive,
  /** Shank from the underside of the washer, or of the head where it has none. */
  length_m: positive,
  head: z.discriminatedUnion('form', [
    z.strictObject({
      form: z.literal('hex'),
      across_flats_m: positive,
      height_m: positive,
      /** A turned flange under the hexagon, as plugs have it. */
      collar_m: positive.optional(),
      collar_height_m: positive.optional(),
    }),
    z.strictObject({
      form: z.literal('socket'),
      diameter_m: positive,
      height_m: positive,
      /** Across flats of the hexagon inside. */
      key_m: positive,
      key_depth_m: positive,
    }),
    z.strictObject({ form: z.literal('none') }),
  ]),
  /** Hard washer under the head; it lies between x = 0 and its thickness. */
  washer: z.strictObject({ diameter_m: positive, thickness_m: positive }).optional(),
  /** Chamfer at the shank's end (default 0.1 of the diameter). */
  chamfer_m: nonNegative.optional(),
  /** Turn of the hexagon about x in degrees; at 0 a corner points to +y. */
  hex_phase_deg: z.number().optional(),
  /** Round blind hole along the axis from the shank's end (a magnet's seat, say). */
  end_hole: z.strictObject({ diameter_m: positive, depth_m: positive }).optional(),
});
export type BoltParams = z.infer<typeof boltParams>;
