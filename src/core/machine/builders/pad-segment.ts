import { z } from 'zod';
import { positive } from './common';

/**
 * One segment of a pad shell kit: a part of a cylinder about x, centred on the top (+y), with rows of tapered pads
 * and a flange at each end, bored for its bolts. Own frame: x along the drum, the drum axis is the x axis.
 */
export const padSegmentParams = z.strictObject({
  builder: z.literal('pad-segment'),
  inner_m: positive,
  plate_m: positive,
  /** Along x, centred. */
  width_m: positive,
  /** Angle of the segment, both flanges included. */
  arc_deg: positive,
  flange: z.strictObject({
    thickness_m: positive,
    height_m: positive,
    /** Clearance hole in the flange at the +z end, thread's major diameter in the one at the -z end. */
    bolt_hole_m: positive,
    tapped_hole_m: positive,
    /** Places of the bolts along x, and their distance from the drum axis. */
    bolts_x_m: z.array(z.number()).min(1),
    bolts_radius_m: positive,
  }),
  pad: z.strictObject({
    /** Top of the pads from the drum axis. */
    reach_m: positive,
    /** Size at the foot and at the top: [along x, round the drum]. */
    foot_m: z.tuple([positive, positive]),
    top_m: z.tuple([positive, positive]),
    /** Rows along x; each row lists its pads' angles from the segment's middle. */
    rows: z.array(z.strictObject({ x_m: z.number(), angles_deg: z.array(z.number()).min(1) })).min(1),
  }),
});
export type PadSegmentParams = z.infer<typeof padSegmentParams>;
