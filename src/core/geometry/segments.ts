/**
 * How round things become polygons. The count depends on the radius alone and the first corner always lies on +y,
 * so that mating cylinders of different parts have the same corners and neither overlap nor gape.
 */

/** Sagitta of a chord that nobody sees at arm's length, in metres. */
const CHORD_ERROR_M = 0.25e-3;
const FEWEST = 16;
const MOST = 128;

/**
 * Corners of the polygon that stands for a circle of `radius_m`: a multiple of 8, so that quarters and halves match.
 * From the sagitta r (1 - cos(pi/n)), about r pi^2 / (2 n^2), kept near 0.25 mm; between 16 and 128.
 */
export function segmentsFor(radius_m: number): number {
  const wanted = Math.PI * Math.sqrt(radius_m / (2 * CHORD_ERROR_M));
  return Math.min(MOST, Math.max(FEWEST, Math.round(wanted / 8) * 8));
}

/**
 * Factor from the true radius to the polygon's corner radius that gives the polygon the circle's area:
 * sqrt((2 pi / n) / sin(2 pi / n)). Volumes and masses of turned parts then meet their formulas.
 */
export function areaCorrection(segments: number): number {
  const step = (2 * Math.PI) / segments;
  return Math.sqrt(step / Math.sin(step));
}
