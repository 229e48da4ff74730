/**
 * What a job step asks to be worked out, by name. The numbers come from the model (sizes, fits, masses, loads) and from
 * the values entered so far; a job file never holds a result.
 */
import { z } from 'zod';

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const positive = z.number().positive();
/** A seat of the machine, by the two that its relation names. */
const seat = { inner: id, outer: id };

export const numberSpecSchema = z.discriminatedUnion('number', [
  /** Limits of the fit, least to greatest clearance or interference. */
  z.strictObject({ number: z.literal('fit'), ...seat }),
  /** Force to press the two together at their greatest interference, with pressure and stress. */
  z.strictObject({ number: z.literal('press'), ...seat, friction: positive.optional() }),
  /** Temperature of the outer part so that the inner one slides in; and how cold the inner one instead. */
  z.strictObject({
    number: z.literal('heating'),
    ...seat,
    clearance_m: positive,
    start_C: z.number().optional(),
  }),
  /** Clearance left in a bearing once it is fitted and warm. */
  z.strictObject({
    number: z.literal('clearance'),
    bearing: id,
    class: z.enum(['CN', 'C3', 'C4']),
    warmer_K: z.number().optional(),
  }),
  /** Which ring needs the tight seat. */
  z.strictObject({
    number: z.literal('tight-ring'),
    load: z.enum(['still', 'with-shaft']),
    turns: z.enum(['shaft', 'housing']),
  }),
  /** Load and rating life of an exciter bearing at high and low, and of the pair. */
  z.strictObject({ number: z.literal('bearing-life'), side: z.enum(['left', 'right', 'both']) }),
  /** Whether a bolted joint holds against a force: the exciter's, or one given. */
  z.strictObject({
    number: z.literal('joint-slip'),
    group: id,
    friction: positive,
    force_N: positive.optional(),
  }),
  /** Stiffness of a set of isolators, its sag, natural frequency and what passes through. */
  z.strictObject({ number: z.literal('isolators'), sets: z.array(id).min(1) }),
  /** How well the isolators of a set agree, from their hardness fields. */
  z.strictObject({ number: z.literal('set-match'), set: id, fields: z.array(id).min(2) }),
  /** Shims from four corner gaps. */
  z.strictObject({
    number: z.literal('shims'),
    fields: z.strictObject({ front_left: id, front_right: id, rear_left: id, rear_right: id }),
    step_m: positive.optional(),
    tolerance_m: positive.optional(),
  }),
  /** Verdict on the end play of adjustable wheel bearings, and how far to turn the nut. */
  z.strictObject({
    number: z.literal('end-play'),
    field: id,
    male: id,
    female: id,
    min_m: positive,
    max_m: positive,
    lock_places: z.int().positive().optional(),
  }),
  /** Scraper gaps and wear at both ends of both bars. */
  z.strictObject({
    number: z.literal('scrapers'),
    fields: z.strictObject({ front_left: id, front_right: id, rear_left: id, rear_right: id }),
    depths: z.strictObject({ front_left: id, front_right: id, rear_left: id, rear_right: id }).optional(),
    target_m: positive,
    tolerance_m: positive,
    new_depth_m: positive.optional(),
    travel_m: positive,
  }),
  /** Oil in the exciter's case, from its shape and the level. */
  z.strictObject({
    number: z.literal('oil'),
    fluid: id,
    case: id,
    from_x_m: z.number(),
    to_x_m: z.number(),
    level_m: z.number(),
    displaced_m3: positive.optional(),
  }),
  /** Amplitude and frequency to expect, each direction. */
  z.strictObject({ number: z.literal('amplitude') }),
  /** What shackles and eyes still carry out of line. */
  z.strictObject({ number: z.literal('rigging'), angle_from_horizontal_deg: positive }),
  /** Force of a bolt's part at a hydraulic pressure and displacement: torque and pull of the drum. */
  z.strictObject({ number: z.literal('tow-pull'), grade_percent: z.number(), rolling: positive }),
]);
export type NumberSpec = z.infer<typeof numberSpecSchema>;
