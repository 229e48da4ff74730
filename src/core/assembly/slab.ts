/** What stands in a cylinder or a slab along a sight: room for tools and hands. */
import { dot, type Vec3 } from '../kernel';
import { DEPTH_RESOLUTION_M } from './blocking';
import type { Sight, Sighting } from './sight';

/** Bodies inside a straight cylinder from `from_m` on, `length_m` long, along the sight's direction from `at_m`. */
export function bodiesInCylinder(
  sighting: Sighting,
  sight: Sight,
  at_m: Vec3,
  from_m: number,
  length_m: number,
  radius_m: number,
  skip: number,
): Set<number> {
  const found = new Set<number>();
  eachInSlab(sighting, sight, at_m, from_m, from_m + length_m, radius_m, skip, (body) => found.add(body));
  return found;
}

/**
 * Calls `use` for every stretch of a body (but `skip`) that crosses the slab between `from_m` and `to_m` along the
 * sight's direction from `at_m`, within `radius_m` of the axis, with the line's place on the sight's first two axes from `at_m`.
 * Every `stride`-th line of the grid is asked.
 */
export function eachInSlab(
  sighting: Sighting,
  sight: Sight,
  at_m: Vec3,
  from_m: number,
  to_m: number,
  radius_m: number,
  skip: number,
  use: (body: number, across1_m: number, across2_m: number) => void,
  stride = 1,
): void {
  const { grid, axes, sense } = sight;
  const { bodyOfPart } = sighting.world;
  const ca = dot(axes[0], at_m);
  const cb = dot(axes[1], at_m);
  const cd = dot(axes[2], at_m);
  const low = Math.min(cd + sense * from_m, cd + sense * to_m) + DEPTH_RESOLUTION_M;
  const high = Math.max(cd + sense * from_m, cd + sense * to_m) - DEPTH_RESOLUTION_M;
  const bFirst = Math.max(0, Math.ceil((cb - radius_m - grid.b0_m) / grid.cell_m));
  const bLast = Math.min(grid.countB - 1, Math.floor((cb + radius_m - grid.b0_m) / grid.cell_m));
  for (let ib = bFirst; ib <= bLast; ib += stride) {
    const b = grid.b0_m + ib * grid.cell_m - cb;
    const half = Math.sqrt(Math.max(0, radius_m * radius_m - b * b));
    const aFirst = Math.max(0, Math.ceil((ca - half - grid.a0_m) / grid.cell_m));
    const aLast = Math.min(grid.countA - 1, Math.floor((ca + half - grid.a0_m) / grid.cell_m));
    for (let ia = aFirst; ia <= aLast; ia += stride) {
      const line = ia + ib * grid.countA;
      for (let i = grid.lineStart[line]!; i < grid.lineStart[line + 1]!; i++) {
        if (grid.from[i]! >= high || grid.to[i]! <= low) continue;
        const v = bodyOfPart[grid.part[i]!]!;
        if (v === skip) continue;
        const a = grid.a0_m + ia * grid.cell_m - ca;
        use(v, a, b);
      }
    }
  }
}
