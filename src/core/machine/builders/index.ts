/**
 * The parameters of every part-kind builder. One file a builder here (what it is, its validator, its type),
 * and one file of the same name in core/geometry/builders (how its solid is made). To add a builder: write both
 * files, add the validator to the union below and the function to the table in core/geometry/builders.
 */
import { z } from 'zod';
import { turnedParams } from './turned';
import { boltParams } from './bolt';
import { nutParams } from './nut';
import { boxSectionParams } from './box-section';
import { plateOutlineParams } from './plate-outline';
import { sidePlateParams } from './side-plate';
import { hydraulicCylinderParams } from './hydraulic-cylinder';
import { hoseParams } from './hose';
import { padSegmentParams } from './pad-segment';
import { tyreParams } from './tyre';
import { builtUpParams } from './built-up';

export const builderParams = z.discriminatedUnion('builder', [
  turnedParams,
  boltParams,
  nutParams,
  boxSectionParams,
  plateOutlineParams,
  sidePlateParams,
  hydraulicCylinderParams,
  hoseParams,
  padSegmentParams,
  tyreParams,
  builtUpParams,
]);
export type BuilderParams = z.infer<typeof builderParams>;
export type BuilderName = BuilderParams['builder'];

export * from './common';
export * from './turned';
export * from './bolt';
export * from './nut';
export * from './box-section';
export * from './plate-outline';
export * from './side-plate';
export * from './hydraulic-cylinder';
export * from './hose';
export * from './pad-segment';
export * from './tyre';
export * from './built-up';
