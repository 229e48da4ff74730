/**
 * The schema of fault files (models/<machine>/faults/*.yaml): faults as changes of inputs with a severity, the
 * measurements on offer, and the test bench. Several files of a machine are one fault book. SI, unit in the key.
 */
import { z } from 'zod';
import { INPUT_NAMES } from './inputs';
import { QUANTITY_OF } from './reading-names';

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const positive = z.number().positive();
/** Probabilities by outcome; what is missing has none of it. They are scaled to sum to 1. */
const chances = z.record(id, z.number().nonnegative());

export const effectSchema = z.strictObject({
  input: z.enum(INPUT_NAMES as [string, ...string[]]),
  /** Value when the fault is mild (severity 0) and severe (severity 1); a straight line between. */
  mild: z.number(),
  severe: z.number(),
});

export const faultSchema = z.strictObject({
  id,
  /** How often it is met, against the other faults. */
  prior: positive,
  /** Parts to look at, any id that a relation may name. */
  parts: z.array(id).min(1),
  /** Steps of severity that are computed; 1: it is there or not. */
  levels: z.int().min(1).max(15),
  effects: z.array(effectSchema),
  /** What shows without being measured in numbers: common practice, no source; these chances are the model. */
  signs: z.record(id, z.strictObject({ mild: chances, severe: chances })).optional(),
  source: z.string(),
});

export const numericMeasurementSchema = z.strictObject({
  id: z.enum(Object.keys(QUANTITY_OF) as [string, ...string[]]),
  kind: z.literal('number'),
  minutes: positive,
  /** Ways to take it, the usual one first: standard error = sd + share x reading. */
  methods: z.array(z.strictObject({ id, sd: positive, share: z.number().nonnegative() })).min(1),
  /** Readings that can be met at all, for what none of the faults explains. */
  span: z.tuple([z.number(), z.number()]),
  source: z.string(),
});

export const lookedMeasurementSchema = z.strictObject({
  id,
  kind: z.literal('look'),
  minutes: positive,
  outcomes: z.array(id).min(2),
  /** Chances on a sound machine; left out: computed. */
  sound: chances.optional(),
  source: z.string(),
});

export const benchSchema = z.strictObject({
  bed_damping_Ns_m: positive,
  motor_displacement_m3_rev: positive,
  motor_mechanical: positive,
  /** Flow that the charge pump can make good before its pressure falls. */
  charge_flow_m3_s: positive,
  /** Friction torque of a bearing is half of this times load and bore (handbook value, from memory). */
  bearing_friction: positive,
  /** Seats of the exciter bearings for the clearance that is left. */
  bearing: z.strictObject({
    bore_m: positive,
    outside_m: positive,
    shaft: z.string(),
    housing: z.string(),
    inner_warmer_K: z.number(),
    /** Clearance below which it begins to run hot. */
    needed_m: positive,
  }),
  /** Warmth given off by one bearing seat, W/K; churning for each metre of level over the mark, W. */
  seat_W_K: positive,
  churning_W_m: positive,
  case_radius_m: positive,
  case_length_m: positive,
  grade_percent: positive,
  drum_adhesion: positive,
  axle_adhesion: positive,
  brake_W_K: positive,
  travel_m_s: positive,
  hub_preload_N: positive,
  hub_friction: positive,
  /** Oil in the chamber up to which the shot still settles as in the table. */
  film_m3: positive,
  source: z.string(),
});

export const faultFileSchema = z.strictObject({
  schema_version: z.literal(1),
  faults: z.array(faultSchema).optional(),
  measurements: z
    .array(z.discriminatedUnion('kind', [numericMeasurementSchema, lookedMeasurementSchema]))
    .optional(),
  /** Sound value (left out: the machine's own) and its spread over sound machines, one standard deviation. */
  inputs: z
    .partialRecord(
      z.enum(INPUT_NAMES as [string, ...string[]]),
      z.strictObject({ sound: z.number().optional(), spread: z.number().nonnegative().optional() }),
    )
    .optional(),
  bench: benchSchema.optional(),
  /** Share of machines with nothing wrong, and with something that is not in the book. */
  hypotheses: z
    .strictObject({
      no_fault: positive,
      something_else: positive,
      /** Chance that a reading is out of the ordinary when the cause is none of the book. */
      odd_share: z.number().gt(0).lt(1),
    })
    .optional(),
});

export type FaultFile = z.infer<typeof faultFileSchema>;
export type FaultEntry = z.infer<typeof faultSchema>;
export type NumericMeasurement = z.infer<typeof numericMeasurementSchema>;
export type LookedMeasurement = z.infer<typeof lookedMeasurementSchema>;
export type Measurement = NumericMeasurement | LookedMeasurement;
export type Bench = z.infer<typeof benchSchema>;
export type Hypotheses = NonNullable<FaultFile['hypotheses']>;
export type Chances = z.infer<typeof chances>;

export interface FaultBook {
  readonly faults: readonly FaultEntry[];
  readonly measurements: readonly Measurement[];
  readonly inputs: NonNullable<FaultFile['inputs']>;
  readonly bench: Bench;
  readonly hypotheses: Hypotheses;
}
