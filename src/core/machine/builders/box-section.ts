import { z } from 'zod';
import { holePattern, positive } from './common';

/** Holes bored into one side wall of a hollow beam: places along x and along the wall's other direction. */
export const sideHoles = z.strictObject({
  /** The wall's outward direction in the kind's frame. */
  face: z.enum(['+y', '-y', '+z', '-z']),
  diameter_m: positive,
  /** Depth from the outer face; left out: through this wall only. */
  depth_m: positive.optional(),
  /** [x, z] on the y faces, [x, y] on the z faces. */
  places_m: z.array(z.tuple([z.number(), z.number()])).min(1),
});
export type SideHoles = z.infer<typeof sideHoles>;

/** A hollow beam of square or oblong section along x, centred on the origin, closed by end plates. */
export const boxSectionParams = z.strictObject({
  builder: z.literal('box-section'),
  length_m: positive,
  /** Outer size along y. */
  height_m: positive,
  /** Outer size along z. */
  width_m: positive,
  wall_m: positive,
  end_plate_m: positive,
  /** Holes through both end plates, bored along x. */
  end_holes: z.array(holePattern).optional(),
  side_holes: z.array(sideHoles).optional(),
});
export type BoxSectionParams = z.infer<typeof boxSectionParams>;
