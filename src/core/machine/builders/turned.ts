import { z } from 'zod';
import { drilling, holePattern, keyway, nonNegative, positive, station } from './common';

/**
 * Anything turned about x: shells, heads, tubes, flanges, hubs, rings, stepped shafts, seats, carriers, discs.
 * A stack of stations joined into one solid, outer edges chamfered, holes bored along x.
 */
export const turnedParams = z.strictObject({
  builder: z.literal('turned'),
  stations: z.array(station).min(1),
  /** Chamfer of outer edges that stand free. */
  chamfer_m: nonNegative.optional(),
  /** Chamfer of bore edges that stand free. */
  bore_chamfer_m: nonNegative.optional(),
  holes: z.array(holePattern).optional(),
  /** Round bosses off the axis, each turned about its own; joined before the drillings, holes about each own axis. */
  bosses: z
    .strictObject({
      stations: z.array(station).min(1),
      count: z.int().positive(),
      radius_m: positive,
      start_deg: z.number(),
      holes: z.array(holePattern).optional(),
    })
    .optional(),
  keyways: z.array(keyway).optional(),
  drillings: z.array(drilling).optional(),
  /** Cut along its axis in a section and shown whole, as the drawing convention has it for shafts. */
  shaft: z.boolean().optional(),
});
export type TurnedParams = z.infer<typeof turnedParams>;
