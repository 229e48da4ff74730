/**
 * The chamber's wall as one counter-clockwise path: the arc about C, then the flat face downwards where there
 * is one. A place on it is the length from the arc's start.
 */
import { crossings, faceLine, legCurves, wallCircle, type LineCurve, type Point } from './curves';
import { distanceToLeg, type Leg, type Section } from './section';

export interface WallPath {
  readonly section: Section;
  /** Half angle of the arc about C, pi for a round chamber. */
  readonly half_rad: number;
  readonly arc_m: number;
  readonly face: LineCurve | null;
  readonly total_m: number;
}

export function wallPath(section: Section): WallPath {
  const { radius_m: R, eccentricity_m: e, chordX_m } = section;
  const face = faceLine(section);
  const half_rad = face === null ? Math.PI : Math.acos((chordX_m - e) / R);
  const arc_m = 2 * R * half_rad;
  return { section, half_rad, arc_m, face, total_m: arc_m + (face === null ? 0 : face.y1 - face.y2) };
}

/** Place where leg 1 starts: W on the arc, or where its centre line comes in through the flat face, or null. */
export function leg1Start(path: WallPath, leg: Leg): number | null {
  const { section, face } = path;
  if (face === null || leg.x1 > section.chordX_m) return onArc(path, leg.x1, leg.y1);
  const entry = crossings({ kind: 'line', ...leg }, face, 1e-9 * section.radius_m)[0];
  return entry === undefined ? null : onFace(path, face, entry[1]);
}

/**
 * A point just inside the chamber beside the first stretch of wall that `legs` leave bare, going from the place
 * `start` in `direction` (+1 counter-clockwise); null where all is covered.
 */
export function wallPointBeside(
  path: WallPath,
  legs: readonly Leg[],
  start: number,
  direction: 1 | -1,
): Point | null {
  const { section, total_m } = path;
  const around = (s: number) => ((s % total_m) + total_m) % total_m;
  const place = (ahead: number) => around(start + direction * ahead);
  const cuts = wallCuts(path, legs).map((s) => around(direction * (s - start)));
  const edges = [0, ...cuts.sort((a, b) => a - b), total_m];
  for (let i = 0; i + 1 < edges.length; i++) {
    const low = edges[i]!;
    const high = edges[i + 1]!;
    if (high - low < 1e-9 * total_m) continue;
    const [x, y] = pointAt(path, place((low + high) / 2), 0);
    if (legs.some((leg) => distanceToLeg(leg, x, y) <= section.half_m)) continue;
    const beyond = low + Math.min(1e-4 * section.radius_m, (high - low) / 2);
    return pointAt(path, place(beyond), 1e-7 * section.radius_m);
  }
  return null;
}

/** Places where the wall meets the steel of the legs. */
function wallCuts(path: WallPath, legs: readonly Leg[]): number[] {
  const { section, face } = path;
  const tolerance = 1e-9 * section.radius_m;
  const wall = wallCircle(section);
  return legs
    .flatMap((leg) => legCurves(leg, section.half_m))
    .flatMap((edge) => [
      ...crossings(edge, wall, tolerance)
        .filter(([x]) => x > section.chordX_m)
        .map(([x, y]) => onArc(path, x, y)),
      ...(face === null ? [] : crossings(edge, face, tolerance).map(([, y]) => onFace(path, face, y))),
    ]);
}

const onArc = ({ section, half_rad }: WallPath, x: number, y: number): number =>
  section.radius_m * (Math.atan2(y, x - section.eccentricity_m) + half_rad);

const onFace = ({ arc_m }: WallPath, face: LineCurve, y: number): number => arc_m + face.y1 - y;

/** The point at place `s`, moved `inwards_m` into the chamber. */
function pointAt({ section, half_rad, arc_m, face }: WallPath, s: number, inwards_m: number): Point {
  if (face !== null && s > arc_m) return [section.chordX_m + inwards_m, face.y1 - (s - arc_m)];
  const phi = s / section.radius_m - half_rad;
  const r = section.radius_m - inwards_m;
  return [section.eccentricity_m + r * Math.cos(phi), r * Math.sin(phi)];
}
