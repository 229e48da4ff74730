/**
 * Chebyshev series on [-1, 1]: what makes a look-up exact to rounding and quick.
 * Source: J. C. Mason, D. C. Handscomb, Chebyshev Polynomials (2003), interpolation at the zeros of T_n,
 * integration of a series, and Clenshaw's sum (from memory; held against closed forms in the tests).
 */

/** Number of sample points of one series. */
export const SAMPLES = 24;

/** Sample points, falling from near 1 to near -1: the zeros of T_SAMPLES. */
export const SAMPLE_POINTS: readonly number[] = Array.from({ length: SAMPLES }, (_, j) =>
  Math.cos((Math.PI * (j + 0.5)) / SAMPLES),
);

const COSINES: readonly (readonly number[])[] = Array.from({ length: SAMPLES }, (_, k) =>
  Array.from({ length: SAMPLES }, (_, j) => (2 / SAMPLES) * Math.cos((Math.PI * k * (j + 0.5)) / SAMPLES)),
);

/** Coefficients c of f = sum c_k T_k from f at the sample points. */
export function fitSeries(values: readonly number[]): number[] {
  const series = COSINES.map((row) => row.reduce((sum, weight, j) => sum + weight * values[j]!, 0));
  series[0] = series[0]! / 2;
  return series;
}

/** Largest of the last three coefficients: what the series still misses, roughly. */
export const seriesTail = (series: readonly number[]): number =>
  series.slice(-3).reduce((most, c) => Math.max(most, Math.abs(c)), 0);

/** Series of the integral of f from t to 1. */
export function integralTo1(series: readonly number[]): number[] {
  const n = series.length;
  const at = (k: number) => (k < n ? series[k]! : 0);
  const result: number[] = [0];
  for (let k = 1; k <= n; k++) result.push(-((k === 1 ? 2 * at(0) : at(k - 1)) - at(k + 1)) / (2 * k));
  // T_k(1) = 1 for every k: choose the constant so that the value at 1 is 0
  result[0] = -result.reduce((sum, c) => sum + c, 0);
  return result;
}

/** Value of the series at t, by Clenshaw's sum. */
export function evaluate(series: readonly number[], t: number): number {
  let b1 = 0;
  let b2 = 0;
  for (let k = series.length - 1; k >= 1; k--) {
    const b = 2 * t * b1 - b2 + series[k]!;
    b2 = b1;
    b1 = b;
  }
  return t * b1 - b2 + series[0]!;
}
