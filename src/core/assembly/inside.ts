/**
 * Whether a point lies inside a closed mesh: parity of crossings along a fixed oblique ray, with the triangles
 * bucketed by their shadow along that ray. Independent of the line grids that the blocking graph is read from.
 */
import type { PlacedMesh } from './world';

/** Shear that lays the ray along z: a point (x, y, z) casts its shadow at (x - SX z, y - SY z). */
const SX = 0.3713907;
const SY = 0.5441823;

export interface InsideTest {
  readonly bounds: Float64Array;
  isInside(x: number, y: number, z: number): boolean;
}

export function insideTest(mesh: PlacedMesh, bounds: Float64Array): InsideTest {
  const { positions, indices } = mesh;
  const triangles = indices.length / 3;
  const u = (v: number): number => positions[v * 3]! - SX * positions[v * 3 + 2]!;
  const w = (v: number): number => positions[v * 3 + 1]! - SY * positions[v * 3 + 2]!;
  let [u0, u1, w0, w1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let v = 0; v < positions.length / 3; v++) {
    u0 = Math.min(u0, u(v));
    u1 = Math.max(u1, u(v));
    w0 = Math.min(w0, w(v));
    w1 = Math.max(w1, w(v));
  }
  const side = Math.max(1, Math.min(256, Math.ceil(Math.sqrt(triangles))));
  const cellU = (u1 - u0) / side || 1;
  const cellW = (w1 - w0) / side || 1;
  const cell = (value: number, low: number, size: number): number =>
    Math.max(0, Math.min(side - 1, Math.floor((value - low) / size)));
  const counts = new Uint32Array(side * side + 1);
  const cover = (t: number, use: (c: number) => void): void => {
    const [a, b, c] = [indices[t * 3]!, indices[t * 3 + 1]!, indices[t * 3 + 2]!];
    const iu0 = cell(Math.min(u(a), u(b), u(c)), u0, cellU);
    const iu1 = cell(Math.max(u(a), u(b), u(c)), u0, cellU);
    const iw0 = cell(Math.min(w(a), w(b), w(c)), w0, cellW);
    const iw1 = cell(Math.max(w(a), w(b), w(c)), w0, cellW);
    for (let iw = iw0; iw <= iw1; iw++) for (let iu = iu0; iu <= iu1; iu++) use(iu + iw * side);
  };
  for (let t = 0; t < triangles; t++) cover(t, (c) => counts[c + 1]!++);
  for (let c = 0; c < side * side; c++) counts[c + 1] = counts[c + 1]! + counts[c]!;
  const next = counts.slice(0, side * side);
  const list = new Uint32Array(counts[side * side]!);
  for (let t = 0; t < triangles; t++) cover(t, (c) => (list[next[c]!++] = t));

  const isInside = (x: number, y: number, z: number): boolean => {
    if (
      x < bounds[0]! ||
      x > bounds[1]! ||
      y < bounds[2]! ||
      y > bounds[3]! ||
      z < bounds[4]! ||
      z > bounds[5]!
    )
      return false;
    const pu = x - SX * z;
    const pw = y - SY * z;
    const c = cell(pu, u0, cellU) + cell(pw, w0, cellW) * side;
    let crossings = 0;
    for (let i = counts[c]!; i < counts[c + 1]!; i++) {
      const t = list[i]! * 3;
      const [ia, ib, ic] = [indices[t]!, indices[t + 1]!, indices[t + 2]!];
      const [au, aw, bu, bw, cu, cw] = [
        u(ia) - pu,
        w(ia) - pw,
        u(ib) - pu,
        w(ib) - pw,
        u(ic) - pu,
        w(ic) - pw,
      ];
      const e0 = au * bw - aw * bu;
      const e1 = bu * cw - bw * cu;
      const e2 = cu * aw - cw * au;
      if (!((e0 >= 0 && e1 >= 0 && e2 >= 0) || (e0 <= 0 && e1 <= 0 && e2 <= 0))) continue;
      const area = e0 + e1 + e2;
      if (area === 0) continue;
      const depth =
        (e1 * positions[ia * 3 + 2]! + e2 * positions[ib * 3 + 2]! + e0 * positions[ic * 3 + 2]!) / area;
      if (depth > z) crossings++;
    }
    return (crossings & 1) === 1;
  };
  return { bounds, isInside };
}
