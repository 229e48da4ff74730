/** Outermost points and bounds of the parts that show, for framing, shadows and depth. */
import { Vector3 } from 'three';
import { eachReach, HIDDEN, type PartTable } from './part-table';

/** Outermost points of the parts that show and that `takes` accepts, x y z each. */
export function shownReach(table: PartTable, takes: (part: number) => boolean = () => true): number[] {
  const out: number[] = [];
  for (let part = 0; part < table.count; part++)
    if (table.shown[part] !== HIDDEN && takes(part)) eachReach(table, part, (x, y, z) => out.push(x, y, z));
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

/** What a section leaves: points beyond the plane are drawn back onto it. */
export function leftOf(
  points: readonly number[],
  cut: { readonly normal: readonly [number, number, number]; readonly distance_m: number } | null,
): readonly number[] {
  if (cut === null) return points;
  const [x, y, z] = cut.normal;
  const out = [...points];
  for (let i = 0; i < out.length; i += 3) {
    const beyond = Math.max(0, out[i]! * x + out[i + 1]! * y + out[i + 2]! * z - cut.distance_m);
    out[i] = out[i]! - beyond * x;
    out[i + 1] = out[i + 1]! - beyond * y;
    out[i + 2] = out[i + 2]! - beyond * z;
  }
  return out;
}
