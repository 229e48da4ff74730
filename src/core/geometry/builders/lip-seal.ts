import type { LipSealParams } from '../../machine';
import { segmentsFor } from '../segments';
import type { ProfilePoint } from '../solid-kernel';
import { body, type BuildContext } from './context';

/** The drawn steel case on the outside and the rubber with its lip, thickest where the spring lies. */
export function buildLipSeal(context: BuildContext, params: LipSealParams) {
  const { solids } = context;
  const { shaft_radius_m: shaft, outer_radius_m: outer, width_m: w } = params;
  const sheet = 0.0016;
  const floor = shaft + 0.45 * (outer - shaft);
  // The case: an L open towards -x, its floor at +x.
  const shell = solids.subtract(solids.ring(0, w, floor, outer), [
    solids.cylinder(-0.001, w - sheet, outer - sheet),
  ]);
  const web = w - sheet;
  const back = web - 0.003;
  const heel = floor + 0.002;
  // Hangs from the case's floor, runs in to the shaft and forward to the lip with its spring bead.
  const profile: ProfilePoint[] = [
    [web, heel],
    [back, heel],
    [back - 0.001, shaft + 0.0055],
    [0.18 * w, shaft + 0.0055],
    [0.12 * w, shaft + 0.002],
    [0.3 * w, shaft],
    [0.36 * w, shaft],
    [back + 0.0008, shaft + 0.0026],
    ...(params.dirt_lip ? ([[w - 0.0002, shaft], [w, shaft + 0.0008]] as const) : []), // prettier-ignore
    [w, shaft + 0.0035],
    [w, floor - 0.0006],
    [web, floor - 0.0006],
  ];
  const rubber = solids.revolve(profile, segmentsFor(shaft));
  return [
    body(context, 'case', shell, { material: params.case_material, finish: 'plain' }),
    body(context, 'lip', rubber, { finish: 'rubber' }),
  ];
}
