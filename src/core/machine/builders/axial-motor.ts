import { z } from 'zod';
import { holePattern, positive, spline } from './common';

/**
 * A hydraulic motor with a projecting splined shaft, about x: its mounting face at x = 0, pilot and shaft towards -x,
 * body towards +x, ports in the end face.
 */
export const axialMotorParams = z.strictObject({
  builder: z.literal('axial-motor'),
  pilot: z.strictObject({
    radius_m: positive,
    /** The pilot is a ring: the coupling's sleeve reaches into it over the shaft. */
    inner_m: positive,
    length_m: positive,
    groove_m: positive,
    groove_width_m: positive,
  }),
  flange: z.strictObject({ radius_m: positive, thickness_m: positive, boss_m: positive }),
  flange_holes: holePattern,
  body: z.strictObject({
    radius_m: positive,
    to_x_m: positive,
    cover_radius_m: positive,
    cover_from_x_m: positive,
  }),
  shaft: spline.extend({ from_x_m: z.number() }),
  ports: z.array(holePattern),
});
export type AxialMotorParams = z.infer<typeof axialMotorParams>;
