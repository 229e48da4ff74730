import type { LockWasherParams } from '../../machine';
import { body, type BuildContext } from './context';

/** A flat ring with its tongue into the keyway and one tab bent into a slot of the nut. */
export function buildLockWasher(context: BuildContext, params: LockWasherParams) {
  const { solids } = context;
  const { inner_m, outer_m, thickness_m: t, tongue, tab } = params;
  const root = inner_m + 0.4 * (outer_m - inner_m);
  const tongueBox = solids.box([0, tongue.to_radius_m, -tongue.width_m / 2], [t, root, tongue.width_m / 2]);
  const tabBox = solids.box(
    [-tab.length_m, outer_m - 0.0025, -tab.width_m / 2],
    [t, outer_m - 0.0002, tab.width_m / 2],
  );
  const solid = solids.union([
    solids.ring(0, t, inner_m, outer_m),
    solids.rotate(tongueBox, -tongue.angle_deg),
    solids.rotate(tabBox, -tab.angle_deg),
  ]);
  return [body(context, 'solid', solid)];
}
