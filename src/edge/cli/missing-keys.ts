/** Faults for keys that one form of an input needs and another does not. */
import { fail, faultAt, message, type Result } from '../../core/kernel';

/** A failed result that names each of `keys` that `input` lacks. */
export function missing(input: object, keys: readonly string[]): Result<never> {
  const given = new Map<string, unknown>(Object.entries(input));
  return fail(
    keys
      .filter((key) => given.get(key) === undefined)
      .map((key) => faultAt(key, message('expected.number'), given.get(key))),
  );
}
