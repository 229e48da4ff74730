/**
 * Life modification factor a1 for reliability above 90 %.
 *
 * Tables: ISO 281:1990 (90 to 99 %, seen in a secondary listing); ISO 281:2007 Table 12 (from memory, rows above
 * 99 % likewise). Both follow a Weibull law with slope 1.5: w = (ln(1/R) / ln(1/0.9))^(1/1.5); 1990: a1 = w;
 * 2007: a1 = 0.05 + 0.95 w, rounded. Between rows the table is read linearly in w, so that the rows themselves
 * come out exactly.
 */

export type Iso281Edition = '2007' | '1990';

/** Rows [reliability in percent, a1]. */
export const A1_TABLES: Readonly<Record<Iso281Edition, readonly (readonly [number, number])[]>> = {
  '1990': [
    [90, 1],
    [95, 0.62],
    [96, 0.53],
    [97, 0.44],
    [98, 0.33],
    [99, 0.21],
  ],
  '2007': [
    [90, 1],
    [95, 0.64],
    [96, 0.55],
    [97, 0.47],
    [98, 0.37],
    [99, 0.25],
    [99.2, 0.22],
    [99.4, 0.19],
    [99.6, 0.16],
    [99.8, 0.12],
    [99.9, 0.093],
    [99.92, 0.087],
    [99.94, 0.08],
    [99.95, 0.077],
  ],
};

/** Highest reliability of an edition's table, percent. */
export const highestReliability = (edition: Iso281Edition): number => A1_TABLES[edition].at(-1)?.[0] ?? 90;

/**
 * Two-parameter Weibull factor (ln(1/R) / ln(1/0.9))^(1/slope): life at R over life at 90 %.
 * Source: U. C. Jindal, Machine Design, ch. 18.
 * @param reliability_percent above 0, below 100
 * @param slope Weibull slope, above 0
 */
export function weibullFactor(reliability_percent: number, slope: number): number {
  return (Math.log(reliability_percent / 100) / Math.log(0.9)) ** (1 / slope);
}

/** a1 from the table of an edition; null outside it (below 90 % or above its last row). */
export function a1FromTable(reliability_percent: number, edition: Iso281Edition): number | null {
  const rows = A1_TABLES[edition];
  const next = rows.findIndex(([percent]) => percent >= reliability_percent);
  const high = rows[next];
  if (high === undefined || reliability_percent < 90) return null;
  if (high[0] === reliability_percent) return high[1];
  const low = rows[next - 1] ?? high;
  const w = (percent: number) => weibullFactor(percent, 1.5);
  const share = (w(reliability_percent) - w(low[0])) / (w(high[0]) - w(low[0]));
  return low[1] + share * (high[1] - low[1]);
}
