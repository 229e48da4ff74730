import { describe, expect, it } from 'vitest';
import {
  above,
  atLeast,
  atMost,
  below,
  checkNumbers,
  checkOneOf,
  finished,
  finite,
  wholeWithin,
  within,
} from '../../src/core/kernel';

describe('rules', () => {
  it('hold up to their limits', () => {
    const holds = (rule: (value: number) => unknown, value: number) => rule(value) === null;
    expect([holds(above(0), 0), holds(above(0), 1e-300)]).toEqual([false, true]);
    expect([holds(atLeast(0), 0), holds(atLeast(0), -1e-300)]).toEqual([true, false]);
    expect([holds(below(1), 1), holds(below(1), 0.999)]).toEqual([false, true]);
    expect([holds(atMost(1), 1), holds(atMost(1), 1.001)]).toEqual([true, false]);
    expect([1, 3, 0.9, 3.1].map((value) => holds(within(1, 3), value))).toEqual([true, true, false, false]);
    expect([1, 3, 2.5, 4].map((value) => holds(wholeWithin(1, 3), value))).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});

describe('checks', () => {
  it('list every fault with its path, skip what is left out, and refuse what is not finite', () => {
    const input: { a: number; b: number; c?: number; d: number } = { a: -1, b: NaN, d: Infinity };
    const faults = checkNumbers(input, { a: above(0), b: finite, c: above(0), d: finite }, 'part[2]');
    expect(faults.map((fault) => [fault.path, fault.expected.key])).toEqual([
      ['part[2].a', 'expected.above'],
      ['part[2].b', 'expected.number'],
      ['part[2].d', 'expected.number'],
    ]);
  });

  it('want exactly one of several', () => {
    const input: { a?: number; b?: number } = { a: 0 };
    expect(checkOneOf(input, ['a', 'b'])).toEqual([]);
    expect(checkOneOf({ ...input, b: 1 }, ['a', 'b'])).toMatchObject([{ path: 'a / b', found: '"a, b"' }]);
    expect(checkOneOf({ a: undefined, b: undefined }, ['a', 'b'])).toMatchObject([{ found: '(nothing)' }]);
  });

  it('let no number leave that is not finite, wherever it sits', () => {
    expect(finished({ a: 1, b: null, c: ['x', 2] })).toMatchObject({ ok: true });
    const lost = finished({ a: NaN, b: [1, { c: -Infinity }] });
    expect(lost.ok ? [] : lost.faults.map((fault) => fault.path)).toEqual(['a', 'b[1].c']);
  });
});
