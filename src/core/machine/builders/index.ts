/**
 * The parameters of every part-kind builder. One file a builder here (what it is, its validator, its type),
 * and one file of the same name in core/geometry/builders (how its solid is made). To add a builder: write both
 * files, add the validator to the union below and the function to the table in core/geometry/builders.
 */
import { z } from 'zod';
import { turnedParams } from './turned';

export const builderParams = z.discriminatedUnion('builder', [turnedParams]);
export type BuilderParams = z.infer<typeof builderParams>;
export type BuilderName = BuilderParams['builder'];

export * from './common';
export * from './turned';
