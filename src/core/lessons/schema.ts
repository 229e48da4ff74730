/**
 * The form of lesson files. `lesson.yaml` holds what the steps do, `lesson.<language>.yaml` what they say;
 * `course.yaml` the order of the lessons; `glossary.yaml` and `glossary.<language>.yaml` the words of the trade.
 */
import { z } from 'zod';
import { idSchema, quantitySchema, refSchema, stageSettingSchema, text, valueNameSchema } from '../quiz';

export const LESSON_VERSION = 1;

/** What a step can ask to be set, and in which unit: SI, degrees where the name says so. */
export const SETTINGS = [
  'explode',
  'cut.offset_m',
  'cut.on',
  'spin',
  'whole-machine',
  'exciter.direction',
  'exciter.frequency_high_Hz',
  'exciter.frequency_low_Hz',
  'exciter.fill',
  'exciter.baffle_psi_deg',
  'exciter.baffle_on',
  'joint.steering_deg',
  'joint.oscillation_deg',
  'slope.drum_range',
  'slope.axle_range',
  'slope.climbs',
] as const;
export type SettingName = (typeof SETTINGS)[number];

/** Something to do before going on (a person may go on without). */
export const taskSchema = z.discriminatedUnion('type', [
  /** Click a part on the stage or choose it in the list. */
  z.strictObject({ type: z.literal('find'), part: refSchema }),
  /** Take the unit off with the teardown steps. */
  z.strictObject({ type: z.literal('take-off'), unit: refSchema }),
  /** Bring a setting to a value or into a range. */
  z.strictObject({
    type: z.literal('set'),
    setting: z.enum(SETTINGS),
    equals: z.union([z.boolean(), z.string().max(20)]).optional(),
    at_least: z.number().optional(),
    at_most: z.number().optional(),
  }),
  /** Read a number off a panel and type it. */
  z.strictObject({
    type: z.literal('measure'),
    value: valueNameSchema,
    tolerance: z.number().positive().max(0.5),
    quantity: quantitySchema.optional(),
  }),
  /** Answer before what follows is shown; the item is of any bank. */
  z.strictObject({ type: z.literal('predict'), item: idSchema }),
]);

export const stepSchema = z.strictObject({
  /** Part of the step's address: stable. */
  id: idSchema,
  /** Left out: the stage stays as the step before has it. */
  stage: stageSettingSchema.optional(),
  /** Caution keys of the catalogue, shown before everything else of the step. */
  cautions: z.array(idSchema).optional(),
  task: taskSchema.optional(),
  /** Item of a bank that checks what the step taught. */
  check: idSchema.optional(),
});

export const lessonSchema = z.strictObject({
  schema_version: z.literal(LESSON_VERSION),
  /** The folder's name. */
  id: idSchema,
  minutes: z.int().min(1).max(60),
  /** Lessons to do before. */
  after: z.array(idSchema).optional(),
  steps: z.array(stepSchema).min(1).max(40),
});

export const stepTextsSchema = z.strictObject({
  title: z.string().min(1).max(80),
  text,
  /** What to do; needed where the step has a task other than predict. */
  task: text.optional(),
  /** Shown once the task is done (after predict: what then is seen). */
  after: text.optional(),
});

export const lessonTextsSchema = z.strictObject({
  schema_version: z.literal(LESSON_VERSION),
  language: z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/),
  title: z.string().min(1).max(80),
  summary: z.string().min(1).max(400),
  steps: z.record(idSchema, stepTextsSchema),
});

export const courseSchema = z.strictObject({
  schema_version: z.literal(LESSON_VERSION),
  /** Folder names, in teaching order. */
  lessons: z.array(idSchema).min(1).max(60),
});

export const glossarySchema = z.strictObject({
  schema_version: z.literal(LESSON_VERSION),
  terms: z
    .array(
      z.strictObject({
        id: idSchema,
        /** Parts that are, hold or show it: the part's card links here. */
        parts: z.array(refSchema).optional(),
        /** Other terms to read. */
        see: z.array(idSchema).optional(),
        source: z.string().max(300).optional(),
      }),
    )
    .min(1)
    .max(500),
});

export const glossaryTextsSchema = z.strictObject({
  schema_version: z.literal(LESSON_VERSION),
  language: z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/),
  terms: z.record(
    idSchema,
    z.strictObject({
      name: z.string().min(1).max(60),
      /** Other words for the same, for the search. */
      also: z.array(z.string().min(1).max(60)).optional(),
      text,
    }),
  ),
});

export type TaskEntry = z.infer<typeof taskSchema>;
export type StepEntry = z.infer<typeof stepSchema>;
export type LessonFile = z.infer<typeof lessonSchema>;
export type LessonTexts = z.infer<typeof lessonTextsSchema>;
export type StepTexts = z.infer<typeof stepTextsSchema>;
export type CourseFile = z.infer<typeof courseSchema>;
export type GlossaryFile = z.infer<typeof glossarySchema>;
export type GlossaryTexts = z.infer<typeof glossaryTextsSchema>;
