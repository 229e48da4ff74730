/** The table of builders: a builder named in core/machine without its function here is a type error. */
import type { BuilderName, BuilderParams } from '../../machine';
import type { Builder } from './context';
import { buildBolt } from './bolt';
import { buildNut } from './nut';
import { buildBoxSection } from './box-section';
import { buildPlateOutline } from './plate-outline';
import { buildSidePlate } from './side-plate';
import { buildHydraulicCylinder } from './hydraulic-cylinder';
import { buildHose } from './hose';
import { buildPadSegment } from './pad-segment';
import { buildTyre } from './tyre';
import { buildBuiltUp } from './built-up';
import { buildTurned } from './turned';
import { buildExciterHousing } from './exciter-housing';
import { buildShot } from './shot';
import { buildSphericalRollerBearing } from './spherical-roller-bearing';
import { buildTaperedRollerBearing } from './tapered-roller-bearing';
import { buildIsolator } from './isolator';
import { buildRadialPistonMotor } from './radial-piston-motor';
import { buildAxialMotor } from './axial-motor';
import { buildCouplingShaft } from './coupling-shaft';
import { buildLipSeal } from './lip-seal';
import { buildORing } from './o-ring';
import { buildLockWasher } from './lock-washer';
import { buildBentTube } from './bent-tube';

export const builders: {
  readonly [N in BuilderName]: Builder<Extract<BuilderParams, { readonly builder: N }>>;
} = {
  turned: buildTurned,
  'exciter-housing': buildExciterHousing,
  shot: buildShot,
  'spherical-roller-bearing': buildSphericalRollerBearing,
  'tapered-roller-bearing': buildTaperedRollerBearing,
  isolator: buildIsolator,
  'radial-piston-motor': buildRadialPistonMotor,
  'axial-motor': buildAxialMotor,
  'coupling-shaft': buildCouplingShaft,
  'lip-seal': buildLipSeal,
  'o-ring': buildORing,
  'lock-washer': buildLockWasher,
  'bent-tube': buildBentTube,
  bolt: buildBolt,
  nut: buildNut,
  'box-section': buildBoxSection,
  'plate-outline': buildPlateOutline,
  'side-plate': buildSidePlate,
  'hydraulic-cylinder': buildHydraulicCylinder,
  hose: buildHose,
  'pad-segment': buildPadSegment,
  tyre: buildTyre,
  'built-up': buildBuiltUp,
};

export type { Builder, BuildContext } from './context';
