/**
 * Looking along a direction: a grid of lines in a frame whose third axis is that direction. The machine's own axes
 * use the three grids of the whole machine; an oblique direction gets a small grid of its own over the window that
 * is asked for.
 */
import { cross, dot, normalize, type Vec3 } from '../kernel';
import { type AxisBlocking, DEPTH_RESOLUTION_M, ruleTable } from './blocking';
import { cutLines, type LineGrid, type LineSource } from './lines';
import type { PairRules } from './seats';
import type { World } from './world';

export interface Sight {
  readonly grid: LineGrid;
  /** +1: the direction runs with the grid's depth, -1: against it. */
  readonly sense: 1 | -1;
  /** Unit vectors of the grid's three axes in the frame of the machine. */
  readonly axes: readonly [Vec3, Vec3, Vec3];
}

export interface Sighting {
  readonly world: World;
  readonly rules: PairRules;
  readonly axes: readonly [AxisBlocking, AxisBlocking, AxisBlocking];
}

const UNIT: readonly [Vec3, Vec3, Vec3] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** Number of the machine axis that `direction` runs along, or -1. */
export function machineAxis(direction: Vec3): 0 | 1 | 2 | -1 {
  for (const k of [0, 1, 2] as const) if (Math.abs(direction[k]) > 0.99999) return k;
  return -1;
}

/** Cell of an oblique grid, metres. */
const OBLIQUE_CELL_M = 0.002;

/** A grid along `direction` that covers the given parts wherever they are pushed by `shift_m`. */
export function sightAlong(
  sighting: Sighting,
  direction: Vec3,
  parts: readonly number[],
  shift_m: Vec3,
  margin_m = 0,
): Sight {
  const axis = machineAxis(direction);
  if (axis >= 0) {
    const { grid } = sighting.axes[axis as 0 | 1 | 2];
    const sense = direction[axis as 0 | 1 | 2] > 0 ? 1 : -1;
    return { grid, sense, axes: [UNIT[grid.a], UNIT[grid.b], UNIT[grid.depth]] };
  }
  const helper: Vec3 = Math.abs(direction[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0];
  const e1 = normalize(cross(helper, direction));
  const e2 = cross(direction, e1);
  const axes: [Vec3, Vec3, Vec3] = [e1, e2, direction];
  const { world } = sighting;
  const window = [Infinity, -Infinity, Infinity, -Infinity];
  for (const p of parts) {
    const mesh = world.meshes[p];
    if (mesh === null || mesh === undefined) continue;
    for (let i = 0; i < mesh.positions.length; i += 3)
      for (let k = 0; k < 2; k++) {
        const e = axes[k]!;
        const value =
          e[0] * mesh.positions[i]! + e[1] * mesh.positions[i + 1]! + e[2] * mesh.positions[i + 2]!;
        for (const s of [0, dot(e, shift_m)]) {
          window[2 * k] = Math.min(window[2 * k]!, value + s - margin_m);
          window[2 * k + 1] = Math.max(window[2 * k + 1]!, value + s + margin_m);
        }
      }
  }
  const cell_m = Math.max(OBLIQUE_CELL_M, (window[1]! - window[0]!) / 300, (window[3]! - window[2]!) / 300);
  const sources: LineSource[] = [];
  world.meshes.forEach((mesh, part) => {
    if (mesh === null || !boxMeets(world.partBounds, part, axes, window)) return;
    const positions = new Float32Array(mesh.positions.length);
    for (let i = 0; i < positions.length; i += 3)
      for (let k = 0; k < 3; k++) {
        const e = axes[k]!;
        positions[i + k] =
          e[0] * mesh.positions[i]! + e[1] * mesh.positions[i + 1]! + e[2] * mesh.positions[i + 2]!;
      }
    sources.push({ positions, indices: mesh.indices, part });
  });
  const grid = cutLines(
    {
      a: 0,
      b: 1,
      depth: 2,
      cell_m,
      a0_m: window[0]! - 0.381966 * cell_m,
      b0_m: window[2]! - 0.236068 * cell_m,
      countA: Math.ceil((window[1]! - window[0]!) / cell_m) + 2,
      countB: Math.ceil((window[3]! - window[2]!) / cell_m) + 2,
    },
    sources,
  );
  return { grid, sense: 1, axes };
}

/** Whether a part's box, seen along the third axis, meets the window of the first two. */
function boxMeets(bounds: Float64Array, part: number, axes: readonly Vec3[], window: number[]): boolean {
  for (let k = 0; k < 2; k++) {
    const e = axes[k]!;
    let low = 0;
    let high = 0;
    for (let j = 0; j < 3; j++) {
      const p = e[j]! * bounds[part * 6 + 2 * j]!;
      const q = e[j]! * bounds[part * 6 + 2 * j + 1]!;
      low += Math.min(p, q);
      high += Math.max(p, q);
    }
    if (high < window[2 * k]! || low > window[2 * k + 1]!) return false;
  }
  return true;
}

const ruleCache = new WeakMap<PairRules, Map<number, ReturnType<typeof ruleTable>>>();

function rulesAlong(sighting: Sighting, axis: number): ReturnType<typeof ruleTable> {
  const byAxis = ruleCache.get(sighting.rules) ?? new Map<number, ReturnType<typeof ruleTable>>();
  ruleCache.set(sighting.rules, byAxis);
  const table = byAxis.get(axis) ?? ruleTable(sighting.world, sighting.rules, axis);
  byAxis.set(axis, table);
  return table;
}

/**
 * Bodies that strike the given parts of one body when these, first shifted by `shift_m`, move along the sight's
 * direction, each with its strike distance. The shift is rounded to whole cells across the lines. Declared seats
 * count only for an unshifted part. Where `stopAt` says so of a body, the search ends with it.
 */
export function strikes(
  sighting: Sighting,
  sight: Sight,
  parts: readonly number[],
  shift_m: Vec3,
  direction: Vec3,
  stopAt: ((body: number) => boolean) | null = null,
): Map<number, number> {
  const { world } = sighting;
  const { grid, sense, axes } = sight;
  const body = world.bodyOfPart[parts[0] ?? -1] ?? -1;
  const wanted = new Set(parts);
  const found = new Map<number, number>();
  const jumpA = Math.round(dot(axes[0], shift_m) / grid.cell_m);
  const jumpB = Math.round(dot(axes[1], shift_m) / grid.cell_m);
  const push = dot(axes[2], shift_m);
  const axis = machineAxis(direction);
  const unshifted = shift_m[0] === 0 && shift_m[1] === 0 && shift_m[2] === 0;
  const table = unshifted && axis >= 0 ? rulesAlong(sighting, axis) : null;
  const bands = unshifted && axis < 0 ? obliqueBands(sighting, body, direction) : null;
  const [aLow, aHigh, bLow, bHigh] = lineWindow(sighting, sight, parts);
  const count = world.bodies.length;
  for (let ib = Math.max(0, bLow); ib <= Math.min(grid.countB - 1, bHigh); ib++) {
    const tb = ib + jumpB;
    if (tb < 0 || tb >= grid.countB) continue;
    for (let ia = Math.max(0, aLow); ia <= Math.min(grid.countA - 1, aHigh); ia++) {
      const ta = ia + jumpA;
      if (ta < 0 || ta >= grid.countA) continue;
      const line = ia + ib * grid.countA;
      const other = ta + tb * grid.countA;
      const otherStart = grid.lineStart[other]!;
      const otherEnd = grid.lineStart[other + 1]!;
      if (otherStart === otherEnd) continue;
      for (let i = grid.lineStart[line]!; i < grid.lineStart[line + 1]!; i++) {
        if (!wanted.has(grid.part[i]!)) continue;
        const uFrom = grid.from[i]! + push;
        const uTo = grid.to[i]! + push;
        for (let j = otherStart; j < otherEnd; j++) {
          const v = world.bodyOfPart[grid.part[j]!]!;
          if (v === body) continue;
          const ahead = sense > 0 ? grid.from[j]! - uTo : uFrom - grid.to[j]!;
          const behind = sense > 0 ? uFrom - grid.to[j]! : grid.from[j]! - uTo;
          const overlap = ahead < -DEPTH_RESOLUTION_M && behind < -DEPTH_RESOLUTION_M;
          if (!overlap && behind > ahead) continue;
          const gap = overlap ? 0 : Math.max(0, ahead);
          if (gap >= (found.get(v) ?? Infinity)) continue;
          const a = grid.a0_m + ia * grid.cell_m;
          const b = grid.b0_m + ib * grid.cell_m;
          const rule = table?.[body * count + v];
          if (rule !== undefined && rule !== null) {
            if (rule.free || (overlap && (rule.yields || rule.slides.length > 0))) continue;
            if (rule.bands.some((s) => nearBand(a, b, s.through_m, s.radius_m, s.halfWidth_m, axes)))
              continue;
          }
          const rows = bands?.get(v);
          if (
            rows !== undefined &&
            (overlap || rows.some((s) => nearBand(a, b, s.through_m, s.radius_m, s.halfWidth_m, axes)))
          )
            continue;
          found.set(v, gap);
          if (stopAt !== null && stopAt(v)) return found;
        }
      }
    }
  }
  return found;
}

function nearBand(
  a: number,
  b: number,
  through_m: Vec3,
  radius_m: number,
  half_m: number,
  axes: readonly Vec3[],
): boolean {
  const r = Math.hypot(a - dot(axes[0]!, through_m), b - dot(axes[1]!, through_m));
  return Math.abs(r - radius_m) <= half_m;
}

/** Bands of one body's rules whose axis is the oblique direction, by the other body. */
function obliqueBands(
  sighting: Sighting,
  body: number,
  direction: Vec3,
): Map<number, { through_m: Vec3; radius_m: number; halfWidth_m: number }[]> {
  const count = sighting.world.bodies.length;
  const found = new Map<number, { through_m: Vec3; radius_m: number; halfWidth_m: number }[]>();
  for (const [key, rule] of sighting.rules) {
    const low = Math.floor(key / count);
    const high = key % count;
    if (low !== body && high !== body) continue;
    const bands = rule.bands.filter((s) => Math.abs(dot(s.axis, direction)) > 0.9999);
    if (bands.length > 0) found.set(low === body ? high : low, bands);
  }
  return found;
}

/** First and last line numbers that the parts' boxes cover across the grid. */
function lineWindow(
  sighting: Sighting,
  sight: Sight,
  parts: readonly number[],
): [number, number, number, number] {
  const { grid, axes } = sight;
  const bounds = sighting.world.partBounds;
  const range = [Infinity, -Infinity, Infinity, -Infinity];
  for (const p of parts)
    for (let k = 0; k < 2; k++) {
      let low = 0;
      let high = 0;
      for (let j = 0; j < 3; j++) {
        const x = axes[k]![j]! * bounds[p * 6 + 2 * j]!;
        const y = axes[k]![j]! * bounds[p * 6 + 2 * j + 1]!;
        low += Math.min(x, y);
        high += Math.max(x, y);
      }
      range[2 * k] = Math.min(range[2 * k]!, low);
      range[2 * k + 1] = Math.max(range[2 * k + 1]!, high);
    }
  return [
    Math.floor((range[0]! - grid.a0_m) / grid.cell_m),
    Math.ceil((range[1]! - grid.a0_m) / grid.cell_m),
    Math.floor((range[2]! - grid.b0_m) / grid.cell_m),
    Math.ceil((range[3]! - grid.b0_m) / grid.cell_m),
  ];
}
