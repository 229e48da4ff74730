/** Exact cut polygons of a closed solid with a plane. */
import { cross, dot, invertPose, normalize, type Pose, rotate, transformPoint, type Vec3 } from '../kernel';
import type { SolidMesh } from './types';

/** A plane by a point on it and its normal, in the frame of the solid that it cuts. */
export interface Plane {
  readonly point_m: Vec3;
  readonly normal: Vec3;
}

/** Axes of the drawing plane: u x v = normal, so loops are seen from the side that the normal points to. */
export interface PlaneBasis {
  readonly origin_m: Vec3;
  readonly u: Vec3;
  readonly v: Vec3;
  readonly normal: Vec3;
}

/** One cut face: its outline counter-clockwise and its holes clockwise, u v u v ... in metres from the plane's point. */
export interface SectionRegion {
  readonly outer: Float64Array;
  readonly holes: readonly Float64Array[];
}

/**
 * Basis of a plane: u = Y x normal, v = normal x u (a plane facing +z has u = x, v = y; one facing +x has u = -z,
 * v = y, as seen by a person who looks against the normal with y up); a plane facing up or down has u = x.
 */
export function planeBasis({ point_m, normal }: Plane): PlaneBasis {
  const n = normalize(normal);
  const u = Math.abs(n[1]) > 0.999 ? ([1, 0, 0] as const) : normalize(cross([0, 1, 0], n));
  return { origin_m: point_m, u, v: cross(n, u), normal: n };
}

/** The machine's plane in the own frame of a part that stands at `pose`. */
export function planeInPart(plane: Plane, pose: Pose): Plane {
  const back = invertPose(pose);
  return { point_m: transformPoint(back, plane.point_m), normal: rotate(back.rotation, plane.normal) };
}

/**
 * Cut faces of a closed mesh. A corner that lies in the plane counts as above it, which is the plane moved down by
 * less than any distance: loops always close, and a face in the plane is cut or not as a whole. Empty when missed.
 */
export function sliceSolid(solid: SolidMesh, plane: Plane): readonly SectionRegion[] {
  const basis = planeBasis(plane);
  const heights = signedHeights(solid, basis);
  return heights === null ? [] : groupLoops(traceLoops(solid, heights, basis));
}

interface Ball {
  readonly centre: Vec3;
  readonly reach: number;
}

/** Balls round meshes already asked for: most parts of a machine are missed by a plane and told by their ball. */
const balls = new WeakMap<SolidMesh, Ball>();

function ballOf(solid: SolidMesh): Ball {
  let ball = balls.get(solid);
  if (ball === undefined) {
    const low = [Infinity, Infinity, Infinity];
    const high = [-Infinity, -Infinity, -Infinity];
    solid.positions.forEach((value, i) => {
      low[i % 3] = Math.min(low[i % 3]!, value);
      high[i % 3] = Math.max(high[i % 3]!, value);
    });
    const centre: Vec3 = [(low[0]! + high[0]!) / 2, (low[1]! + high[1]!) / 2, (low[2]! + high[2]!) / 2];
    const reach = Math.hypot(high[0]! - low[0]!, high[1]! - low[1]!, high[2]! - low[2]!) / 2 + 1e-9;
    ball = { centre, reach };
    balls.set(solid, ball);
  }
  return ball;
}

/** Heights of the vertices over the plane; null when all lie on one side. */
function signedHeights(solid: SolidMesh, { origin_m, normal }: PlaneBasis): Float64Array | null {
  const { positions } = solid;
  const [nx, ny, nz] = normal;
  const offset = dot(origin_m, normal);
  const { centre, reach } = ballOf(solid);
  if (Math.abs(dot(centre, normal) - offset) > reach) return null;
  const count = positions.length / 3;
  const heights = new Float64Array(count);
  let above = 0;
  for (let v = 0; v < count; v++) {
    const h = nx * positions[3 * v]! + ny * positions[3 * v + 1]! + nz * positions[3 * v + 2]! - offset;
    heights[v] = h;
    if (h >= 0) above++;
  }
  return above === 0 || above === count ? null : heights;
}

/**
 * In every cut triangle the segment runs from the side that goes down through the plane to the side that comes up,
 * which keeps the metal on its left; over that side the next triangle goes on.
 */
function traceLoops(
  { positions, indices }: SolidMesh,
  heights: Float64Array,
  basis: PlaneBasis,
): Float64Array[] {
  const count = heights.length;
  const upFrom = new Map<number, number>();
  const keys: number[] = [];
  for (let t = 0; t < indices.length; t += 3) {
    const a = indices[t]!, b = indices[t + 1]!, c = indices[t + 2]!; // prettier-ignore
    const ua = heights[a]! >= 0, ub = heights[b]! >= 0, uc = heights[c]! >= 0; // prettier-ignore
    if (ua === ub && ub === uc) continue;
    const down = ua && !ub ? a * count + b : ub && !uc ? b * count + c : c * count + a;
    const up = !ua && ub ? b * count + a : !ub && uc ? c * count + b : a * count + c;
    upFrom.set(down, up);
    keys.push(down);
  }
  const { origin_m: o, u, v } = basis;
  const loops: Float64Array[] = [];
  for (const start of keys) {
    if (!upFrom.has(start)) continue;
    const points: number[] = [];
    let key: number | undefined = start;
    while (key !== undefined) {
      const high = Math.floor(key / count);
      const low = key - high * count;
      const f = heights[high]! / (heights[high]! - heights[low]!);
      const along = (k: number): number =>
        positions[3 * high + k]! +
        f * (positions[3 * low + k]! - positions[3 * high + k]!) -
        o[k as 0 | 1 | 2];
      const x = along(0), y = along(1), z = along(2); // prettier-ignore
      points.push(u[0] * x + u[1] * y + u[2] * z, v[0] * x + v[1] * y + v[2] * z);
      const following: number | undefined = upFrom.get(key);
      upFrom.delete(key);
      key = following === undefined || !upFrom.has(following) ? undefined : following;
    }
    const loop = withoutRepeats(points);
    if (loop.length >= 6) loops.push(loop);
  }
  return loops;
}

/** Leaves out points that lie on the one before or on the line between their neighbours. */
function withoutRepeats(points: readonly number[]): Float64Array {
  const kept: number[] = [];
  const near = 1e-9;
  for (let i = 0; i < points.length; i += 2) {
    const x = points[i]!, y = points[i + 1]!; // prettier-ignore
    const n = kept.length;
    if (n >= 2 && Math.abs(x - kept[n - 2]!) < near && Math.abs(y - kept[n - 1]!) < near) continue;
    if (n >= 4) {
      const ax = kept[n - 2]! - kept[n - 4]!, ay = kept[n - 1]! - kept[n - 3]!; // prettier-ignore
      const bx = x - kept[n - 2]!, by = y - kept[n - 1]!; // prettier-ignore
      // Straight on, within a nanometre of the line, is no corner; a turn back is one.
      if (Math.abs(ax * by - ay * bx) < near * Math.hypot(ax, ay) && ax * bx + ay * by > 0)
        kept.length = n - 2;
    }
    kept.push(x, y);
  }
  const n = kept.length;
  if (n >= 4 && Math.abs(kept[0]! - kept[n - 2]!) < near && Math.abs(kept[1]! - kept[n - 1]!) < near)
    kept.length = n - 2;
  return Float64Array.from(kept);
}

/** Area inside a loop, positive counter-clockwise, in m2. */
export function loopArea(loop: Float64Array): number {
  let twice = 0;
  const n = loop.length;
  for (let i = 0; i < n; i += 2) {
    const j = (i + 2) % n;
    twice += loop[i]! * loop[j + 1]! - loop[j]! * loop[i + 1]!;
  }
  return twice / 2;
}

/** Gives each hole to the smallest outline that holds its first point. */
function groupLoops(loops: readonly Float64Array[]): readonly SectionRegion[] {
  const areas = loops.map(loopArea);
  const outers = loops
    .map((outer, i) => ({ outer, area: areas[i]!, holes: [] as Float64Array[] }))
    .filter((region) => region.area > 0)
    .sort((a, b) => a.area - b.area);
  loops.forEach((loop, i) => {
    if (areas[i]! >= 0) return;
    outers
      .find((region) => region.area > -areas[i]! && holds(region.outer, loop[0]!, loop[1]!))
      ?.holes.push(loop);
  });
  return outers.map(({ outer, holes }) => ({ outer, holes }));
}

/** Even-odd rule. */
function holds(loop: Float64Array, x: number, y: number): boolean {
  let inside = false;
  const n = loop.length;
  for (let i = 0, j = n - 2; i < n; j = i, i += 2) {
    const yi = loop[i + 1]!, yj = loop[j + 1]!; // prettier-ignore
    if (yi > y !== yj > y && x < loop[i]! + ((y - yi) / (yj - yi)) * (loop[j]! - loop[i]!)) inside = !inside;
  }
  return inside;
}
