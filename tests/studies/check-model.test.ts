import { beforeAll, describe, expect, it } from 'vitest';
import { buildMachine, loadSolidKernel, type SolidKernel } from '../../src/core/geometry';
import { parseMachine } from '../../src/core/machine';
import { checkModel, findOverlaps } from '../../src/core/studies';
import { smallMachine } from '../machine/small-machine';

let kernel: SolidKernel;
beforeAll(async () => {
  kernel = await loadSolidKernel();
});

/** The small machine with a real bolt of 12 mm and holes for its shank. */
const sound = smallMachine
  .replace(
    /builder: turned\n {6}stations:\n {8}- \{ from_x_m: -0\.04[\s\S]*?outer_m: 0\.009 \}/,
    'builder: bolt\n      diameter_m: 0.012\n      length_m: 0.04\n      head: { form: hex, across_flats_m: 0.018, height_m: 0.0075 }',
  )
  .replace(
    '- { from_x_m: -0.2, to_x_m: 0.2, inner_m: 0.08, outer_m: 0.12 }',
    '- { from_x_m: -0.2, to_x_m: 0.2, inner_m: 0.08, outer_m: 0.12 }\n      holes:\n        - { diameter_m: 0.012, count: 4, radius_m: 0.1, start_deg: 0, from_x_m: 0.17, to_x_m: 0.2 }',
  )
  .concat('  - { type: rests, part: foot, on: tube }\n');

function faultsOf(text: string) {
  const parsed = parseMachine([{ name: 'small.yaml', text }]);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return checkModel(parsed.value, buildMachine(kernel, parsed.value.machine), kernel);
}

const lineOf = (text: string, needle: string): number =>
  text.split('\n').findIndex((l) => l.includes(needle)) + 1;

describe('checking a model', () => {
  it('finds nothing in a sound machine', () => {
    expect(faultsOf(sound)).toEqual([]);
  });

  it('finds a bolt too short for its grip and thread', () => {
    const text = sound.replace('length_m: 0.04', 'length_m: 0.03');
    expect(faultsOf(text)).toMatchObject([
      {
        file: 'small.yaml',
        line: lineOf(text, 'engaged_m'),
        expected: { key: 'fault.bolt-length' },
        found: '0.03',
      },
    ]);
  });

  it('finds too little thread', () => {
    expect(faultsOf(sound.replace('engaged_m: 0.02', 'engaged_m: 0.006'))).toMatchObject([
      { expected: { key: 'fault.engagement' } },
    ]);
  });

  it('finds solids that share space and names both', () => {
    const text = sound.replace('at_m: [0.2, 0, 0]', 'at_m: [0.19, 0, 0]');
    const faults = faultsOf(text).filter((f) => f.expected.key === 'fault.no-overlap');
    expect(faults.length).toBeGreaterThan(0);
    expect(faults.map((f) => f.found).join()).toContain('tube');
  });

  it('measures the shared volume as the formula has it', () => {
    const parsed = parseMachine([
      { name: 'small.yaml', text: smallMachine.replace('at_m: [0.2, 0, 0]', 'at_m: [0.195, 0, 0]') },
    ]);
    if (!parsed.ok) throw new Error('not read');
    const { machine } = parsed.value;
    const found = findOverlaps(kernel, machine, buildMachine(kernel, machine)).find(
      (o) => o.a === 'tube' && o.b === 'end-right',
    );
    // A ring 5 mm long between radii 80 and 120 mm, less the plate's four bolt holes of 13 mm.
    const expected = 0.005 * (Math.PI * (0.12 ** 2 - 0.08 ** 2) - 4 * Math.PI * 0.0065 ** 2);
    expect(found?.volume_m3).toBeGreaterThan(expected * 0.995);
    expect(found?.volume_m3).toBeLessThan(expected * 1.005);
  });

  it('finds a part that nothing holds', () => {
    const text = sound.replace('  - { type: rests, part: foot, on: tube }\n', '');
    expect(faultsOf(text)).toMatchObject([{ expected: { key: 'fault.reached' }, found: 'foot' }]);
  });

  it('finds a declared mass that its solid does not bear out, unless it is explained', () => {
    const text = sound.replace('finish: cast\n', 'finish: cast\n    mass_kg: 3\n');
    expect(faultsOf(text)).toMatchObject([
      { line: lineOf(text, 'mass_kg: 3'), expected: { key: 'fault.mass' } },
    ]);
    expect(faultsOf(text.replace('mass_kg: 3\n', 'mass_kg: 3\n    mass_note: filled with lead\n'))).toEqual(
      [],
    );
  });

  it('finds a seat whose diameter one part does not have', () => {
    const text = sound.replace('fit: face }', 'fit: H7/g6, diameter_m: 0.17 }');
    const faults = faultsOf(text).filter((f) => f.expected.key === 'fault.seat-diameter');
    expect(faults.map((f) => f.found)).toEqual(['end-right', 'tube']);
  });
});
