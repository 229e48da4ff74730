import type { Vec3 } from '../../kernel';
import type { Solid, SolidScope } from '../solid-kernel';

/** Height of the bevel at a hexagon's free end, as a share of its width across flats, and how far it cuts back. */
const BEVEL_HEIGHT = 0.06;
const BEVEL_BACK = 0.12;

/** A hexagon about x from x0 to x1, bevelled at x1; at phase 0 a corner points to +y. */
export function hexagon(
  solids: SolidScope,
  x0: number,
  x1: number,
  acrossFlats_m: number,
  phase_deg: number,
): Solid {
  const corner = acrossFlats_m / Math.sqrt(3);
  const back = corner - BEVEL_BACK * acrossFlats_m;
  const level = (x: number, r: number): Vec3[] =>
    Array.from({ length: 6 }, (_, i) => {
      const a = (phase_deg / 180 + i / 3) * Math.PI;
      return [x, r * Math.cos(a), -r * Math.sin(a)] as const;
    });
  const shoulder = x1 - Math.sign(x1 - x0) * BEVEL_HEIGHT * acrossFlats_m;
  return solids.hull([...level(x0, corner), ...level(shoulder, corner), ...level(x1, back)]);
}
