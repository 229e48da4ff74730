/** From a closed solid to what a scene draws: vertices split at creases, their normals, and the feature edges. */
import type { MeshData, SolidMesh } from './types';

/** Facets of the coarsest round things meet at 22.5 degrees, chamfers at 45. */
const DEFAULT_CREASE_DEG = 30;

/**
 * Normals are averaged over the triangles round a vertex, weighted by their angle there, as far as no crease lies
 * between them; where two triangles meet at more than `creaseDeg` the edge is a feature edge and the normals split.
 */
export function toMeshData(solid: SolidMesh, creaseDeg = DEFAULT_CREASE_DEG): MeshData {
  const { positions, indices } = solid;
  const corners = indices.length;
  const normals = faceNormals(solid);
  const limit = Math.cos((creaseDeg * Math.PI) / 180);
  const vertexCount = positions.length / 3;

  const halfEdge = new Map<number, number>();
  for (let c = 0; c < corners; c++) {
    halfEdge.set((indices[c] ?? 0) * vertexCount + (indices[next(c)] ?? 0), c);
  }
  const group = new Int32Array(corners).map((_, i) => i);
  const root = (c: number): number => {
    let r = c;
    while (group[r] !== r) r = group[r] ?? r;
    group[c] = r;
    return r;
  };
  const edges: number[] = [];
  for (let c = 0; c < corners; c++) {
    const a = indices[c] ?? 0;
    const b = indices[next(c)] ?? 0;
    const twin = halfEdge.get(b * vertexCount + a);
    if (a > b && twin !== undefined) continue;
    const f = Math.floor(c / 3) * 3;
    const g = Math.floor((twin ?? c) / 3) * 3;
    const cosine = twin === undefined ? -1 : dot3(normals, f, normals, g);
    if (twin === undefined || cosine < limit) {
      for (const v of [a, b])
        edges.push(positions[v * 3] ?? 0, positions[v * 3 + 1] ?? 0, positions[v * 3 + 2] ?? 0);
    } else {
      // This triangle's corner at a is `c`, the neighbour's is the one after its half-edge; the same at b.
      group[root(c)] = root(next(twin));
      group[root(next(c))] = root(twin);
    }
  }
  return { ...splitVertices(solid, normals, root), edges: Float32Array.from(edges) };
}

function splitVertices(
  { positions, indices }: SolidMesh,
  normals: Float64Array,
  root: (corner: number) => number,
): Omit<MeshData, 'edges'> {
  const number = new Map<number, number>();
  const out: number[] = [];
  const sums: number[] = [];
  const numbered = new Uint32Array(indices.length);
  for (let c = 0; c < indices.length; c++) {
    const r = root(c);
    let n = number.get(r);
    if (n === undefined) {
      n = number.size;
      number.set(r, n);
      const v = (indices[c] ?? 0) * 3;
      out.push(positions[v] ?? 0, positions[v + 1] ?? 0, positions[v + 2] ?? 0);
      sums.push(0, 0, 0);
    }
    numbered[c] = n;
    const weight = cornerAngle(positions, indices, c);
    const f = Math.floor(c / 3) * 3;
    for (let k = 0; k < 3; k++) sums[n * 3 + k] = (sums[n * 3 + k] ?? 0) + weight * (normals[f + k] ?? 0);
  }
  for (let n = 0; n < sums.length; n += 3) {
    const l = Math.hypot(sums[n] ?? 0, sums[n + 1] ?? 0, sums[n + 2] ?? 0) || 1;
    for (let k = 0; k < 3; k++) sums[n + k] = (sums[n + k] ?? 0) / l;
  }
  return { positions: Float32Array.from(out), normals: Float32Array.from(sums), indices: numbered };
}

/** The corner after `c` in its triangle. */
function next(c: number): number {
  return c % 3 === 2 ? c - 2 : c + 1;
}

function dot3(a: Float64Array, i: number, b: Float64Array, j: number): number {
  return (a[i] ?? 0) * (b[j] ?? 0) + (a[i + 1] ?? 0) * (b[j + 1] ?? 0) + (a[i + 2] ?? 0) * (b[j + 2] ?? 0);
}

/** Unit normals, three numbers a triangle; a sliver without area takes that of the neighbour over its longest edge. */
function faceNormals({ positions, indices }: SolidMesh): Float64Array {
  const out = new Float64Array(indices.length);
  const at = (c: number, k: number): number => positions[(indices[c] ?? 0) * 3 + k] ?? 0;
  const slivers: number[] = [];
  for (let t = 0; t < indices.length; t += 3) {
    const e = [0, 1, 2].map((k) => at(t + 1, k) - at(t, k));
    const f = [0, 1, 2].map((k) => at(t + 2, k) - at(t, k));
    const n = [e[1]! * f[2]! - e[2]! * f[1]!, e[2]! * f[0]! - e[0]! * f[2]!, e[0]! * f[1]! - e[1]! * f[0]!];
    const l = Math.hypot(...n);
    if (l < 1e-12) slivers.push(t);
    n.forEach((value, k) => (out[t + k] = value / (l || 1)));
  }
  if (slivers.length > 0) borrowNormals({ positions, indices }, out, slivers);
  return out;
}

function borrowNormals(
  { positions, indices }: SolidMesh,
  out: Float64Array,
  slivers: readonly number[],
): void {
  const vertexCount = positions.length / 3;
  const owner = new Map<number, number>();
  for (let c = 0; c < indices.length; c++)
    owner.set((indices[c] ?? 0) * vertexCount + (indices[next(c)] ?? 0), Math.floor(c / 3) * 3);
  const lengthOf = (c: number): number => {
    const a = (indices[c] ?? 0) * 3;
    const b = (indices[next(c)] ?? 0) * 3;
    return Math.hypot(...[0, 1, 2].map((k) => (positions[a + k] ?? 0) - (positions[b + k] ?? 0)));
  };
  for (const t of slivers) {
    const longest = [t, t + 1, t + 2].reduce((best, c) => (lengthOf(c) > lengthOf(best) ? c : best), t);
    const from = owner.get((indices[next(longest)] ?? 0) * vertexCount + (indices[longest] ?? 0)) ?? t;
    for (let k = 0; k < 3; k++) out[t + k] = out[from + k] ?? 0;
  }
}

/** The triangle's angle at corner `c`, in radians. */
function cornerAngle(positions: Float32Array, indices: Uint32Array, c: number): number {
  const at = (corner: number): number[] => {
    const v = (indices[corner] ?? 0) * 3;
    return [positions[v] ?? 0, positions[v + 1] ?? 0, positions[v + 2] ?? 0];
  };
  const o = at(c);
  const p = at(next(c)).map((value, k) => value - o[k]!);
  const q = at(next(next(c))).map((value, k) => value - o[k]!);
  const cosine = (p[0]! * q[0]! + p[1]! * q[1]! + p[2]! * q[2]!) / (Math.hypot(...p) * Math.hypot(...q) || 1);
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}
