/**
 * Lanes: whether two parts could meet when one moves along a direction, judged by simple hulls. Along x a part is
 * the ring about the drum axis that it sweeps; along other directions the box across them. Two parts in different
 * lanes never meet, so they need no order between them in an exploded view.
 */
import type { Vec3 } from '../kernel';
import type { World } from './world';

export interface Hull {
  /** Least and greatest x, y, z. */
  readonly bounds: Float64Array;
  /** Least and greatest distance from the x axis. */
  readonly inner_m: number;
  readonly outer_m: number;
}

/** Hulls of all parts, null for those without shape. */
export function partHulls(world: World): readonly (Hull | null)[] {
  return world.meshes.map((mesh, part) => {
    if (mesh === null) return null;
    const { positions, indices } = mesh;
    let outer = 0;
    for (let i = 0; i < positions.length; i += 3)
      outer = Math.max(outer, Math.hypot(positions[i + 1]!, positions[i + 2]!));
    let inner = Infinity;
    for (let t = 0; t < indices.length; t += 3)
      inner = Math.min(inner, triangleFromAxis(positions, indices[t]!, indices[t + 1]!, indices[t + 2]!));
    return {
      bounds: world.partBounds.subarray(part * 6, part * 6 + 6) as Float64Array,
      inner_m: inner,
      outer_m: outer,
    };
  });
}

/** Least distance of a triangle from the x axis, seen along x: 0 when it covers the axis. */
function triangleFromAxis(p: Float32Array, a: number, b: number, c: number): number {
  const [ay, az, by, bz, cy, cz] = [
    p[a * 3 + 1]!,
    p[a * 3 + 2]!,
    p[b * 3 + 1]!,
    p[b * 3 + 2]!,
    p[c * 3 + 1]!,
    p[c * 3 + 2]!,
  ];
  const s1 = ay * bz - az * by;
  const s2 = by * cz - bz * cy;
  const s3 = cy * az - cz * ay;
  if ((s1 > 0 && s2 > 0 && s3 > 0) || (s1 < 0 && s2 < 0 && s3 < 0)) return 0;
  return Math.min(
    segmentFromOrigin(ay, az, by, bz),
    segmentFromOrigin(by, bz, cy, cz),
    segmentFromOrigin(cy, cz, ay, az),
  );
}

function segmentFromOrigin(ay: number, az: number, by: number, bz: number): number {
  const dy = by - ay;
  const dz = bz - az;
  const l2 = dy * dy + dz * dz;
  const t = l2 === 0 ? 0 : Math.max(0, Math.min(1, -(ay * dy + az * dz) / l2));
  return Math.hypot(ay + t * dy, az + t * dz);
}

/** Chords of facets and half a millimetre of play do not make two rings meet. */
const SLACK_M = 0.0005;

/** Whether two hulls share a lane along `direction`. */
export function shareLane(a: Hull, b: Hull, direction: Vec3): boolean {
  if (!boxesMeet(a, b, direction)) return false;
  if (Math.abs(direction[0]) < 0.999) return true;
  return a.inner_m < b.outer_m - SLACK_M && b.inner_m < a.outer_m - SLACK_M;
}

/** Whether `a` lies inside the hollow of `b`, seen along x. */
export const isNested = (a: Hull, b: Hull, direction: Vec3): boolean =>
  Math.abs(direction[0]) > 0.999 && a.outer_m <= b.inner_m + SLACK_M && boxesMeet(a, b, direction);

function boxesMeet(a: Hull, b: Hull, direction: Vec3): boolean {
  for (let k = 0; k < 3; k++) {
    if (Math.abs(direction[k]!) > 0.5) continue;
    if (
      a.bounds[2 * k]! >= b.bounds[2 * k + 1]! - SLACK_M ||
      b.bounds[2 * k]! >= a.bounds[2 * k + 1]! - SLACK_M
    )
      return false;
  }
  return true;
}

/** Least and greatest coordinate of a hull along a direction. */
export function extentAlong(hull: Hull, direction: Vec3): readonly [number, number] {
  let low = 0;
  let high = 0;
  for (let k = 0; k < 3; k++) {
    const p = direction[k]! * hull.bounds[2 * k]!;
    const q = direction[k]! * hull.bounds[2 * k + 1]!;
    low += Math.min(p, q);
    high += Math.max(p, q);
  }
  return [low, high];
}
