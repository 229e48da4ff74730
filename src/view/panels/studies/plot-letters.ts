/** Where the letter of each line of a plot stands: on its line, clear of names, upright marks and the other letters. */

export type PagePoint = readonly [x: number, y: number];

/** Farther away than this (page units) nothing disturbs a letter. */
const CLEAR = 40;

const gap = ([ax, ay]: PagePoint, [bx, by]: PagePoint): number => Math.hypot(ax - bx, ay - by);

/**
 * One point for each line, null for a line without any. Greedy: each letter takes the point of its line whose nearest
 * disturbance (a name's `busy` point, a mark's x, a letter already placed, a point of another line) is farthest away.
 */
export function letterPlaces(
  lines: readonly (readonly PagePoint[])[],
  busy: readonly PagePoint[],
  marksX: readonly number[],
): readonly (PagePoint | null)[] {
  const placed: PagePoint[] = [];
  return lines.map((points, line) => {
    const others = lines.flatMap((each, i) => (i === line ? [] : each.filter((_, k) => k % 4 === 0)));
    const margin = Math.floor(points.length * 0.06);
    const inner = points.slice(margin, points.length - margin);
    let best: PagePoint | null = null;
    let widest = -1;
    for (const point of inner.length > 0 ? inner : points) {
      const near = Math.min(
        CLEAR,
        ...marksX.map((x) => Math.abs(point[0] - x) * 2),
        ...busy.map((name) => gap(point, name)),
        ...placed.map((letter) => gap(point, letter)),
        ...others.map((other) => gap(point, other) * 1.5),
      );
      if (near > widest) [best, widest] = [point, near];
    }
    if (best !== null) placed.push(best);
    return best;
  });
}
