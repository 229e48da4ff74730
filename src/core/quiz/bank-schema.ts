/**
 * The form of bank files: `bank.yaml` holds what the questions are (ids, answers, references), `bank.<language>.yaml`
 * what they say. Strict: an unknown key is a fault.
 */
import { z } from 'zod';
import { UNITS, type Quantity } from '../kernel';
import { DIRECTION_SETS } from './item';
import { pictureSchema } from './picture';
import { idSchema, refSchema, stageSettingSchema } from './stage-setting';

export const BANK_VERSION = 1;

const quantities = Object.keys(UNITS) as [Quantity, ...Quantity[]];
export const quantitySchema = z.enum(quantities);
/** Dotted name of a value that is computed from the model, such as `study.exciter.high.force_N`. */
export const valueNameSchema = z.string().regex(/^[a-z0-9]+([.\-_][A-Za-z0-9]+)*$/);
export const stepAddressSchema = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*\/[a-z0-9]+(-[a-z0-9]+)*$/);
const topicsOf = (sets: typeof DIRECTION_SETS): (keyof typeof DIRECTION_SETS)[] =>
  Object.keys(sets) as (keyof typeof DIRECTION_SETS)[];

/** An id alone has its words in the text file; otherwise it says the name of a part or fault, or a value. */
export const optionSchema = z.union([
  idSchema,
  z.strictObject({ id: idSchema, part: refSchema }),
  z.strictObject({ id: idSchema, fault: idSchema }),
  z.strictObject({ id: idSchema, value: valueNameSchema }),
  z.strictObject({ id: idSchema, si: z.number(), quantity: quantitySchema }),
]);

const shared = {
  /** Unique over all banks: results and review plans are kept by it. */
  id: idSchema,
  difficulty: z.union([z.literal(1), z.literal(2), z.literal(3)]),
  /** A publication (author, title, edition, place in it), or 'common practice'. */
  source: z.string().min(1).max(300),
  /** Where a result leads. */
  about: z
    .strictObject({
      parts: z.array(refSchema).optional(),
      /** `topic/step` of the lesson that teaches it. */
      step: stepAddressSchema.optional(),
      /** Address in the app without `#/`, such as `studies/two-speed`. */
      place: z.string().max(120).optional(),
      terms: z.array(idSchema).optional(),
    })
    .optional(),
  stage: stageSettingSchema.optional(),
  picture: pictureSchema.optional(),
};

const options = z.array(optionSchema).min(2).max(8);
const keep_order = z.boolean().optional();

export const itemSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('choose-one'), ...shared, options, right: idSchema, keep_order }),
  z.strictObject({
    kind: z.literal('choose-several'),
    ...shared,
    options,
    right: z.array(idSchema).min(1),
    keep_order,
  }),
  z.strictObject({
    kind: z.literal('pick-part'),
    ...shared,
    /** Any part of these is right. */
    accept: z.array(refSchema).min(1),
    /** The list beside the stage; holds one of `accept`, the rest are wrong. */
    among: z.array(refSchema).min(3).max(12),
  }),
  z.strictObject({
    kind: z.literal('order'),
    ...shared,
    /** Units of the machine (`part`) where the planner judges; any texts elsewhere. */
    cards: z.array(optionSchema).min(3).max(8),
    /**
     * 'planner': every order that the machine allows counts. 'as-listed': this order only. Or pairs: the first of
     * each must go before the second.
     */
    legal: z.union([
      z.enum(['planner', 'as-listed']),
      z.strictObject({ before: z.array(z.tuple([idSchema, idSchema])).min(1) }),
    ]),
  }),
  z.strictObject({
    kind: z.literal('number'),
    ...shared,
    quantity: quantitySchema,
    answer: z.union([z.strictObject({ value: valueNameSchema }), z.strictObject({ si: z.number() })]),
    /** Largest difference that counts as right: a share of the answer, or an amount in SI. */
    tolerance: z.union([
      z.strictObject({ share: z.number().positive().max(0.5) }),
      z.strictObject({ si: z.number().positive() }),
    ]),
  }),
  z.strictObject({
    kind: z.literal('direction'),
    ...shared,
    set: z.enum(topicsOf(DIRECTION_SETS)),
    right: idSchema,
  }),
  z.strictObject({
    kind: z.literal('match'),
    ...shared,
    /** Left sides; the right side of each has the same id in the text file. */
    left: z.array(optionSchema).min(2).max(8),
    /** Right sides that belong to none. */
    extra: z.array(idSchema).max(4).optional(),
  }),
  z.strictObject({
    kind: z.literal('read-picture'),
    ...shared,
    picture: pictureSchema,
    options,
    right: idSchema,
    keep_order,
  }),
  z.strictObject({
    kind: z.literal('find-fault'),
    ...shared,
    /** What was seen or measured; words in the text file. */
    shown: z.array(idSchema).min(1).max(8),
    options,
    right: idSchema,
  }),
]);

export const bankSchema = z.strictObject({
  schema_version: z.literal(BANK_VERSION),
  /** Kept out of the built app, for use in class by the host alone. */
  held_back: z.boolean().optional(),
  items: z.array(itemSchema).min(1).max(500),
});

/** Longest text of a file's entry, in characters. */
export const text = z.string().min(1).max(4000);
const texts = z.record(idSchema, text);

export const itemTextsSchema = z.strictObject({
  prompt: text,
  /** Of options or cards that are ids alone; of `left` too. */
  options: texts.optional(),
  /** What is mistaken about a wrong option, by its id (of a direction by the direction). */
  why: texts.optional(),
  /** Right sides of a match. */
  right: texts.optional(),
  /** What was seen or measured. */
  shown: texts.optional(),
  explain: text,
});

export const bankTextsSchema = z.strictObject({
  schema_version: z.literal(BANK_VERSION),
  language: z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/),
  items: z.record(idSchema, itemTextsSchema),
});

export type BankFile = z.infer<typeof bankSchema>;
export type ItemEntry = z.infer<typeof itemSchema>;
export type OptionEntry = z.infer<typeof optionSchema>;
export type ItemTexts = z.infer<typeof itemTextsSchema>;
export type BankTexts = z.infer<typeof bankTextsSchema>;
