/** How the stage stands for a step or a question. What is left out is as in the assembled home view. */
import { z } from 'zod';
import { GROUNDS, SOILS } from '../studies';

/** A part, a pattern, a group, a weldment (as relations name them), or a kind. */
export const refSchema = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*(\/\d\d)?$/);
export const idSchema = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const share = z.number().min(0).max(1);

export const exciterSettingSchema = z.strictObject({
  /** Which half of the study is looked at. */
  direction: z.enum(['high', 'low']).optional(),
  frequency_high_Hz: z.number().positive().max(100).optional(),
  frequency_low_Hz: z.number().positive().max(100).optional(),
  /** Share of the chamber's section that the bulk of the shot fills. */
  fill: share.optional(),
  baffle_psi_deg: z.number().min(-180).max(180).optional(),
  baffle_on: z.boolean().optional(),
});

const grounds = GROUNDS.map(({ id }) => id);
const soils = SOILS.map(({ id }) => id);
const rangeSchema = z.enum(['low', 'high']);

/** The machine bent at its joint; the rear is shown too. */
export const jointSettingSchema = z.strictObject({
  steering_deg: z.number().min(-45).max(45).optional(),
  oscillation_deg: z.number().min(-20).max(20).optional(),
});

/** The study of two-speed traction, open beside the text; what is left out is as the study opens. */
export const slopeSettingSchema = z.strictObject({
  ground: z.enum(grounds).optional(),
  grade_percent: z.number().min(0).max(60).optional(),
  drum_range: rangeSchema.optional(),
  axle_range: rangeSchema.optional(),
});

/** Drum and frame move as the vibration study has it on this ground, many times larger than life. */
export const shakeSettingSchema = z.strictObject({
  soil: z.enum(soils),
  direction: z.enum(['high', 'low']),
});

export const stageSettingSchema = z.strictObject({
  /** View, and the part that it frames. */
  camera: z
    .strictObject({
      view: z.enum(['home', 'front', 'right', 'left', 'top', 'axis', 'fit']),
      part: refSchema.optional(),
    })
    .optional(),
  /** 0 assembled, 1 fully apart. */
  explode: share.optional(),
  /** Cutting plane: its normal in the machine's axes and its distance from the drum's middle. */
  cut: z.strictObject({ axis: z.enum(['x', 'y', 'z']), offset_m: z.number().min(-5).max(5) }).optional(),
  /** The exciter turns, the way of this range. */
  spin: z.enum(['high', 'low']).optional(),
  /** These stand out; the first one is selected. */
  highlight: z.array(refSchema).min(1).optional(),
  /** Only these are shown. */
  only: z.array(refSchema).min(1).optional(),
  ghost: z.array(refSchema).min(1).optional(),
  hide: z.array(refSchema).min(1).optional(),
  /** The rear of the machine is shown too. */
  whole_machine: z.boolean().optional(),
  /** Item balloons. */
  labels: z.boolean().optional(),
  /** Taken down up to the step that takes this unit off, that step included. */
  taken_off: refSchema.optional(),
  options: z.record(idSchema, z.boolean()).optional(),
  exciter: exciterSettingSchema.optional(),
  joint: jointSettingSchema.optional(),
  /** Parts are marked by their side of the isolators: inside, isolator, outside. */
  sides: z.boolean().optional(),
  slope: slopeSettingSchema.optional(),
  shake: shakeSettingSchema.optional(),
});

export type StageSetting = z.infer<typeof stageSettingSchema>;
