/**
 * What a fluid of the machine touches: its space is found in cuts through the drum's axis. In each cut the solids are
 * laid on a grid, and what is left empty falls into rooms; a bearing keeps nothing back. A room is the fluid's where
 * several of the parts named as its boundary look into it (a cut shows one space as two rooms, above and below the
 * shaft). What looks into such a room is wetted, splash included, at any level.
 */
import { type KindSolid, planeBasis, planeInPart, sliceSolid } from '../../geometry';
import { transformPoint } from '../../kernel';
import { type Machine, type Part, partsOfRef } from '../../machine';

export interface Wetted {
  readonly fluid: string;
  readonly volume_m3: number | null;
  readonly partIds: readonly string[];
}

type Solids = Readonly<Record<string, KindSolid>>;

/** Side of a cell; closes running fits, leaves passages open, metres. */
const CELL_M = 0.004;
/** A room belongs to a fluid from this many of its named parts on, */
const LEAST_NAMED = 2;
/** and from this share of the largest such room on: pockets between two parts are none. */
const LEAST_SHARE = 0.1;

/** Fluids go through these. */
const OPEN = new Set(['spherical-roller-bearing', 'tapered-roller-bearing']);

/**
 * Wetted parts of every fluid that the machine names, in the order of its file; of the parts for which `present` holds.
 * Yields between cuts, so that whoever looks can let others have a turn.
 */
export function* wettedParts(
  machine: Machine,
  solids: Solids,
  present: (part: Part) => boolean,
): Generator<void, readonly Wetted[]> {
  const fluids = machine.relations.flatMap((relation) => (relation.type === 'fluid' ? [relation] : []));
  if (fluids.length === 0) return [];
  // The frame and the rear stand outside: only what turns or shakes with the drum can hold a fluid of its inside.
  const parts = machine.parts.filter((p) => present(p) && p.side !== 'still' && !p.context);
  const wet = fluids.map(() => new Set<string>());
  const named = fluids.map((fluid) => new Set(fluid.boundary.flatMap((ref) => partsOfRef(machine, ref))));
  for (const angle of cutAngles(machine, parts)) {
    yield;
    const rooms = roomsOfCut(machine, solids, parts, angle);
    fluids.forEach((_, f) => {
      const count = (room: Room): number => [...named[f]!].filter((id) => room.touches.has(id)).length;
      const closed = rooms.filter((room) => count(room) >= LEAST_NAMED);
      const largest = Math.max(0, ...closed.map((room) => room.cells));
      for (const room of closed)
        if (room.cells >= LEAST_SHARE * largest) for (const id of room.touches) wet[f]!.add(id);
    });
  }
  return fluids.map((fluid, f) => {
    for (const part of parts) if (named[f]!.has(part.id)) wet[f]!.add(part.id);
    // One of a ring of bolts was cut: all of the ring stand alike.
    const groups = new Set(machine.units.filter((u) => u.group !== null).map((u) => u.id));
    const units = new Set(parts.filter((p) => wet[f]!.has(p.id)).map((p) => p.unit));
    const ids = parts.filter((p) => wet[f]!.has(p.id) || (groups.has(p.unit) && units.has(p.unit)));
    return { fluid: fluid.fluid, volume_m3: fluid.volume_m3 ?? null, partIds: ids.map((p) => p.id) };
  });
}

/** Half turns at which to cut: two through the axis, and one through the first of each ring or part beside the axis. */
function cutAngles(machine: Machine, parts: readonly Part[]): readonly number[] {
  const angles = new Map<number, number>([
    [0, 0],
    [180, Math.PI / 2],
  ]);
  const seen = new Set<string>();
  for (const part of parts) {
    if (seen.has(part.kind)) continue;
    seen.add(part.kind);
    const { params } = machine.kinds[part.kind]!;
    const beside = params.builder === 'bent-tube' ? params.path_m[0]! : part.pose.position_m;
    const [, y, z] = beside;
    if (Math.hypot(y, z) < 0.03 || Math.hypot(y, z) > machine.drumRadius_m / 3) continue;
    const angle = (Math.atan2(z, y) + 2 * Math.PI) % Math.PI;
    // Cuts within half a degree are one.
    angles.set(Math.round((angle * 360) / Math.PI) % 360, angle);
  }
  return [...angles.values()];
}

interface Room {
  cells: number;
  readonly touches: Set<string>;
}

interface Grid {
  readonly width: number;
  readonly height: number;
  /** 0: empty; else number of the part that fills the cell, from 1. */
  readonly cells: Uint16Array;
  /** The same for parts that fluids go through. */
  readonly open: Uint16Array;
}

function roomsOfCut(
  machine: Machine,
  solids: Solids,
  parts: readonly Part[],
  angle: number,
): readonly Room[] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const plane = { point_m: [0, 0, 0] as const, normal: [0, -sin, cos] as const };
  const half = { x: machine.drumWidth_m / 2 + 0.1, s: machine.drumRadius_m + 0.02 };
  const width = Math.ceil((2 * half.x) / CELL_M);
  const height = Math.ceil((2 * half.s) / CELL_M);
  const cells = (): Uint16Array => new Uint16Array(width * height);
  const grid: Grid = { width, height, cells: cells(), open: cells() };
  parts.forEach((part, i) => {
    const own = planeInPart(plane, part.pose);
    const { origin_m: o, u, v } = planeBasis(own);
    // Columns along the axis and rows along the cut, from a loop's own two coordinates.
    const onGrid = (loop: Float64Array): Float64Array => {
      const out = new Float64Array(loop.length);
      for (let k = 0; k < loop.length; k += 2) {
        const [a, b] = [loop[k]!, loop[k + 1]!];
        const [x, y, z] = transformPoint(part.pose, [
          o[0] + a * u[0] + b * v[0],
          o[1] + a * u[1] + b * v[1],
          o[2] + a * u[2] + b * v[2],
        ]);
        out[k] = (x + half.x) / CELL_M;
        out[k + 1] = (y * cos + z * sin + half.s) / CELL_M;
      }
      return out;
    };
    const onto = OPEN.has(machine.kinds[part.kind]!.params.builder) ? grid.open : grid.cells;
    for (const body of solids[part.kind]?.bodies ?? [])
      for (const { outer, holes } of sliceSolid(body.solid, own))
        fill(grid, onto, [outer, ...holes].map(onGrid), i + 1);
  });
  return rooms(grid, parts);
}

/** Fills what lies within an odd number of loops, and every cell that a loop runs through. */
function fill(
  { width, height }: Grid,
  cells: Uint16Array,
  loops: readonly Float64Array[],
  value: number,
): void {
  const crossings: number[][] = [];
  const mark = (x: number, y: number): void => {
    const [column, row] = [Math.floor(x), Math.floor(y)];
    if (column >= 0 && column < width && row >= 0 && row < height) cells[row * width + column] = value;
  };
  for (const loop of loops) {
    const n = loop.length;
    for (let i = 0; i < n; i += 2) {
      const [x0, y0, x1, y1] = [loop[i]!, loop[i + 1]!, loop[(i + 2) % n]!, loop[(i + 3) % n]!];
      const steps = Math.ceil(Math.hypot(x1 - x0, y1 - y0) * 2) || 1;
      for (let k = 0; k <= steps; k++) mark(x0 + ((x1 - x0) * k) / steps, y0 + ((y1 - y0) * k) / steps);
      const [low, high] = [Math.min(y0, y1), Math.max(y0, y1)];
      for (let row = Math.max(0, Math.ceil(low - 0.5)); row + 0.5 < high && row < height; row++)
        (crossings[row] ??= []).push(x0 + ((row + 0.5 - y0) / (y1 - y0)) * (x1 - x0));
    }
  }
  crossings.forEach((xs, row) => {
    xs.sort((a, b) => a - b);
    for (let k = 0; k + 1 < xs.length; k += 2)
      for (
        let column = Math.max(0, Math.ceil(xs[k]! - 0.5));
        column + 0.5 < xs[k + 1]! && column < width;
        column++
      )
        cells[row * width + column] = value;
  });
}

/** Rooms of empty cells that do not reach the rim of the grid, with the parts that look into each. */
function rooms({ width, height, cells, open: through }: Grid, parts: readonly Part[]): readonly Room[] {
  const found: Room[] = [];
  const seen = new Uint8Array(cells.length);
  const stack = new Int32Array(cells.length);
  for (let start = 0; start < cells.length; start++) {
    if (cells[start] !== 0 || seen[start] !== 0) continue;
    const numbers = new Set<number>();
    let open = false;
    let count = 0;
    let top = 0;
    stack[top++] = start;
    seen[start] = 1;
    while (top > 0) {
      const at = stack[--top]!;
      const column = at % width;
      count++;
      if (through[at] !== 0) numbers.add(through[at]!);
      if (column === 0 || column === width - 1 || at < width || at >= width * (height - 1)) {
        open = true;
        if (column === 0 || column === width - 1) continue;
      }
      for (const next of [at - 1, at + 1, at - width, at + width]) {
        if (next < 0 || next >= cells.length || seen[next] !== 0) continue;
        const part = cells[next]!;
        if (part !== 0) numbers.add(part);
        else {
          seen[next] = 1;
          stack[top++] = next;
        }
      }
    }
    if (!open) found.push({ cells: count, touches: new Set([...numbers].map((n) => parts[n - 1]!.id)) });
  }
  return found;
}
