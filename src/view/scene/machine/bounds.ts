/** Corners and bounds of the parts that show, for framing, shadows and depth. */
import { Vector3 } from 'three';
import { eachCorner, HIDDEN, type PartTable } from './part-table';

/** Corners of the boxes of parts that show and that `takes` accepts, x y z each. */
export function shownCorners(table: PartTable, takes: (part: number) => boolean = () => true): number[] {
  const out: number[] = [];
  for (let part = 0; part < table.count; part++)
    if (table.shown[part] !== HIDDEN && takes(part)) eachCorner(table, part, (x, y, z) => out.push(x, y, z));
  return out;
}

/** A sphere round points: the middle of their box and the farthest of them; null without points. */
export function sphereOf(points: readonly number[]): { centre: Vector3; radius: number } | null {
  if (points.length === 0) return null;
  const min = new Vector3(Infinity, Infinity, Infinity);
  const max = new Vector3(-Infinity, -Infinity, -Infinity);
  const p = new Vector3();
  for (let i = 0; i < points.length; i += 3) {
    p.fromArray(points, i);
    min.min(p);
    max.max(p);
  }
  const centre = min.clone().add(max).divideScalar(2);
  let radius = 0;
  for (let i = 0; i < points.length; i += 3)
    radius = Math.max(radius, centre.distanceTo(p.fromArray(points, i)));
  return { centre, radius };
}

/** Points that make a small thing keep room around it: the corners of a cube round it of at least this half width. */
export function roomy(points: readonly number[], least_m: number): readonly number[] {
  const sphere = sphereOf(points);
  if (sphere === null || sphere.radius >= least_m) return points;
  const { centre: c } = sphere;
  const out: number[] = [...points];
  for (let k = 0; k < 8; k++)
    out.push(
      c.x + (k & 1 ? least_m : -least_m) * 0.58,
      c.y + (k & 2 ? least_m : -least_m) * 0.58,
      c.z + (k & 4 ? least_m : -least_m) * 0.58,
    );
  return out;
}
