import type { BoxSectionParams, SideHoles } from '../../machine';
import type { Solid, SolidScope } from '../solid-kernel';
import { across, type AxisName, standAlong } from './axes';
import { body, type BuildContext } from './context';
import { boreHoles } from './holes';

/** A hollow beam with end plates; the hollow is opened by the end plates' holes where they are drilled through. */
export function buildBoxSection(context: BuildContext, params: BoxSectionParams) {
  const { solids } = context;
  const [x, y, z] = [params.length_m / 2, params.height_m / 2, params.width_m / 2];
  const { wall_m: wall, end_plate_m: end } = params;
  const outer = solids.box([-x, -y, -z], [x, y, z]);
  const hollow = solids.box([-x + end, -y + wall, -z + wall], [x - end, y - wall, z - wall]);
  const drilled = boreHoles(solids, solids.subtract(outer, [hollow]), params.end_holes, -x, x);
  const side = (params.side_holes ?? []).flatMap((holes) => sideTools(solids, holes, params));
  return [body(context, 'solid', solids.subtract(drilled, side))];
}

function sideTools(solids: SolidScope, holes: SideHoles, params: BoxSectionParams): readonly Solid[] {
  const axis = holes.face.slice(1) as AxisName;
  const sign = holes.face.startsWith('-') ? -1 : 1;
  const out = (axis === 'y' ? params.height_m : params.width_m) / 2;
  const depth = holes.depth_m ?? params.wall_m + 0.001;
  const [from, to] = [sign * (out - depth), sign * (out + 0.001)].sort((a, b) => a - b) as [number, number];
  const tool = solids.cylinder(from, to, holes.diameter_m / 2);
  return holes.places_m.map((place) => {
    const [a, b] = across(axis, place);
    return standAlong(solids, solids.translate(tool, [0, a, b]), axis);
  });
}
