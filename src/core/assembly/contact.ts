/**
 * What the judges of motion and of lay-outs share: random points on surfaces, the depth that a pair may show, and
 * whether any point of one part lies deeper than that inside another.
 */
import type { seededRandom } from '../kernel';
import type { InsideTest } from './inside';
import type { PlacedMesh, World } from './world';

export interface Samples {
  /** x y z of a point on the surface, then its inward unit normal. */
  readonly data: Float64Array;
}

export const isFlexible = (world: World, part: number): boolean => {
  const body = world.bodies[world.bodyOfPart[part] ?? -1];
  return body === undefined || body.hose || body.seal;
};

/** Depth that each pair may show: facets for all, the declared interference on top, threads to their depth. */
export function allowances(world: World, facets_m: number): (a: number, b: number) => number {
  const extra = new Map<string, number>();
  const add = (first: readonly number[], second: readonly number[], depth: number): void => {
    for (const p of first)
      for (const q of second) {
        const key = pair(world, p, q);
        extra.set(key, Math.max(depth, extra.get(key) ?? 0));
      }
  };
  for (const relation of world.machine.relations) {
    if (relation.type === 'seat')
      add(world.partsOf(relation.inner), world.partsOf(relation.outer), relation.interference_m ?? 0);
    if (relation.type === 'thread')
      add(world.partsOf(relation.male), world.partsOf(relation.female), 0.7 * relation.pitch_m);
    if (relation.type === 'spline') add(world.partsOf(relation.male), world.partsOf(relation.female), 0.002);
  }
  for (const body of world.bodies)
    if (body.group !== null)
      for (const id of body.group.joins) add(body.parts, world.partsOf(id), 0.7 * body.group.thread.pitch_m);
  return (a, b) => facets_m + (extra.get(pair(world, a, b)) ?? 0);
}

const pair = (world: World, a: number, b: number): string => {
  const [x, y] = [world.bodyOfPart[a]!, world.bodyOfPart[b]!];
  return x < y ? `${x} ${y}` : `${y} ${x}`;
};

export function boxesMeet(world: World, a: number, b: number, shift: readonly number[]): boolean {
  const { partBounds } = world;
  for (let k = 0; k < 3; k++) {
    if (partBounds[a * 6 + 2 * k]! + shift[k]! > partBounds[b * 6 + 2 * k + 1]!) return false;
    if (partBounds[a * 6 + 2 * k + 1]! + shift[k]! < partBounds[b * 6 + 2 * k]!) return false;
  }
  return true;
}

export function anyInside(
  points: Samples,
  solid: InsideTest,
  shift: readonly number[],
  depth_m: number,
): { hit: boolean; asked: number } {
  const { data } = points;
  let asked = 0;
  for (let i = 0; i < data.length; i += 6) {
    const x = data[i]! + depth_m * data[i + 3]! + shift[0]!;
    const y = data[i + 1]! + depth_m * data[i + 4]! + shift[1]!;
    const z = data[i + 2]! + depth_m * data[i + 5]! + shift[2]!;
    const b = solid.bounds;
    if (x < b[0]! || x > b[1]! || y < b[2]! || y > b[3]! || z < b[4]! || z > b[5]!) continue;
    asked++;
    if (solid.isInside(x, y, z) && isDeep(solid, x, y, z)) return { hit: true, asked };
  }
  return { hit: false, asked };
}

/** Depth on all sides below which a point near another's surface is facet against facet, metres. */
const DEEP_M = 0.0004;

/** Whether a point inside is so on all sides: near an edge it may lie inside by a facet's chord alone. */
const isDeep = (solid: InsideTest, x: number, y: number, z: number): boolean =>
  solid.isInside(x + DEEP_M, y, z) &&
  solid.isInside(x - DEEP_M, y, z) &&
  solid.isInside(x, y + DEEP_M, z) &&
  solid.isInside(x, y - DEEP_M, z) &&
  solid.isInside(x, y, z + DEEP_M) &&
  solid.isInside(x, y, z - DEEP_M);

/** Points spread over a mesh in proportion to area, each with its inward normal. */
export function sampleSurface(
  mesh: PlacedMesh,
  count: number,
  random: ReturnType<typeof seededRandom>,
): Samples {
  const { positions, indices } = mesh;
  const triangles = indices.length / 3;
  const sums = new Float64Array(triangles + 1);
  const normals = new Float64Array(triangles * 3);
  for (let t = 0; t < triangles; t++) {
    const [a, b, c] = [indices[t * 3]! * 3, indices[t * 3 + 1]! * 3, indices[t * 3 + 2]! * 3];
    const e: number[] = [];
    const f: number[] = [];
    for (let k = 0; k < 3; k++) {
      e.push(positions[b + k]! - positions[a + k]!);
      f.push(positions[c + k]! - positions[a + k]!);
    }
    const n = [e[1]! * f[2]! - e[2]! * f[1]!, e[2]! * f[0]! - e[0]! * f[2]!, e[0]! * f[1]! - e[1]! * f[0]!];
    const area2 = Math.hypot(n[0]!, n[1]!, n[2]!);
    for (let k = 0; k < 3; k++) normals[t * 3 + k] = area2 > 0 ? -n[k]! / area2 : 0;
    sums[t + 1] = sums[t]! + area2;
  }
  const data = new Float64Array(count * 6);
  for (let i = 0; i < count; i++) {
    const goal = random.next() * sums[triangles]!;
    let [low, high] = [0, triangles];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (sums[middle]! <= goal) low = middle;
      else high = middle;
    }
    let [p, q] = [random.next(), random.next()];
    if (p + q > 1) [p, q] = [1 - p, 1 - q];
    const [a, b, c] = [indices[low * 3]! * 3, indices[low * 3 + 1]! * 3, indices[low * 3 + 2]! * 3];
    for (let k = 0; k < 3; k++) {
      data[i * 6 + k] = positions[a + k]! * (1 - p - q) + positions[b + k]! * p + positions[c + k]! * q;
      data[i * 6 + 3 + k] = normals[low * 3 + k]!;
    }
  }
  return { data };
}
