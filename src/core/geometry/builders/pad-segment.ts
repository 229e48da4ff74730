import { type Vec3 } from '../../kernel';
import type { PadSegmentParams } from '../../machine';
import type { Solid, SolidScope } from '../solid-kernel';
import { standAlong } from './axes';
import { body, type BuildContext } from './context';
import { arc } from './outline';

const DEGREE = Math.PI / 180;

/** Shell plate, flanges and pads joined, then bored for the flange bolts. */
export function buildPadSegment(context: BuildContext, params: PadSegmentParams) {
  const { solids } = context;
  const x = params.width_m / 2;
  const half = (params.arc_deg / 2) * DEGREE;
  const outer = params.inner_m + params.plate_m;
  const shell = solids.prism(
    [...arc([0, 0], outer, -half, half), ...arc([0, 0], params.inner_m, half, -half)],
    -x,
    x,
  );
  const { flange } = params;
  const middle = params.inner_m + params.plate_m / 2;
  // Built on +y, at the side of the plane z = 0 that the segment's body lies on, then turned to each end.
  const flangeAt = (side: 1 | -1): Solid => {
    const [z0, z1] = side > 0 ? [-flange.thickness_m, 0] : [0, flange.thickness_m];
    return turned(solids, solids.box([-x, middle, z0], [x, outer + flange.height_m, z1]), side * half);
  };
  const holeAt = (side: 1 | -1): Solid[] => {
    const reach = 2 * flange.thickness_m;
    const diameter_m = side > 0 ? flange.bolt_hole_m : flange.tapped_hole_m;
    const tool = standAlong(solids, solids.cylinder(-reach, reach, diameter_m / 2), 'z');
    return flange.bolts_x_m.map((at) =>
      turned(solids, solids.translate(tool, [at, flange.bolts_radius_m, 0]), side * half),
    );
  };
  const pads = params.pad.rows.flatMap((row) => row.angles_deg.map((a) => padAt(solids, params, row.x_m, a)));
  const whole = solids.union([shell, flangeAt(1), flangeAt(-1), ...pads]);
  return [body(context, 'solid', solids.subtract(whole, [...holeAt(1), ...holeAt(-1)]))];
}

/** Turns about x so that +y goes towards +z. */
const turned = (solids: SolidScope, solid: Solid, angle_rad: number): Solid =>
  solids.rotate(solid, angle_rad / DEGREE);

/** One tapered block, its foot sunk to the middle of the plate. */
function padAt(solids: SolidScope, params: PadSegmentParams, x: number, angle_deg: number): Solid {
  const { foot_m: foot, top_m: top, reach_m } = params.pad;
  const level = (y: number, [sx, sz]: readonly [number, number]): Vec3[] => [
    [x - sx / 2, y, -sz / 2],
    [x + sx / 2, y, -sz / 2],
    [x + sx / 2, y, sz / 2],
    [x - sx / 2, y, sz / 2],
  ];
  const block = solids.hull([...level(params.inner_m + params.plate_m / 2, foot), ...level(reach_m, top)]);
  return turned(solids, block, angle_deg * DEGREE);
}
