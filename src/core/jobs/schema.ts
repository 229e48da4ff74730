/**
 * The schema of job files (schema_version 1), models/<machine>/jobs/<id>.yaml. A job names what is worked on and what
 * only a person can do there (clean, measure, heat, torque, shim, fill); how to get there and back, what to hold up and
 * what weighs what comes from the planner and the model. SI, with the unit in each key.
 */
import { z } from 'zod';
import type { SignalWord } from '../machine';
import { numberSpecSchema } from './number-specs';

export const JOB_SCHEMA_VERSION = 1;

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const positive = z.number().positive();

/** A person's words: English, or one text a language. */
export const textSchema = z.union([
  z.string().min(1),
  z.record(z.string().regex(/^[a-z]{2}(-[A-Z]{2})?$/), z.string().min(1)),
]);

export const works = [
  'replace',
  'inspect',
  'adjust',
  'clean',
  'drain-fill',
  'test',
  'walk-around',
  'tow',
  'remove',
] as const;
export const phases = ['prepare', 'apart', 'work', 'measure', 'together', 'test'] as const;
export const actions = [
  'secure',
  'record',
  'mark',
  'clean',
  'inspect',
  'measure',
  'heat',
  'cool',
  'press',
  'fit',
  'torque',
  'shim',
  'lubricate',
  'drain',
  'fill',
  'lift',
  'move',
  'adjust',
  'run',
  'lock',
] as const;
export const signalWords = [
  'danger',
  'warning',
  'caution',
  'notice',
] as const satisfies readonly SignalWord[];

/** One of the catalogue's cautions by id, or a job's own words with its signal word. */
export const jobCautionSchema = z.union([
  id,
  z.strictObject({ signal: z.enum(signalWords), text: textSchema }),
]);

/** What a field measures; the value is kept in the SI unit that the name says. */
export const fieldUnits = [
  'm',
  'kg',
  'N',
  'Nm',
  'Pa',
  'degC',
  'Hz',
  'rad/s',
  'rad',
  'm3',
  's',
  'IRHD',
  'count',
  'share',
] as const;

export const fieldSchema = z.strictObject({
  /** Unique in the job; a number of the sheet may read its value under this id. */
  id,
  label: textSchema,
  /** number: measured; check: yes or no; choice: one of `choices`; text: free words (serial numbers). */
  type: z.enum(['number', 'check', 'choice', 'text']).default('number'),
  unit: z.enum(fieldUnits).optional(),
  /** Shown in hundredths of a millimetre rather than millimetres, and the like. */
  fine: z.boolean().optional(),
  min: z.number().optional(),
  max: z.number().optional(),
  /** Where the limits come from: of the training machine, the trade, or a source of the machine file. */
  source: z.enum(['training-value', 'common-practice', 'from-manual', 'computed']).optional(),
  /** The limit or the value itself must be read in the manual of one's own machine; it always wins. */
  from_manual: z.boolean().optional(),
  choices: z.array(z.strictObject({ id, label: textSchema, good: z.boolean().optional() })).optional(),
  /** May stay empty even at a hold point. */
  optional: z.boolean().optional(),
});

export const stepSchema = z.strictObject({
  id,
  phase: z.enum(phases),
  action: z.enum(actions),
  /**
   * Where it stands in 'apart' or 'together': after these units are all off (back on), or before the first of them
   * goes. Without it: at the end of its phase.
   */
  after: z.array(id).min(1).optional(),
  before: z.array(id).min(1).optional(),
  text: textSchema,
  /** Why, in the apprentice's words. */
  why: textSchema.optional(),
  /** What the picture shows and the balloons name. */
  units: z.array(id).optional(),
  cautions: z.array(jobCautionSchema).optional(),
  numbers: z.array(numberSpecSchema).optional(),
  fields: z.array(fieldSchema).optional(),
  /** Fastener groups worked in this step: their tool, torque field and order are shown. */
  bolts: z.array(id).optional(),
  /** Units lifted in this step where the planner does not lift them: mass, centre and slings are shown. */
  lifts: z.array(id).min(1).optional(),
  /** The next step may not be ticked before every field here is filled and within its limits or signed for. */
  hold: z.boolean().optional(),
  time_s: positive,
  people: z.int().min(1).max(6).optional(),
});

export const orderLineSchema = z.strictObject({
  /** A kind of the machine: its boundary dimensions are printed. */
  kind: id.optional(),
  text: textSchema,
  count: z.int().positive().optional(),
  volume_m3: positive.optional(),
  mass_kg: positive.optional(),
  always: z.boolean().optional(),
});

export const jobFileSchema = z.strictObject({
  schema_version: z.literal(JOB_SCHEMA_VERSION),
  id,
  title: textSchema,
  summary: textSchema,
  work: z.enum(works),
  /** Heading in the list of jobs. */
  family: z.enum(['vibration-side', 'drive-side', 'exciter', 'frame', 'drum', 'service']),
  /** Place in the list; the id decides between equals. */
  rank: z.int().optional(),
  /** Units to free, or entries of a pattern (all its copies); left out: nothing is taken apart. */
  targets: z.array(id).min(1).optional(),
  /** Parts the picture shows where nothing is taken apart. */
  shows: z.array(id).optional(),
  /** Options of the machine that this job needs on or off. */
  options: z.record(id, z.boolean()).optional(),
  prerequisites: z.array(textSchema).min(1),
  cautions: z.array(jobCautionSchema).min(1),
  steps: z.array(stepSchema).min(1),
  order: z.array(orderLineSchema).optional(),
  /** Tools beyond those that the planner names. */
  tools: z.array(textSchema).optional(),
  people: z.int().min(1).max(6),
  /** Words on what may go wrong or how it is done on other machines. */
  notes: z.array(textSchema).optional(),
});

export type Text = z.infer<typeof textSchema>;
export type Work = z.infer<typeof jobFileSchema>['work'];
export type Phase = (typeof phases)[number];
export type Action = (typeof actions)[number];

export type FieldUnit = (typeof fieldUnits)[number];
export type JobCaution = z.infer<typeof jobCautionSchema>;
export type JobField = z.infer<typeof fieldSchema>;
export type JobStep = z.infer<typeof stepSchema>;
export type OrderLine = z.infer<typeof orderLineSchema>;
/** A job as data. */
export type Job = z.infer<typeof jobFileSchema>;

/** The words in a language, else in English, else in whichever there is. */
export function textIn(text: Text, language: string): string {
  if (typeof text === 'string') return text;
  return text[language] ?? text['en'] ?? Object.values(text)[0] ?? '';
}
