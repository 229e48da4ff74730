import type { CouplingShaftParams } from '../../machine';
import { body, type BuildContext } from './context';
import { splineOutline } from './spline';
import { turnedSolid } from './turned';

/** Turned blank, the male teeth joined to it and the sleeve's bore cut with its teeth left standing. */
export function buildCouplingShaft(context: BuildContext, params: CouplingShaftParams) {
  const { solids } = context;
  const { male, female } = params;
  const blank = turnedSolid(solids, { stations: params.stations, chamfer_m: params.chamfer_m });
  const teeth = solids.prism(splineOutline(male, 'shaft'), male.from_x_m, male.to_x_m);
  const sleeve = solids.subtract(solids.cylinder(female.from_x_m, female.to_x_m, female.outer_m), [
    solids.prism(splineOutline(female, 'bore'), female.from_x_m - 0.001, female.to_x_m + 0.001),
  ]);
  return [body(context, 'solid', solids.union([blank, teeth, sleeve]))];
}
