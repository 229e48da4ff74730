/** Rows of figures that are held against a limit instead of another program. */
import type { Row } from './row';

/** A figure that should be at most `limit`; the row says whether it is. */
export const atMost = (name: string, unit: string, ours: number, limit: number, note = ''): Row => ({
  name,
  unit,
  ours,
  baseline: 'wanted at most',
  baseline_value: limit,
  more_is_better: false,
  note: `${ours <= limit ? 'met' : 'MISSED'}${note === '' ? '' : `; ${note}`}`,
});

export const medianOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;
