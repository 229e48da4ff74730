/**
 * All calculations of `npm run -s calc`, in the order that the list prints them.
 *
 * To add one:
 * 1. `calculations/<name>.ts` default-exports `defineCalculation({ ... })`: a zod object for the input, one for
 *    the output (fields.ts has fields that carry their unit), the source of the formula, an example that works,
 *    and `run`, which calls a function of core and returns `ok({ ...output, notes })` or `fail([...faults])`.
 *    The keys of both are the ones that people type: SI, with the unit in the name.
 * 2. words/en/calc.ts gets `calc.<name>.answers`, and a text for every note or fault key that `run` can return.
 * 3. The import and the entry below. tests/cli/registry.test.ts then runs the example and holds the output
 *    against the described keys; nothing else is needed.
 *
 * What does not exist is null (fields: outNumber, outVector2) with a note, never NaN.
 */
import type { Calculation } from './calculation';
import centrifugal from './calculations/centrifugal';
import segment from './calculations/segment';
import unbalance from './calculations/unbalance';

export const CALCULATIONS: readonly Calculation[] = [unbalance, centrifugal, segment];
