import type { ExciterHousingParams } from '../../machine';
import type { OutlinePoint, Solid, SolidScope } from '../solid-kernel';
import { body, type BuildContext } from './context';
import { splineOutline } from './spline';
import { turnedSolid } from './turned';

const DEGREE = Math.PI / 180;
type Point = readonly [number, number];

/** Body frame to the kind's [y, z]: body +x hangs down, body +y lies to the front. */
const place = ([x, y]: Point): OutlinePoint => [-x, -y];

/** Shell, end plates, shafts, baffle, trim bar and webs as bodies that touch but do not overlap. */
export function buildExciterHousing(context: BuildContext, params: ExciterHousingParams) {
  const { solids } = context;
  const { chamber, end_plate: end } = params;
  const outer = chamber.radius_m + params.shell_m;
  const x0 = chamber.from_x_m;
  const x1 = chamber.to_x_m;
  const shell = aboutChamber(solids, params, solids.ring(x0, x1, chamber.radius_m, outer));
  const leftPlate = aboutChamber(solids, params, solids.cylinder(x0 - end.thickness_m, x0, end.radius_m));
  const rightPlate = aboutChamber(solids, params, solids.cylinder(x1, x1 + end.thickness_m, end.radius_m));
  const machined = { finish: 'machined' } as const;
  return [
    body(context, 'shell', shell),
    body(context, 'end-plate-left', leftPlate, machined),
    body(context, 'end-plate-right', plugHole(solids, params, rightPlate), machined),
    body(
      context,
      'shaft-left',
      turnedSolid(solids, { stations: params.left_shaft, chamfer_m: 0.002 }),
      machined,
    ),
    body(context, 'shaft-right', rightShaft(solids, params), machined),
    body(context, 'baffle', baffleSolid(solids, params)),
    body(context, 'trim-bar', trimBar(solids, params)),
    body(context, 'webs', webs(solids, params, outer)),
  ];
}

function aboutChamber(solids: SolidScope, params: ExciterHousingParams, solid: Solid): Solid {
  return solids.translate(solid, [0, -params.chamber.eccentricity_m, 0]);
}

/** The chamber's bore, drawn in by `gap_m`. */
export function chamberSolid(solids: SolidScope, params: ExciterHousingParams, gap_m = 0): Solid {
  const { radius_m, from_x_m, to_x_m } = params.chamber;
  return aboutChamber(solids, params, solids.cylinder(from_x_m + gap_m, to_x_m - gap_m, radius_m - gap_m));
}

/** The L of plate: both legs square, mitred where they meet, leg 1 run on into the wall and cut to it. */
export function baffleSolid(solids: SolidScope, params: ExciterHousingParams, swell_m = 0): Solid {
  const { chamber, baffle } = params;
  const half = baffle.half_thickness_m + swell_m;
  const psi = baffle.psi_deg * DEGREE;
  const d1 = psi + Math.PI + baffle.beta_deg * DEGREE;
  const d2 = d1 - (baffle.side * Math.PI) / 2;
  const wall: Point = [
    chamber.eccentricity_m + chamber.radius_m * Math.cos(psi),
    chamber.radius_m * Math.sin(psi),
  ];
  const along = ([x, y]: Point, d: number, s: number): Point => [x + s * Math.cos(d), y + s * Math.sin(d)];
  const start = along(wall, d1, -3 * half);
  const corner = along(wall, d1, baffle.leg1_m);
  const end = along(corner, d2, baffle.leg2_m + swell_m);
  const off = (p: Point, a: number, b: number): Point => along(along(p, d1, a), d2, b);
  const outline = [
    off(start, 0, half),
    off(corner, -half, half),
    off(end, -half, 0),
    off(end, half, 0),
    off(corner, half, -half),
    off(start, 0, -half),
  ].map(place);
  const plate = solids.prism(outline, chamber.from_x_m, chamber.to_x_m);
  return solids.intersect(plate, chamberSolid(solids, params));
}

function barAxes(params: ExciterHousingParams): {
  readonly at: (radial: number, across: number) => OutlinePoint;
} {
  const angle = params.trim_bar.angle_deg * DEGREE;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return { at: (radial, across) => place([radial * c - across * s, radial * s + across * c]) };
}

function trimBar(solids: SolidScope, params: ExciterHousingParams): Solid {
  const bar = params.trim_bar;
  const { at } = barAxes(params);
  const low = bar.arm_m - bar.radial_m / 2;
  const high = bar.arm_m + bar.radial_m / 2;
  const half = bar.tangential_m / 2;
  const edge = 0.003;
  return solids.prism(
    [
      at(low, -half),
      at(high - edge, -half),
      at(high, -half + edge),
      at(high, half - edge),
      at(high - edge, half),
      at(low, half),
    ],
    bar.from_x_m,
    bar.to_x_m,
  );
}

/** Plates from the shell to the bar's inner face, hollowed to the shell. */
function webs(solids: SolidScope, params: ExciterHousingParams, outer: number): Solid {
  const { at } = barAxes(params);
  const { x_m, thickness_m, width_m } = params.webs;
  const half = width_m / 2;
  const top = params.trim_bar.arm_m - params.trim_bar.radial_m / 2;
  const outline = [at(0, -half), at(top, -half), at(top, half), at(0, half)];
  const plates = x_m.map((x) => solids.prism(outline, x - thickness_m / 2, x + thickness_m / 2));
  const { from_x_m, to_x_m } = params.chamber;
  const hollow = aboutChamber(solids, params, solids.cylinder(from_x_m - 0.1, to_x_m + 0.1, outer));
  return solids.subtract(solids.union(plates), [hollow]);
}

function rightShaft(solids: SolidScope, params: ExciterHousingParams): Solid {
  const shaft = turnedSolid(solids, { stations: params.right_shaft, chamfer_m: 0.002 });
  const spline = params.right_spline;
  if (spline === undefined) return shaft;
  // The bore's station is bored to the tooth tips; the spaces between the teeth are cut deeper.
  return solids.subtract(shaft, [
    solids.prism(splineOutline(spline, 'bore'), spline.from_x_m, spline.to_x_m + 0.001),
  ]);
}

function plugHole(solids: SolidScope, params: ExciterHousingParams, plate: Solid): Solid {
  const hole = params.plug_hole;
  if (hole === undefined) return plate;
  const [y, z] = place(hole.at_m);
  const x = params.chamber.to_x_m;
  const tool = solids.cylinder(x - 0.001, x + params.end_plate.thickness_m + 0.001, hole.diameter_m / 2);
  return solids.subtract(plate, [solids.translate(tool, [0, y, z])]);
}
