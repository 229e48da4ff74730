/** Fills the map of the nearest surfaces: triangles, and flat regions with holes. */
import type { DepthMap } from './projection';

/** Room for rounding at the edges of a row, pixels: neighbours that share an edge leave no gap. */
const SLACK = 1e-4;

/** A triangle in pixels with the depth (greater is nearer) of its corners; facing it away leaves it out. */
export function fillTriangle(
  map: DepthMap,
  owner: number,
  ax: number,
  ay: number,
  az: number,
  bx: number,
  by: number,
  bz: number,
  cx: number,
  cy: number,
  cz: number,
): void {
  const area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
  // y runs down the sheet, so faces towards the eye run the other way round
  if (area > -1e-9) return;
  const { width, height, depth } = map;
  const top = Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5));
  const bottom = Math.min(height - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
  if (top > bottom) return;
  const zx = ((bz - az) * (cy - ay) - (cz - az) * (by - ay)) / area;
  const zy = ((cz - az) * (bx - ax) - (bz - az) * (cx - ax)) / area;
  const least = Math.min(az, bz, cz);
  const most = Math.max(az, bz, cz);
  for (let row = top; row <= bottom; row++) {
    const y = row + 0.5;
    let left = Infinity;
    let right = -Infinity;
    // at most two of the sides cross a row
    for (let side = 0; side < 3; side++) {
      const px = side === 0 ? ax : side === 1 ? bx : cx;
      const py = side === 0 ? ay : side === 1 ? by : cy;
      const qx = side === 0 ? bx : side === 1 ? cx : ax;
      const qy = side === 0 ? by : side === 1 ? cy : ay;
      if (py <= y === qy <= y) continue;
      const x = px + ((qx - px) * (y - py)) / (qy - py);
      if (x < left) left = x;
      if (x > right) right = x;
    }
    const from = Math.max(0, Math.ceil(left - 0.5 - SLACK));
    const to = Math.min(width - 1, Math.floor(right - 0.5 + SLACK));
    for (let column = from; column <= to; column++) {
      let z = az + (column + 0.5 - ax) * zx + (y - ay) * zy;
      // slivers have no slope to speak of
      if (z < least) z = least;
      else if (z > most) z = most;
      const i = row * width + column;
      if (z <= depth[i]!) continue;
      depth[i] = z;
      map.owner[i] = owner;
    }
  }
}

/** A flat region by its loops (x y of each point, even-odd); `depthAt` is the depth of its plane. */
export function fillRegion(
  map: DepthMap,
  owner: number,
  loops: readonly (readonly number[])[],
  depthAt: (x: number, y: number) => number,
): void {
  const { width, height, depth } = map;
  let top = Infinity;
  let bottom = -Infinity;
  for (const loop of loops)
    for (let i = 1; i < loop.length; i += 2) {
      top = Math.min(top, loop[i]!);
      bottom = Math.max(bottom, loop[i]!);
    }
  const first = Math.max(0, Math.ceil(top - 0.5));
  const last = Math.min(height - 1, Math.floor(bottom - 0.5));
  for (let row = first; row <= last; row++) {
    const y = row + 0.5;
    const crossings = crossingsAt(loops, y);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const from = Math.max(0, Math.ceil(crossings[k]! - 0.5));
      const to = Math.min(width - 1, Math.floor(crossings[k + 1]! - 0.5));
      for (let column = from; column <= to; column++) {
        const i = row * width + column;
        const z = depthAt(column + 0.5, y);
        if (z <= depth[i]!) continue;
        depth[i] = z;
        map.owner[i] = owner;
      }
    }
  }
}

/** Where loops cross the level line at `y`, ascending: between each pair lies the region's inside. */
export function crossingsAt(loops: readonly ArrayLike<number>[], y: number): number[] {
  const out: number[] = [];
  for (const loop of loops) {
    const n = loop.length;
    for (let i = 0, j = n - 2; i < n; j = i, i += 2) {
      const yi = loop[i + 1]!;
      const yj = loop[j + 1]!;
      if (yi > y !== yj > y) out.push(loop[i]! + ((y - yi) / (yj - yi)) * (loop[j]! - loop[i]!));
    }
  }
  return out.sort((a, b) => a - b);
}
