/** Central projection, as the stage's camera has it: solids in the camera's frame, cut off at planes, put on the sheet. */
import type { Vec3 } from '../../kernel';

/** Where a picture is taken from. Directions are unit vectors in the machine's frame. */
export interface EyePlace {
  readonly eye_m: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  /** From what is looked at towards the eye. */
  readonly towards: Vec3;
  /** Opening of the lens from the top of the view to its bottom, degrees. */
  readonly fov_deg: number;
}

/** Sheet of the drawing in pixels; the view's axis meets it at `x0`, `y0`; a length at distance d shows `focal` / d as large. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly x0: number;
  readonly y0: number;
  readonly focal_px: number;
}

/** What lies nearer to the eye is left out, metres. */
export const NEAR_M = 0.02;

/** What is kept: a x + b y + c z <= d, in the camera's frame (x right, y up, z away from the eye). */
export interface HalfSpace {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

export const IN_FRONT: HalfSpace = { a: 0, b: 0, c: -1, d: -NEAR_M };

/** A point of the machine in the camera's frame. */
export function inCamera({ eye_m, right, up, towards }: EyePlace, p: Vec3): [number, number, number] {
  const x = p[0] - eye_m[0];
  const y = p[1] - eye_m[1];
  const z = p[2] - eye_m[2];
  return [
    right[0] * x + right[1] * y + right[2] * z,
    up[0] * x + up[1] * y + up[2] * z,
    -(towards[0] * x + towards[1] * y + towards[2] * z),
  ];
}

/** The half space on the near side of a plane of the machine (`normal` points to what is cut away). */
export function keptSide(eye: EyePlace, normal: Vec3, distance_m: number): HalfSpace {
  const along = (v: Vec3): number => v[0] * normal[0] + v[1] * normal[1] + v[2] * normal[2];
  return { a: along(eye.right), b: along(eye.up), c: -along(eye.towards), d: distance_m - along(eye.eye_m) };
}

const over = ({ a, b, c, d }: HalfSpace, x: number, y: number, z: number): number =>
  a * x + b * y + c * z - d;

/** Whether a point of the camera's frame is kept. */
export const keeps = (space: HalfSpace, x: number, y: number, z: number): boolean =>
  over(space, x, y, z) <= 0;

/** A convex polygon (x y z each) cut off at a half space. */
export function clipPolygon(points: readonly number[], space: HalfSpace): number[] {
  const out: number[] = [];
  const n = points.length;
  for (let i = 0; i < n; i += 3) {
    const j = (i + 3) % n;
    const ax = points[i]!, ay = points[i + 1]!, az = points[i + 2]!; // prettier-ignore
    const bx = points[j]!, by = points[j + 1]!, bz = points[j + 2]!; // prettier-ignore
    const p = over(space, ax, ay, az);
    const q = over(space, bx, by, bz);
    if (p <= 0) out.push(ax, ay, az);
    if (p <= 0 === q <= 0) continue;
    const s = p / (p - q);
    out.push(ax + (bx - ax) * s, ay + (by - ay) * s, az + (bz - az) * s);
  }
  return out;
}

/** A segment (x y z of both ends) cut off at a half space; null when nothing is left. Changes `ends` in place. */
export function clipSegment(ends: number[], space: HalfSpace): boolean {
  const p = over(space, ends[0]!, ends[1]!, ends[2]!);
  const q = over(space, ends[3]!, ends[4]!, ends[5]!);
  if (p > 0 && q > 0) return false;
  if (p <= 0 && q <= 0) return true;
  const s = p / (p - q);
  const at = p > 0 ? 0 : 3;
  const cut = [0, 1, 2].map((k) => ends[k]! + (ends[k + 3]! - ends[k]!) * s);
  for (let k = 0; k < 3; k++) ends[at + k] = cut[k]!;
  return true;
}
