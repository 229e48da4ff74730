import type { NutParams } from '../../machine';
import { segmentsFor } from '../segments';
import { body, type BuildContext } from './context';
import { hexagon } from './hexagon';

/** A hexagon nut with its washer, bored through at the thread's major diameter. */
export function buildNut(context: BuildContext, params: NutParams) {
  const { solids } = context;
  // As the bolt in it: their threads meet face to face.
  const sides = segmentsFor(params.bore_m / 2);
  const disc = (from: number, to: number, diameter_m: number) =>
    solids.cylinder(from, to, diameter_m / 2, diameter_m / 2, sides);
  const seat = params.washer?.thickness_m ?? 0;
  const end = seat + params.height_m;
  // The hexagon reaches half-way into the washer, so that the two join.
  const hex = hexagon(solids, seat / 2, end, params.across_flats_m, params.hex_phase_deg ?? 0);
  const whole = params.washer ? solids.union([disc(0, seat, params.washer.diameter_m), hex]) : hex;
  const bore = disc(-0.001, end + 0.001, params.bore_m);
  return [body(context, 'solid', solids.subtract(whole, [bore]), { section: 'whole' })];
}
