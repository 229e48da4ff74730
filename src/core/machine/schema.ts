/**
 * The schema of machine files (schema_version 1). SI, with the unit in each key. A machine is one file or several
 * that are merged: scalars come once, lists are joined in the order of the files, maps are joined by key.
 */
import { z } from 'zod';
import { builderParams } from './builders';
import { nonNegative, positive, vec3 } from './builders/common';

export const SCHEMA_VERSION = 1;

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);

export const finishes = [
  'shell',
  'machined',
  'polished',
  'bolt',
  'cast',
  'painted',
  'rubber',
  'brass',
  'oil',
  'shot',
  'plain',
  'hose',
  'glass',
  'tyre',
  'pad',
  'copper',
] as const;

export const materialSchema = z.strictObject({
  density_kg_m3: positive,
  E_Pa: positive.optional(),
  poisson: positive.optional(),
  alpha_per_K: positive.optional(),
  source: z.string(),
});

export const kindSchema = z.strictObject({
  /** Number in the parts list and in the balloons; unique over kinds. */
  item: z.int().positive(),
  material: id,
  finish: z.enum(finishes),
  params: builderParams,
  /** Key stem of its words in the catalogue (part.<word>.name, .does, .fails); left out: the kind's id. */
  word: id.optional(),
  /** Plain names by language for machines whose words are not in the catalogue. */
  names: z.record(z.string(), z.string()).optional(),
  /** Declared mass of a bought part; wins over the solid's, checked within 5 % unless explained. */
  mass_kg: positive.optional(),
  mass_note: z.string().optional(),
  source: z.string().optional(),
  /** Shown in lists under this heading. */
  family: z.enum([
    'drum',
    'exciter',
    'vibration-side',
    'drive-side',
    'frame',
    'scrapers',
    'fasteners',
    'oil',
    'pads',
    'rear',
  ]),
});

export const movesWith = z.enum(['frame', 'rear-frame', 'drum', 'exciter', 'spindle']);
/** Which side of the isolators: inside it shakes; an isolator counts half. */
export const isolationSide = z.enum(['vibrating', 'isolator', 'still']);
export const viewedFrom = z.enum(['left', 'right']);

export const patternSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('circle'),
    count: z.int().positive(),
    radius_m: nonNegative,
    /** Angle of number 1 from the top, clockwise seen from outside (from the side named in `seen_from`). */
    start_deg: z.number(),
    x_m: z.number(),
    seen_from: viewedFrom,
    /** Leave out these ordinals (counted from 1). */
    skip: z.array(z.int().positive()).optional(),
    /** Turn each copy about x with its angle (default true). */
    turn: z.boolean().optional(),
    /** The kind's +x points to the machine's left instead of its right. */
    flip: z.boolean().optional(),
    /** Angle of each instead of equal spacing (degrees, same sense as start_deg, which is added). */
    angles_deg: z.array(z.number()).optional(),
  }),
  z.strictObject({
    type: z.literal('places'),
    places: z.array(z.strictObject({ at_m: vec3, turn_deg: vec3.optional() })).min(1),
  }),
]);

const shared = {
  id,
  kind: id,
  moves_with: movesWith,
  side: isolationSide,
  /** Hidden in drum views, shown when the person asks for it. */
  context: z.boolean().optional(),
  /** Shown only while this option of the machine is on (pad shells, say). */
  option: id.optional(),
  /** Part of the machine that cannot be taken off in the workshop (the rear frame, say). */
  fixed: z.boolean().optional(),
  /** Unit time, a training value (seconds for the whole unit, one instance of a group). */
  time_s: positive.optional(),
  /** Caution keys that stand before the step that removes it. */
  cautions: z.array(id).optional(),
  /** Axes along which it may leave besides the machine's (own axis of a plug, say). */
  directions: z.array(vec3).optional(),
};

export const partSchema = z.strictObject({
  ...shared,
  /** Rotation about the fixed x, y, z axes in that order, then translation. */
  at_m: vec3.optional(),
  turn_deg: vec3.optional(),
  /** Several alike: ids get -1, -2, ... and each is a part of its own. */
  pattern: patternSchema.optional(),
});

export const groupSchema = z.strictObject({
  ...shared,
  pattern: patternSchema,
  /** Part ids it clamps, from under the head to the part that holds the thread (or the nut side). */
  joins: z.array(id).min(1),
  thread: z.strictObject({
    designation: z.string(),
    diameter_m: positive,
    pitch_m: positive,
    /** Property class, such as '10.9'; null for plugs and pins. */
    class: z.string().nullable(),
  }),
  /** Length of thread engaged in the last of `joins`. */
  engaged_m: nonNegative,
  /** Length clamped between head and thread. */
  grip_m: nonNegative,
  /** Wrench size over the head and the kind of drive. */
  tool: z.strictObject({
    drive: z.enum(['hex', 'socket-hex', 'pin', 'square', 'none']),
    size_m: nonNegative,
  }),
  /** Lock plates, washers and the like that belong to each. */
  note: id.optional(),
});

export const relationSchema = z.discriminatedUnion('type', [
  /** One cylindrical (or plane) seat: `inner` sits in `outer` along `axis`; fit as ISO 286 or words of the list. */
  z.strictObject({
    type: z.literal('seat'),
    inner: id,
    outer: id,
    axis: vec3.optional(),
    diameter_m: positive.optional(),
    /** 'H7/g6' and the like, or 'loose', 'face', 'taper'. */
    fit: z.string(),
    /** Greatest diametral interference in metres (positive where it is tight). */
    interference_m: z.number().optional(),
    source: z.string().optional(),
  }),
  /** Parts that never come apart again: one unit of this id (a weldment). */
  z.strictObject({ type: z.literal('weld'), unit: id, parts: z.array(id).min(2) }),
  z.strictObject({ type: z.literal('bond'), parts: z.array(id).min(2) }),
  z.strictObject({
    type: z.literal('thread'),
    male: id,
    female: id,
    diameter_m: positive,
    pitch_m: positive,
    engaged_m: positive,
  }),
  z.strictObject({ type: z.literal('spline'), male: id, female: id, length_m: positive }),
  z.strictObject({ type: z.literal('seal'), seal: id, between: z.array(id).min(1) }),
  /** A fluid held by the listed parts; taking any of `boundary` off needs it drained by `drain` first. */
  z.strictObject({
    type: z.literal('fluid'),
    fluid: id,
    boundary: z.array(id).min(1),
    drain: id.nullable(),
    volume_m3: positive.optional(),
  }),
  /** A hose that must be off before its motor moves. */
  z.strictObject({ type: z.literal('hose'), hose: id, port: id }),
  /** `part` is carried by `on` (weight path). */
  z.strictObject({ type: z.literal('rests'), part: id, on: id }),
  /** Free contact that is neither seat nor thread (a lock washer's tongue, a shim pack in its gap). */
  z.strictObject({ type: z.literal('contact'), parts: z.array(id).min(2), axis: vec3.optional() }),
]);

/** Working data of the exciter that are no shapes: speeds, oil, where its force acts, how it spins up. */
export const operationSchema = z.strictObject({
  exciter_part: id,
  shot_part: id.nullable(),
  shot_mass_kg: positive,
  shot_density_kg_m3: positive,
  shot_packing: positive,
  ball_diameter_m: positive,
  frequency_high_Hz: positive,
  frequency_low_Hz: positive,
  soft_start_s: positive,
  friction: positive,
  bearings: z.strictObject({
    left: id,
    right: id,
    left_x_m: z.number(),
    right_x_m: z.number(),
    C_N: positive,
    C0_N: positive,
  }),
  operating_mass_kg: positive,
  drum_axle_mass_kg: positive,
});

/** What the rubber of the isolators is, beside their shape. */
export const isolationSchema = z.strictObject({
  hardness_IRHD: positive,
  /** Stiffness in motion over static stiffness. */
  dynamic_factor: positive,
  /** Share of critical damping of the frame on its isolators. */
  damping_ratio: nonNegative,
  source: z.string(),
});

const driveEndSchema = z.strictObject({
  /** All motors of this end together, in low and in high range. */
  displacement_low_m3_rev: positive,
  displacement_high_m3_rev: positive,
  /** Motor turns per wheel turn. */
  gear_ratio: positive,
  rolling_radius_m: positive,
  /** Mechanical efficiency of motor and gear together, and volumetric efficiency of the motor. */
  efficiency: positive,
  volumetric_efficiency: positive,
});

/** The travel drive: drum motor and axle motor in parallel on one closed circuit. */
export const driveSchema = z.strictObject({
  drum: driveEndSchema,
  axle: driveEndSchema,
  relief_Pa: positive,
  charge_Pa: positive,
  /** Greatest flow of the travel pump. */
  pump_flow_m3_s: positive,
  source: z.string(),
});

/** Where the machine bends and rolls: steering about vertical pins, oscillation about a pin along the machine. */
export const articulationSchema = z.strictObject({
  steering_pin_m: vec3,
  steering_limit_deg: positive,
  oscillation_pin_m: vec3,
  oscillation_limit_deg: positive,
  wheelbase_m: positive,
  /** What steers with the joint but does not roll with the rear frame: knuckle and pins. */
  knuckle: z.array(id),
  /** What a picture of the bent machine leaves out: cylinders that change their length, the lock bar. */
  left_out: z.array(id),
  source: z.string(),
});

export const machineFileSchema = z.strictObject({
  schema_version: z.literal(SCHEMA_VERSION),
  machine: z
    .strictObject({
      id,
      name: z.string().min(1),
      place: z.string().optional(),
      note: z.string().optional(),
      drum_width_m: positive,
      drum_radius_m: positive,
    })
    .optional(),
  sources: z.record(id, z.string()).optional(),
  materials: z.record(id, materialSchema).optional(),
  kinds: z.record(id, kindSchema).optional(),
  parts: z.array(partSchema).optional(),
  groups: z.array(groupSchema).optional(),
  relations: z.array(relationSchema).optional(),
  operation: operationSchema.optional(),
  isolation: isolationSchema.optional(),
  drive: driveSchema.optional(),
  articulation: articulationSchema.optional(),
  options: z
    .record(id, z.strictObject({ on: z.boolean(), names: z.record(z.string(), z.string()).optional() }))
    .optional(),
  /** Display names for sets of parts that a plan may take out together (never the fact that they leave together). */
  set_names: z.record(id, z.array(id)).optional(),
});

export type MachineFile = z.infer<typeof machineFileSchema>;
/** A merged file with every section that a machine cannot do without. */
export type CompleteMachineFile = MachineFile & {
  machine: NonNullable<MachineFile['machine']>;
  kinds: NonNullable<MachineFile['kinds']>;
  operation: Operation;
};
export type Material = z.infer<typeof materialSchema>;
export type Kind = z.infer<typeof kindSchema>;
export type Finish = (typeof finishes)[number];
export type MovesWith = z.infer<typeof movesWith>;
export type IsolationSide = z.infer<typeof isolationSide>;
export type Pattern = z.infer<typeof patternSchema>;
export type PartEntry = z.infer<typeof partSchema>;
export type GroupEntry = z.infer<typeof groupSchema>;
export type Relation = z.infer<typeof relationSchema>;
export type Operation = z.infer<typeof operationSchema>;
export type Isolation = z.infer<typeof isolationSchema>;
export type DriveEnd = z.infer<typeof driveEndSchema>;
export type Drive = z.infer<typeof driveSchema>;
export type Articulation = z.infer<typeof articulationSchema>;
