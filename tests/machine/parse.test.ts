import { describe, expect, it } from 'vitest';
import { findPart, parseMachine, partsOfRef, printPath } from '../../src/core/machine';
import { smallMachine } from './small-machine';

const parse = (text: string) => parseMachine([{ name: 'small.yaml', text }]);

describe('reading machine files', () => {
  it('reads a sound machine and writes out its patterns', () => {
    const result = parse(smallMachine);
    if (!result.ok) throw new Error(JSON.stringify(result.faults, null, 1));
    const { machine } = result.value;
    expect(machine.parts.map((p) => p.id)).toEqual([
      'tube',
      'end-left',
      'end-right',
      'foot-1',
      'foot-2',
      'end-bolts/01',
      'end-bolts/02',
      'end-bolts/03',
      'end-bolts/04',
    ]);
    expect(partsOfRef(machine, 'foot')).toEqual(['foot-1', 'foot-2']);
    expect(partsOfRef(machine, 'body')).toEqual(['tube', 'end-left']);
    expect(findPart(machine, 'tube')?.unit).toBe('body');
    expect(machine.units.map((u) => u.id)).toEqual(['body', 'end-right', 'foot-1', 'foot-2', 'end-bolts']);
  });

  it('numbers a pattern clockwise from the top as seen from outside', () => {
    const result = parse(smallMachine);
    if (!result.ok) throw new Error('not read');
    const second = findPart(result.value.machine, 'end-bolts/02')!.pose.position_m;
    // Seen from the right, clockwise from the top comes first to the front (-z).
    expect(second[1]).toBeCloseTo(0, 9);
    expect(second[2]).toBeCloseTo(-0.1, 9);
  });

  it('lists every fault at once with file, line and path', () => {
    const broken = smallMachine
      .replace('inner_m: 0.08', 'inner_m: -0.08')
      .replace(
        'kind: end\n    moves_with: drum\n    side: vibrating\n    at_m: [0.2, 0, 0]',
        'kind: lid\n    moves_with: drum\n    side: vibrating\n    at_m: [0.2, 0, 0]',
      )
      .replace('density_kg_m3: 7850', 'density_kg_m3: heavy');
    const result = parse(broken);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.faults.length).toBe(2);
    const lineOf = (needle: string) => broken.split('\n').findIndex((l) => l.includes(needle)) + 1;
    for (const [needle, path] of [
      ['inner_m: -0.08', 'kinds.tube.params.stations[0].inner_m'],
      ['density_kg_m3: heavy', 'materials.steel.density_kg_m3'],
    ] as const) {
      const fault = result.faults.find((f) => f.path === path);
      expect(fault, path).toBeDefined();
      expect(fault?.file).toBe('small.yaml');
      expect(fault?.line).toBe(lineOf(needle));
    }
    // References are looked at once the shapes are right; then the unknown kind shows with its line.
    const second = parse(broken.replace('inner_m: -0.08', 'inner_m: 0.08').replace('heavy', '7850'));
    if (second.ok) throw new Error('an unknown kind was taken');
    expect(second.faults).toMatchObject([{ path: 'parts[2].kind', found: 'lid', line: lineOf('kind: lid') }]);
  });

  it('reports broken YAML, unknown keys, missing sections and doubled ids', () => {
    const bad = parse('schema_version: 1\nparts: [');
    expect(bad.ok).toBe(false);
    const unknown = parse(smallMachine.replace('  place: the bench', '  colour: red'));
    expect(unknown.ok ? [] : unknown.faults[0]).toMatchObject({
      expected: { key: 'fault.no-such-key' },
      found: 'colour',
    });
    const missing = parse('schema_version: 1');
    expect(missing.ok ? [] : missing.faults.map((f) => f.path)).toEqual([
      'machine',
      'operation',
      'kinds',
      'parts',
    ]);
    const doubled = parse(smallMachine.replace('id: end-right', 'id: end-left'));
    expect(doubled.ok ? [] : doubled.faults.map((f) => f.expected.key)).toContain('fault.unique-id');
  });

  it('merges several files and refuses a section that stands twice', () => {
    const [head, rest] = [
      smallMachine.slice(0, smallMachine.indexOf('kinds:')),
      'schema_version: 1\n' + smallMachine.slice(smallMachine.indexOf('kinds:')),
    ];
    expect(
      parseMachine([
        { name: 'a.yaml', text: head },
        { name: 'b.yaml', text: rest },
      ]).ok,
    ).toBe(true);
    const twice = parseMachine([
      { name: 'a.yaml', text: head },
      { name: 'b.yaml', text: rest },
      { name: 'c.yaml', text: head },
    ]);
    expect(twice.ok ? [] : twice.faults.map((f) => `${f.file}: ${f.path}`)).toContain('c.yaml: machine');
  });

  it('never throws on mutilated text', () => {
    for (let cut = 0; cut < smallMachine.length; cut += 37) {
      const result = parse(smallMachine.slice(0, cut) + smallMachine.slice(cut + 11));
      if (!result.ok) expect(result.faults.length).toBeGreaterThan(0);
    }
  });

  it('prints paths as people write them', () => {
    expect(printPath(['parts', 3, 'bore_m'])).toBe('parts[3].bore_m');
  });
});
