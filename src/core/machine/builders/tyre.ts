import { z } from 'zod';
import { positive } from './common';

/** A tyre on its rim, turned about x and centred on the origin: few faces, for context. */
export const tyreParams = z.strictObject({
  builder: z.literal('tyre'),
  outer_m: positive,
  rim_m: positive,
  width_m: positive,
  /** Cleats of the tread on each half (0: smooth). */
  cleats: z.int().nonnegative(),
  cleat_height_m: positive,
});
export type TyreParams = z.infer<typeof tyreParams>;
