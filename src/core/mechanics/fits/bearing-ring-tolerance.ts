/**
 * ISO 492, class Normal, radial bearings: deviation of the mean bore and of the mean outside diameter. Both lie
 * wholly below the nominal size (upper deviation 0). From memory; confirm before use on real parts.
 */
import type { LimitDeviations } from './iso-limits';

/** Rows [up to and including mm, lower deviation in micrometres]. */
const BORE: readonly (readonly [number, number])[] = [
  [18, -8],
  [30, -10],
  [50, -12],
  [80, -15],
  [120, -20],
  [180, -25],
  [250, -30],
  [315, -35],
  [400, -40],
];
const OUTSIDE: readonly (readonly [number, number])[] = [
  [18, -8],
  [30, -9],
  [50, -11],
  [80, -13],
  [120, -15],
  [150, -18],
  [180, -25],
  [250, -30],
  [315, -35],
  [400, -40],
  [500, -45],
];
/** Smallest size of the tables, mm (over). */
const LEAST_MM = 10;

/** Null outside the table: over 10 mm, bores up to 400 mm, outside diameters up to 500 mm. */
export function bearingRingLimits(which: 'bore' | 'outside', size_mm: number): LimitDeviations | null {
  const row = (which === 'bore' ? BORE : OUTSIDE).find(([upper]) => size_mm <= upper);
  return row === undefined || !(size_mm > LEAST_MM) ? null : { upper_um: 0, lower_um: row[1] };
}
