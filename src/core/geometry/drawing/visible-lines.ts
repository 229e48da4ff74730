/** Lines against the map of the nearest surfaces: what of them is seen, and what is seen put together. */
import type { DepthMap } from './projection';

/** Shorter pieces are dots, not lines, pixels. */
const LEAST_PX = 0.7;

/**
 * Pieces of a straight line that nothing nearer covers, x y x y each. Depths as the map has them, with what a line may
 * lie behind what covers it already added. `part`: number of the part whose edge it is, -1: none.
 */
export function visibleRuns(
  ax: number,
  ay: number,
  az: number,
  bx: number,
  by: number,
  bz: number,
  map: DepthMap,
  part = -1,
): number[][] {
  const { width, height } = map;
  if (Math.max(ax, bx) < 0 || Math.min(ax, bx) > width || Math.max(ay, by) < 0 || Math.min(ay, by) > height)
    return [];
  const length = Math.hypot(bx - ax, by - ay);
  const steps = Math.max(1, Math.ceil(length));
  const out: number[][] = [];
  let from = -1;
  const end = (to: number): void => {
    if (from < 0 || (length * (to - from)) / steps < LEAST_PX) return;
    const at = (s: number): [number, number] => [ax + ((bx - ax) * s) / steps, ay + ((by - ay) * s) / steps];
    out.push([...at(from), ...at(to)]);
  };
  for (let s = 0; s <= steps; s++) {
    const share = s / steps;
    const x = ax + (bx - ax) * share;
    const y = ay + (by - ay) * share;
    const seen = isSeen(x, y, az + (bz - az) * share, map, part);
    if (seen && from < 0) from = s;
    if (!seen) {
      end(s - 1);
      from = -1;
    }
  }
  end(steps);
  return out;
}

/**
 * A point is seen when of the pixels round it one is farther away: edges lie where surfaces end. Where a part is named,
 * one of them must also show that part: an edge that is seen bounds a face that is seen, and one that runs just behind
 * another part's outline does not.
 */
function isSeen(
  x: number,
  y: number,
  z: number,
  { width, height, depth, owner }: DepthMap,
  part: number,
): boolean {
  const cx = Math.floor(x);
  const cy = Math.floor(y);
  if (cx < 0 || cy < 0 || cx >= width || cy >= height) return false;
  let free = false;
  let own = part < 0;
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) {
      const px = cx + dx;
      const py = cy + dy;
      if (px < 0 || py < 0 || px >= width || py >= height) continue;
      const i = py * width + px;
      if (depth[i]! <= z) free = true;
      if (owner[i] === part) own = true;
      if (free && own) return true;
    }
  return false;
}

/** Runs that meet end to end become one line, so that a circle is one path and not a hundred. */
export function joined(runs: number[][]): number[][] {
  const key = (x: number, y: number): string => `${Math.round(x * 8)},${Math.round(y * 8)}`;
  const open = new Map<string, number[]>();
  const lines = new Set<number[]>();
  for (const run of runs) {
    let line = run;
    for (const [x, y] of [
      [run[0]!, run[1]!],
      [run[2]!, run[3]!],
    ] as const) {
      const other = open.get(key(x, y));
      if (other === undefined || other === line) continue;
      open.delete(keyOfStart(other));
      open.delete(keyOfEnd(other));
      open.delete(keyOfStart(line));
      open.delete(keyOfEnd(line));
      lines.delete(other);
      lines.delete(line);
      const atEnd = key(other.at(-2)!, other.at(-1)!) === key(x, y);
      const first = atEnd ? other : turned(other);
      const second = key(line[0]!, line[1]!) === key(x, y) ? line : turned(line);
      line = [...first, ...second.slice(2)];
    }
    lines.add(line);
    open.set(keyOfStart(line), line);
    open.set(keyOfEnd(line), line);
  }
  return [...lines];

  function keyOfStart(line: number[]): string {
    return key(line[0]!, line[1]!);
  }
  function keyOfEnd(line: number[]): string {
    return key(line.at(-2)!, line.at(-1)!);
  }
}

function turned(line: readonly number[]): number[] {
  const out: number[] = [];
  for (let i = line.length - 2; i >= 0; i -= 2) out.push(line[i]!, line[i + 1]!);
  return out;
}
