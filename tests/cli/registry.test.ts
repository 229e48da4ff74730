import { describe, expect, it } from 'vitest';
import { CALCULATIONS } from '../../src/edge/cli/registry';
import { describeCalculation } from '../../src/edge/cli/describe';
import { runCalc } from '../../src/edge/cli/run-calc';
import calcWords from '../../src/words/en/calc';

const run = (name: string, input: unknown) =>
  runCalc(CALCULATIONS, [name], () => Promise.resolve(JSON.stringify(input)));

describe('every calculation', () => {
  it('has a name of its own', () => {
    const names = CALCULATIONS.map((each) => each.name);
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThan(0);
  });

  it.each(CALCULATIONS.map((each) => [each.name, each] as const))(
    '%s: has words, a source, and a unit on every number',
    (_name, calculation) => {
      expect(Object.hasOwn(calcWords, calculation.answers)).toBe(true);
      expect(calculation.source).not.toBe('');
      const described = describeCalculation(calculation);
      const keys = [...described.inputs, ...described.outputs];
      expect(keys.length).toBeGreaterThan(1);
      const bare = keys.filter((each) => /^(number|integer)/.test(String(each.type)) && each.unit === null);
      expect(bare).toEqual([]);
    },
  );

  it.each(CALCULATIONS.map((each) => [each.name, each] as const))(
    '%s: its example gives the described keys and nothing else',
    async (name, calculation) => {
      const printed = await run(name, calculation.example);
      expect(printed.stderr).toBe('');
      expect(printed.code).toBe(0);
      const { notes, ...output } = JSON.parse(printed.stdout) as Record<string, unknown>;
      expect(Array.isArray(notes)).toBe(true);
      // strict: a key that the list does not describe is a fault
      const checked = calculation.output.strict().safeParse(output);
      expect(checked.error?.issues ?? []).toEqual([]);
    },
  );

  it.each(CALCULATIONS.map((each) => [each.name] as const))(
    '%s: refuses an empty object or answers it, but never breaks',
    async (name) => {
      const printed = await run(name, {});
      if (printed.code === 2) {
        expect(printed.stdout).toBe('');
        expect(printed.stderr).not.toBe('');
      } else {
        expect(() => JSON.parse(printed.stdout) as unknown).not.toThrow();
      }
    },
  );
});
