import { z } from 'zod';
import { holePattern, positive } from './common';

/**
 * A low-speed radial-piston motor about x: the face of its turning output flange at x = 0, all else towards -x, the
 * fixed mount flange further back.
 */
export const radialPistonMotorParams = z.strictObject({
  builder: z.literal('radial-piston-motor'),
  output: z.strictObject({
    radius_m: positive,
    thickness_m: positive,
    boss_m: positive,
    boss_length_m: positive,
  }),
  body: z.strictObject({
    radius_m: positive,
    to_x_m: z.number(),
    lobes: z.int().min(3),
    lobe_depth_m: positive,
  }),
  mount: z.strictObject({ radius_m: positive, from_x_m: z.number(), to_x_m: z.number() }),
  cover: z.strictObject({ radius_m: positive, length_m: positive }),
  output_holes: z.array(holePattern),
  mount_holes: z.array(holePattern),
  /** Ports in the cover's end face, blind. */
  ports: z.array(holePattern),
});
export type RadialPistonMotorParams = z.infer<typeof radialPistonMotorParams>;
