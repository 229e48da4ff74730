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
/** Shorter pieces are dots, not lines, pixels. */
const LEAST_PX = 0.7;

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
    return visibleRuns(a[0]!, a[1]!, a[2]!, b[0]!, b[1]!, b[2]!, map, bias);
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
      ...visibleRuns(flat[a]!, flat[a + 1]!, flat[a + 2]!, flat[b]!, flat[b + 1]!, flat[b + 2]!, map, bias),
    );
  }
  return joined(out);
}

/** Pieces of a straight line that nothing nearer covers. */
function visibleRuns(
  ax: number,
  ay: number,
  az: number,
  bx: number,
  by: number,
  bz: number,
  map: DepthMap,
  bias: number,
): number[][] {
  const { width, height } = map;
  if (Math.max(ax, bx) < 0 || Math.min(ax, bx) > width || Math.max(ay, by) < 0 || Math.min(ay, by) > height)
    return [];
  const length = Math.hypot(bx - ax, by - ay);
  const steps = Math.max(1, Math.ceil(length));
  const out: number[][] = [];
  let from = -1;
  const end = (to: number): void => {
    if (from < 0 || (length * (to - from)) / steps < LEAST_PX) return;
    const at = (s: number): [number, number] => [ax + ((bx - ax) * s) / steps, ay + ((by - ay) * s) / steps];
    out.push([...at(from), ...at(to)]);
  };
  for (let s = 0; s <= steps; s++) {
    const share = s / steps;
    const x = ax + (bx - ax) * share;
    const y = ay + (by - ay) * share;
    const seen = isSeen(x, y, az + (bz - az) * share + bias, map);
    if (seen && from < 0) from = s;
    if (!seen) {
      end(s - 1);
      from = -1;
    }
  }
  end(steps);
  return out;
}

/** A point is seen when of the pixels round it one is farther away: edges lie where surfaces end. */
function isSeen(x: number, y: number, z: number, { width, height, depth }: DepthMap): boolean {
  const cx = Math.floor(x);
  const cy = Math.floor(y);
  if (cx < 0 || cy < 0 || cx >= width || cy >= height) return false;
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) {
      const px = cx + dx;
      const py = cy + dy;
      if (px < 0 || py < 0 || px >= width || py >= height) continue;
      if (depth[py * width + px]! <= z) return true;
    }
  return false;
}

/** Runs that meet end to end become one line, so that a circle is one path and not a hundred. */
function joined(runs: number[][]): number[][] {
  const key = (x: number, y: number): string => `${Math.round(x * 8)},${Math.round(y * 8)}`;
  const open = new Map<string, number[]>();
  const lines = new Set<number[]>();
  for (const run of runs) {
    let line = run;
    for (const [x, y] of [
      [run[0]!, run[1]!],
      [run[2]!, run[3]!],
    ] as const) {
      const other = open.get(key(x, y));
      if (other === undefined || other === line) continue;
      open.delete(keyOfStart(other));
      open.delete(keyOfEnd(other));
      open.delete(keyOfStart(line));
      open.delete(keyOfEnd(line));
      lines.delete(other);
      lines.delete(line);
      const atEnd = key(other.at(-2)!, other.at(-1)!) === key(x, y);
      const first = atEnd ? other : turned(other);
      const second = key(line[0]!, line[1]!) === key(x, y) ? line : turned(line);
      line = [...first, ...second.slice(2)];
    }
    lines.add(line);
    open.set(keyOfStart(line), line);
    open.set(keyOfEnd(line), line);
  }
  return [...lines];

  function keyOfStart(line: number[]): string {
    return key(line[0]!, line[1]!);
  }
  function keyOfEnd(line: number[]): string {
    return key(line.at(-2)!, line.at(-1)!);
  }
}

function turned(line: readonly number[]): number[] {
  const out: number[] = [];
  for (let i = line.length - 2; i >= 0; i -= 2) out.push(line[i]!, line[i + 1]!);
  return out;
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
