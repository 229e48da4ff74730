/**
 * How well an item tells those who know much from those who know little: D = (U - L) / n, with U and L the right
 * answers in the upper and lower n = 27 % of the people by total.
 * Sources: T. L. Kelley, The selection of upper and lower groups for the validation of test items, Journal of
 * Educational Psychology 30 (1939) 17 (the 27 %); R. L. Ebel, Essentials of Educational Measurement (the bands); both
 * from memory.
 */
export const UPPER_LOWER_SHARE = 0.27;
/** Below this number of people the two groups are too small to say anything (common practice, no source). */
export const UPPER_LOWER_LEAST = 30;

export type DiscriminationBand = 'very-good' | 'good' | 'marginal' | 'poor';

/** Ebel's bands. */
export const bandOf = (d: number): DiscriminationBand =>
  d >= 0.4 ? 'very-good' : d >= 0.3 ? 'good' : d >= 0.2 ? 'marginal' : 'poor';

/**
 * D of each item. People with equal totals across a group's edge count by equal shares, so that the order of the list
 * does not matter.
 * @param responses rows of 0 and 1, one a person, all of one length
 * @param least people below which nothing is said
 * @returns null for fewer people than `least`
 */
export function upperLower(
  responses: readonly (readonly number[])[],
  least = UPPER_LOWER_LEAST,
): readonly number[] | null {
  if (responses.length < Math.max(2, least)) return null;
  const n = Math.round(UPPER_LOWER_SHARE * responses.length);
  const totals = responses.map((row) => row.reduce((sum, each) => sum + each, 0));
  const upper = weights(totals, n);
  const lower = weights(
    totals.map((total) => -total),
    n,
  );
  return (responses[0] ?? []).map((_, item) => {
    const sum = (of: readonly number[]): number =>
      responses.reduce((all, row, person) => all + (of[person] ?? 0) * (row[item] ?? 0), 0);
    return (sum(upper) - sum(lower)) / n;
  });
}

/** Share with which each person belongs to the `n` of the highest values. */
function weights(values: readonly number[], n: number): readonly number[] {
  const edge = [...values].sort((a, b) => b - a)[n - 1]!;
  const above = values.filter((value) => value > edge).length;
  const at = values.filter((value) => value === edge).length;
  return values.map((value) => (value > edge ? 1 : value === edge ? (n - above) / at : 0));
}
