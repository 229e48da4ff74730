/** Straight-flanked spline teeth as an outline, the same for shaft and bore so that they mesh. */
import type { Spline } from '../../machine';
import type { OutlinePoint } from '../solid-kernel';

/** Share of a tooth's pitch that a shaft's tooth takes at its root and at its tip. */
const ROOT_SHARE = 0.56;
const TIP_SHARE = 0.4;
/** Half the clearance between the flanks of shaft and bore, in metres. */
const FLANK_CLEARANCE_M = 1e-4;

/**
 * Outline of a spline in [y, z], first tooth on +y. A bore's outline is that of the shaft that fits it with wider
 * flanks; give it its own tip and root radii.
 */
export function splineOutline(spline: Spline, kind: 'shaft' | 'bore'): readonly OutlinePoint[] {
  const { teeth, root_m, tip_m } = spline;
  const pitch = (2 * Math.PI) / teeth;
  const spread = kind === 'bore' ? FLANK_CLEARANCE_M / root_m : 0;
  const halfRoot = (ROOT_SHARE * pitch) / 2 + spread;
  const halfTip = (TIP_SHARE * pitch) / 2 + spread;
  return Array.from({ length: teeth }, (_, i) => {
    const middle = i * pitch;
    return [
      [root_m, middle - halfRoot],
      [tip_m, middle - halfTip],
      [tip_m, middle + halfTip],
      [root_m, middle + halfRoot],
    ].map(([r, a]): OutlinePoint => [r! * Math.cos(a!), r! * Math.sin(a!)]);
  }).flat();
}
