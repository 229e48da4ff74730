/**
 * Packing fractions: share of a space that equal balls (or discs, in the plane) fill.
 * Loose values differ by source; a shot-filled chamber is shown as a range.
 */

/** Face-centred cubic and hexagonal close packing, pi / sqrt 18 (exact; the densest there is). */
export const PACKING_CLOSE = Math.PI / Math.sqrt(18);
/** Body-centred cubic, pi sqrt 3 / 8 (exact). */
export const PACKING_BODY_CENTRED = (Math.PI * Math.sqrt(3)) / 8;
/** Simple cubic, pi / 6 (exact). */
export const PACKING_SIMPLE_CUBIC = Math.PI / 6;
/** Random close packing of balls: G. D. Scott, D. M. Kilgour, J. Phys. D 2 (1969) 863: 0.6366 +-0.0005 (from memory). */
export const PACKING_RANDOM_CLOSE = 0.6366;
/** Random loose packing of balls, poured: G. D. Scott, Nature 188 (1960) 908 (from memory). */
export const PACKING_RANDOM_LOOSE = 0.6;
/** Loosest random packing, limit of no gravity: G. Y. Onoda, E. G. Liniger, Phys. Rev. Lett. 64 (1990) 2727. */
export const PACKING_RANDOM_LOOSEST = 0.555;
/** Hexagonal packing of discs in the plane, pi / (2 sqrt 3) (exact; the densest there is). */
export const PACKING_DISCS_HEXAGONAL = Math.PI / (2 * Math.sqrt(3));
/** Random close packing of discs, low and high: J. G. Berryman, Phys. Rev. A 27 (1983) 1053 (from memory). */
export const PACKING_DISCS_RANDOM_CLOSE = [0.82, 0.84] as const;
/** Range to show for loose shot in a chamber (between poured and shaken; see the two sources above). */
export const PACKING_SHOT_RANGE = [0.6, 0.64] as const;
