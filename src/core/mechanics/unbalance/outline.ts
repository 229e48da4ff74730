/**
 * Outlines of the chamber's section for drawing and extruding: the wall, the baffle, and the bodies of settled
 * shot, as polygons in the body frame, metres.
 *
 * Every bounding curve is cut where it meets the others; a piece with the region on one side only is part of
 * the region's outline, and the pieces are joined end to end. So the corners are exact and only arcs are cut
 * into chords.
 */
import { boundaryCurves, circle, crossings, type Curve, type Point } from './curves';
import { nodeAt } from './pocket';
import { isInChamber, isInSteel } from './section';
import type { SettledChamber, SettledShot } from './settled';

/** Outer line counter-clockwise, holes clockwise; the last point is not the first again. */
export interface OutlinePolygon {
  readonly outer_m: readonly Point[];
  readonly holes_m: readonly (readonly Point[])[];
}

/** The parts that do not move with the fill. */
export interface ChamberOutline {
  readonly wall: readonly OutlinePolygon[];
  readonly baffle: readonly OutlinePolygon[];
}

export interface ShotOutline {
  readonly main: readonly OutlinePolygon[];
  readonly pocket: readonly OutlinePolygon[];
}

/** Longest chord of an arc, as the angle it spans about the arc's own centre. */
const STEP_RAD = (2 * Math.PI) / 180;

/** Wall and baffle; the baffle's steel ends at the wall. */
export function chamberOutline({ section }: SettledChamber, step_rad = STEP_RAD): ChamberOutline {
  const curves = boundaryCurves(section);
  const size = section.radius_m;
  const steel = (x: number, y: number) => isInChamber(section, x, y) && isInSteel(section, x, y);
  return {
    wall: traceRegion(curves, (x, y) => isInChamber(section, x, y), size, step_rad),
    baffle: section.legs.length === 0 ? [] : traceRegion(curves, steel, size, step_rad),
  };
}

/** The bodies of shot of a settled state of this chamber. */
export function shotOutline(chamber: SettledChamber, shot: SettledShot, step_rad = STEP_RAD): ShotOutline {
  const { section, panels, pocket, spillRadius_m } = chamber;
  const size = section.radius_m;
  // between main and pocket stands the spill circle where the main surface lies inside it
  const levels = [shot.main.surface_m, shot.pocket.surface_m, spillRadius_m].filter(
    (r): r is number => r !== null && r > 1e-9 * size,
  );
  const apart = levels.filter((r, i) => levels.findIndex((other) => Math.abs(other - r) < 1e-9 * size) === i);
  const curves = [...boundaryCurves(section), ...apart.map((r) => circle(0, 0, r))];
  const body = (surface_m: number | null, inPocket: boolean): OutlinePolygon[] => {
    if (surface_m === null) return [];
    const holds = (x: number, y: number) => {
      if (Math.hypot(x, y) <= surface_m) return false;
      const node = nodeAt(section, panels, x, y);
      return node !== null && pocket.holds[node[0]]![node[1]] === inPocket;
    };
    return traceRegion(curves, holds, size, step_rad);
  };
  return { main: body(shot.main.surface_m, false), pocket: body(shot.pocket.surface_m, true) };
}

type Region = (x: number, y: number) => boolean;

function traceRegion(
  curves: readonly Curve[],
  inside: Region,
  size_m: number,
  step_rad: number,
): OutlinePolygon[] {
  const tolerance = 1e-9 * size_m;
  const cuts: Point[][] = curves.map(() => []);
  curves.forEach((curve, i) => {
    for (let j = i + 1; j < curves.length; j++) {
      const met = crossings(curve, curves[j]!, tolerance);
      cuts[i]!.push(...met);
      cuts[j]!.push(...met);
    }
  });
  const pieces = curves.flatMap((curve, i) => edgePieces(curve, cuts[i]!, inside, size_m, step_rad));
  return nest(joinPieces(pieces, 1e-6 * size_m));
}

/** Pieces of a curve that have the region on exactly one side, turned so that it lies on their left. */
function edgePieces(
  curve: Curve,
  cuts: readonly Point[],
  inside: Region,
  size_m: number,
  step_rad: number,
): Point[][] {
  const reach = 1e-8 * size_m;
  const span = curve.kind === 'circle' ? 2 * Math.PI : 1;
  const params = cuts.map((point) => paramOf(curve, point)).sort((a, b) => a - b);
  const ends =
    curve.kind === 'line'
      ? [0, ...params, 1]
      : params.length > 0
        ? [...params, params[0]! + span]
        : [0, span];
  const perParam =
    curve.kind === 'circle' ? curve.radius : Math.hypot(curve.x2 - curve.x1, curve.y2 - curve.y1);
  const pieces: Point[][] = [];
  for (let k = 0; k + 1 < ends.length; k++) {
    const from = ends[k]!;
    const to = ends[k + 1]!;
    if ((to - from) * perParam < 4 * reach) continue;
    const [x, y] = pointOf(curve, (from + to) / 2);
    const [nx, ny] = leftOf(curve, (from + to) / 2);
    const left = inside(x + reach * nx, y + reach * ny);
    if (left === inside(x - reach * nx, y - reach * ny)) continue;
    const steps = curve.kind === 'line' ? 1 : Math.max(1, Math.ceil((to - from) / step_rad));
    const points = Array.from({ length: steps + 1 }, (_, s) =>
      pointOf(curve, from + ((to - from) * s) / steps),
    );
    pieces.push(left ? points : points.reverse());
  }
  return pieces;
}

function paramOf(curve: Curve, [x, y]: Point): number {
  if (curve.kind === 'circle') {
    const angle = Math.atan2(y - curve.cy, x - curve.cx);
    return angle < 0 ? angle + 2 * Math.PI : angle;
  }
  const dx = curve.x2 - curve.x1;
  const dy = curve.y2 - curve.y1;
  return Math.min(1, Math.max(0, ((x - curve.x1) * dx + (y - curve.y1) * dy) / (dx * dx + dy * dy)));
}

function pointOf(curve: Curve, param: number): Point {
  if (curve.kind === 'circle') {
    return [curve.cx + curve.radius * Math.cos(param), curve.cy + curve.radius * Math.sin(param)];
  }
  return [curve.x1 + (curve.x2 - curve.x1) * param, curve.y1 + (curve.y2 - curve.y1) * param];
}

/** Unit normal to the left of the direction of rising parameter. */
function leftOf(curve: Curve, param: number): Point {
  if (curve.kind === 'circle') return [-Math.cos(param), -Math.sin(param)];
  const length = Math.hypot(curve.x2 - curve.x1, curve.y2 - curve.y1);
  return [-(curve.y2 - curve.y1) / length, (curve.x2 - curve.x1) / length];
}

/** Joins pieces end to end into closed loops. */
function joinPieces(pieces: readonly (readonly Point[])[], tolerance_m: number): Point[][] {
  const left = [...pieces];
  const loops: Point[][] = [];
  while (left.length > 0) {
    const loop: Point[] = [...left.pop()!];
    while (distance(loop[0]!, loop[loop.length - 1]!) > tolerance_m) {
      const end = loop[loop.length - 1]!;
      const next = left.findIndex((piece) => distance(piece[0]!, end) <= tolerance_m);
      if (next < 0) break;
      loop.push(...left.splice(next, 1)[0]!.slice(1));
    }
    loop.pop();
    if (loop.length >= 3) loops.push(loop);
  }
  return loops;
}

const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Signed area of a loop, positive counter-clockwise. */
export function loopArea_m2(loop: readonly Point[]): number {
  return loop.reduce((sum, [x, y], i) => {
    const [nx, ny] = loop[(i + 1) % loop.length]!;
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

/** Gives every hole to the smallest outer loop around it. */
function nest(loops: readonly Point[][]): OutlinePolygon[] {
  const outers = loops
    .filter((loop) => loopArea_m2(loop) > 0)
    .sort((a, b) => loopArea_m2(a) - loopArea_m2(b));
  const holes = loops.filter((loop) => loopArea_m2(loop) < 0);
  const owner = (hole: Point[]) => outers.findIndex((outer) => isWithin(outer, hole[0]!));
  return outers.map((outer_m, i) => ({ outer_m, holes_m: holes.filter((hole) => owner(hole) === i) }));
}

function isWithin(loop: readonly Point[], [x, y]: Point): boolean {
  let within = false;
  loop.forEach(([ax, ay], i) => {
    const [bx, by] = loop[(i + 1) % loop.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) within = !within;
  });
  return within;
}
