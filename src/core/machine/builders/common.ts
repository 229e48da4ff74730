/** Pieces that many builders' parameters share. Lengths in metres in the kind's own frame. */
import { z } from 'zod';

export const positive = z.number().positive();
export const nonNegative = z.number().nonnegative();
export const vec3 = z.tuple([z.number(), z.number(), z.number()]);

/** Equal holes on a circle about the kind's x axis, or at listed (y, z) places; bored along x. */
export const holePattern = z.strictObject({
  diameter_m: positive,
  count: z.int().positive().optional(),
  radius_m: positive.optional(),
  /** Angle of the first hole from the top (+y), clockwise seen from +x (that is, towards -z). */
  start_deg: z.number().optional(),
  places_m: z.array(z.tuple([z.number(), z.number()])).optional(),
  /** Stretch of x that is bored; left out: right through. */
  from_x_m: z.number().optional(),
  to_x_m: z.number().optional(),
  /** Slot length along the circle or along z (0: round hole). */
  slot_m: nonNegative.optional(),
});
export type HolePattern = z.infer<typeof holePattern>;

/** A cylinder of a turned stack: stations along x with inner and outer radius. */
export const station = z.strictObject({
  from_x_m: z.number(),
  to_x_m: z.number(),
  inner_m: nonNegative,
  outer_m: positive,
  /** Outer radius at to_x_m when the stretch tapers. */
  outer_end_m: positive.optional(),
  inner_end_m: nonNegative.optional(),
});
export type Station = z.infer<typeof station>;
