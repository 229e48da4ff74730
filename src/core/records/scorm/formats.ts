/**
 * Values as the two data models of SCORM write them. Sources: ADL, SCORM 1.2 Run-Time Environment (2001), section 3.4;
 * ADL, SCORM 2004 4th Edition Run-Time Environment (2009), section 4.1 (both from memory).
 */

const SECOND_ms = 1000;
/** CMITimespan of 1.2 ends at 9999:99:99.99. */
const LONGEST_12_s = 9999 * 3600 + 59 * 60 + 59.99;

const two = (n: number): string => String(n).padStart(2, '0');

/** A span of time in 1.2, `HHHH:MM:SS.SS`; negative or unknown spans count as none, longer ones are cut. */
export function timespan12(seconds: number): string {
  const hundredths = Math.round(Math.min(LONGEST_12_s, Math.max(0, finite(seconds))) * 100);
  const whole = Math.floor(hundredths / 100);
  return `${String(Math.floor(whole / 3600)).padStart(4, '0')}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}.${two(hundredths % 100)}`;
}

/** A span of time in 2004 (ISO 8601), to a hundredth of a second. */
export const timeinterval2004 = (seconds: number): string =>
  `PT${Number(Math.max(0, finite(seconds)).toFixed(2))}S`;

/** A time of day in 1.2, `HH:MM:SS`. @param zone_min minutes that local time is behind UTC, as a Date tells them */
export function time12(at_ms: number, zone_min: number): string {
  const day = new Date(at_ms - zone_min * 60 * SECOND_ms).toISOString();
  return day.slice(11, 19);
}

/** A point of time in 2004: UTC, to a tenth of a second, for only then may a zone be said. */
export const time2004 = (at_ms: number): string => `${new Date(at_ms).toISOString().slice(0, 21)}Z`;

/** A number without an exponent, to nine figures. */
export function decimal(n: number): string {
  const rounded = Number(finite(n).toPrecision(9));
  const text = String(rounded);
  if (!/e/i.test(text)) return text;
  return Math.abs(rounded) >= 1 ? BigInt(Math.round(rounded)).toString() : trimmed(rounded.toFixed(18));
}

const trimmed = (text: string): string => text.replace(/\.?0+$/, '') || '0';
const finite = (n: number): number => (Number.isFinite(n) ? n : 0);

/** A name that every system takes: letters, digits and `.-_`, never empty. */
export const identifier = (text: string): string =>
  text.replace(/[^A-Za-z0-9._-]/g, '-').slice(0, 250) || '-';

const LETTERS = 'abcdefghijklmnopqrstuvwxyz0123456789';

/**
 * One letter for each id, the same whatever order they are shown in: 1.2 names what was chosen by one letter or digit.
 * Ids beyond the thirty-sixth have none.
 */
export function lettersOf(ids: readonly string[]): ReadonlyMap<string, string> {
  const sorted = [...new Set(ids)].sort();
  return new Map(sorted.slice(0, LETTERS.length).map((id, i) => [id, LETTERS[i]!]));
}
