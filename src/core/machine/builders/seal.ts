import { z } from 'zod';
import { positive } from './common';

/** A rotary shaft lip seal about x from x = 0 to its width, its spring side and main lip towards -x. */
export const lipSealParams = z.strictObject({
  builder: z.literal('lip-seal'),
  shaft_radius_m: positive,
  outer_radius_m: positive,
  width_m: positive,
  case_material: z.string(),
  /** A second lip towards +x that keeps dirt out. */
  dirt_lip: z.boolean(),
});
export type LipSealParams = z.infer<typeof lipSealParams>;

/** A rubber ring of round section about x, squeezed in its groove, centred on x = 0. */
export const oRingParams = z.strictObject({
  builder: z.literal('o-ring'),
  /** Floor of the groove and the bore or face that it seals against. */
  inner_m: positive,
  outer_m: positive,
  width_m: positive,
});
export type ORingParams = z.infer<typeof oRingParams>;
