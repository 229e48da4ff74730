/**
 * Line drawing of what the stage shows, hidden lines left out, seen through the stage's camera (central projection) and
 * cut by its section. As `lineDrawing`, lines are tested point by point against a map of the nearest surfaces (after A.
 * Appel, The notion of quantitative invisibility and the machine rendering of solids, 1967, cited from memory). The map
 * holds one over the distance along the view: that runs evenly over the sheet. Lengths in pixels, y downwards.
 *
 * A generator: it yields the share of the work done, so that a caller can draw between other work, show how far it is,
 * and stop.
 */
import type { Vec3 } from '../../kernel';
import type { PlaneBasis } from '../section';
import type { SolidMesh } from '../types';
import { type CutFace, cutBasis, cutFaces, hatchLines } from './cut-faces';
import { meshEdges } from './edges';
import { fillRegion, fillTriangle } from './fill';
import {
  clipPolygon,
  clipSegment,
  type EyePlace,
  type HalfSpace,
  IN_FRONT,
  inCamera,
  keeps,
  keptSide,
  NEAR_M,
  type Sheet,
} from './perspective';
import { type Cut, type PlacedBody, type PlacedPart, placePart } from './placed';
import type { DepthMap } from './projection';
import { deepestSpots, type Spot } from './seen-spots';
import { joined, visibleRuns } from './visible-lines';

export type { Cut, PlacedPart, Spot };

export interface StageDrawingInput {
  readonly parts: readonly PlacedPart[];
  readonly eye: EyePlace;
  readonly sheet: Sheet;
  readonly cut: Cut | null;
  /** Centre lines and the like, machine's frame, drawn where nothing covers them. */
  readonly axes: readonly (readonly [Vec3, Vec3])[];
  /** Standard spacing of hatching where the view's middle is, pixels, and the distance of that middle from the eye. */
  readonly hatch_px: number;
  readonly middle_m: number;
}

/** Polylines: x y of each point. */
export type Lines = readonly (readonly number[])[];

export interface PartLines {
  readonly id: string;
  readonly ghost: boolean;
  /** Where the part ends against another, the background or a cut. */
  readonly rim: Lines;
  /** Edges within it. */
  readonly edges: Lines;
  readonly hatch: Lines;
}

export interface StageDrawing {
  readonly width: number;
  readonly height: number;
  readonly parts: readonly PartLines[];
  readonly axes: Lines;
  /** By part number; null: unseen or a ghost. */
  readonly spots: readonly (Spot | null)[];
  /** Number of the part that is seen in each pixel, -1: none. */
  readonly owner: Int16Array;
}

/** Depth by which a line may lie behind what covers it and still be seen, besides that of half a pixel, metres. */
const BIAS_M = 0.0008;
const HALF_PX = 0.6;
const CRUMB_PX = 3;

/** What turning, filling, cutting and line work take of the time, as measured. */
const SHARE = { fill: 0.3, cut: 0.4, lines: 0.75 };

export function* stageDrawing(input: StageDrawingInput): Generator<number, StageDrawing> {
  const { parts, eye, sheet, cut } = input;
  const { width, height } = sheet;
  const count = Math.max(1, parts.length);
  const space = cut === null ? null : keptSide(eye, cut.normal, cut.distance_m);
  const pen = penOf(sheet);
  const map = newMap(width, height);
  const bodies: PlacedBody[][] = [];
  for (const [i, part] of parts.entries()) {
    const placed = isShrunk(part.matrix) ? [] : placePart(part, i, eye, cut);
    bodies.push(placed);
    if (!part.ghost) for (const body of placed) fillBody(map, body, space, pen);
    yield (SHARE.fill * i) / count;
  }
  const faces: CutFace[] = [];
  // Seen from behind, a section shows no cut face.
  if (cut !== null && space !== null && space.d < 0) {
    const basis = cutBasis(cut);
    for (const [i, part] of parts.entries()) {
      if (part.ghost) continue;
      faces.push(...cutFaces(part, i, cut, basis));
      yield SHARE.fill + ((SHARE.cut - SHARE.fill) * i) / count;
    }
    for (const face of faces) fillFace(map, face, basis, eye, space, pen);
  }
  // Ghosts cover each other and are covered by what is solid, but cover nothing themselves.
  const ghostMap = parts.some((p) => p.ghost)
    ? { ...map, depth: map.depth.slice(), owner: map.owner.slice() }
    : map;
  for (const [i, part] of parts.entries())
    if (part.ghost) for (const body of bodies[i]!) fillBody(ghostMap, body, space, pen);
  const lines: PartLines[] = [];
  for (const [i, part] of parts.entries()) {
    const rim: number[][] = [];
    const edges: number[][] = [];
    const on = part.ghost ? ghostMap : map;
    for (const body of bodies[i]!) {
      const runs = bodyRuns(body, space, on, pen);
      const atRim = runs.map((run) => isRim(on, run, i));
      rim.push(...joined(runs.filter((_, k) => atRim[k])));
      edges.push(...joined(runs.filter((_, k) => !atRim[k])));
    }
    const hatch: number[][] = [];
    if (cut !== null)
      for (const face of faces) {
        if (face.part !== i) continue;
        const drawn = faceRuns(face, part, cutBasis(cut), input, map, pen);
        rim.push(...joined(drawn.outline));
        hatch.push(...drawn.hatch);
      }
    lines.push({ id: part.id, ghost: part.ghost, rim, edges, hatch });
    yield SHARE.cut + ((SHARE.lines - SHARE.cut) * i) / count;
  }
  const axes = input.axes.flatMap(([from, to]) =>
    segmentRuns([...inCamera(eye, from), ...inCamera(eye, to)], null, map, pen),
  );
  const spots = deepestSpots(map, parts.length);
  let found = spots.next();
  for (; found.done !== true; found = spots.next()) yield SHARE.lines + (1 - SHARE.lines) * found.value;
  return { width, height, parts: lines, axes, spots: found.value, owner: map.owner };
}

const newMap = (width: number, height: number): DepthMap => ({
  width,
  height,
  depth: new Float32Array(width * height),
  owner: new Int16Array(width * height).fill(-1),
});

/** A part that a study leaves out is shrunk to nothing. */
const isShrunk = (m: ArrayLike<number>): boolean => Math.hypot(m[0]!, m[1]!, m[2]!) < 1e-6;

interface Pen extends Sheet {
  x(x: number, z: number): number;
  y(y: number, z: number): number;
  /** Depth in the map of a line at distance z. */
  lineDepth(z: number): number;
}

function penOf(sheet: Sheet): Pen {
  const { x0, y0, focal_px: f } = sheet;
  return {
    ...sheet,
    x: (x, z) => x0 + (f * x) / z,
    y: (y, z) => y0 - (f * y) / z,
    lineDepth: (z) => 1 / Math.max(NEAR_M, z - BIAS_M - (HALF_PX * z) / f),
  };
}

function fillBody(map: DepthMap, placed: PlacedBody, space: HalfSpace | null, pen: Pen): void {
  const { body, camera, cuts, part } = placed;
  const { indices } = body.solid;
  const count = camera.length / 3;
  const flat = new Float64Array(camera.length);
  /** 0: drawn as it is, 1: cut off, 2: too near. */
  const away = new Uint8Array(count);
  for (let v = 0, i = 0; v < count; v++, i += 3) {
    const x = camera[i]!, y = camera[i + 1]!, z = camera[i + 2]!; // prettier-ignore
    if (z < NEAR_M) away[v] = 2;
    else {
      flat[i] = pen.x(x, z);
      flat[i + 1] = pen.y(y, z);
      flat[i + 2] = 1 / z;
      if (isCut(cuts, v) && space !== null && !keeps(space, x, y, z)) away[v] = 1;
    }
  }
  for (let t = 0; t < indices.length; t += 3) {
    const a = indices[t]!, b = indices[t + 1]!, c = indices[t + 2]!; // prettier-ignore
    if ((away[a]! | away[b]! | away[c]!) === 0) {
      const i = 3 * a, j = 3 * b, k = 3 * c; // prettier-ignore
      fillTriangle(
        map, part,
        flat[i]!, flat[i + 1]!, flat[i + 2]!, flat[j]!, flat[j + 1]!, flat[j + 2]!, flat[k]!, flat[k + 1]!, flat[k + 2]!,
      ); // prettier-ignore
    } else if ((away[a]! & away[b]! & away[c]!) === 0) {
      let rest: number[] = [a, b, c].flatMap((v) => [camera[3 * v]!, camera[3 * v + 1]!, camera[3 * v + 2]!]);
      rest = clipPolygon(rest, IN_FRONT);
      if (space !== null && isCut(cuts, a)) rest = clipPolygon(rest, space);
      const p = (k: number): [number, number, number] => {
        const z = rest[k + 2]!;
        return [pen.x(rest[k]!, z), pen.y(rest[k + 1]!, z), 1 / z];
      };
      for (let k = 3; k + 5 < rest.length; k += 3) fillTriangle(map, part, ...p(0), ...p(k), ...p(k + 3));
    }
  }
}

const isCut = (cuts: PlacedBody['cuts'], vertex: number): boolean =>
  cuts === 'all' || (cuts !== 'none' && cuts[vertex] === 1);

/** Seen pieces of creases with a face towards the eye, and of edges between a face towards it and one away from it. */
function bodyRuns(
  { body, camera, eye_m, cuts, part }: PlacedBody,
  space: HalfSpace | null,
  map: DepthMap,
  pen: Pen,
): number[][] {
  const { positions }: SolidMesh = body.solid;
  const { ends, normals, crease } = meshEdges(body.solid);
  // a hose is round however few its facets
  const round = body.finish === 'hose';
  const out: number[][] = [];
  for (let e = 0; e < crease.length; e++) {
    const n = 6 * e;
    const a = 3 * ends[2 * e]!;
    const b = 3 * ends[2 * e + 1]!;
    const x = eye_m[0] - positions[a]!, y = eye_m[1] - positions[a + 1]!, z = eye_m[2] - positions[a + 2]!; // prettier-ignore
    const f = normals[n]! * x + normals[n + 1]! * y + normals[n + 2]! * z;
    const g = normals[n + 3]! * x + normals[n + 4]! * y + normals[n + 5]! * z;
    const outline = f > 1e-6 !== g > 1e-6;
    if (!outline && (round || crease[e] === 0 || f <= 1e-6)) continue;
    const line = [camera[a]!, camera[a + 1]!, camera[a + 2]!, camera[b]!, camera[b + 1]!, camera[b + 2]!];
    out.push(...segmentRuns(line, isCut(cuts, a / 3) ? space : null, map, pen, part));
  }
  return out;
}

/** Seen pieces of a straight line of the camera's frame (x y z of both ends). */
function segmentRuns(
  line: number[],
  space: HalfSpace | null,
  map: DepthMap,
  pen: Pen,
  part = -1,
): number[][] {
  if (!clipSegment(line, IN_FRONT) || (space !== null && !clipSegment(line, space))) return [];
  const [ax, ay, az, bx, by, bz] = line as [number, number, number, number, number, number];
  const x0 = pen.x(ax, az);
  const y0 = pen.y(ay, az);
  const x1 = pen.x(bx, bz);
  const y1 = pen.y(by, bz);
  const runs = visibleRuns(x0, y0, pen.lineDepth(az), x1, y1, pen.lineDepth(bz), map, part);
  // Crumbs of a line that is hidden for most of its way come from the grain of the map.
  const whole = Math.hypot(x1 - x0, y1 - y0);
  return runs.filter((run) => {
    const length = Math.hypot(run[2]! - run[0]!, run[3]! - run[1]!);
    return length > CRUMB_PX || length > whole / 2;
  });
}

/** Whether beside most of a line something else than its part is seen. */
function isRim({ width, height, owner }: DepthMap, run: readonly number[], part: number): boolean {
  const [ax, ay, bx, by] = run as [number, number, number, number];
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return false;
  const nx = (-1.9 * (by - ay)) / length;
  const ny = (1.9 * (bx - ax)) / length;
  const other = (x: number, y: number): boolean => {
    const cx = Math.floor(x);
    const cy = Math.floor(y);
    return cx < 0 || cy < 0 || cx >= width || cy >= height || owner[cy * width + cx] !== part;
  };
  let votes = 0;
  for (const s of [0.2, 0.5, 0.8]) {
    const x = ax + (bx - ax) * s;
    const y = ay + (by - ay) * s;
    if (other(x + nx, y + ny) || other(x - nx, y - ny)) votes++;
  }
  return votes >= 2;
}

const inMachine = ({ origin_m: o, u, v }: PlaneBasis, s: number, t: number): Vec3 => [
  o[0] + u[0] * s + v[0] * t,
  o[1] + u[1] * s + v[1] * t,
  o[2] + u[2] * s + v[2] * t,
];

function fillFace(
  map: DepthMap,
  face: CutFace,
  basis: PlaneBasis,
  eye: EyePlace,
  space: HalfSpace,
  pen: Pen,
): void {
  const loops: number[][] = [];
  for (const loop of face.loops) {
    const out: number[] = [];
    for (let i = 0; i < loop.length; i += 2) {
      const [x, y, z] = inCamera(eye, inMachine(basis, loop[i]!, loop[i + 1]!));
      if (z < NEAR_M) return;
      out.push(pen.x(x, z), pen.y(y, z));
    }
    loops.push(out);
  }
  const { a, b, c, d } = space;
  const { x0, y0, focal_px: f } = pen;
  fillRegion(map, face.part, loops, (x, y) => (a * ((x - x0) / f) + b * ((y0 - y) / f) + c) / d);
}

/** Dots of loose shot are drawn as small rounds of this many sides. */
const ROUND = 8;

function faceRuns(
  { loops, look }: CutFace,
  part: PlacedPart,
  basis: PlaneBasis,
  { eye, hatch_px, middle_m, sheet }: StageDrawingInput,
  map: DepthMap,
  pen: Pen,
): { outline: number[][]; hatch: number[][] } {
  const runs = (s0: number, t0: number, s1: number, t1: number): number[][] =>
    segmentRuns(
      [...inCamera(eye, inMachine(basis, s0, t0)), ...inCamera(eye, inMachine(basis, s1, t1))],
      null,
      map,
      pen,
    );
  const outline: number[][] = [];
  for (const loop of loops)
    for (let i = 0; i < loop.length; i += 2) {
      const j = (i + 2) % loop.length;
      outline.push(...runs(loop[i]!, loop[i + 1]!, loop[j]!, loop[j + 1]!));
    }
  const standard_m = (hatch_px * middle_m) / sheet.focal_px;
  const hatch: number[][] = [];
  if (look === 'loose') {
    // balls side by side, each row set back by half a ball
    const step = 0.8 * standard_m;
    for (const [s0, t, s1] of hatchLines(loops, 0, 0.866 * step) as [number, number, number, number][]) {
      const row = Math.round(t / (0.866 * step));
      const back = row % 2 === 0 ? 0 : 0.5;
      for (let k = Math.ceil(s0 / step - back); (k + back) * step <= s1; k++)
        for (let corner = 0; corner < ROUND; corner++) {
          const at = (n: number): [number, number] => [
            (k + back) * step + 0.4 * step * Math.cos((2 * Math.PI * n) / ROUND),
            t + 0.4 * step * Math.sin((2 * Math.PI * n) / ROUND),
          ];
          hatch.push(...runs(...at(corner), ...at(corner + 1)));
        }
    }
    return { outline, hatch: joined(hatch) };
  }
  // thin faces are drawn solid: lines side by side
  const spacing_m = look === 'thin' ? (1.2 * middle_m) / sheet.focal_px : part.hatch.spacing * standard_m;
  for (const line of hatchLines(loops, part.hatch.angle_rad, spacing_m) as [number, number, number, number][])
    hatch.push(...runs(...line));
  return { outline, hatch };
}
