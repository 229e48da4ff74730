/**
 * Vertical stress in an elastic half-space under a load on its surface (Boussinesq), compression positive.
 * Point: 3 P / (2 pi z^2) (1 + (r/z)^2)^-2.5. Line: 2 q z^3 / (pi (x^2 + z^2)^2). Strip of width B:
 * q / pi (al + sin al cos(al + 2 de)), de = atan((x - B/2) / z), al = atan((x + B/2) / z) - de.
 * Source: B. M. Das, Principles of Geotechnical Engineering, ch. 10. It shows how stress fades with depth, not how
 * deep a roller compacts.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  finite,
  finished,
  message,
  type Message,
  type Result,
} from '../../kernel';

interface Place {
  /** Across the line or strip from its middle; for a point any horizontal direction. */
  readonly x_m: number;
  /** Only for a point: the other horizontal direction, default 0. */
  readonly y_m?: number | undefined;
  /** Depth, above 0. */
  readonly z_m: number;
}

export type SoilStressInput = Place &
  (
    | { readonly kind: 'point'; readonly force_N: number }
    | { readonly kind: 'line'; readonly load_N_m: number }
    | { readonly kind: 'strip'; readonly pressure_Pa: number; readonly width_m: number }
  );

export interface SoilStress {
  readonly sigma_z_Pa: number;
  readonly notes: readonly Message[];
}

export function soilStress(input: SoilStressInput): Result<SoilStress> {
  const place = { x_m: finite, y_m: finite, z_m: above(0) };
  const faults =
    input.kind === 'point'
      ? checkNumbers(input, { force_N: atLeast(0), ...place })
      : input.kind === 'line'
        ? checkNumbers(input, { load_N_m: atLeast(0), ...place })
        : checkNumbers(input, { pressure_Pa: atLeast(0), width_m: above(0), ...place });
  if (faults.length > 0) return fail(faults);
  const { x_m, y_m = 0, z_m } = input;
  const notes = input.kind !== 'point' && y_m !== 0 ? [message('mechanics.note.y-has-no-say')] : [];
  switch (input.kind) {
    case 'point':
      return finished({ sigma_z_Pa: pointLoadStress(input.force_N, Math.hypot(x_m, y_m), z_m), notes });
    case 'line':
      return finished({ sigma_z_Pa: lineLoadStress(input.load_N_m, x_m, z_m), notes });
    case 'strip':
      return finished({ sigma_z_Pa: stripLoadStress(input.pressure_Pa, input.width_m, x_m, z_m), notes });
  }
}

/** @param radius_m horizontal distance from the load; @param z_m depth, above 0; @returns Pa */
export const pointLoadStress = (force_N: number, radius_m: number, z_m: number): number =>
  (3 * force_N) / (2 * Math.PI * z_m * z_m) / (1 + (radius_m / z_m) ** 2) ** 2.5;

/** @param x_m horizontal distance from the line; @param z_m depth, above 0; @returns Pa */
export const lineLoadStress = (load_N_m: number, x_m: number, z_m: number): number =>
  (2 * load_N_m) / (Math.PI * z_m) / (1 + (x_m / z_m) ** 2) ** 2;

/** @param x_m horizontal distance from the strip's middle; @param z_m depth, above 0; @returns Pa */
export function stripLoadStress(pressure_Pa: number, width_m: number, x_m: number, z_m: number): number {
  const near = Math.atan((x_m - width_m / 2) / z_m);
  const seen = Math.atan((x_m + width_m / 2) / z_m) - near;
  return (pressure_Pa / Math.PI) * (seen + Math.sin(seen) * Math.cos(seen + 2 * near));
}
