import { panic } from '../../kernel';
import type { SidePlateParams } from '../../machine';
import type { OutlinePoint } from '../solid-kernel';
import { body, type BuildContext } from './context';
import { boreHoles } from './holes';
import { arc } from './outline';

/** The side plate with its eye, opening and holes. */
export function buildSidePlate(context: BuildContext, params: SidePlateParams) {
  const { solids } = context;
  const { from_x_m: x0, to_x_m: x1 } = params;
  const plate = solids.prism(sidePlateOutline(params), x0, x1);
  const opening = solids.cylinder(x0 - 0.001, x1 + 0.001, params.opening_radius_m);
  return [body(context, 'solid', boreHoles(solids, solids.subtract(plate, [opening]), params.holes, x0, x1))];
}

/**
 * The outline in [y, z]: eye, blend arc, arm and corner of one quarter, mirrored to the others. A blend arc touches
 * the eye from outside and the arm's edge, so its centre lies eye radius + blend from the axis and blend above the
 * edge; the eye must be larger than half the height, and the arm long enough to hold the arc.
 */
export function sidePlateOutline(
  params: Pick<SidePlateParams, 'length_m' | 'height_m' | 'eye_radius_m' | 'blend_m' | 'corner_radius_m'>,
): readonly OutlinePoint[] {
  const { eye_radius_m: eye, blend_m: blend, corner_radius_m: corner } = params;
  const edge = params.height_m / 2;
  const end = params.length_m / 2;
  const centreY = edge + blend;
  const centreZ = Math.sqrt((eye + blend) ** 2 - centreY ** 2);
  if (!(eye > edge) || !(centreZ < end - corner))
    panic('geometry/side-plate', 'no room for the blend', { eye, edge, centreZ, end });
  const touch = Math.atan2(centreZ, centreY);
  const quarter: OutlinePoint[] = [
    ...arc([0, 0], eye, 0, touch),
    ...arc([centreY, centreZ], blend, touch - Math.PI, -Math.PI).slice(1),
    ...arc([edge - corner, end - corner], corner, 0, Math.PI / 2),
  ];
  const mirrored = (dy: number, dz: number): OutlinePoint[] => quarter.map(([y, z]) => [y * dy, z * dz]);
  return [
    ...mirrored(1, 1),
    ...mirrored(-1, 1).reverse().slice(0, -1),
    ...mirrored(-1, -1),
    ...mirrored(1, -1).reverse().slice(0, -1),
  ].filter((p, i, all) => {
    const before = all[(i + all.length - 1) % all.length] ?? p;
    return Math.hypot(p[0] - before[0], p[1] - before[1]) > 1e-9;
  });
}
