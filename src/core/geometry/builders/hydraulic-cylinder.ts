import type { HydraulicCylinderParams } from '../../machine';
import { standAlong } from './axes';
import { body, type BuildContext } from './context';

/** Barrel wall as a share of its outer radius, and the play that keeps the piston's face off the bore. */
const WALL = 0.18;
const PISTON_PLAY_M = 0.5e-3;
/** Where the barrel starts and the neck's half height, as shares of the eye's radius: a clevis passes beside the neck. */
const BARREL_FROM = 1.2;
const NECK = 0.7;

/** Barrel with its eye, and rod with piston and eye, as two bodies. */
export function buildHydraulicCylinder(context: BuildContext, params: HydraulicCylinderParams) {
  const { solids } = context;
  const { eye_radius_m: eye, eye_width_m: width, pin_to_pin_m: span, barrel_length_m: length } = params;
  const outer = params.barrel_outer_m / 2;
  const bore = outer * (1 - WALL);
  const rod = params.rod_m / 2;
  const head = 0.6 * outer;
  const from = BARREL_FROM * eye;
  const across = (r: number, half: number, x: number) =>
    solids.translate(standAlong(solids, solids.cylinder(-half, half, r), 'y'), [x, 0, 0]);
  const pinHole = (x: number) => across(params.eye_bore_radius_m, width, x);

  const barrel = solids.subtract(
    solids.union([
      across(eye, width / 2, 0),
      solids.box([0, -width / 2, -NECK * eye], [from + 0.5 * head, width / 2, NECK * eye]),
      solids.cylinder(from, length, outer),
    ]),
    [
      pinHole(0),
      solids.cylinder(from + head, length - head, bore),
      solids.cylinder(length - 2 * head, length + 0.001, rod),
    ],
  );
  const pistonAt = from + head + 0.3 * (length - 2 * head - from);
  const rodSolid = solids.subtract(
    solids.union([
      solids.cylinder(pistonAt, pistonAt + head, bore - PISTON_PLAY_M),
      solids.cylinder(pistonAt, span - 0.5 * eye, rod),
      across(eye, width / 2, span),
    ]),
    [pinHole(span)],
  );
  return [
    body(context, 'barrel', barrel),
    body(context, 'rod', rodSolid, { finish: 'polished', section: 'whole' }),
  ];
}
