/** What tests of the mechanics share: taking a result apart, and comparing within a share of the value. */
import { expect } from 'vitest';
import type { Result } from '../../src/core/kernel';

/** The value of a Result, or a test failure that shows its faults. */
export function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.faults)}`);
  return result.value;
}

/** Paths of the faults of a Result that must be refused. */
export function faultPaths(result: Result<unknown>): string[] {
  if (result.ok) throw new Error(`accepted: ${JSON.stringify(result.value)}`);
  return result.faults.map((fault) => fault.path);
}

/** Message keys of the notes of an accepted result. */
export const noteKeys = (result: Result<{ readonly notes: readonly { key: string }[] }>): string[] =>
  valueOf(result).notes.map((note) => note.key);

/** `actual` within `percent` of `expected`, by default the half per cent of the reference sheet. */
export function expectWithin(actual: number | null, expected: number, percent = 0.5): void {
  expect(actual).not.toBeNull();
  expect(Math.abs((actual ?? NaN) - expected)).toBeLessThanOrEqual((Math.abs(expected) * percent) / 100);
}
