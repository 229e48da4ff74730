/**
 * Classical item statistics of a test: rows are people, columns are items, 1 right, 0 wrong.
 * p = share right; KR-20 = k/(k-1) (1 - sum p q / s^2) with the population variance s^2 of the totals;
 * point-biserial r = correlation of item and total; item-rest: of item and total without the item.
 * Source: G. F. Kuder, M. W. Richardson, Psychometrika 2 (1937) 151 (from memory); checked on a public teaching set.
 */
import { fail, faultAt, finished, message, type Fault, type Message, type Result } from '../kernel';

export interface ItemStatistics {
  /** Right answers of each person. */
  readonly totals: readonly number[];
  /** Share of right answers of each item. */
  readonly p: readonly number[];
  readonly variance_population: number;
  /** Null for a single item, or when all totals are equal. */
  readonly kr20: number | null;
  /** Null for an item that all or none got right, or when all totals are equal. */
  readonly point_biserial: readonly (number | null)[];
  readonly item_rest: readonly (number | null)[];
  readonly notes: readonly Message[];
}

/** Below this number of people the figures are too uncertain to act on (common practice, no source). */
const FEW_PEOPLE = 30;

/** @param responses rows of 0 and 1, all of one length, at least one row with one entry */
export function itemStatistics(responses: readonly (readonly number[])[]): Result<ItemStatistics> {
  const faults = checkResponses(responses);
  const items = responses[0]?.length ?? 0;
  if (faults.length > 0) return fail(faults);
  const columns = Array.from({ length: items }, (_, i) => responses.map((row) => row[i] ?? 0));
  const totals = responses.map((row) => row.reduce((sum, each) => sum + each, 0));
  const p = columns.map(mean);
  const variance_population = covariance(totals, totals);
  const pq = p.reduce((sum, share) => sum + share * (1 - share), 0);
  const kr20 =
    items > 1 && variance_population > 0 ? (items / (items - 1)) * (1 - pq / variance_population) : null;
  const point_biserial = columns.map((column) => correlation(column, totals));
  const item_rest = columns.map((column) =>
    correlation(
      column,
      totals.map((total, person) => total - (column[person] ?? 0)),
    ),
  );
  const notes: Message[] = [];
  if (responses.length < FEW_PEOPLE)
    notes.push(message('quiz.note.few-people', { people: responses.length }));
  if (kr20 === null) notes.push(message('quiz.note.no-reliability'));
  if ([...point_biserial, ...item_rest].includes(null)) notes.push(message('quiz.note.no-correlation'));
  return finished({ totals, p, variance_population, kr20, point_biserial, item_rest, notes });
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each, 0) / values.length;

/** Population covariance. */
function covariance(a: readonly number[], b: readonly number[]): number {
  const middleA = mean(a);
  const middleB = mean(b);
  return a.reduce((sum, each, i) => sum + (each - middleA) * ((b[i] ?? 0) - middleB), 0) / a.length;
}

/** Null when one of the two does not vary. */
function correlation(a: readonly number[], b: readonly number[]): number | null {
  const constant = (values: readonly number[]) => values.every((each) => each === values[0]);
  if (constant(a) || constant(b)) return null;
  return covariance(a, b) / Math.sqrt(covariance(a, a) * covariance(b, b));
}

function checkResponses(responses: readonly (readonly number[])[]): Fault[] {
  const items = responses[0]?.length ?? 0;
  if (items === 0) return [faultAt('responses', message('expected.entries', { limit: 1 }), responses)];
  return responses.flatMap((row, person) => {
    if (row.length !== items) {
      return [faultAt(`responses[${person}]`, message('quiz.expected.row-length', { items }), row.length)];
    }
    return row.flatMap((each, i) =>
      each === 0 || each === 1
        ? []
        : [faultAt(`responses[${person}][${i}]`, message('quiz.expected.zero-or-one'), each)],
    );
  });
}
