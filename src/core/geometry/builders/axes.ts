/** Solids are made about x; these turn them to stand along another axis, exactly. */
import type { Pose } from '../../kernel';
import type { OutlinePoint, Solid, SolidScope } from '../solid-kernel';

export type AxisName = 'x' | 'y' | 'z';

/** The cyclic turns x to y to z to x, and back. */
const TURNS: Readonly<Record<AxisName, Pose['rotation']>> = {
  x: [0, 0, 0, 1],
  y: [0.5, 0.5, 0.5, 0.5],
  z: [-0.5, -0.5, -0.5, 0.5],
};

/** Turns a solid built along x so that it stands along `axis`. */
export function standAlong(solids: SolidScope, solid: Solid, axis: AxisName): Solid {
  return axis === 'x' ? solid : solids.pose(solid, { position_m: [0, 0, 0], rotation: TURNS[axis] });
}

/**
 * A point across `axis`, its two coordinates in the order x, y, z, as the [y, z] that `standAlong` takes there.
 */
export function across(axis: AxisName, point: OutlinePoint): OutlinePoint {
  return axis === 'y' ? [point[1], point[0]] : point;
}
