/** What a ray meets: parts by their boxes, then triangles in the part's own frame. Pure numbers, testable without WebGL. */
import { Matrix4, type Ray, Vector3 } from 'three';
import { GHOST, HIDDEN, type PartTable } from '../machine/part-table';
import { type Pieces, piecesOf, staysWhole } from '../../../core/geometry';
import type { DrawnBody } from '../../../core/document';

export interface Hit {
  readonly part: number;
  readonly distance: number;
  readonly point: Vector3;
}

/** Section plane: what lies beyond it is not there to be picked. */
export interface PickCut {
  readonly normal: readonly [number, number, number];
  readonly distance_m: number;
}

const inverse = new Matrix4();
const origin = new Vector3();
const direction = new Vector3();
const piecesCache = new WeakMap<DrawnBody, Pieces>();

/** Nearest part on the ray; ghosts only where nothing solid is met. Null: paper. */
export function pick(table: PartTable, ray: Ray, cut: PickCut | null): Hit | null {
  let best = Infinity;
  let part = -1;
  let ghost = Infinity;
  let ghostPart = -1;
  for (let i = 0; i < table.count; i++) {
    const shows = table.shown[i];
    if (shows === HIDDEN) continue;
    const limit = shows === GHOST ? ghost : best;
    const t = meet(table, i, ray, cut, limit);
    if (t >= limit) continue;
    if (shows === GHOST) [ghost, ghostPart] = [t, i];
    else [best, part] = [t, i];
  }
  if (part < 0) [best, part] = [ghost, ghostPart];
  return part < 0 ? null : { part, distance: best, point: ray.at(best, new Vector3()) };
}

/** Whether the ray meets anything solid before `limit` besides the parts of `own`; stops at the first. */
export function meetsBefore(
  table: PartTable,
  ray: Ray,
  cut: PickCut | null,
  limit: number,
  own: ReadonlySet<number>,
): boolean {
  for (let i = 0; i < table.count; i++)
    if (table.shown[i] !== HIDDEN && table.shown[i] !== GHOST && !own.has(i))
      if (meet(table, i, ray, cut, limit) < limit) return true;
  return false;
}

/** Distance at which the ray first meets the part, at most `limit`; Infinity: it does not. */
function meet(table: PartTable, part: number, ray: Ray, cut: PickCut | null, limit: number): number {
  const kind = table.kinds[table.kindOf[part]!]!;
  inverse.fromArray(table.matrices, part * 16).invert();
  origin.copy(ray.origin).applyMatrix4(inverse);
  direction.copy(ray.direction).transformDirection(inverse);
  if (!meetsBox(kind.min, kind.max, limit)) return Infinity;
  let best = limit;
  const plane = cut === null ? null : ownPlane(table.matrices, part * 16, cut);
  for (const body of kind.bodies) best = Math.min(best, meetBody(body, plane));
  return best < limit ? best : Infinity;
}

type OwnPlane = readonly [nx: number, ny: number, nz: number, distance: number];

function meetBody(body: DrawnBody, plane: OwnPlane | null): number {
  const { positions, indices } = body.solid;
  const pieces = plane !== null && body.section === 'whole' ? cachedPieces(body) : null;
  let best = Infinity;
  // Whether the nearest wall is one that the ray leaves the solid by, of a solid that the plane cuts.
  let leavesCut = false;
  for (let t = 0; t < indices.length; t += 3) {
    const d = meetTriangle(positions, indices[t]! * 3, indices[t + 1]! * 3, indices[t + 2]! * 3);
    if (d >= best) continue;
    let cutHere = false;
    if (plane !== null) {
      const [nx, ny, nz, distance] = plane;
      const piece = pieces === null ? null : pieces.pieces[pieces.ofVertex[indices[t]!]!]!;
      cutHere = piece === null || !staysWhole(piece, nx, ny, nz, distance);
      if (cutHere && heightAt(plane, d) > 0) continue;
    }
    best = d;
    leavesCut = cutHere && leaves;
  }
  if (plane === null || !leavesCut) return best;
  // Left without having been entered on this side: the eye sees the face that the plane cut.
  const [nx, ny, nz] = plane;
  const towards = nx * direction.x + ny * direction.y + nz * direction.z;
  const face = -heightAt(plane, 0) / towards;
  return towards < 0 && face > 0 && face < best ? face : best;
}

/** Height of the ray's point over the plane. */
const heightAt = ([nx, ny, nz, distance]: OwnPlane, d: number): number =>
  nx * (origin.x + d * direction.x) +
  ny * (origin.y + d * direction.y) +
  nz * (origin.z + d * direction.z) -
  distance;

function cachedPieces(body: DrawnBody): Pieces {
  const known = piecesCache.get(body) ?? piecesOf(body.solid);
  piecesCache.set(body, known);
  return known;
}

function ownPlane(m: Float32Array, o: number, { normal: n, distance_m }: PickCut): OwnPlane {
  return [
    m[o]! * n[0] + m[o + 1]! * n[1] + m[o + 2]! * n[2],
    m[o + 4]! * n[0] + m[o + 5]! * n[1] + m[o + 6]! * n[2],
    m[o + 8]! * n[0] + m[o + 9]! * n[1] + m[o + 10]! * n[2],
    distance_m - (n[0] * m[o + 12]! + n[1] * m[o + 13]! + n[2] * m[o + 14]!),
  ];
}

function meetsBox(min: readonly number[], max: readonly number[], limit: number): boolean {
  let near = 0;
  let far = limit;
  for (let k = 0; k < 3; k++) {
    const o = origin.getComponent(k);
    const d = direction.getComponent(k);
    const a = (min[k]! - o) / d;
    const b = (max[k]! - o) / d;
    near = Math.max(near, Math.min(a, b));
    far = Math.min(far, Math.max(a, b));
  }
  return near <= far;
}

/** Set by `meetTriangle`: the ray comes out of the solid there. */
let leaves = false;

/** Moeller and Trumbore, both sides: a cut opens solids, and their inner walls are picked too. */
function meetTriangle(p: Float32Array, a: number, b: number, c: number): number {
  const ax = p[a]!, ay = p[a + 1]!, az = p[a + 2]!; // prettier-ignore
  const ux = p[b]! - ax, uy = p[b + 1]! - ay, uz = p[b + 2]! - az; // prettier-ignore
  const vx = p[c]! - ax, vy = p[c + 1]! - ay, vz = p[c + 2]! - az; // prettier-ignore
  const { x: dx, y: dy, z: dz } = direction;
  const px = dy * vz - dz * vy, py = dz * vx - dx * vz, pz = dx * vy - dy * vx; // prettier-ignore
  const det = ux * px + uy * py + uz * pz;
  if (Math.abs(det) < 1e-16) return Infinity;
  const inv = 1 / det;
  const sx = origin.x - ax, sy = origin.y - ay, sz = origin.z - az; // prettier-ignore
  const u = (sx * px + sy * py + sz * pz) * inv;
  if (u < 0 || u > 1) return Infinity;
  const qx = sy * uz - sz * uy, qy = sz * ux - sx * uz, qz = sx * uy - sy * ux; // prettier-ignore
  const v = (dx * qx + dy * qy + dz * qz) * inv;
  if (v < 0 || u + v > 1) return Infinity;
  const t = (vx * qx + vy * qy + vz * qz) * inv;
  if (t <= 1e-6) return Infinity;
  leaves = det < 0;
  return t;
}
