/**
 * Range checks on inputs that are plain numbers, all faults at once, and the guard that no NaN or infinity
 * leaves a formula. Message keys: `expected.*`.
 */
import { fail, message, ok, printFound, type Fault, type Message, type Result } from './result';

/** Says what was expected of a finite number, or null when it is fine. */
export type Rule = (value: number) => Message | null;

const rule =
  (key: string, holds: (value: number, limit: number) => boolean) =>
  (limit: number): Rule =>
  (value) =>
    holds(value, limit) ? null : message(key, { limit });

export const above = rule('expected.above', (value, limit) => value > limit);
export const atLeast = rule('expected.at-least', (value, limit) => value >= limit);
export const below = rule('expected.below', (value, limit) => value < limit);
export const atMost = rule('expected.at-most', (value, limit) => value <= limit);
/** From `low` to `high`, both allowed. */
export const within =
  (low: number, high: number): Rule =>
  (value) =>
    value >= low && value <= high ? null : message('expected.within', { low, high });
/** Any finite number. */
export const finite: Rule = () => null;
/** A whole number from `low` to `high`. */
export const wholeWithin =
  (low: number, high: number): Rule =>
  (value) =>
    Number.isInteger(value) && value >= low && value <= high
      ? null
      : message('expected.whole-within', { low, high });

/** One fault at `path`. */
export function faultAt(path: string, expected: Message, found: unknown): Fault {
  return { path, expected, found: printFound(found) };
}

/**
 * Faults of the numbers of `input` against `rules`; a key that is undefined counts as left out.
 * @param at path of `input` inside the data, put before the key
 */
export function checkNumbers<T extends object>(
  input: T,
  rules: { readonly [K in keyof T]?: Rule },
  at = '',
): Fault[] {
  const faults: Fault[] = [];
  for (const [key, each] of Object.entries(rules) as [keyof T & string, Rule][]) {
    const value: unknown = input[key];
    if (value === undefined) continue;
    const expected =
      typeof value === 'number' && Number.isFinite(value) ? each(value) : message('expected.number');
    if (expected !== null) faults.push(faultAt(at === '' ? key : `${at}.${key}`, expected, value));
  }
  return faults;
}

/** Exactly one of `keys` must be given; returns the fault otherwise. */
export function checkOneOf<T extends object>(input: T, keys: readonly (keyof T & string)[]): Fault[] {
  const given = keys.filter((key) => input[key] !== undefined);
  return given.length === 1
    ? []
    : [faultAt(keys.join(' / '), message('expected.exactly-one', { keys }), given.join(', ') || undefined)];
}

/**
 * The output as a Result; a number in it that is not finite (an overflow) turns into a fault at its path, so
 * that no NaN or infinity leaves a formula.
 */
export function finished<T extends object>(output: T): Result<T> {
  const faults: Fault[] = [];
  const visit = (value: unknown, path: string): void => {
    if (typeof value === 'number') {
      if (!Number.isFinite(value)) {
        faults.push({ path, expected: message('expected.representable'), found: '(too large)' });
      }
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, item] of Object.entries(value)) {
        // what a note repeats has its own path
        if (path === '' && key === 'notes') continue;
        visit(item, Array.isArray(value) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`);
      }
    }
  };
  visit(output, '');
  return faults.length === 0 ? ok(output) : fail(faults);
}
