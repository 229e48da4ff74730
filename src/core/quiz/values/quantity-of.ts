/** What a number of the model measures, told by the unit in its name; the house writes units into names. */
import type { Quantity } from '../../kernel';

export type NamedValue = { readonly si: number; readonly quantity: Quantity } | { readonly text: string };

const DEGREE = Math.PI / 180;

/** Unit suffix -> quantity and the factor to what that quantity counts as SI; longest suffix first. */
const SUFFIXES: readonly (readonly [string, Quantity, number])[] = [
  ['_kg_m3', 'density', 1],
  ['_kg_m2', 'inertia', 1],
  ['_m3_rev', 'displacement-volume', 1],
  ['_m3_s', 'flow', 1],
  ['_m_s2', 'acceleration', 1],
  ['_rad_s', 'rotation', 1],
  ['_N_m', 'stiffness', 1],
  ['_kgm', 'unbalance', 1],
  ['_m_s', 'speed', 1],
  ['_percent', 'share', 0.01],
  ['_deg', 'angle', DEGREE],
  ['_rad', 'angle', 1],
  ['_rpm', 'rotation', (2 * Math.PI) / 60],
  ['_Nm', 'torque', 1],
  ['_Pa', 'pressure', 1],
  ['_Hz', 'frequency', 1],
  ['_kg', 'mass', 1],
  ['_m3', 'volume', 1],
  ['_m2', 'area', 1],
  ['_m', 'length-small', 1],
  ['_N', 'force-large', 1],
  ['_W', 'power', 1],
  ['_K', 'temperature-difference', 1],
  ['_C', 'temperature', 1],
  ['_s', 'time', 1],
];

/** Above this a length is told in metres, below in millimetres; finer than a tenth of one in micrometres. */
const LONG_M = 1;
const FINE_M = 1e-4;

/** The value of a number found under `name`; the last piece of the name carries the unit, none: a plain number. */
export function namedNumber(name: string, found: number): NamedValue {
  // A unit may stand before the last word: `bearing_left_N` ends in it, `linear_load_N_m_left` does not.
  const suffix = SUFFIXES.find(([end]) => name.endsWith(end));
  if (suffix === undefined) {
    if (/(share|ratio|captured|fill|loss)$/.test(name) && Math.abs(found) <= 1)
      return { si: found, quantity: 'share' };
    return { si: found, quantity: Number.isInteger(found) ? 'count' : 'plain' };
  }
  const [end, quantity, factor] = suffix;
  const si = found * factor;
  if (end === '_N_m' && /linear/.test(name)) return { si, quantity: 'linear-load' };
  if (end === '_Pa' && /stress|sigma/.test(name)) return { si, quantity: 'stress' };
  if (end === '_m')
    return {
      si,
      quantity:
        Math.abs(si) >= LONG_M
          ? 'length'
          : si !== 0 && Math.abs(si) < FINE_M
            ? 'length-fine'
            : 'length-small',
    };
  return { si, quantity };
}

/**
 * Every number in a result under its dotted name, lists of numbers left out. A piece called `value` is skipped: a
 * study's held value is its value.
 */
export function* flatten(prefix: string, data: unknown, depth = 4): Generator<readonly [string, NamedValue]> {
  if (typeof data === 'number') {
    if (Number.isFinite(data)) yield [prefix, namedNumber(prefix, data)];
    return;
  }
  if (typeof data !== 'object' || data === null || Array.isArray(data) || depth === 0) return;
  for (const [key, value] of Object.entries(data))
    yield* flatten(key === 'value' ? prefix : `${prefix}.${key}`, value, depth - 1);
}
