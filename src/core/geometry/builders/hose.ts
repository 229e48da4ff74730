import { add, length, normalize, panic, scale, sub, type Vec3 } from '../../kernel';
import type { HoseParams } from '../../machine';
import type { Body } from '../types';
import type { BuildContext } from './context';
import { sweepCircle } from './sweep';

const SIDES = 10;
const RINGS = 6;

/** The hose between its fittings, and the fittings. */
export function buildHose(context: BuildContext, params: HoseParams): readonly Body[] {
  const { radius_m, length_m } = params.fitting;
  const points = params.points_m;
  const sides = params.sides ?? SIDES;
  const ends = [
    [points[0], points[1]],
    [points[points.length - 1], points[points.length - 2]],
  ].map(([end, next]) => {
    if (end === undefined || next === undefined || length(sub(next, end)) <= length_m)
      panic('geometry/hose', 'end stretch shorter than its fitting', end);
    return { end, inner: add(end, scale(normalize(sub(next, end)), length_m)) };
  });
  const [first, last] = ends as [(typeof ends)[number], (typeof ends)[number]];
  const path = [first.inner, ...points.slice(1, -1), last.inner];
  const curve = smoothCurve(
    path,
    sub(first.inner, first.end),
    sub(last.end, last.inner),
    params.rings ?? RINGS,
  );
  return [
    {
      name: 'hose',
      finish: context.kind.finish,
      section: 'cut',
      solid: sweepCircle(curve, params.radius_m, sides),
    },
    ...ends.map(({ end, inner }, i): Body => ({
      name: `fitting-${i + 1}`,
      material: 'steel',
      finish: 'machined',
      section: 'cut',
      solid: sweepCircle([end, inner], radius_m, sides),
    })),
  ];
}

/**
 * A smooth curve through `points` (cubic Hermite pieces; the tangent at an inner point runs along the chord of its
 * neighbours, as Catmull and Rom have it; end tangents are given directions), `rings` steps a piece.
 */
function smoothCurve(points: readonly Vec3[], start: Vec3, end: Vec3, rings: number): readonly Vec3[] {
  const at = (i: number): Vec3 => points[Math.min(points.length - 1, Math.max(0, i))] ?? [0, 0, 0];
  const last = points.length - 1;
  const curve: Vec3[] = [];
  for (let i = 0; i < last; i++) {
    const [p, q] = [at(i), at(i + 1)];
    const span = length(sub(q, p));
    const tangent = (k: number): Vec3 => {
      const along = k === 0 ? start : k === last ? end : sub(at(k + 1), at(k - 1));
      return scale(normalize(along), span);
    };
    const [m, n] = [tangent(i), tangent(i + 1)];
    for (let k = i === 0 ? 0 : 1; k <= rings; k++) {
      const t = k / rings;
      const [t2, t3] = [t * t, t * t * t];
      const from = add(scale(p, 2 * t3 - 3 * t2 + 1), scale(m, t3 - 2 * t2 + t));
      curve.push(add(from, add(scale(q, -2 * t3 + 3 * t2), scale(n, t3 - t2))));
    }
  }
  return curve;
}
