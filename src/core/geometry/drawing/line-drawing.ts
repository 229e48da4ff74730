/**
 * Line drawing of placed solids in parallel projection, hidden lines left out, as a drawing office would make it:
 * creases and outlines are tested point by point against a map of the nearest surfaces (after A. Appel, The notion of
 * quantitative invisibility and the machine rendering of solids, 1967, cited from memory; the map stands in for his
 * counting). Lengths in pixels of the sheet, y downwards.
 */
import { rotate, type Vec3 } from '../../kernel';
import { meshEdges } from './edges';
import {
  type DepthMap,
  depthMap,
  type DrawnPart,
  flatten,
  type FlatBody,
  type Frame,
  type View,
  viewFrom,
} from './projection';
import { joined, visibleRuns } from './visible-lines';

export interface DrawnLines {
  readonly partId: string;
  readonly role: DrawnPart['role'];
  /** Polylines: x y of each point. */
  readonly lines: readonly (readonly number[])[];
}

/** Where a part can be pointed at: a point of it that is seen, and how many pixels of it are. */
export interface SeenSpot {
  readonly partId: string;
  readonly x: number;
  readonly y: number;
  readonly pixels: number;
}

export interface LineDrawing {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly DrawnLines[];
  readonly seen: readonly SeenSpot[];
  /** Parts of given paths (machine frame) that nothing covers: x y of each point. */
  readonly paths: readonly (readonly number[])[];
}

export interface DrawingInput {
  readonly parts: readonly DrawnPart[];
  /** From the machine towards the eye. */
  readonly towards: Vec3;
  readonly frame: Frame;
  readonly width: number;
  /** Straight ways in the machine's frame, drawn where nothing covers them. */
  readonly paths?: readonly (readonly [Vec3, Vec3])[];
}

/** Depth, besides half a pixel's, by which a line may lie behind what covers it and still be seen, metres. */
const BIAS_M = 0.0008;

export function lineDrawing({ parts, towards, frame, width, paths = [] }: DrawingInput): LineDrawing {
  const view = viewFrom(towards);
  const scale = width / (2 * frame.halfWidth_m);
  const height = Math.max(1, Math.round(2 * frame.halfHeight_m * scale));
  const flat = parts.map((part, i) => flatten(part, i, view, frame, scale));
  const map = depthMap(flat.flat(), width, height);
  const bias = BIAS_M + 0.6 / scale;
  const lines = parts.map((part, i): DrawnLines => {
    const [x, y, z, w] = part.rotation;
    const eye = rotate([-x, -y, -z, w], view.towards);
    return {
      partId: part.id,
      role: part.role,
      lines: flat[i]!.flatMap((body) => bodyLines(body, eye, map, bias)),
    };
  });
  const spots = seenSpots(parts, map);
  const ways = paths.flatMap(([from, to]) => {
    const [a, b] = [from, to].map((p) => onSheet(p, view, frame, scale)) as [number[], number[]];
    return visibleRuns(a[0]!, a[1]!, a[2]! + bias, b[0]!, b[1]!, b[2]! + bias, map);
  });
  return { width, height, lines, seen: spots, paths: ways };
}

function onSheet(p: Vec3, view: View, frame: Frame, scale: number): number[] {
  const along = (v: Vec3): number => v[0] * p[0] + v[1] * p[1] + v[2] * p[2];
  return [
    (along(view.right) - frame.x + frame.halfWidth_m) * scale,
    (frame.y + frame.halfHeight_m - along(view.up)) * scale,
    along(view.towards),
  ];
}

/** Creases with a face towards the eye, and edges between a face towards it and one away from it. */
function bodyLines({ flat, solid }: FlatBody, eye: Vec3, map: DepthMap, bias: number): number[][] {
  const { ends, normals, crease } = meshEdges(solid);
  const out: number[][] = [];
  for (let e = 0; e < crease.length; e++) {
    const n = 6 * e;
    const f = normals[n]! * eye[0] + normals[n + 1]! * eye[1] + normals[n + 2]! * eye[2];
    const g = normals[n + 3]! * eye[0] + normals[n + 4]! * eye[1] + normals[n + 5]! * eye[2];
    const outline = f > 1e-6 !== g > 1e-6;
    if (!outline && (crease[e] === 0 || f <= 1e-6)) continue;
    const a = 3 * ends[2 * e]!;
    const b = 3 * ends[2 * e + 1]!;
    out.push(
      ...visibleRuns(
        flat[a]!,
        flat[a + 1]!,
        flat[a + 2]! + bias,
        flat[b]!,
        flat[b + 1]!,
        flat[b + 2]! + bias,
        map,
      ),
    );
  }
  return joined(out);
}

/** Of each part the seen pixel nearest to the middle of all its seen pixels. */
function seenSpots(parts: readonly DrawnPart[], { width, height, owner }: DepthMap): SeenSpot[] {
  const sums = parts.map(() => ({ x: 0, y: 0, n: 0, best: Infinity, at: 0 }));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const sum = sums[owner[y * width + x]!];
      if (sum === undefined) continue;
      sum.x += x;
      sum.y += y;
      sum.n++;
    }
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const sum = sums[owner[y * width + x]!];
      if (sum === undefined) continue;
      const d = (x - sum.x / sum.n) ** 2 + (y - sum.y / sum.n) ** 2;
      if (d < sum.best) {
        sum.best = d;
        sum.at = y * width + x;
      }
    }
  return parts.flatMap((part, i) => {
    const { n, at } = sums[i]!;
    return n === 0
      ? []
      : [{ partId: part.id, x: (at % width) + 0.5, y: Math.floor(at / width) + 0.5, pixels: n }];
  });
}
