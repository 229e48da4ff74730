/**
 * What blocks what along the machine's axes, from the solids: the non-directional blocking graph of Wilson and
 * Latombe, Geometric reasoning about mechanical assembly, Artificial Intelligence 71 (1994), for single
 * translations, with the distance at which each strikes. A body moving along a line of the grid meets the next
 * body's interval after the gap between the two; the least gap over all lines is the strike distance.
 */
import type { Vec3 } from '../kernel';
import { cutLines, type GridFrame, type LineGrid, LineScratch, type LineSource } from './lines';
import { pairKey, type PairRule, type PairRules } from './seats';
import type { World } from './world';

/** Depth resolution of the meshes (single precision at a few metres, chords of facets), metres: not a fit. */
export const DEPTH_RESOLUTION_M = 5e-5;

export interface AxisBlocking {
  readonly grid: LineGrid;
  /** gap[u * n + v]: travel of u along +axis until it strikes v (equally of v along -axis until u); Infinity: never. */
  readonly gap_m: Float32Array;
  /** Number of grid lines on which v stands ahead of u. */
  readonly lines: Uint32Array;
}

export interface GridChoice {
  /** Cell of the grid across x, and across y and z. */
  readonly cellX_m: number;
  readonly cellYZ_m: number;
  /** Lines a side of the blocks that large parts are cut by once, away from small ones. */
  readonly block: number;
  /** A part is small when its shadow is narrower than this, or as a ring about the drum axis thinner. */
  readonly narrow_m: number;
  readonly thin_m: number;
}

export const DEFAULT_GRID: GridChoice = {
  cellX_m: 0.0025,
  cellYZ_m: 0.004,
  block: 3,
  narrow_m: 0.045,
  thin_m: 0.02,
};

/** Grid lines stand off round numbers, so that none runs along a face or through an axis. */
const OFFSET = [0.3819660113, 0.2360679775] as const;

/** Frame of the grid of lines along machine axis `axis` over the bounds of all parts. */
export function axisFrame(world: World, axis: 0 | 1 | 2, cell_m: number): GridFrame {
  const a = ((axis + 1) % 3) as 0 | 1 | 2;
  const b = ((axis + 2) % 3) as 0 | 1 | 2;
  const bounds = [Infinity, -Infinity, Infinity, -Infinity, Infinity, -Infinity];
  for (const body of world.bodies)
    for (let k = 0; k < 3; k++) {
      bounds[2 * k] = Math.min(bounds[2 * k]!, body.bounds[2 * k]!);
      bounds[2 * k + 1] = Math.max(bounds[2 * k + 1]!, body.bounds[2 * k + 1]!);
    }
  const start = (k: number, share: number): number => (Math.floor(bounds[2 * k]! / cell_m) - share) * cell_m;
  const a0_m = start(a, OFFSET[0]);
  const b0_m = start(b, OFFSET[1]);
  return {
    a,
    b,
    depth: axis,
    cell_m,
    a0_m,
    b0_m,
    countA: Math.max(1, Math.ceil((bounds[2 * a + 1]! - a0_m) / cell_m) + 1),
    countB: Math.max(1, Math.ceil((bounds[2 * b + 1]! - b0_m) / cell_m) + 1),
  };
}

export function axisBlocking(
  world: World,
  rules: PairRules,
  axis: 0 | 1 | 2,
  choice: GridChoice = DEFAULT_GRID,
  scratch = new LineScratch(),
): AxisBlocking {
  const cell_m = axis === 0 ? choice.cellX_m : choice.cellYZ_m;
  const frame = axisFrame(world, axis, cell_m);
  const small: LineSource[] = [];
  const large: LineSource[] = [];
  world.meshes.forEach((mesh, part) => {
    if (mesh === null) return;
    const body = world.bodies[world.bodyOfPart[part]!]!;
    const surround = body.group !== null;
    if (surround || body.hose || isSmall(world, part, frame, choice)) small.push({ ...mesh, part, surround });
    else large.push({ ...mesh, part });
  });
  const grid = cutLines(frame, small, large, choice.block, scratch);
  const count = world.bodies.length;
  const gap_m = new Float32Array(count * count).fill(Infinity);
  const lines = new Uint32Array(count * count);
  const ruleOf = ruleTable(world, rules, axis);
  const { lineStart, part, from, to, countA, a0_m, b0_m } = grid;
  const { bodyOfPart } = world;
  for (let line = 0; line < lineStart.length - 1; line++) {
    const start = lineStart[line]!;
    const end = lineStart[line + 1]!;
    if (end - start < 2) continue;
    for (let i = start; i < end - 1; i++) {
      const u = bodyOfPart[part[i]!]!;
      const uFrom = from[i]!;
      const uTo = to[i]!;
      for (let j = i + 1; j < end; j++) {
        const v = bodyOfPart[part[j]!]!;
        if (u === v) continue;
        const ahead = from[j]! - uTo;
        const behind = uFrom - to[j]!;
        const overlap = ahead < -DEPTH_RESOLUTION_M && behind < -DEPTH_RESOLUTION_M;
        const rule = ruleOf[u * count + v];
        if (rule !== undefined && rule !== null) {
          const a = a0_m + (line % countA) * cell_m;
          const b = b0_m + Math.floor(line / countA) * cell_m;
          if (excluded(rule, grid, a, b, overlap)) continue;
        }
        if (overlap) {
          gap_m[u * count + v] = 0;
          gap_m[v * count + u] = 0;
          lines[u * count + v]!++;
          lines[v * count + u]!++;
        } else if (ahead >= behind) {
          const k = u * count + v;
          if (ahead < gap_m[k]!) gap_m[k] = ahead > 0 ? ahead : 0;
          lines[k]!++;
        } else {
          const k = v * count + u;
          if (behind < gap_m[k]!) gap_m[k] = behind > 0 ? behind : 0;
          lines[k]!++;
        }
      }
    }
  }
  return { grid, gap_m, lines };
}

/** Whether a part's shadow along the grid's lines is narrow, by its box or as a ring about the drum axis. */
function isSmall(world: World, part: number, frame: GridFrame, choice: GridChoice): boolean {
  const { partBounds } = world;
  for (const k of [frame.a, frame.b])
    if (partBounds[part * 6 + 2 * k + 1]! - partBounds[part * 6 + 2 * k]! < choice.narrow_m) return true;
  if (frame.depth !== 0) return false;
  const { positions } = world.meshes[part]!;
  let inner = Infinity;
  let outer = 0;
  for (let i = 0; i < positions.length; i += 3) {
    const r = Math.hypot(positions[i + 1]!, positions[i + 2]!);
    if (r < inner) inner = r;
    if (r > outer) outer = r;
  }
  return outer - inner < choice.thin_m;
}

/** Rules that can matter along one axis, by pair (both orders); null where none. */
export function ruleTable(world: World, rules: PairRules, axis: number): readonly (PairRule | null)[] {
  const count = world.bodies.length;
  const table = new Array<PairRule | null>(count * count).fill(null);
  const parallel = (v: Vec3): boolean => Math.abs(v[axis] ?? 0) > 0.9999;
  for (let u = 0; u < count; u++)
    for (let v = u + 1; v < count; v++) {
      const rule = rules.get(pairKey(world, u, v));
      if (rule === undefined) continue;
      const bands = rule.bands.filter((band) => parallel(band.axis));
      const slides = rule.slides.filter(parallel);
      const free = rule.free || rule.picks.some(parallel);
      if (!free && !rule.yields && bands.length === 0 && slides.length === 0) continue;
      table[u * count + v] = table[v * count + u] = { ...rule, free, bands, slides };
    }
  return table;
}

function excluded(rule: PairRule, frame: GridFrame, a: number, b: number, overlap: boolean): boolean {
  if (rule.free) return true;
  if (overlap && (rule.yields || rule.slides.length > 0)) return true;
  for (const band of rule.bands) {
    const r = Math.hypot(a - band.through_m[frame.a]!, b - band.through_m[frame.b]!);
    if (Math.abs(r - band.radius_m) <= band.halfWidth_m) return true;
  }
  return false;
}
