/**
 * The parameters of every part-kind builder. One file a builder here (what it is, its validator, its type),
 * and one file of the same name in core/geometry/builders (how its solid is made). To add a builder: write both
 * files, add the validator to the union below and the function to the table in core/geometry/builders.
 */
import { z } from 'zod';
import { turnedParams } from './turned';
import { exciterHousingParams } from './exciter-housing';
import { shotParams } from './shot';
import { sphericalRollerBearingParams } from './spherical-roller-bearing';
import { taperedRollerBearingParams } from './tapered-roller-bearing';
import { isolatorParams } from './isolator';
import { radialPistonMotorParams } from './radial-piston-motor';
import { axialMotorParams } from './axial-motor';
import { couplingShaftParams } from './coupling-shaft';
import { lipSealParams, oRingParams } from './seal';
import { lockWasherParams } from './lock-washer';
import { bentTubeParams } from './bent-tube';
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
  exciterHousingParams,
  shotParams,
  sphericalRollerBearingParams,
  taperedRollerBearingParams,
  isolatorParams,
  radialPistonMotorParams,
  axialMotorParams,
  couplingShaftParams,
  lipSealParams,
  oRingParams,
  lockWasherParams,
  bentTubeParams,
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
export * from './exciter-housing';
export * from './shot';
export * from './spherical-roller-bearing';
export * from './tapered-roller-bearing';
export * from './isolator';
export * from './radial-piston-motor';
export * from './axial-motor';
export * from './coupling-shaft';
export * from './seal';
export * from './lock-washer';
export * from './bent-tube';
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
