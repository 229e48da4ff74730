/**
 * Volume integrals of closed triangle meshes by the divergence theorem: a signed tetrahedron from a reference point
 * to each triangle. Same result as B. Mirtich, Fast and accurate computation of polyhedral mass properties,
 * J. Graphics Tools 1(2), 1996 (cited from memory), with the tetrahedron's closed second moments.
 */
import type { Vec3 } from '../kernel';
import type { SolidMesh } from './types';

export interface MeshIntegrals {
  readonly volume_m3: number;
  readonly centroid_m: Vec3;
  /** Second moments about the centroid, integral of a_i a_j dV: xx, yy, zz, xy, xz, yz, in m5. */
  readonly second_m5: readonly [number, number, number, number, number, number];
}

/**
 * Integrals of a closed mesh that is outward by the right-hand rule; an inward mesh gives a negative volume.
 * Sums run about the middle of the first triangle so that a part far from its origin loses no figures.
 */
export function meshIntegrals({ positions, indices }: SolidMesh): MeshIntegrals {
  const at = (vertex: number, axis: number): number => positions[vertex * 3 + axis] ?? 0;
  const first = indices[0] ?? 0;
  const ox = at(first, 0);
  const oy = at(first, 1);
  const oz = at(first, 2);
  let volume6 = 0;
  const m = [0, 0, 0];
  const s = [0, 0, 0, 0, 0, 0];
  for (let t = 0; t < indices.length; t += 3) {
    const i = indices[t] ?? 0;
    const j = indices[t + 1] ?? 0;
    const k = indices[t + 2] ?? 0;
    const ax = at(i, 0) - ox, ay = at(i, 1) - oy, az = at(i, 2) - oz; // prettier-ignore
    const bx = at(j, 0) - ox, by = at(j, 1) - oy, bz = at(j, 2) - oz; // prettier-ignore
    const cx = at(k, 0) - ox, cy = at(k, 1) - oy, cz = at(k, 2) - oz; // prettier-ignore
    const det = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    const sx = ax + bx + cx, sy = ay + by + cy, sz = az + bz + cz; // prettier-ignore
    volume6 += det;
    m[0]! += det * sx;
    m[1]! += det * sy;
    m[2]! += det * sz;
    // Integral of x_i x_j over a tetrahedron with one corner at the origin: det / 120 (sum a_i a_j + s_i s_j).
    s[0]! += det * (ax * ax + bx * bx + cx * cx + sx * sx);
    s[1]! += det * (ay * ay + by * by + cy * cy + sy * sy);
    s[2]! += det * (az * az + bz * bz + cz * cz + sz * sz);
    s[3]! += det * (ax * ay + bx * by + cx * cy + sx * sy);
    s[4]! += det * (ax * az + bx * bz + cx * cz + sx * sz);
    s[5]! += det * (ay * az + by * bz + cy * cz + sy * sz);
  }
  const volume_m3 = volume6 / 6;
  if (volume_m3 === 0) return { volume_m3: 0, centroid_m: [ox, oy, oz], second_m5: [0, 0, 0, 0, 0, 0] };
  const gx = m[0]! / 24 / volume_m3, gy = m[1]! / 24 / volume_m3, gz = m[2]! / 24 / volume_m3; // prettier-ignore
  return {
    volume_m3,
    centroid_m: [gx + ox, gy + oy, gz + oz],
    second_m5: [
      s[0]! / 120 - volume_m3 * gx * gx,
      s[1]! / 120 - volume_m3 * gy * gy,
      s[2]! / 120 - volume_m3 * gz * gz,
      s[3]! / 120 - volume_m3 * gx * gy,
      s[4]! / 120 - volume_m3 * gx * gz,
      s[5]! / 120 - volume_m3 * gy * gz,
    ],
  };
}
