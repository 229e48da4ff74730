/** From where parts are seen past what covers them: a few directions are tried by rays, the nearest good one is taken. */
import { Matrix4, Ray, Vector3 } from 'three';
import { HIDDEN, type PartTable } from '../machine/part-table';
import { meetsBefore, type PickCut } from '../pick/pick';

/** Of the points tried, the share that must be seen for a direction to be good enough. */
const GOOD = 0.5;
/** A direction that is not good must show so much more than the first to be worth the flight. */
const WORTH = 0.2;
/** Points of all parts together, and rays in all: what keeps the search short. */
const POINTS = 6;
const RAYS = 100;
/** Share of the way from a point of the part to its middle at which the ray starts: its own edge does not hide it. */
const INWARDS = 0.06;
/** Rays reach so far; beyond it nothing stands. */
const FAR_M = 30;

/** Machine axes: x to its right, y up, z to the rear. From the sides and corners, level and from above. */
const TRIED: readonly Vector3[] = [
  ...[0.18, 0.55].flatMap((y) =>
    [0, 45, 90, 135, 180, 225, 270, 315].map((turn) => {
      const a = ((turn + 8) * Math.PI) / 180;
      return new Vector3(Math.cos(a), y, Math.sin(a)).normalize();
    }),
  ),
  new Vector3(0.1, 1, -0.12).normalize(),
];

/**
 * Direction towards the eye from which most of the parts is seen.
 * @param now the direction that is preferred: it stays when it is good enough, or when no other is clearly better
 * @returns a unit vector; `now` itself where it stays
 */
export function uncovered(
  table: PartTable,
  parts: readonly number[],
  now: Vector3,
  cut: PickCut | null,
): Vector3 {
  const points = pointsOf(table, parts);
  if (points.length === 0) return now;
  const own = new Set(parts);
  const ray = new Ray();
  const seenFrom = (towards: Vector3): number => {
    let seen = 0;
    for (const point of points) {
      ray.set(point, towards);
      if (!meetsBefore(table, ray, cut, FAR_M, own)) seen++;
    }
    return seen / points.length;
  };
  const first = seenFrom(now);
  if (first >= GOOD) return now;
  let best = now;
  let most = first + WORTH;
  let rays = points.length;
  // The nearest first: a short turn is easier to follow than a long one.
  const nearest = [...TRIED].sort((a, b) => b.dot(now) - a.dot(now));
  for (const towards of nearest) {
    if (rays + points.length > RAYS) break;
    rays += points.length;
    const seen = seenFrom(towards);
    if (seen <= most) continue;
    best = towards;
    most = seen;
    if (seen >= GOOD) break;
  }
  return best;
}

/** Points just under the surface of the parts where they are now, spread over parts and over each of them. */
function pointsOf(table: PartTable, parts: readonly number[]): Vector3[] {
  const shown = parts.filter((part) => table.shown[part] !== HIDDEN);
  const count = Math.min(shown.length, POINTS);
  const each = Math.max(1, Math.floor(POINTS / Math.max(1, count)));
  const out: Vector3[] = [];
  for (let i = 0; i < count; i++) {
    const part = shown[Math.floor((i * shown.length) / count)]!;
    const { reach, min, max } = table.kinds[table.kindOf[part]!]!;
    const corners = reach.length / 3;
    const own = new Matrix4().fromArray(table.matrices, 16 * part);
    for (let k = 0; k < each; k++) {
      const c = 3 * Math.floor(((k + 0.5) * corners) / each);
      const p = new Vector3(...[0, 1, 2].map((n) => towards(reach[c + n]!, (min[n]! + max[n]!) / 2)));
      out.push(p.applyMatrix4(own));
    }
  }
  return out;
}

const towards = (x: number, middle: number): number => x + INWARDS * (middle - x);
