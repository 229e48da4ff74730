/** Keyways and straight drillings that turned parts share. */
import { length, normalize, sub, type Vec3 } from '../../kernel';
import type { Drilling, Keyway } from '../../machine';
import { segmentsFor } from '../segments';
import type { Solid, SolidScope } from '../solid-kernel';

const DEGREE = 180 / Math.PI;

/** A round bar between two points. */
export function cylinderBetween(solids: SolidScope, from: Vec3, to: Vec3, radius: number): Solid {
  const way = sub(to, from);
  const [x, y, z] = normalize(way);
  const bar = solids.cylinder(0, length(way), radius, radius, segmentsFor(radius));
  // The bar lies along +x: up or down about z, then round y.
  const up = Math.asin(Math.min(1, Math.max(-1, y))) * DEGREE;
  const round = Math.atan2(-z, x) * DEGREE;
  return solids.translate(solids.rotate(solids.rotate(bar, 0, 0, up), 0, round, 0), from);
}

export function drillingTools(solids: SolidScope, drillings: readonly Drilling[] = []): readonly Solid[] {
  return drillings.map((d) => cylinderBetween(solids, d.from_m, d.to_m, d.diameter_m / 2));
}

export function keywayTools(
  solids: SolidScope,
  keyways: readonly Keyway[] = [],
  outer_m: number,
): readonly Solid[] {
  return keyways.flatMap((k) => {
    const half = k.width_m / 2;
    const slot = solids.box([k.from_x_m, k.floor_m, -half], [k.to_x_m, k.top_m ?? outer_m + 0.01, half]);
    return solids.around(slot, k.count ?? 1, k.angle_deg);
  });
}
