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

export const builders: {
  readonly [N in BuilderName]: Builder<Extract<BuilderParams, { readonly builder: N }>>;
} = {
  turned: buildTurned,
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
