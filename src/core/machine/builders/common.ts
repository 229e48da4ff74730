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
  /** Angle of each hole instead of equal spacing (degrees from the top, as start_deg, which is added). */
  angles_deg: z.array(z.number()).optional(),
  /** Stretch of x that is bored; left out: right through. */
  from_x_m: z.number().optional(),
  to_x_m: z.number().optional(),
  /** Distance between the centres of a slot's round ends (0 or left out: round hole). */
  slot_m: nonNegative.optional(),
  /** Where slots run: along the circle (as holes on a circle do unless told), or along y or z (places: z). */
  slot_along: z.enum(['circle', 'y', 'z']).optional(),
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

/** A slot along x, open outwards: a keyway, a ring nut's slots, the mouth of a shim. */
export const keyway = z.strictObject({
  from_x_m: z.number(),
  to_x_m: z.number(),
  width_m: positive,
  /** Radius of its floor. */
  floor_m: nonNegative,
  /** How far out it is cut; left out: right out. */
  top_m: positive.optional(),
  angle_deg: z.number(),
  count: z.int().positive().optional(),
});
export type Keyway = z.infer<typeof keyway>;

/** A straight round hole in any direction, between two points of the kind's frame. */
export const drilling = z.strictObject({ diameter_m: positive, from_m: vec3, to_m: vec3 });
export type Drilling = z.infer<typeof drilling>;

/** Spline teeth with straight flanks about x: number, radii of their tips and roots (of the spaces in a bore). */
export const spline = z.strictObject({
  teeth: z.int().positive(),
  root_m: positive,
  tip_m: positive,
});
export type Spline = z.infer<typeof spline>;
