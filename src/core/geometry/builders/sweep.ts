import {
  add,
  cross,
  dot,
  length,
  normalize,
  panic,
  scale,
  sub,
  type Vec3,
  X_AXIS,
  Y_AXIS,
} from '../../kernel';
import { areaCorrection } from '../segments';
import type { SolidMesh } from '../types';

/**
 * A round bar along a polyline, closed by flat ends: a ring of `sides` corners at each point, across the mean
 * direction there, turned as little as possible from ring to ring (so that it does not twist). The radius is
 * area-corrected. Bends must be wider than the radius, or the bar cuts into itself.
 */
export function sweepCircle(path: readonly Vec3[], radius_m: number, sides: number): SolidMesh {
  const last = path.length - 1;
  if (last < 1) panic('geometry/sweepCircle', 'path too short', path.length, 'at least 2 points');
  const at = (i: number): Vec3 => path[Math.min(last, Math.max(0, i))] ?? [0, 0, 0];
  const r = radius_m * areaCorrection(sides);
  const positions: number[] = [];
  let side: Vec3 | undefined;
  for (let i = 0; i <= last; i++) {
    const ahead = normalize(sub(at(i + 1), at(i)));
    const behind = normalize(sub(at(i), at(i - 1)));
    const along = normalize(add(length(ahead) > 0 ? ahead : behind, length(behind) > 0 ? behind : ahead));
    side ??= Math.abs(along[1]) < 0.9 ? Y_AXIS : X_AXIS;
    side = normalize(sub(side, scale(along, dot(side, along))));
    const other = cross(along, side);
    for (let k = 0; k < sides; k++) {
      const a = (2 * Math.PI * k) / sides;
      positions.push(...add(at(i), add(scale(side, r * Math.cos(a)), scale(other, r * Math.sin(a)))));
    }
  }
  const indices: number[] = [];
  for (let i = 0; i < last; i++) {
    for (let k = 0; k < sides; k++) {
      const [a, b] = [i * sides + k, i * sides + ((k + 1) % sides)];
      indices.push(a, b, b + sides, a, b + sides, a + sides);
    }
  }
  for (let k = 1; k < sides - 1; k++) {
    indices.push(0, k + 1, k);
    indices.push(last * sides, last * sides + k, last * sides + k + 1);
  }
  return { positions: Float32Array.from(positions), indices: Uint32Array.from(indices) };
}
