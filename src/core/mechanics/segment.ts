/**
 * Areas and centroids of parts of a circle, and Pappus' rule for solids of revolution.
 * Source: Machinery's Handbook, "Areas and volumes" and "Center of gravity" (pages from memory; every formula
 * re-derived). Angles are full angles in radians; centroids are distances from the circle's centre along the
 * axis of symmetry.
 */

export interface PlaneArea {
  readonly area_m2: number;
  /** Distance of the centroid from the circle's centre. */
  readonly centroid_m: number;
}

export interface CircularSegment extends PlaneArea {
  /** Height of the arc above the chord. */
  readonly height_m: number;
  readonly chord_m: number;
}

/**
 * Segment cut off by a chord: A = r^2 (t - sin t) / 2, c = 2 r sin(t/2), h = r (1 - cos(t/2)), b = c^3 / (12 A).
 * @param radius_m above 0
 * @param angle_rad full angle t at the centre, above 0 and up to 2 pi (the whole circle, b = 0)
 */
export function circularSegment(radius_m: number, angle_rad: number): CircularSegment {
  const half = angle_rad / 2;
  const chord_m = Math.max(0, 2 * radius_m * Math.sin(half));
  const area_m2 = (radius_m * radius_m * angleMinusSine(angle_rad)) / 2;
  const height_m = 2 * radius_m * Math.sin(half / 2) ** 2;
  // for a vanishing sliver both c^3 and A underflow; its centroid tends to the circle itself
  const centroid_m = area_m2 > 0 ? chord_m ** 3 / (12 * area_m2) : radius_m;
  return { area_m2, height_m, chord_m, centroid_m };
}

/** Sector: A = r^2 t / 2, b = 4 r sin(t/2) / (3 t). The angle is above 0, up to 2 pi. */
export function circularSector(radius_m: number, angle_rad: number): PlaneArea {
  return annularSector(radius_m, 0, angle_rad);
}

/**
 * Ring sector between two radii: A = (R^2 - r^2) t / 2, b = 4 (R^3 - r^3) sin(t/2) / (3 (R^2 - r^2) t).
 * t = pi is the half ring, r = 0 the sector. Needs 0 <= r < R.
 */
export function annularSector(outer_m: number, inner_m: number, angle_rad: number): PlaneArea {
  const area_m2 = ((outer_m ** 2 - inner_m ** 2) * angle_rad) / 2;
  // (R^3 - r^3) / (R^2 - r^2) without the difference of nearly equal numbers
  const meanRadius = (outer_m ** 2 + outer_m * inner_m + inner_m ** 2) / (outer_m + inner_m);
  return { area_m2, centroid_m: (4 * meanRadius * Math.sin(angle_rad / 2)) / (3 * angle_rad) };
}

/**
 * Crescent: a circle of radius `outer_m` less a circle of radius `inner_m` that lies wholly inside it, its
 * centre `offset_m` away: by subtraction, centroid at -A2 d / (A1 - A2), on the side away from the hole.
 */
export function crescent(outer_m: number, inner_m: number, offset_m: number): PlaneArea {
  const area_m2 = Math.PI * (outer_m ** 2 - inner_m ** 2);
  return { area_m2, centroid_m: (-Math.PI * inner_m ** 2 * offset_m) / area_m2 };
}

/** Pappus (second rule): volume V = 2 pi x A of an area turned about an axis that does not cut it. */
export const pappusVolume = (area_m2: number, centroidDistance_m: number): number =>
  2 * Math.PI * centroidDistance_m * area_m2;

/** Centroid of several areas, [x, y] in their common frame: sum of A x / sum of A; areas may be negative (holes). */
export function centroidOfAreas(
  areas: readonly { readonly area_m2: number; readonly at_m: readonly [number, number] }[],
): readonly [number, number] | null {
  let area = 0;
  let x = 0;
  let y = 0;
  for (const part of areas) {
    area += part.area_m2;
    x += part.area_m2 * part.at_m[0];
    y += part.area_m2 * part.at_m[1];
  }
  return area === 0 ? null : [x / area, y / area];
}

/** t - sin t, by its series for small t, where the difference would lose all figures. */
function angleMinusSine(t: number): number {
  if (t > 0.05) return t - Math.sin(t);
  const t2 = t * t;
  return t * t2 * (1 / 6 - t2 * (1 / 120 - t2 * (1 / 5040 - t2 / 362880)));
}
