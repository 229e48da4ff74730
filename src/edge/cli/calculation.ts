/**
 * What one calculation of `npm run -s calc` is: a name, what it answers, a checked input, a described output,
 * its source, an example and the function that computes it.
 *
 * The schemas serve twice: they check what was typed, and they are what the printed list is made from
 * (every number carries its unit, see fields.ts).
 */
import type { z } from 'zod';
import type { Message, Result } from '../../core/kernel';

/** What `run` hands back: the output's keys, and notes saying why something is null or was assumed. */
export type Answer<Output> = Output & { readonly notes?: readonly Message[] };

export interface CalculationSpec<I extends z.ZodObject, O extends z.ZodObject> {
  /** The word typed after `npm run -s calc --`. */
  readonly name: string;
  /** Key in words/en/calc.ts: one sentence, what the calculation answers. */
  readonly answers: string;
  /** Author, title, edition and place of the formula; 'common practice, no source' where there is none. */
  readonly source: string;
  readonly input: I;
  /** The output's keys with units; `notes` is added by the command line to every one. */
  readonly output: O;
  /** An input that works; the tests run it. */
  readonly example: z.input<I>;
  /** Computes; faults that a schema cannot see (one key against another) come back as a failed Result. */
  readonly run: (input: z.output<I>) => Result<Answer<z.output<O>>> | Promise<Result<Answer<z.output<O>>>>;
}

/** A calculation with its types forgotten, so that all fit in one list. */
export interface Calculation {
  readonly name: string;
  readonly answers: string;
  readonly source: string;
  readonly input: z.ZodObject;
  readonly output: z.ZodObject;
  readonly example: unknown;
  readonly run: (input: never) => Result<Answer<object>> | Promise<Result<Answer<object>>>;
}

/** Checks a calculation's types against its schemas. */
export function defineCalculation<I extends z.ZodObject, O extends z.ZodObject>(
  spec: CalculationSpec<I, O>,
): Calculation {
  return spec;
}
