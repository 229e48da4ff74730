/** How the exciter's force divides between its two bearings. */
import { panic } from '../../kernel';

export interface BearingLoads {
  /** Radial load on bearing a and b; negative where the bearing is pulled the other way (an overhung force). */
  readonly a_N: number;
  readonly b_N: number;
}

/**
 * Reactions of a simple beam on two supports: F_a = F (x_b - x) / (x_b - x_a), F_b = F - F_a (statics).
 * @param force_N radial force, say U w^2 of the exciter
 * @param positions axial places along the shaft of the force and of both bearings, in one frame; the bearings
 *   must stand apart (throws otherwise). A force outside them gives one negative load.
 */
export function bearingLoads(
  force_N: number,
  positions: { readonly force_m: number; readonly a_m: number; readonly b_m: number },
): BearingLoads {
  const { force_m, a_m, b_m } = positions;
  const span = b_m - a_m;
  if (!(Math.abs(span) > 0)) panic('mechanics/bearingLoads', 'distance of the bearings', span, 'not 0');
  const a_N = (force_N * (b_m - force_m)) / span;
  return { a_N, b_N: force_N - a_N };
}
