/** A plot as numbers, before anybody draws it. */
import type { Quantity } from '../kernel';

export interface Curve {
  readonly x: {
    readonly key: string;
    readonly quantity: Quantity;
    readonly values: readonly number[];
    /** A depth: drawn down the page. */
    readonly downwards?: boolean;
  };
  readonly y: { readonly key: string; readonly quantity: Quantity };
  /** Named A, B, … in this order. */
  readonly lines: readonly (readonly (number | null)[])[];
  /** Value of x that is worth a line, such as the working frequency. */
  readonly mark?: number;
}

/** From the first to the last value in even steps. */
export const steps = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
