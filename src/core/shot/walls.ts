/**
 * Walls as a flat table: signed distance and inward normal of bore, plate and plane.
 *
 * Eight numbers a wall: kind, then its own numbers. Walls stand still in the body frame; all run along z
 * without end but a plane, which may face any way.
 */
import type { Chamber, Baffle, Slice } from './parameters';
import { baffleLegs } from './section';

export const WALL_STRIDE = 8;
/** Inside of a circle: cx, cy, radius. */
export const BORE = 0;
/** Outside of a plate with round edges: x1, y1, dx, dy, 1 / length^2, half thickness. */
export const PLATE = 1;
/** Half space n . x > offset: nx, ny, nz, offset. */
export const PLANE = 2;

export type Walls = Float64Array;

/** Builds the table from single walls. */
export function wallTable(walls: readonly (readonly number[])[]): Walls {
  const table = new Float64Array(walls.length * WALL_STRIDE);
  walls.forEach((wall, i) => table.set(wall, i * WALL_STRIDE));
  return table;
}

/** Walls of the chamber: bore, flat face, both legs of the baffle, and end plates when the slice has them. */
export function chamberWalls(chamber: Chamber, baffle: Baffle | null, slice: Slice): Walls {
  const walls: number[][] = [[BORE, chamber.eccentricity_m, 0, chamber.radius_m]];
  if (chamber.chord_x_m !== null) walls.push([PLANE, 1, 0, 0, chamber.chord_x_m]);
  for (const leg of baffle === null ? [] : baffleLegs(chamber, baffle)) {
    const dx = leg.x2 - leg.x1;
    const dy = leg.y2 - leg.y1;
    walls.push([PLATE, leg.x1, leg.y1, dx, dy, 1 / (dx * dx + dy * dy), baffle!.half_thickness_m]);
  }
  if (slice.dimension === 3 && slice.ends === 'walls') {
    walls.push([PLANE, 0, 0, 1, 0], [PLANE, 0, 0, -1, -slice.depth_m]);
  }
  return wallTable(walls);
}

/**
 * Writes the unit normal (from the wall into the free space) to out[0..2] and to out[3] the distance in m of the
 * point at[i..i+2] from the wall's surface, negative inside the steel. At the centre of a bore the normal is -x.
 * (Numbers go in and out by arrays: a number handed to or from a function may be put on the heap.)
 */
export function wallDistance(
  walls: Walls,
  wall: number,
  at: Float64Array,
  i: number,
  out: Float64Array,
): void {
  const x = at[i]!,
    y = at[i + 1]!,
    z = at[i + 2]!;
  const o = wall * WALL_STRIDE;
  const kind = walls[o]!;
  if (kind === BORE) {
    const dx = walls[o + 1]! - x;
    const dy = walls[o + 2]! - y;
    const r = Math.sqrt(dx * dx + dy * dy);
    const inv = r > 0 ? 1 / r : 0;
    out[0] = r > 0 ? dx * inv : -1;
    out[1] = dy * inv;
    out[2] = 0;
    out[3] = walls[o + 3]! - r;
    return;
  }
  if (kind === PLATE) {
    const dx = walls[o + 3]!;
    const dy = walls[o + 4]!;
    const px = x - walls[o + 1]!;
    const py = y - walls[o + 2]!;
    let s = (px * dx + py * dy) * walls[o + 5]!;
    s = s < 0 ? 0 : s > 1 ? 1 : s;
    const qx = px - s * dx;
    const qy = py - s * dy;
    const r = Math.sqrt(qx * qx + qy * qy);
    const inv = r > 0 ? 1 / r : 0;
    out[0] = r > 0 ? qx * inv : 1;
    out[1] = qy * inv;
    out[2] = 0;
    out[3] = r - walls[o + 6]!;
    return;
  }
  const nx = walls[o + 1]!;
  const ny = walls[o + 2]!;
  const nz = walls[o + 3]!;
  out[0] = nx;
  out[1] = ny;
  out[2] = nz;
  out[3] = nx * x + ny * y + nz * z - walls[o + 4]!;
}
