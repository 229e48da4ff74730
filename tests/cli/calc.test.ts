import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { fail, message, ok } from '../../src/core/kernel';
import { defineCalculation } from '../../src/edge/cli/calculation';
import { number, outNumber, positive } from '../../src/edge/cli/fields';
import { CALCULATIONS } from '../../src/edge/cli/registry';
import { runCalc } from '../../src/edge/cli/run-calc';

const calc = (args: string[], input: string) => runCalc(CALCULATIONS, args, () => Promise.resolve(input));

describe('calc', () => {
  it('lists name, question, inputs and outputs with units, and source', async () => {
    const printed = await calc([], '');
    expect(printed.code).toBe(0);
    const list = JSON.parse(printed.stdout) as Record<string, unknown>[];
    const segment = list.find((each) => each['name'] === 'segment');
    expect(segment).toMatchObject({
      answers: expect.stringMatching(/\?$/) as unknown,
      source: expect.stringContaining('Handbook') as unknown,
      inputs: [
        { key: 'radius_m', unit: 'm', required: true, above: 0 },
        { key: 'angle_deg', unit: 'deg', required: true, above: 0, maximum: 360 },
      ],
    });
    const outputs = segment?.['outputs'] as { key: string; unit: string | null }[];
    expect(outputs.map((each) => each.key)).toEqual([
      'area_m2',
      'height_m',
      'chord_m',
      'centroid_m',
      'notes',
    ]);
  });

  it('prints one JSON object', async () => {
    const printed = await calc(['centrifugal'], '{"mass_kg": 5, "radius_m": 1.5, "speed_rpm": 19.098593171}');
    expect(printed).toMatchObject({ code: 0, stderr: '' });
    const output = JSON.parse(printed.stdout) as Record<string, number>;
    expect(output['unbalance_kgm']).toBe(7.5);
    expect(output['omega_rad_s']).toBeCloseTo(2, 8);
    expect(output['force_N']).toBeCloseTo(30, 6);
    expect(output['notes']).toEqual([]);
  });

  it('prints every fault, one line each, and exits 2', async () => {
    const printed = await calc(['centrifugal'], '{"mass_kg": "five", "radius_m": -1}');
    expect(printed.code).toBe(2);
    expect(printed.stdout).toBe('');
    const lines = printed.stderr.trimEnd().split('\n');
    expect(lines).toHaveLength(3);
    expect(lines[0]).toBe('mass_kg: expected a value of type number, got "five"');
    expect(lines[1]).toBe('radius_m: expected at least 0, got -1');
    expect(lines[2]).toBe('speed_rpm: expected a value of type number, got (nothing)');
  });

  it.each([
    ['no such name', ['nonsense'], '{}', /there is no calculation nonsense; known are: .*centrifugal/],
    ['two names', ['segment', 'centrifugal'], '{}', /centrifugal/],
    ['nothing typed', ['segment'], '  ', /none/],
    ['no JSON', ['segment'], '{radius}', /not JSON/],
    ['a list', ['segment'], '[1]', /\(input\): expected a value of type object/],
    ['a number too large for JSON', ['segment'], '{"radius_m": 1e999, "angle_deg": 60}', /radius_m/],
  ])('refuses %s', async (_what, args, input, why) => {
    const printed = await calc(args, input);
    expect(printed.code).toBe(2);
    expect(printed.stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(printed.stderr).toMatch(why);
  });

  it('gives null with a note instead of infinity', async () => {
    const printed = await calc(['centrifugal'], '{"mass_kg": 1e300, "radius_m": 1e300, "speed_rpm": 1}');
    expect(printed.code).toBe(0);
    const output = JSON.parse(printed.stdout) as { unbalance_kgm: null; force_N: null; notes: string[] };
    expect(output.unbalance_kgm).toBeNull();
    expect(output.force_N).toBeNull();
    expect(output.notes.join(' ')).toContain('unbalance_kgm');
  });

  it('notes a key that it does not know', async () => {
    const printed = await calc(['segment'], '{"radius_m": 1, "angle_deg": 60, "angel_deg": 90}');
    expect((JSON.parse(printed.stdout) as { notes: string[] }).notes).toEqual([
      'the input key angel_deg is not known here and was ignored',
    ]);
  });
});

describe('a calculation of its own', () => {
  const sample = defineCalculation({
    name: 'sample',
    answers: 'sample.answers',
    source: 'own case',
    input: z.object({
      a_m: positive('m'),
      b_m: number('m').optional(),
      c: number('1').default(3),
      parts: z.array(z.object({ d_m: positive('m') })).optional(),
    }),
    output: z.object({ sum_m: outNumber('m') }),
    example: { a_m: 1 },
    run: ({ a_m, b_m, c }) =>
      a_m > 100
        ? fail([
            { path: 'a_m', expected: message('calc.expected.at-most', { limit: 100 }), found: String(a_m) },
          ])
        : a_m > 50
          ? (() => {
              throw new Error('mechanics/sample: a, got 60,\n wanted less');
            })()
          : ok({ sum_m: a_m + (b_m ?? 10) + c }),
  });
  const run = async (input: unknown) => {
    const printed = await runCalc([sample], ['sample'], () => Promise.resolve(JSON.stringify(input)));
    return printed.code === 0
      ? (JSON.parse(printed.stdout) as { sum_m: number; notes: string[] })
      : printed.stderr;
  };

  it('takes null for left out where a key may be left out, and fills defaults', async () => {
    expect(await run({ a_m: 1, b_m: null, c: null })).toEqual({ sum_m: 14, notes: [] });
    expect(await run({ a_m: null })).toMatch(/^a_m: expected/);
  });

  it('names the place of a fault in a list', async () => {
    expect(await run({ a_m: 1, parts: [{ d_m: 1 }, { d_m: 0 }] })).toBe(
      'parts[1].d_m: expected a number above 0, got 0\n',
    );
  });

  it('reports faults of the calculation itself, and guards of the mechanics, on one line', async () => {
    expect(await run({ a_m: 101 })).toBe('a_m: expected at most 100, got 101\n');
    expect(await run({ a_m: 60 })).toBe(
      'sample cannot be computed from this input: mechanics/sample: a, got 60, wanted less\n',
    );
  });
});

describe('npm run -s calc', () => {
  it('reads standard input and sets the exit status', () => {
    const spawn = (args: string[], input: string) =>
      spawnSync(process.execPath, ['--import', 'tsx', 'src/edge/cli/calc.ts', ...args], {
        input,
        encoding: 'utf8',
      });
    const good = spawn(['segment'], '{"radius_m": 1, "angle_deg": 180}');
    expect(good.status).toBe(0);
    expect((JSON.parse(good.stdout) as { height_m: number }).height_m).toBeCloseTo(1, 12);
    const bad = spawn(['segment'], '{}');
    expect(bad.status).toBe(2);
    expect(bad.stderr.trimEnd().split('\n')).toHaveLength(2);
  });
});
