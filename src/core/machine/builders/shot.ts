import { z } from 'zod';

/**
 * Loose shot at rest in the chamber of a housing kind: level, as much of it as the machine's operation says, packed
 * as it says. The kind's mass is declared, since the body is a bulk with air between the balls.
 */
export const shotParams = z.strictObject({
  builder: z.literal('shot'),
  /** Id of the kind whose chamber and baffle hold it. */
  housing: z.string(),
  /** Air left at the chamber's walls, so that no faces coincide. */
  gap_m: z.number().nonnegative(),
});
export type ShotParams = z.infer<typeof shotParams>;
