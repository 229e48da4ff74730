/**
 * The curves that bound the free region: the chamber's circle and flat face, the sides and round ends of the
 * legs. From them come the radii at which the free arcs of a ring change their number or their law, and the
 * corners of the drawn outline.
 */
import { distanceToLeg, isInChamber, type Leg, type Section } from './section';

export interface CircleCurve {
  readonly kind: 'circle';
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
}
export interface LineCurve {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}
export type Curve = CircleCurve | LineCurve;
export type Point = readonly [number, number];

export const circle = (cx: number, cy: number, radius: number): CircleCurve => ({
  kind: 'circle',
  cx,
  cy,
  radius,
});
export const wallCircle = (section: Section): CircleCurve =>
  circle(section.eccentricity_m, 0, section.radius_m);
const line = (x1: number, y1: number, x2: number, y2: number): LineCurve => ({
  kind: 'line',
  x1,
  y1,
  x2,
  y2,
});

/** The flat face from its upper to its lower end, or null. */
export function faceLine({ radius_m, eccentricity_m, chordX_m }: Section): LineCurve | null {
  if (chordX_m === -Infinity) return null;
  const y = Math.sqrt(radius_m * radius_m - (chordX_m - eccentricity_m) ** 2);
  return line(chordX_m, y, chordX_m, -y);
}

/** The two sides and the two round ends of a leg's steel; the ends are full circles, half of each in the steel. */
export function legCurves(
  leg: Leg,
  half_m: number,
): readonly [LineCurve, LineCurve, CircleCurve, CircleCurve] {
  const length = Math.hypot(leg.x2 - leg.x1, leg.y2 - leg.y1);
  const nx = (-(leg.y2 - leg.y1) / length) * half_m;
  const ny = ((leg.x2 - leg.x1) / length) * half_m;
  return [
    line(leg.x1 + nx, leg.y1 + ny, leg.x2 + nx, leg.y2 + ny),
    line(leg.x1 - nx, leg.y1 - ny, leg.x2 - nx, leg.y2 - ny),
    circle(leg.x1, leg.y1, half_m),
    circle(leg.x2, leg.y2, half_m),
  ];
}

/** All curves that bound the free region. */
export function boundaryCurves(section: Section): Curve[] {
  const face = faceLine(section);
  const legs = section.legs.flatMap((leg, i) => {
    const [left, right, start, end] = legCurves(leg, section.half_m);
    // the second leg starts in the round end of the first: that circle is there already
    return i === 0 ? [left, right, start, end] : [left, right, end];
  });
  return [wallCircle(section), ...(face === null ? [] : [face]), ...legs];
}

/** Points where two curves meet; a touch within `tolerance` counts. */
export function crossings(a: Curve, b: Curve, tolerance: number): Point[] {
  if (a.kind === 'circle')
    return b.kind === 'circle' ? circleCircle(a, b, tolerance) : lineCircle(b, a, tolerance);
  return b.kind === 'circle' ? lineCircle(a, b, tolerance) : lineLine(a, b, tolerance);
}

function circleCircle(a: CircleCurve, b: CircleCurve, tolerance: number): Point[] {
  const dx = b.cx - a.cx;
  const dy = b.cy - a.cy;
  const d = Math.hypot(dx, dy);
  if (d < tolerance) return [];
  const along = (d * d + a.radius * a.radius - b.radius * b.radius) / (2 * d);
  const beyond = Math.abs(along) - a.radius;
  if (beyond > tolerance) return [];
  const across = Math.sqrt(Math.max(0, a.radius * a.radius - along * along));
  return pair(a.cx + (along * dx) / d, a.cy + (along * dy) / d, -dy / d, dx / d, across);
}

function lineCircle(a: LineCurve, b: CircleCurve, tolerance: number): Point[] {
  const length = Math.hypot(a.x2 - a.x1, a.y2 - a.y1);
  if (length < tolerance) return [];
  const ux = (a.x2 - a.x1) / length;
  const uy = (a.y2 - a.y1) / length;
  const foot = (b.cx - a.x1) * ux + (b.cy - a.y1) * uy;
  const off = Math.abs((b.cx - a.x1) * uy - (b.cy - a.y1) * ux);
  if (off > b.radius + tolerance) return [];
  const half = Math.sqrt(Math.max(0, b.radius * b.radius - off * off));
  return pair(a.x1 + foot * ux, a.y1 + foot * uy, ux, uy, half).filter(([x, y]) => {
    const s = (x - a.x1) * ux + (y - a.y1) * uy;
    return s > -tolerance && s < length + tolerance;
  });
}

function lineLine(a: LineCurve, b: LineCurve, tolerance: number): Point[] {
  const ax = a.x2 - a.x1;
  const ay = a.y2 - a.y1;
  const bx = b.x2 - b.x1;
  const by = b.y2 - b.y1;
  const la = Math.hypot(ax, ay);
  const lb = Math.hypot(bx, by);
  const cross = ax * by - ay * bx;
  if (Math.abs(cross) <= 1e-12 * la * lb) return [];
  const s = ((b.x1 - a.x1) * by - (b.y1 - a.y1) * bx) / cross;
  const t = ((b.x1 - a.x1) * ay - (b.y1 - a.y1) * ax) / cross;
  const inside = (u: number, length: number) => u * length > -tolerance && (u - 1) * length < tolerance;
  return inside(s, la) && inside(t, lb) ? [[a.x1 + s * ax, a.y1 + s * ay]] : [];
}

const pair = (x: number, y: number, ux: number, uy: number, half: number): Point[] =>
  half === 0
    ? [[x, y]]
    : [
        [x + half * ux, y + half * uy],
        [x - half * ux, y - half * uy],
      ];

/**
 * Radii about O, falling, between which every free arc follows one smooth law: where a ring touches a bounding
 * curve or passes a corner of it. Points hidden in steel or outside the chamber do not count. Ends with 0.
 */
export function criticalRadii(section: Section): number[] {
  const tolerance = 1e-9 * section.radius_m;
  const curves = boundaryCurves(section);
  const points: Point[] = [];
  curves.forEach((curve, i) => {
    points.push(...turningPoints(curve));
    for (const other of curves.slice(i + 1)) points.push(...crossings(curve, other, tolerance));
  });
  const radii = points
    .filter((point) => isOnEdge(section, point, 10 * tolerance))
    .map(([x, y]) => Math.hypot(x, y));
  const falling = radii.sort((a, b) => b - a).filter((r) => r > tolerance);
  const apart = falling.filter((r, i) => i === 0 || falling[i - 1]! - r > tolerance);
  return [...apart, 0];
}

/** Ends of a line and the points of a curve nearest to and farthest from O. */
function turningPoints(curve: Curve): Point[] {
  if (curve.kind === 'line') {
    const { x1, y1, x2, y2 } = curve;
    const dx = x2 - x1;
    const dy = y2 - y1;
    const t = -(x1 * dx + y1 * dy) / (dx * dx + dy * dy);
    const ends: Point[] = [
      [x1, y1],
      [x2, y2],
    ];
    return t > 0 && t < 1 ? [...ends, [x1 + t * dx, y1 + t * dy]] : ends;
  }
  const c = Math.hypot(curve.cx, curve.cy);
  const ux = c === 0 ? 1 : curve.cx / c;
  const uy = c === 0 ? 0 : curve.cy / c;
  return [
    [curve.cx + curve.radius * ux, curve.cy + curve.radius * uy],
    [curve.cx - curve.radius * ux, curve.cy - curve.radius * uy],
  ];
}

/** True for points of the closed free region: not outside the chamber, not inside steel, within the tolerance. */
function isOnEdge(section: Section, [x, y]: Point, tolerance: number): boolean {
  const wider: Section = {
    ...section,
    radius_m: section.radius_m + tolerance,
    chordX_m: section.chordX_m - tolerance,
  };
  return (
    isInChamber(wider, x, y) &&
    section.legs.every((leg) => distanceToLeg(leg, x, y) > section.half_m - tolerance)
  );
}
