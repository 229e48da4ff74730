/**
 * ISO 286 tables, nominal sizes above 0 up to 500 mm, in micrometres.
 *
 * Where the numbers come from (none was read in the standard itself; confirm before use on real parts):
 * - grades 5 to 8 for 30 to 500 mm, and the deviations g, h, k, m, n, p there: secondary listings of
 *   ISO 286-1 / ISO 286-2 that agree with each other;
 * - r with its sub-ranges, and everything else here (grades 3, 4, 9 to 12, sizes up to 30 mm, letters d, e, f,
 *   j, s, holes J): from memory.
 */

/** Upper ends of the main ranges, mm ("over ... up to and including"). */
export const RANGES_MM = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500] as const;

/** Standard tolerances by grade, one entry a main range. Grades 3 and 4 serve only the rule for holes. */
export const TOLERANCE_UM: Readonly<Record<number, readonly number[]>> = {
  3: [2, 2.5, 2.5, 3, 4, 4, 5, 6, 8, 10, 12, 13, 15],
  4: [3, 4, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20],
  5: [4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27],
  6: [6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40],
  7: [10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63],
  8: [14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97],
  9: [25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155],
  10: [40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250],
  11: [60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400],
  12: [100, 120, 150, 180, 210, 250, 300, 350, 400, 460, 520, 570, 630],
};

/** Shafts that lie below the nominal size: upper deviation es, the same for every grade. */
export const SHAFT_UPPER_UM = {
  d: [-20, -30, -40, -50, -65, -80, -100, -120, -145, -170, -190, -210, -230],
  e: [-14, -20, -25, -32, -40, -50, -60, -72, -85, -100, -110, -125, -135],
  f: [-6, -10, -13, -16, -20, -25, -30, -36, -43, -50, -56, -62, -68],
  g: [-2, -4, -5, -6, -7, -9, -10, -12, -14, -15, -17, -18, -20],
  h: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
} as const satisfies Readonly<Record<string, readonly number[]>>;

/** Shafts that lie above the nominal size: lower deviation ei. k as listed holds for grades 4 to 7, else it is 0. */
export const SHAFT_LOWER_UM = {
  k: [0, 1, 1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5],
  m: [2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23],
  n: [4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40],
  p: [6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68],
} as const satisfies Readonly<Record<string, readonly number[]>>;

/** Upper ends of the sub-ranges that r and s are listed in, mm. */
export const SUB_RANGES_MM = [
  3, 6, 10, 18, 30, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500,
] as const;

/** Lower deviation ei of r and s by sub-range. */
export const SHAFT_LOWER_SUB_UM = {
  r: [10, 15, 19, 23, 28, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98, 108, 114, 126, 132],
  s: [14, 19, 23, 28, 35, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158, 170, 190, 208, 232, 252],
} as const satisfies Readonly<Record<string, readonly number[]>>;

/** Shafts j: lower deviation ei, by grade. */
export const SHAFT_J_LOWER_UM: Readonly<Record<number, readonly number[]>> = {
  5: [-2, -2, -2, -3, -4, -5, -7, -9, -11, -13, -16, -18, -20],
  6: [-2, -2, -2, -3, -4, -5, -7, -9, -11, -13, -16, -18, -20],
  7: [-4, -4, -5, -6, -8, -10, -12, -15, -18, -21, -26, -28, -32],
};

/** Holes J: upper deviation ES, by grade. */
export const HOLE_J_UPPER_UM: Readonly<Record<number, readonly number[]>> = {
  6: [2, 5, 5, 6, 8, 10, 13, 16, 18, 22, 25, 29, 33],
  7: [4, 6, 8, 10, 12, 14, 18, 22, 26, 30, 36, 39, 43],
  8: [6, 10, 12, 15, 20, 24, 28, 34, 41, 47, 55, 60, 66],
};
