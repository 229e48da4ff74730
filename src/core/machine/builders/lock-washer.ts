import { z } from 'zod';
import { positive } from './common';

/** A tongued lock washer about x from x = 0 to its thickness: a tongue inwards, tabs bent towards -x over the nut. */
export const lockWasherParams = z.strictObject({
  builder: z.literal('lock-washer'),
  inner_m: positive,
  outer_m: positive,
  thickness_m: positive,
  tongue: z.strictObject({ width_m: positive, to_radius_m: positive, angle_deg: z.number() }),
  tab: z.strictObject({ width_m: positive, length_m: positive, angle_deg: z.number() }),
});
export type LockWasherParams = z.infer<typeof lockWasherParams>;
