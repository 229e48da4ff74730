import type { IsolatorParams } from '../../machine';
import { segmentsFor } from '../segments';
import type { ProfilePoint, Solid, SolidScope } from '../solid-kernel';
import { body, type BuildContext } from './context';

/** Two bonded plates and the rubber between them, its free surface drawn in. */
export function buildIsolator(context: BuildContext, params: IsolatorParams) {
  const { solids } = context;
  const t = params.plate_thickness_m;
  const end = 2 * t + params.rubber_length_m;
  const plate = { material: params.plate_material, finish: 'painted' } as const;
  const threaded = insertPlate(solids, params, end);
  return [
    body(context, 'plate-ears', earPlate(solids, params), plate),
    body(context, 'rubber', rubber(solids, params, t, end - t), { finish: 'rubber' }),
    body(context, 'plate-insert', threaded, plate),
  ];
}

function earPlate(solids: SolidScope, params: IsolatorParams): Solid {
  const { ears, plate_thickness_m: t } = params;
  const lobe = solids.union([
    solids.translate(solids.cylinder(0, t, ears.ear_radius_m), [0, ears.radius_m, 0]),
    solids.box([0, 0, -ears.ear_radius_m], [t, ears.radius_m, ears.ear_radius_m]),
  ]);
  const hole = solids.translate(solids.cylinder(-0.001, t + 0.001, ears.hole_diameter_m / 2), [
    0,
    ears.radius_m,
    0,
  ]);
  const disc = solids.cylinder(0, t, params.plate_diameter_m / 2);
  return solids.subtract(solids.union([disc, ...solids.around(lobe, ears.count, ears.start_deg)]), [
    ...solids.around(hole, ears.count, ears.start_deg),
  ]);
}

/** The far plate with its bush, which stands in the rubber; the thread ends blind in the bush. */
function insertPlate(solids: SolidScope, params: IsolatorParams, end: number): Solid {
  const { insert, plate_thickness_m: t } = params;
  const disc = solids.cylinder(end - t, end, params.plate_diameter_m / 2);
  const bush = solids.cylinder(end - insert.length_m, end - t / 2, insert.outside_m / 2);
  const thread = solids.cylinder(end - insert.depth_m, end + 0.001, insert.thread_diameter_m / 2);
  return solids.subtract(solids.union([disc, bush]), [thread]);
}

function rubber(solids: SolidScope, params: IsolatorParams, x0: number, x1: number): Solid {
  const r = params.rubber_diameter_m / 2;
  const steps = 6;
  const side = Array.from({ length: steps + 1 }, (_, i): ProfilePoint => {
    const t = (2 * i) / steps - 1;
    return [x0 + ((x1 - x0) * i) / steps, r - params.waist_m * (1 - t * t)];
  });
  const block = solids.revolve([[x0, 0], ...side, [x1, 0]], segmentsFor(r));
  const { insert, plate_thickness_m: t } = params;
  return solids.subtract(block, [solids.cylinder(x1 + t - insert.length_m, x1 + t, insert.outside_m / 2)]);
}
