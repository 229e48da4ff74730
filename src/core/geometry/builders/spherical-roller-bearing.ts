import type { SphericalRollerBearingParams } from '../../machine';
import { segmentsFor } from '../segments';
import type { ProfilePoint, Solid, SolidScope } from '../solid-kernel';
import { body, type BuildContext } from './context';

/** Radial play of the drawing, so that the facets of rollers and rings never meet. */
const PLAY_M = 2.5e-4;
/** Facets meet at less than the crease angle, so rollers look round. */
const ROLLER_FACETS = 14;

/** Where a roller of the row on the +x side lies, in [x, r], and the directions along and across its axis. */
interface Row {
  readonly middle: ProfilePoint;
  readonly along: ProfilePoint;
  readonly out: ProfilePoint;
  readonly tilt_deg: number;
}

/** Outer ring with a spherical raceway, inner ring, two rows of barrel rollers and a cage. */
export function buildSphericalRollerBearing(context: BuildContext, params: SphericalRollerBearingParams) {
  const { solids } = context;
  const row = rowOf(params);
  const roller = solids.rotate(barrel(solids, params, 0), 0, 0, -row.tilt_deg);
  const [x, r] = row.middle;
  const count = params.rollers_per_row;
  const right = solids.around(solids.translate(roller, [x, r, 0]), count);
  // The other row is the first turned end for end, half a pitch on.
  const left = right.map((one) => solids.rotate(one, 180 / count, 180, 0));
  const rollers = [...right, ...left];
  return [
    body(context, 'outer-ring', outerRing(solids, params), { finish: 'machined' }),
    body(context, 'inner-ring', innerRing(solids, params, row), { finish: 'machined' }),
    body(context, 'rollers', solids.union(rollers), { finish: 'polished', section: 'whole' }),
    body(context, 'cage', cage(solids, params, row), { finish: 'brass', material: params.cage_material }),
  ];
}

function rowOf(params: SphericalRollerBearingParams): Row {
  const angle = (params.contact_deg * Math.PI) / 180;
  const distance = params.sphere_m - PLAY_M - params.roller_diameter_m / 2;
  return {
    middle: [distance * Math.sin(angle), distance * Math.cos(angle)],
    along: [Math.cos(angle), -Math.sin(angle)],
    out: [Math.sin(angle), Math.cos(angle)],
    tilt_deg: params.contact_deg,
  };
}

/** Radius of the barrel at `s` from its middle: its outline has the raceway's curvature. */
function barrelRadius(params: SphericalRollerBearingParams, s: number): number {
  const curve = params.sphere_m - PLAY_M;
  return Math.sqrt(curve * curve - s * s) - (curve - params.roller_diameter_m / 2);
}

function barrel(
  solids: SolidScope,
  params: SphericalRollerBearingParams,
  swell: number,
  end = params.roller_length_m / 2 + swell,
): Solid {
  const half = params.roller_length_m / 2;
  // The polygon's corners stay inside the true circle: rollers must not touch their neighbours.
  const inscribed = 0.985;
  const at = (s: number): number => (barrelRadius(params, s) + swell) * inscribed;
  return solids.revolve(
    [
      [-half - swell, 0],
      [-half - swell, at(half)],
      [0, at(0)],
      [end, at(half)],
      [end, 0],
    ],
    ROLLER_FACETS,
  );
}

function outerRing(solids: SolidScope, params: SphericalRollerBearingParams): Solid {
  const half = params.width_m / 2;
  const outer = params.outside_m / 2;
  const chamfer = 0.0025;
  const blank = solids.revolve([
    [-half, 0],
    [-half, outer - chamfer],
    [-half + chamfer, outer],
    [half - chamfer, outer],
    [half, outer - chamfer],
    [half, 0],
  ]);
  const steps = 6;
  const reach = half + 0.001;
  // Out by the sagitta of a step, so that the chords touch the sphere from outside and no roller meets them.
  const sphere = params.sphere_m + ((2 * reach) / steps) ** 2 / (8 * params.sphere_m);
  const race = Array.from({ length: steps + 1 }, (_, i): ProfilePoint => {
    const x = -reach + (2 * reach * i) / steps;
    return [x, Math.sqrt(sphere ** 2 - x * x)];
  });
  return solids.subtract(blank, [
    solids.revolve([[-reach, 0], ...race, [reach, 0]], segmentsFor(params.sphere_m)),
  ]);
}

function innerRing(solids: SolidScope, params: SphericalRollerBearingParams, row: Row): Solid {
  const half = params.width_m / 2;
  const bore = params.bore_m / 2;
  const reach = params.roller_length_m / 2 + 0.0006;
  const race = [-1, -0.5, 0, 0.5, 1].map((t): ProfilePoint => {
    const s = t * reach;
    const down = barrelRadius(params, s) + PLAY_M;
    return [
      row.middle[0] + s * row.along[0] - down * row.out[0],
      row.middle[1] + s * row.along[1] - down * row.out[1],
    ];
  });
  const first = race[0]!;
  const last = race[race.length - 1]!;
  // Small ribs at the outer ends, the middle rib straight across between the rows.
  const rib = Math.max(last[1] + 0.002, 0);
  const right: ProfilePoint[] = [
    ...race,
    [last[0] + 0.0012, rib],
    [half - 0.001, rib],
    [half, rib - 0.001],
    [half, bore],
  ];
  const left = [...right].reverse().map(([x, r]): ProfilePoint => [-x, r]);
  const middleRib: ProfilePoint[] = [
    [-Math.max(first[0], 0.0008) + 0.0006, first[1] + 0.003],
    [Math.max(first[0], 0.0008) - 0.0006, first[1] + 0.003],
  ];
  const blank = solids.revolve(
    [...left, ...(first[0] > 0.002 ? middleRib : []), ...right],
    segmentsFor(first[1]),
  );
  return solids.subtract(blank, [solids.cylinder(-half - 0.001, half + 0.001, bore)]);
}

/** A conical band through the rollers' middles on each side, joined in the middle, with a pocket for each roller. */
function cage(solids: SolidScope, params: SphericalRollerBearingParams, row: Row): Solid {
  const count = params.rollers_per_row;
  const half = params.roller_length_m / 2;
  const thick = 0.0035;
  const point = (s: number, up: number): ProfilePoint => [
    row.middle[0] + s * row.along[0] + up * row.out[0],
    row.middle[1] + s * row.along[1] + up * row.out[1],
  ];
  const inner = point(-half, 0);
  const out = half * 0.9;
  const band: ProfilePoint[] = [
    point(out, -thick),
    point(out, thick),
    [0, inner[1] + inner[0] * Math.tan((params.contact_deg * Math.PI) / 180) + thick],
    [0, inner[1] + inner[0] * Math.tan((params.contact_deg * Math.PI) / 180) - thick],
  ];
  const pocket = solids.rotate(barrel(solids, params, 0.0004, half + 0.004), 0, 0, -row.tilt_deg);
  const ring = solids.subtract(solids.revolve(band), [
    ...solids.around(solids.translate(pocket, [row.middle[0], row.middle[1], 0]), count),
  ]);
  return solids.union([ring, solids.rotate(ring, 180 / count, 180, 0)]);
}
