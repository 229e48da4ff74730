/**
 * The pocket: the part of the free region that leg 1 holds apart from the far point of the wall.
 *
 * The free region is flooded from the greatest radius inwards, arc by arc; arcs of neighbouring bands that share
 * an angle are one part. The level at which the part that touches leg 1 at the wall meets the part that holds
 * the far point is the spill radius; what the first part held just before is the pocket.
 */
import type { Panel } from './panels';
import { arcAt, follow, freeArcs, sharedAngle } from './ring';
import { isFree, type Section } from './section';
import { leg1Start, wallPath, wallPointBeside } from './wall';

export type PocketState =
  /** No baffle, or leg 1 has no length or does not reach into the chamber. */
  | 'no-leg'
  /** Leg 1 does not part its side from the far point at any level. */
  | 'never-separate'
  /** Parted at every level: steel closes the pocket all round. */
  | 'closed'
  /** Parted down to the spill radius. */
  | 'open';

export interface Pocket {
  readonly state: PocketState;
  /** Smallest level at which the parts are still separate: 0 where closed, null where there is no pocket. */
  readonly spillRadius_m: number | null;
  /** For every panel and arc: whether it belongs to the pocket. */
  readonly holds: readonly (readonly boolean[])[];
}

const SHARED = 1e-10;

export function findPocket(section: Section, panels: readonly Panel[], pocketSide: 1 | -1): Pocket {
  const none = panels.map((panel) => panel.arcs.map(() => false));
  const absent = (state: PocketState): Pocket => ({ state, spillRadius_m: null, holds: none });
  const { leg1 } = section;
  if (leg1 === null) return absent('no-leg');
  const path = wallPath(section);
  const start = leg1Start(path, leg1);
  const touch = start === null ? null : wallPointBeside(path, [leg1], start, pocketSide);
  if (touch === null) return absent('no-leg');
  // where steel covers the far point itself, its free neighbour away from the pocket stands for it
  const far = wallPointBeside(path, section.legs, path.arc_m / 2, pocketSide === 1 ? -1 : 1);
  const seed = nodeAt(section, panels, touch[0], touch[1]);
  const farNode = far === null ? null : nodeAt(section, panels, far[0], far[1]);
  // a second leg that lies on leg 1 at the wall leaves nothing there to touch
  if (seed === null || farNode === null) return absent('never-separate');

  const parent = panels.map((panel, p) => panel.arcs.map((_, i): [number, number] => [p, i]));
  const root = ([p, i]: readonly [number, number]): readonly [number, number] => {
    const up = parent[p]![i]!;
    return up[0] === p && up[1] === i ? up : root(up);
  };
  const together = (a: readonly [number, number], b: readonly [number, number]) => {
    const ra = root(a);
    const rb = root(b);
    return ra[0] === rb[0] && ra[1] === rb[1];
  };
  const membersAbove = (limit: number) =>
    panels.map((panel, p) => panel.arcs.map((_, i) => p < limit && together([p, i], seed)));

  const lastEntered = Math.max(seed[0], farNode[0]);
  for (let p = 0; p < panels.length; p++) {
    const pairs = p === 0 ? [] : links(panels[p - 1]!, panels[p]!);
    const before = p > lastEntered ? membersAbove(p) : none;
    for (const [i, j] of pairs) {
      const outer = root([p - 1, i]);
      const inner = root([p, j]);
      parent[inner[0]]![inner[1]] = [outer[0], outer[1]];
    }
    if (p >= lastEntered && together(seed, farNode)) {
      if (p === lastEntered) return absent('never-separate');
      return { state: 'open', spillRadius_m: panels[p]!.outer_m, holds: before };
    }
  }
  return { state: 'closed', spillRadius_m: 0, holds: membersAbove(panels.length) };
}

/** Arcs [i of the outer, j of the inner panel] that touch across the rim between two panels. */
function links(outer: Panel, inner: Panel): [number, number][] {
  const above = outer.rings[outer.rings.length - 1]!;
  const below = inner.rings[0]!;
  const found: [number, number][] = [];
  above.from.forEach((_, i) =>
    below.from.forEach((__, j) => {
      if (sharedAngle(above, i, below, j) > SHARED) found.push([i, j]);
    }),
  );
  return found;
}

/** Panel and arc that hold a free point, or null where the point is not free. */
export function nodeAt(
  section: Section,
  panels: readonly Panel[],
  x: number,
  y: number,
): readonly [number, number] | null {
  if (!isFree(section, x, y)) return null;
  const r = Math.hypot(x, y);
  const p = panels.findIndex((panel) => r >= panel.inner_m && r <= panel.outer_m);
  const panel = panels[p];
  if (panel === undefined) return null;
  const nearest = panel.rings.reduce((best, ring) =>
    Math.abs(ring.r_m - r) < Math.abs(best.r_m - r) ? ring : best,
  );
  const own = freeArcs(section, r);
  const ring = own.from.length === nearest.from.length ? follow(own, nearest) : nearest;
  const i = arcAt(ring, Math.atan2(y, x));
  return i < 0 ? null : [p, i];
}
