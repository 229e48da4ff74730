import { z } from 'zod';
import { positive, vec3 } from './common';

/** A hose along a smooth curve through given points, a fitting of steel at each end. */
export const hoseParams = z.strictObject({
  builder: z.literal('hose'),
  /** Points of the centre line; the first and last stretches are straight (the fittings stand on them). */
  points_m: z.array(vec3).min(3),
  radius_m: positive,
  fitting: z.strictObject({ radius_m: positive, length_m: positive }),
  /** Corners of the section round the hose (default 10). */
  sides: z.int().min(6).optional(),
  /** Rings between two neighbouring points (default 6). */
  rings: z.int().min(2).optional(),
});
export type HoseParams = z.infer<typeof hoseParams>;
