/**
 * Fields of a calculation's input and output: zod schemas that carry their unit.
 *
 * Units are written as in the list that `calc` prints: 'm', 'N', 'kg m', 'rad/s', 'rpm', 'deg', 'h', '1' (none).
 * Chain `.optional()` or `.default(x)` for inputs that may be left out; a null there counts as left out.
 * `finite` numbers only: JSON cannot hold others, and zod refuses them.
 */
import { z } from 'zod';

declare module 'zod' {
  interface GlobalMeta {
    /** Unit of a number, '1' for a pure number. */
    unit?: string;
  }
}

// --- inputs ---
/** Any finite number. */
export const number = (unit: string) => z.number().meta({ unit });
/** A number above zero. */
export const positive = (unit: string) => z.number().gt(0).meta({ unit });
/** Zero or more. */
export const notNegative = (unit: string) => z.number().gte(0).meta({ unit });
/** From `low` to `high`, both allowed. */
export const between = (unit: string, low: number, high: number) =>
  z.number().gte(low).lte(high).meta({ unit });
/** A whole number from `low` on. */
export const whole = (low: number) => z.int().gte(low).meta({ unit: '1' });
/** One of a few words. */
export const choice = <const T extends readonly [string, ...string[]]>(...words: T) => z.enum(words);
/** A word or name that must not be empty. */
export const text = () => z.string().min(1);
/** A vector [x, y]. */
export const vector2 = (unit: string) => z.tuple([number(unit), number(unit)]);
/** A vector [x, y, z]. */
export const vector3 = (unit: string) => z.tuple([number(unit), number(unit), number(unit)]);

// --- outputs: null is what does not exist, with a note ---
/** A number, or null where it does not exist. */
export const outNumber = (unit: string) => z.number().meta({ unit }).nullable();
/** A vector [x, y], or null. */
export const outVector2 = (unit: string) => vector2(unit).readonly().nullable();
