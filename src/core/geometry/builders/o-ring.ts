import type { ORingParams } from '../../machine';
import { segmentsFor } from '../segments';
import type { ProfilePoint } from '../solid-kernel';
import { body, type BuildContext } from './context';

/** A ring of oval section: the round cord squeezed between the groove's floor and the bore. */
export function buildORing(context: BuildContext, params: ORingParams) {
  const { solids } = context;
  const half = (params.outer_m - params.inner_m) / 2;
  const middle = (params.outer_m + params.inner_m) / 2;
  const corners = 8;
  const profile = Array.from({ length: corners }, (_, i): ProfilePoint => {
    const a = (2 * Math.PI * (i + 0.5)) / corners;
    // Half a step off, the flats of the section lie on floor and bore.
    const flat = Math.cos(Math.PI / corners);
    return [((params.width_m / 2) * Math.cos(a)) / flat, middle + (half * Math.sin(a)) / flat];
  });
  return [body(context, 'solid', solids.revolve(profile, segmentsFor(params.outer_m)))];
}
