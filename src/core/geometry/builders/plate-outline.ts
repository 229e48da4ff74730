import type { PlateOutlineParams } from '../../machine';
import { body, type BuildContext } from './context';
import { boreHoles } from './holes';
import { roundedOutline } from './outline';

/** A flat plate: its rounded outline and its eyes joined, then bored. */
export function buildPlateOutline(context: BuildContext, params: PlateOutlineParams) {
  const { solids } = context;
  const { from_x_m: x0, to_x_m: x1 } = params;
  const plate = solids.prism(roundedOutline(params.corners_m, params.corner_radius_m ?? 0), x0, x1);
  const eyes = (params.eyes ?? []).map((eye) =>
    solids.translate(solids.cylinder(x0, x1, eye.radius_m), [0, eye.at_m[0], eye.at_m[1]]),
  );
  const whole = eyes.length > 0 ? solids.union([plate, ...eyes]) : plate;
  return [body(context, 'solid', boreHoles(solids, whole, params.holes, x0, x1))];
}
