/**
 * Which balls and walls may touch soon: lists by a counting-sort grid with a skin, made anew only when a ball
 * may have moved by half the skin.
 *
 * Row k of the ball list holds the partners of ball order[k] (each pair stands once), in the order of the cells,
 * so that neighbours in space are neighbours in the sweep; row i of the wall list holds the walls near ball i.
 */
import { P, type Balls } from './balls';
import { WALL_STRIDE, wallDistance, type Walls } from './walls';

export interface Neighbours {
  /** Row starts of the ball list, count + 1. */
  readonly first: Int32Array;
  partner: Int32Array;
  readonly wallFirst: Int32Array;
  wallPartner: Int32Array;
  /** Distance in m that a ball may move from `built` before the lists are stale. */
  slack_m: number;
  /** Positions when the lists were made. */
  readonly built: Float64Array;
  /** Greatest distance in m of a ball from its place in `built`. */
  moved_m: number;
  /** Number of times the lists were made. */
  builds: number;
  /** Balls by cell: order, and cell of each ball. */
  readonly order: Int32Array;
  readonly cell: Int32Array;
  cellStart: Int32Array;
  readonly sorted: Float64Array;
}

/** Skin as a share of the greatest diameter: wider lists last longer but hold more pairs that do not touch. */
const SKIN = 0.3;

/** Most partners that one ball can have in a list: room that is made before its row is written. */
const ROOM = 256;

export const createNeighbours = (count: number): Neighbours => ({
  first: new Int32Array(count + 1),
  partner: new Int32Array(count * 8 + 16),
  wallFirst: new Int32Array(count + 1),
  wallPartner: new Int32Array(count * 3 + 16),
  slack_m: -1,
  built: new Float64Array(count * P),
  moved_m: 0,
  builds: 0,
  order: new Int32Array(count),
  cell: new Int32Array(count),
  cellStart: new Int32Array(64),
  sorted: new Float64Array(count * P),
});

const normal = new Float64Array(4);

/** Makes both lists for the present positions. z is wrapped into [0, period) first when the slice repeats. */
export function buildNeighbours(nb: Neighbours, balls: Balls, walls: Walls, period_m: number): void {
  const { count, position } = balls;
  let radius = 0;
  for (let i = 0; i < count; i++) radius = Math.max(radius, position[i * P + 3]!);
  const skin = SKIN * 2 * radius;
  if (period_m > 0) wrap(balls, period_m);
  sortIntoCells(nb, balls, 2 * radius + skin, period_m);
  listPairs(nb, balls, skin, period_m);
  listWalls(nb, balls, walls, skin / 2);
  nb.slack_m = skin / 2;
  nb.built.set(balls.position);
  nb.moved_m = 0;
  nb.builds++;
}

function wrap(balls: Balls, period: number): void {
  const p = balls.position;
  for (let o = 2; o < balls.count * P; o += P) {
    const z = p[o]!;
    if (z < 0 || z >= period) p[o] = z - period * Math.floor(z / period);
  }
}

const grid = { nx: 1, ny: 1, nz: 1, x0: 0, y0: 0, z0: 0, ix: 1, iy: 1, iz: 1 };

function sortIntoCells(nb: Neighbours, balls: Balls, size: number, period: number): void {
  const { count, position: p } = balls;
  let x0 = Infinity,
    y0 = Infinity,
    z0 = Infinity,
    x1 = -Infinity,
    y1 = -Infinity,
    z1 = -Infinity;
  for (let o = 0; o < count * P; o += P) {
    const x = p[o]!,
      y = p[o + 1]!,
      z = p[o + 2]!;
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
    if (z < z0) z0 = z;
    if (z > z1) z1 = z;
  }
  if (!(x1 - x0 < 1e6 && y1 - y0 < 1e6 && z1 - z0 < 1e6))
    throw new Error('shot/sortIntoCells: a ball has flown away');
  if (period > 0) {
    z0 = 0;
    z1 = period;
  }
  const cells = (span: number): number => Math.max(1, Math.min(200, Math.floor(span / size)));
  grid.nx = cells(x1 - x0);
  grid.ny = cells(y1 - y0);
  grid.nz = cells(z1 - z0);
  // Fewer than three layers of a repeating slice would meet twice: make them one.
  if (period > 0 && grid.nz < 3) grid.nz = 1;
  grid.x0 = x0;
  grid.y0 = y0;
  grid.z0 = z0;
  grid.ix = x1 > x0 ? grid.nx / (x1 - x0) : 0;
  grid.iy = y1 > y0 ? grid.ny / (y1 - y0) : 0;
  grid.iz = z1 > z0 ? grid.nz / (z1 - z0) : 0;
  const { nx, ny, nz, ix, iy, iz } = grid;
  const total = nx * ny * nz;
  if (nb.cellStart.length < total + 1) nb.cellStart = new Int32Array(2 * total + 1);
  const start = nb.cellStart.fill(0);
  const { cell, order, sorted } = nb;
  for (let i = 0, o = 0; i < count; i++, o += P) {
    const cx = Math.min(nx - 1, ((p[o]! - x0) * ix) | 0);
    const cy = Math.min(ny - 1, ((p[o + 1]! - y0) * iy) | 0);
    const cz = Math.min(nz - 1, ((p[o + 2]! - z0) * iz) | 0);
    const c = (cz * ny + cy) * nx + cx;
    cell[i] = c;
    start[c + 1]!++;
  }
  for (let c = 0; c < total; c++) start[c + 1]! += start[c]!;
  // Filling backwards leaves start[c] at the cell's first ball and keeps the balls' order within a cell.
  for (let i = count - 1; i >= 0; i--) {
    const c = cell[i]!;
    order[--start[c + 1]!] = i;
  }
  for (let c = 0; c < total; c++) start[c] = start[c + 1]!;
  start[total] = count;
  for (let k = 0; k < count; k++) {
    const o = order[k]! * P;
    sorted[k * P] = p[o]!;
    sorted[k * P + 1] = p[o + 1]!;
    sorted[k * P + 2] = p[o + 2]!;
    sorted[k * P + 3] = p[o + 3]!;
  }
}

/** Own cell from the ball on, then the four forward rows of three cells (two and a bit in each half space). */
function listPairs(nb: Neighbours, balls: Balls, skin: number, period: number): void {
  const { count } = balls;
  const { first, order, cell, cellStart, sorted } = nb;
  const { nx, ny, nz } = grid;
  const half = period > 0 ? period / 2 : Infinity;
  let partner = nb.partner;
  let n = 0;
  for (let s = 0; s < count; s++) {
    first[s] = n;
    if (partner.length < n + ROOM) {
      partner = new Int32Array(2 * n + 2 * ROOM);
      partner.set(nb.partner);
      nb.partner = partner;
    }
    const x = sorted[s * P]!,
      y = sorted[s * P + 1]!,
      z = sorted[s * P + 2]!;
    const reach = sorted[s * P + 3]! + skin;
    const c = cell[order[s]!]!;
    const cx = c % nx;
    const cy = ((c - cx) / nx) % ny;
    const cz = (c - cx - cy * nx) / (nx * ny);
    const xl = cx > 0 ? cx - 1 : 0;
    const xh = cx < nx - 1 ? cx + 1 : cx;
    for (let row = 0; row < 5; row++) {
      // Rows (dy, dz): own (0, 0), then (1, 0), (-1, 1), (0, 1), (1, 1).
      const wy = row === 0 || row === 3 ? cy : row === 2 ? cy - 1 : cy + 1;
      if (wy < 0 || wy >= ny) continue;
      let wz = row < 2 ? cz : cz + 1;
      if (wz === nz) {
        if (period === 0 || nz === 1) continue;
        wz = 0;
      }
      const base = (wz * ny + wy) * nx;
      const end = cellStart[base + xh + 1]!;
      for (let k = row === 0 ? s + 1 : cellStart[base + xl]!; k < end; k++) {
        const t = k * P;
        const dx = sorted[t]! - x;
        const dy = sorted[t + 1]! - y;
        let dz = sorted[t + 2]! - z;
        if (dz > half) dz -= period;
        else if (dz < -half) dz += period;
        const limit = reach + sorted[t + 3]!;
        if (dx * dx + dy * dy + dz * dz < limit * limit) partner[n++] = order[k]!;
      }
    }
  }
  first[count] = n;
}

function listWalls(nb: Neighbours, balls: Balls, walls: Walls, reach: number): void {
  const { count, position: p } = balls;
  const wallCount = walls.length / WALL_STRIDE;
  if (nb.wallPartner.length < count * wallCount) nb.wallPartner = new Int32Array(count * wallCount);
  const { wallFirst, wallPartner } = nb;
  let n = 0;
  for (let i = 0, o = 0; i < count; i++, o += P) {
    wallFirst[i] = n;
    for (let w = 0; w < wallCount; w++) {
      wallDistance(walls, w, p, o, normal);
      if (normal[3]! < p[o + 3]! + reach) wallPartner[n++] = w;
    }
  }
  wallFirst[count] = n;
}
