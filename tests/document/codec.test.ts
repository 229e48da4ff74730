import { beforeAll, describe, expect, it } from 'vitest';
import {
  decodeDocument,
  decodeGraph,
  documentGraph,
  encodeDocument,
  encodeGraph,
  graphSource,
  type MachineDocument,
  prepareMachine,
} from '../../src/core/document';
import { planOnGraph } from '../../src/core/assembly';
import { loadSolidKernel } from '../../src/core/geometry';
import { parseMachine } from '../../src/core/machine';
import { smallMachine } from '../machine/small-machine';

let document: MachineDocument;
beforeAll(async () => {
  // Bolts as plain pins in their holes, feet resting: a sound machine.
  const text = smallMachine
    .replace(
      'inner_m: 0.08, outer_m: 0.12 }',
      'inner_m: 0.08, outer_m: 0.12 }\n      holes:\n        - { diameter_m: 0.012, count: 4, radius_m: 0.1, from_x_m: 0.17, to_x_m: 0.2 }',
    )
    .concat('  - { type: rests, part: foot, on: tube }\n');
  const parsed = parseMachine([{ name: 'small.yaml', text }]);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const prepared = prepareMachine(parsed.value, 'test', await loadSolidKernel());
  if (!prepared.ok) throw new Error(JSON.stringify(prepared.faults));
  document = prepared.value;
});

describe('prepared documents', () => {
  it('hold solids, masses and an order', () => {
    const tube = document.masses['tube']!;
    const expected = 7850 * (Math.PI * 0.4 * (0.12 ** 2 - 0.08 ** 2) - 4 * Math.PI * 0.006 ** 2 * 0.03);
    expect(Math.abs(tube.mass_kg / expected - 1)).toBeLessThan(1e-5);
    expect(document.teardown.steps.map((s) => s.unitIds[0])).toContain('end-bolts');
    expect(document.explode.partCount).toBe(document.machine.parts.length);
  });

  it('come back from their bytes as they were', () => {
    const bytes = encodeDocument(document);
    expect(decodeDocument(bytes.buffer)).toEqual(document);
  });

  it('refuse bytes that are something else, of another version, or cut short', () => {
    const bytes = encodeDocument(document);
    expect(() => decodeDocument(new ArrayBuffer(4))).toThrow(/a prepared machine/);
    const other = bytes.slice();
    new DataView(other.buffer).setUint32(4, 99, true);
    expect(() => decodeDocument(other.buffer)).toThrow(/format, got 99/);
    expect(() => decodeDocument(bytes.slice(0, bytes.length >> 1).buffer)).toThrow();
  });
});

describe('the blocking graph of a document', () => {
  it('is built from what a document keeps, with progress that rises to the end', () => {
    const shares: number[] = [];
    const graph = documentGraph(graphSource(document), (share) => shares.push(share));
    expect(graph.bodies.map((b) => b.id)).toContain('end-bolts');
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    // One telling a body at least, so that a bar moves.
    expect(new Set(shares).size).toBeGreaterThan(graph.bodies.length);
  });

  it('comes back from its bytes as it was, and only for the machine it was made of', () => {
    const graph = documentGraph(graphSource(document));
    const bytes = encodeGraph(graph, document.hash);
    const back = decodeGraph(bytes.buffer, document.hash)!;
    expect(back.gaps_m).toEqual(graph.gaps_m);
    // JSON has no negative zero, which no reader tells from zero; all else is the same to the last bit.
    expect(encodeGraph(back, document.hash)).toEqual(bytes);
    expect(planOnGraph(document.machine, back).steps.map((s) => s.unitIds)).toEqual(
      document.teardown.steps.map((s) => s.unitIds),
    );
    expect(decodeGraph(bytes.buffer, 'another')).toBeNull();
    expect(() => decodeGraph(encodeDocument(document).buffer, document.hash)).toThrow(/a blocking graph/);
  });
});
