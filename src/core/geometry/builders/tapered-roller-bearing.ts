import type { TaperedRollerBearingParams } from '../../machine';
import { segmentsFor } from '../segments';
import type { ProfilePoint, Solid, SolidScope } from '../solid-kernel';
import { body, type BuildContext } from './context';

/** Play of the drawing, so that the facets of rollers and rings never meet. */
const PLAY_M = 2.5e-4;
/** Facets meet at less than the crease angle, so rollers look round. */
const ROLLER_FACETS = 14;

/** The cone of the rollers: all raceways run to one apex on the axis. */
interface Taper {
  /** Half angle of a roller, and the angle of its axis with the bearing's, in radians. */
  readonly half: number;
  readonly axis: number;
  /** A point of the roller's frame, `s` along its axis from its middle to the small end, `up` away, as [x, r]. */
  readonly at: (s: number, up: number) => ProfilePoint;
  /** The roller's radius at `s`. */
  readonly radius: (s: number) => number;
}

/** Cup, cone with its ribs, tapered rollers and a pressed cage. */
export function buildTaperedRollerBearing(context: BuildContext, params: TaperedRollerBearingParams) {
  const { solids } = context;
  const taper = taperOf(params);
  const machined = { finish: 'machined' } as const;
  const tilt = (taper.axis * 180) / Math.PI;
  const [x, r] = taper.at(0, 0);
  const roller = solids.rotate(frustum(solids, params, taper, 0), 0, 0, -tilt);
  const rollers = solids.around(solids.translate(roller, [x, r, 0]), params.rollers);
  return [
    body(context, 'cup', cup(solids, params, taper), machined),
    body(context, 'cone', cone(solids, params, taper), machined),
    body(context, 'rollers', solids.union(rollers), { finish: 'polished', section: 'whole' }),
    body(context, 'cage', cage(solids, params, taper, tilt), { finish: 'plain' }),
  ];
}

/**
 * From the cup's half angle a: axis angle b = a - n, and sin(b) = pitch radius / distance to the apex,
 * tan(n) = roller radius / distance to the apex; solved by repetition.
 */
function taperOf(params: TaperedRollerBearingParams): Taper {
  const cupAngle = (params.contact_deg * Math.PI) / 180;
  let half = 0;
  for (let i = 0; i < 20; i++) {
    const apex = params.pitch_radius_m / Math.sin(cupAngle - half);
    half = Math.atan(params.roller_diameter_m / 2 / apex);
  }
  const axis = cupAngle - half;
  const c = Math.cos(axis);
  const sn = Math.sin(axis);
  return {
    half,
    axis,
    at: (s, up) => [params.pitch_x_m + s * c + up * sn, params.pitch_radius_m - s * sn + up * c],
    radius: (s) => params.roller_diameter_m / 2 - s * Math.tan(half),
  };
}

function frustum(solids: SolidScope, params: TaperedRollerBearingParams, taper: Taper, swell: number): Solid {
  const half = params.roller_length_m / 2;
  // The polygon's corners stay inside the true circle: rollers must not touch their neighbours.
  const inscribed = 0.985;
  const end = half + swell;
  return solids.cylinder(
    -end,
    end,
    (taper.radius(-half) + swell) * inscribed,
    (taper.radius(half) + swell) * inscribed,
    ROLLER_FACETS,
  );
}

/** Radius at x on the straight line through two points. */
function onLine(a: ProfilePoint, b: ProfilePoint, x: number): number {
  return a[1] + ((x - a[0]) * (b[1] - a[1])) / (b[0] - a[0]);
}

function cup(solids: SolidScope, params: TaperedRollerBearingParams, taper: Taper): Solid {
  const half = params.roller_length_m / 2;
  const a = taper.at(-half, taper.radius(-half) + PLAY_M);
  const b = taper.at(half, taper.radius(half) + PLAY_M);
  const x0 = params.width_m - params.cup_width_m;
  const x1 = params.width_m;
  const outer = params.outside_m / 2;
  const chamfer = 0.0025;
  const blank = solids.revolve([
    [x0, 0],
    [x0, outer - 0.001],
    [x0 + 0.001, outer],
    [x1 - chamfer, outer],
    [x1, outer - chamfer],
    [x1, 0],
  ]);
  const from = x0 - 0.001;
  const to = x1 + 0.001;
  const race = solids.cylinder(from, to, onLine(a, b, from), onLine(a, b, to));
  return solids.subtract(blank, [race]);
}

function cone(solids: SolidScope, params: TaperedRollerBearingParams, taper: Taper): Solid {
  const half = params.roller_length_m / 2 + PLAY_M;
  const bore = params.bore_m / 2;
  const chamfer = 0.0025;
  const width = params.cone_width_m;
  const large = taper.at(-half, -taper.radius(-half) - PLAY_M);
  const small = taper.at(half, -taper.radius(half) - PLAY_M);
  const rib = taper.at(-half, -taper.radius(-half) * 0.35);
  const smallRib = taper.at(half, -taper.radius(half) * 0.72);
  const blank = solids.revolve(
    [
      [0, 0],
      [0, rib[1] - 0.001],
      [0.001, rib[1]],
      rib,
      large,
      small,
      smallRib,
      [width, smallRib[1]],
      [width, 0],
    ],
    segmentsFor(large[1]),
  );
  const tool = solids.revolve(
    [
      [-0.001, 0],
      [-0.001, bore + chamfer + 0.001],
      [chamfer, bore],
      [width + 0.001, bore],
      [width + 0.001, 0],
    ],
    segmentsFor(bore),
  );
  return solids.subtract(blank, [tool]);
}

function cage(solids: SolidScope, params: TaperedRollerBearingParams, taper: Taper, tilt: number): Solid {
  const half = params.roller_length_m / 2;
  const thick = 0.0011;
  const lift = 0.001;
  const over = 0.0022;
  const band = solids.revolve([
    taper.at(-half - over, lift - thick),
    taper.at(-half - over, lift + thick),
    taper.at(half + over, lift + thick),
    taper.at(half + over, lift - thick),
  ]);
  const [x, r] = taper.at(0, 0);
  const pocket = solids.rotate(frustum(solids, params, taper, 0.0003), 0, 0, -tilt);
  return solids.subtract(band, [...solids.around(solids.translate(pocket, [x, r, 0]), params.rollers)]);
}
