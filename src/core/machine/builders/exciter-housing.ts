import { z } from 'zod';
import { positive, spline, station } from './common';

const bodyPlace = z.tuple([z.number(), z.number()]);

/**
 * The exciter's welded housing: a round chamber off the shaft axis, closed by end plates that carry the stub shafts,
 * an L-shaped baffle welded to the chamber's wall and a trim bar on webs on the light side.
 *
 * Body frame (of the numbers here and of the unbalance calculation): origin on the shaft axis, +x towards the chamber's
 * centre, its axis out of the page along the kind's +x. In the kind's frame, as at rest with the heavy side down,
 * body +x is -y and body +y is -z. Angles in degrees, counter-clockwise in the body frame.
 */
export const exciterHousingParams = z.strictObject({
  builder: z.literal('exciter-housing'),
  chamber: z.strictObject({
    radius_m: positive,
    eccentricity_m: positive,
    from_x_m: z.number(),
    to_x_m: z.number(),
  }),
  shell_m: positive,
  end_plate: z.strictObject({ radius_m: positive, thickness_m: positive }),
  baffle: z.strictObject({
    /** Where leg 1 meets the wall, about the chamber's centre. */
    psi_deg: z.number(),
    /** Tilt of leg 1 from the inward normal of the wall. */
    beta_deg: z.number(),
    leg1_m: positive,
    leg2_m: positive,
    /** 1: leg 2 turns clockwise from leg 1; -1: the other way. */
    side: z.union([z.literal(1), z.literal(-1)]),
    /** Side of leg 1 that holds the captured shot: 1 is towards greater psi. */
    pocket_side: z.union([z.literal(1), z.literal(-1)]),
    half_thickness_m: positive,
  }),
  left_shaft: z.array(station).min(1),
  right_shaft: z.array(station).min(1),
  /** Splined bore in the right shaft's end; its station there has the tooth tips' radius as inner radius. */
  right_spline: spline.extend({ from_x_m: z.number(), to_x_m: z.number() }).optional(),
  /** Square across the direction to its centre; solved so that the housing's moment is what it should be. */
  trim_bar: z.strictObject({
    angle_deg: z.number(),
    /** From the shaft axis to the bar's middle. */
    arm_m: positive,
    radial_m: positive,
    tangential_m: positive,
    from_x_m: z.number(),
    to_x_m: z.number(),
  }),
  /** Plates across the axis that carry the bar from the chamber's shell. */
  webs: z.strictObject({ x_m: z.array(z.number()).min(1), thickness_m: positive, width_m: positive }),
  /** Threaded hole for the shot in the right end plate, in the body frame. */
  plug_hole: z.strictObject({ at_m: bodyPlace, diameter_m: positive }).optional(),
});
export type ExciterHousingParams = z.infer<typeof exciterHousingParams>;
