import { z } from 'zod';
import { nonNegative, positive, spline, station } from './common';

/** A quill about x: a turned shaft with a splined male end and a sleeve with a splined bore. */
export const couplingShaftParams = z.strictObject({
  builder: z.literal('coupling-shaft'),
  stations: z.array(station).min(1),
  chamfer_m: nonNegative,
  male: spline.extend({ from_x_m: z.number(), to_x_m: z.number() }),
  /** The sleeve's station in `stations` has the tooth tips' radius or less as inner radius. */
  female: spline.extend({ from_x_m: z.number(), to_x_m: z.number(), outer_m: positive }),
});
export type CouplingShaftParams = z.infer<typeof couplingShaftParams>;
