/** Flat outlines that several builders extrude: rounded polygons, slots, arcs. Points are [a, b] in metres. */
import { segmentsFor } from '../segments';
import type { OutlinePoint } from '../solid-kernel';

const FULL = 2 * Math.PI;

/**
 * Points of an arc about `centre`, from one angle to another (radians, from +a towards +b), both ends included.
 * They lie on the arc itself, as many as a full circle of that radius would have in that sweep.
 */
export function arc(
  centre: OutlinePoint,
  radius_m: number,
  from_rad: number,
  to_rad: number,
): readonly OutlinePoint[] {
  const steps = Math.max(2, Math.ceil((Math.abs(to_rad - from_rad) / FULL) * segmentsFor(radius_m)));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = from_rad + ((to_rad - from_rad) * i) / steps;
    return [centre[0] + radius_m * Math.cos(angle), centre[1] + radius_m * Math.sin(angle)] as const;
  });
}

/**
 * A polygon with every corner rounded by `radius_m`, less where half of a neighbouring edge is too short for it.
 * Inner corners are filled by the same radius.
 */
export function roundedOutline(corners: readonly OutlinePoint[], radius_m: number): readonly OutlinePoint[] {
  if (radius_m <= 0) return corners;
  return corners.flatMap((corner, i) => {
    const before = corners[(i + corners.length - 1) % corners.length] ?? corner;
    const after = corners[(i + 1) % corners.length] ?? corner;
    const toBefore = Math.hypot(before[0] - corner[0], before[1] - corner[1]);
    const toAfter = Math.hypot(after[0] - corner[0], after[1] - corner[1]);
    const u = [(before[0] - corner[0]) / toBefore, (before[1] - corner[1]) / toBefore] as const;
    const v = [(after[0] - corner[0]) / toAfter, (after[1] - corner[1]) / toAfter] as const;
    const half = Math.acos(Math.min(1, Math.max(-1, u[0] * v[0] + u[1] * v[1]))) / 2;
    // Straight on or folded back: there is no corner to round.
    if (half < 1e-3 || half > Math.PI / 2 - 1e-3) return [corner];
    const touch = Math.min(radius_m / Math.tan(half), 0.499 * toBefore, 0.499 * toAfter);
    const r = touch * Math.tan(half);
    const bisector = [u[0] + v[0], u[1] + v[1]] as const;
    const reach = r / Math.sin(half) / Math.hypot(...bisector);
    const centre = [corner[0] + bisector[0] * reach, corner[1] + bisector[1] * reach] as const;
    const angleOf = (d: readonly [number, number]): number =>
      Math.atan2(corner[1] + d[1] * touch - centre[1], corner[0] + d[0] * touch - centre[0]);
    const from = angleOf(u);
    let turn = angleOf(v) - from;
    turn -= FULL * Math.round(turn / FULL);
    return arc(centre, r, from, from + turn);
  });
}

/** A slot with round ends about two centres. */
export function slotOutline(a: OutlinePoint, b: OutlinePoint, radius_m: number): readonly OutlinePoint[] {
  const along = Math.atan2(b[1] - a[1], b[0] - a[0]);
  return [
    ...arc(b, radius_m, along - Math.PI / 2, along + Math.PI / 2),
    ...arc(a, radius_m, along + Math.PI / 2, along + 1.5 * Math.PI),
  ];
}
