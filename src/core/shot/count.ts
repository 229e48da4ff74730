/** How many balls stand for the shot. */
import type { ShotParameters } from './parameters';

/** Solid share of the area of random discs in a plane (close packing of a spread of sizes; common value 0.82). */
export const DISC_PACKING = 0.82;

/**
 * Number of balls in the slice: shot mass of the slice over the mean ball's mass (mean of d^3 for a uniform spread s
 * is d^3 (1 + s^2)). In two dimensions: number of discs that fill the shot's bulk section.
 */
export function ballCount(p: ShotParameters): number {
  const { shot, slice } = p;
  const d = shot.ball_diameter_m;
  const spread = shot.size_spread;
  if (slice.dimension === 2) {
    const bulk_m2 = shot.mass_kg / (shot.density_kg_m3 * shot.packing * shot.length_m);
    const disc_m2 = (Math.PI / 4) * d * d * (1 + (spread * spread) / 3);
    return Math.round((bulk_m2 * DISC_PACKING) / disc_m2);
  }
  const ball_kg = (shot.density_kg_m3 * Math.PI * d ** 3 * (1 + spread * spread)) / 6;
  return Math.round((shot.mass_kg * slice.depth_m) / shot.length_m / ball_kg);
}
