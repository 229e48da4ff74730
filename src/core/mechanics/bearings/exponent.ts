/** Exponents of rolling bearings: life against load, and the system of several bearings. */
import { above, faultAt, message, type Fault } from '../../kernel';

/** Life exponent: 3 for ball, 10/3 for roller bearings (ISO 281), or a number of one's own. */
export type LifeExponent = number | 'ball' | 'roller';

/** The number behind a life exponent p (ISO 281). */
export function lifeExponent(p: LifeExponent): number {
  return p === 'ball' ? 3 : p === 'roller' ? 10 / 3 : p;
}

/**
 * Exponent e of a system of bearings: 10/9 ball, 9/8 roller. Source: G. Lundberg, A. Palmgren; T. A. Harris,
 * Rolling Bearing Analysis (from memory). Some texts use 1.5.
 */
export function systemExponent(e: LifeExponent): number {
  return e === 'ball' ? 10 / 9 : e === 'roller' ? 9 / 8 : e;
}

/** Fault of an exponent that is given as a number: above 0 and at most 20, beyond which powers overflow. */
export function checkExponent(key: string, value: LifeExponent): Fault[] {
  if (typeof value === 'string') return [];
  const expected = !Number.isFinite(value)
    ? message('expected.number')
    : value > 20
      ? message('expected.at-most', { limit: 20 })
      : above(0)(value);
  return expected === null ? [] : [faultAt(key, expected, value)];
}
