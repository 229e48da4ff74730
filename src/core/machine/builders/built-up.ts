import { z } from 'zod';
import { nonNegative, positive, vec3 } from './common';

const pair = z.tuple([z.number(), z.number()]);
const axis = z.enum(['x', 'y', 'z']);

/** One plain piece of a built-up part, in the kind's frame. */
export const piece = z.discriminatedUnion('form', [
  z.strictObject({ form: z.literal('box'), from_m: vec3, to_m: vec3 }),
  z.strictObject({
    form: z.literal('cylinder'),
    axis,
    /** A point of the axis: the two coordinates other than `axis`, in the order x, y, z. */
    at_m: pair,
    radius_m: positive,
    from_m: z.number(),
    to_m: z.number(),
  }),
  /** A polygon drawn in the plane across `axis` (the two other coordinates in the order x, y, z), run along it. */
  z.strictObject({
    form: z.literal('prism'),
    axis,
    corners_m: z.array(pair).min(3),
    corner_radius_m: nonNegative.optional(),
    from_m: z.number(),
    to_m: z.number(),
  }),
  /** A round-ended slot across `axis`: both centres of its ends. */
  z.strictObject({
    form: z.literal('slot'),
    axis,
    ends_m: z.tuple([pair, pair]),
    radius_m: positive,
    from_m: z.number(),
    to_m: z.number(),
  }),
]);
export type Piece = z.infer<typeof piece>;

/** Plates, blocks and tubes joined into one solid, less its cuts: brackets, blocks with eyes, scraper arms, hoods. */
export const builtUpParams = z.strictObject({
  builder: z.literal('built-up'),
  pieces: z.array(piece).min(1),
  cuts: z.array(piece).optional(),
  /** Shown whole in sections along its axis (pins). */
  shaft: z.boolean().optional(),
});
export type BuiltUpParams = z.infer<typeof builtUpParams>;
