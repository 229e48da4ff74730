/** Parallel projection of placed solids onto a sheet: what lies where, and what covers it. */
import { cross, normalize, type Pose, rotate, type Vec3 } from '../../kernel';
import type { Body } from '../types';

/** A part as it is drawn: its solids, where it is, and how it is drawn. */
export interface DrawnPart {
  readonly id: string;
  readonly bodies: readonly Pick<Body, 'solid'>[];
  readonly position_m: Vec3;
  readonly rotation: Pose['rotation'];
  /** 'main': what the picture is about; 'other': what it sits in. */
  readonly role: 'main' | 'other';
}

/** Right, up and towards the eye, in the machine's frame. */
export interface View {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly towards: Vec3;
}

/** View along `-towards` with the machine's y upright; `towards` must not be upright itself. */
export function viewFrom(towards: Vec3): View {
  const z = normalize(towards);
  const right = normalize(cross([0, 1, 0], z));
  return { right, up: cross(z, right), towards: z };
}

/** Piece of the sheet: its middle and half sizes in the plane of the view, metres. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly halfWidth_m: number;
  readonly halfHeight_m: number;
}

/** Vertices of one body on the sheet: x to the right and y down in pixels, depth in metres towards the eye. */
export interface FlatBody {
  readonly part: number;
  readonly solid: Body['solid'];
  readonly flat: Float32Array;
}

/** Axes of the view in the part's own frame and the shift of its origin, so that vertices need no turning. */
export function flatten(
  part: DrawnPart,
  number: number,
  view: View,
  frame: Frame,
  scale: number,
): FlatBody[] {
  const [x, y, z, w] = part.rotation;
  const back: Pose['rotation'] = [-x, -y, -z, w];
  const axes = [view.right, view.up, view.towards].map((v) => rotate(back, v));
  const origin = [view.right, view.up, view.towards].map(
    (v) => v[0] * part.position_m[0] + v[1] * part.position_m[1] + v[2] * part.position_m[2],
  );
  const [r, u, t] = axes as [Vec3, Vec3, Vec3];
  return part.bodies.map(({ solid }) => {
    const p = solid.positions;
    const flat = new Float32Array(p.length);
    for (let i = 0; i < p.length; i += 3) {
      const px = p[i]!, py = p[i + 1]!, pz = p[i + 2]!; // prettier-ignore
      flat[i] = (r[0] * px + r[1] * py + r[2] * pz + origin[0]! - frame.x + frame.halfWidth_m) * scale;
      flat[i + 1] = (frame.y + frame.halfHeight_m - (u[0] * px + u[1] * py + u[2] * pz + origin[1]!)) * scale;
      flat[i + 2] = t[0] * px + t[1] * py + t[2] * pz + origin[2]!;
    }
    return { part: number, solid, flat };
  });
}

/** Depth of the nearest surface in each pixel, and whose it is (-1: none). */
export interface DepthMap {
  readonly width: number;
  readonly height: number;
  readonly depth: Float32Array;
  readonly owner: Int16Array;
}

export function depthMap(bodies: readonly FlatBody[], width: number, height: number): DepthMap {
  const depth = new Float32Array(width * height).fill(-Infinity);
  const owner = new Int16Array(width * height).fill(-1);
  for (const { flat, solid, part } of bodies) {
    const { indices } = solid;
    for (let t = 0; t < indices.length; t += 3) {
      const a = 3 * indices[t]!, b = 3 * indices[t + 1]!, c = 3 * indices[t + 2]!; // prettier-ignore
      const ax = flat[a]!, ay = flat[a + 1]!, bx = flat[b]!, by = flat[b + 1]!, cx = flat[c]!, cy = flat[c + 1]!; // prettier-ignore
      const area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
      // y runs down the sheet, so faces towards the eye run the other way round
      if (area >= 0) continue;
      const left = Math.max(0, Math.ceil(Math.min(ax, bx, cx) - 0.5));
      const right = Math.min(width - 1, Math.floor(Math.max(ax, bx, cx) - 0.5));
      const top = Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5));
      const bottom = Math.min(height - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
      if (left > right || top > bottom) continue;
      const az = flat[a + 2]!, bz = flat[b + 2]!, cz = flat[c + 2]!; // prettier-ignore
      for (let y = top; y <= bottom; y++) {
        const py = y + 0.5;
        for (let x = left; x <= right; x++) {
          const px = x + 0.5;
          const u = ((bx - px) * (cy - py) - (cx - px) * (by - py)) / area;
          const v = ((cx - px) * (ay - py) - (ax - px) * (cy - py)) / area;
          if (u < 0 || v < 0 || u + v > 1) continue;
          const z = u * az + v * bz + (1 - u - v) * cz;
          const i = y * width + x;
          if (z <= depth[i]!) continue;
          depth[i] = z;
          owner[i] = part;
        }
      }
    }
  }
  return { width, height, depth, owner };
}
