import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineInJson } from '../../src/core/kernel';

describe('the line of a value in a JSON text', () => {
  it('is found by its path, or the nearest above it', () => {
    const text = '{\n  "a": [\n    1,\n    { "b\\"c": "x,]}" }\n  ],\n  "d": null\n}';
    expect(lineInJson(text, [])).toBe(1);
    expect(lineInJson(text, ['a', 0])).toBe(3);
    expect(lineInJson(text, ['a', 1, 'b"c'])).toBe(4);
    expect(lineInJson(text, ['d'])).toBe(6);
    expect(lineInJson(text, ['a', 7, 'z'])).toBe(2);
    expect(lineInJson('{"a": [1,', ['a', 3])).toBeUndefined();
  });

  it('agrees with where an indented text puts each entry of a list', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.string(), fc.double({ noNaN: true }), fc.boolean()), { minLength: 1 }),
        (list) => {
          const text = JSON.stringify({ list }, null, 1);
          list.forEach((_, i) => expect(lineInJson(text, ['list', i])).toBe(3 + i));
        },
      ),
      { seed: 3, numRuns: 30 },
    );
  });
});
