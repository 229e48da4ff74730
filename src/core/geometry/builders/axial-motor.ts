import type { AxialMotorParams } from '../../machine';
import type { Vec3 } from '../../kernel';
import { segmentsFor } from '../segments';
import { body, type BuildContext } from './context';
import { boreHoles, holePlaces } from './holes';
import { splineOutline } from './spline';
import { turnedSolid } from './turned';

/** Cast housing with pilot, flange drawn to its bolt bosses, body and end cover; a splined shaft. */
export function buildAxialMotor(context: BuildContext, params: AxialMotorParams) {
  const { solids } = context;
  const { pilot, flange, body: shell, shaft } = params;
  const groove = pilot.groove_width_m / 2;
  const middle = -pilot.length_m / 2;
  const turned = turnedSolid(solids, {
    chamfer_m: 0.001,
    stations: [
      { from_x_m: -pilot.length_m, to_x_m: middle - groove, inner_m: pilot.inner_m, outer_m: pilot.radius_m },
      { from_x_m: middle - groove, to_x_m: middle + groove, inner_m: pilot.inner_m, outer_m: pilot.groove_m },
      { from_x_m: middle + groove, to_x_m: 0, inner_m: pilot.inner_m, outer_m: pilot.radius_m },
    ],
  });
  const barrel = turnedSolid(solids, {
    chamfer_m: 0.004,
    stations: [
      { from_x_m: 0, to_x_m: shell.cover_from_x_m, inner_m: 0, outer_m: shell.radius_m },
      { from_x_m: shell.cover_from_x_m, to_x_m: shell.to_x_m, inner_m: 0, outer_m: shell.cover_radius_m },
    ],
  });
  const plate = solids.hull(flangeRim(params));
  const bored = boreHoles(
    solids,
    solids.union([turned, barrel, plate]),
    [{ ...params.flange_holes, from_x_m: -0.001, to_x_m: flange.thickness_m + 0.02 }, ...params.ports],
    0,
    shell.to_x_m,
  );
  const spline = solids.prism(splineOutline(shaft, 'shaft'), shaft.from_x_m, 0);
  return [
    body(context, 'housing', bored),
    body(context, 'shaft', spline, { finish: 'machined', section: 'whole' }),
  ];
}

/** Rims of the flange's bolt bosses, both faces; their hull is the flange. */
function flangeRim({ flange, flange_holes }: AxialMotorParams): readonly Vec3[] {
  const n = segmentsFor(flange.boss_m);
  return holePlaces(flange_holes).flatMap(({ y_m, z_m }) =>
    Array.from({ length: n }, (_, i): readonly Vec3[] => {
      const a = (2 * Math.PI * i) / n;
      const y = y_m + flange.boss_m * Math.cos(a);
      const z = z_m + flange.boss_m * Math.sin(a);
      const trim = Math.min(1, flange.radius_m / Math.hypot(y, z));
      return [
        [0, y * trim, z * trim],
        [flange.thickness_m, y * trim, z * trim],
      ];
    }).flat(),
  );
}
