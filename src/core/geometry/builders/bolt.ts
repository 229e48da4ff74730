import type { BoltParams } from '../../machine';
import { segmentsFor } from '../segments';
import type { ProfilePoint, Solid } from '../solid-kernel';
import { body, type BuildContext } from './context';
import { hexagon } from './hexagon';

/** Corners round a socket head. */
const HEAD_SIDES = 12;

/** Bolts, socket head screws, plugs and headless pins. */
export function buildBolt(context: BuildContext, params: BoltParams) {
  const { solids } = context;
  const { head, washer, length_m } = params;
  const r = params.diameter_m / 2;
  const chamfer = Math.min(params.chamfer_m ?? 0.1 * params.diameter_m, 0.5 * r, 0.5 * length_m);
  const seat = washer?.thickness_m ?? 0;
  // The shank runs half-way into the head (into the collar, which may be all that is wider) so that they join.
  const collar = head.form === 'hex' && head.collar_m !== undefined ? (head.collar_height_m ?? 0) : 0;
  const top = seat + (head.form === 'none' ? 0 : (collar > 0 ? collar : head.height_m) / 2);
  const profile: ProfilePoint[] = [[-length_m, 0]];
  profile.push(
    ...(chamfer > 0
      ? ([[-length_m, r - chamfer], [-length_m + chamfer, r]] as const) // prettier-ignore
      : ([[-length_m, r]] as const)),
  );
  if (washer) profile.push([0, r], [0, washer.diameter_m / 2], [seat, washer.diameter_m / 2], [seat, r]);
  if (top > 0) profile.push([top, r], [top, 0]);
  else profile.push([0, r], [0, 0]);
  // As many corners as its tapped hole, which has the thread's diameter too: the two meet face to face.
  const shank = solids.revolve(profile, segmentsFor(r));

  const pieces: Solid[] = [shank];
  const cuts: Solid[] = [];
  const phase = params.hex_phase_deg ?? 0;
  if (head.form === 'hex') {
    if (head.collar_m !== undefined && collar > 0)
      pieces.push(solids.cylinder(seat, seat + collar, head.collar_m / 2));
    // A collar and the hexagon on it overlap by half the collar, so that they join.
    pieces.push(hexagon(solids, seat + collar / 2, seat + head.height_m, head.across_flats_m, phase));
  } else if (head.form === 'socket') {
    const end = seat + head.height_m;
    const rim = head.diameter_m / 2;
    const edge = 0.08 * rim;
    pieces.push(solids.revolve([[seat, 0], [seat, rim], [end - edge, rim], [end, rim - edge], [end, 0]], HEAD_SIDES)); // prettier-ignore
    const corner = head.key_m / Math.sqrt(3);
    const hex = Array.from({ length: 6 }, (_, i) => {
      const a = (phase / 180 + i / 3) * Math.PI;
      return [corner * Math.cos(a), -corner * Math.sin(a)] as const;
    });
    cuts.push(solids.prism(hex, end - head.key_depth_m, end + 0.001));
  }
  if (params.end_hole) {
    const { diameter_m, depth_m } = params.end_hole;
    cuts.push(solids.cylinder(-length_m - 0.001, -length_m + depth_m, diameter_m / 2));
  }
  return [body(context, 'solid', solids.subtract(solids.union(pieces), cuts), { section: 'whole' })];
}
