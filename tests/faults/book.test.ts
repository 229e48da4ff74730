/** Fault files: what is accepted, and that what is wrong is told with its line; the shipped book names real things. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { faultFileSchema, parseFaultBook } from '../../src/core/faults';
import en from '../../src/words/en';
import { machine } from '../models/alder-one';
import { faultFiles, plant } from './bench-of-alder-one';

const withText = (name: string, change: (text: string) => string) =>
  faultFiles.map((f) => (f.name === name ? { ...f, text: change(f.text) } : f));

describe('fault files', () => {
  it('hold every fault of the bench', () => {
    const ids = plant.book.faults.map((f) => f.id).join(' ');
    for (const word of [
      'shot-lost',
      'baffle-loose',
      'housing-cracked',
      'spin-up-fast',
      'bearing-worn-left',
      'clearance-class-wrong',
      'isolators-soft',
      'isolator-broken-left',
      'shims-too-few',
      'motor-weak',
      'motor-seal-leaking',
      'case-overfilled',
      'water-in-oil',
      'hoses-swapped',
      'relief-low',
      'spline-sheared',
      'hub-bolts-loose',
      'case-weld-cracked',
      'scraper-too-close',
      'drum-misaligned-left',
      'wheel-bearing-loose',
      'brake-dragging',
    ])
      expect(ids).toContain(word);
  });

  it('have words for every fault, measurement, outcome and way of measuring', () => {
    const keys = [
      ...plant.book.faults.flatMap((f) => [`fault-bench.fault.${f.id}`, `fault-bench.fault.${f.id}.does`]),
      ...plant.book.measurements.flatMap((m) => [
        `fault-bench.measure.${m.id}`,
        `fault-bench.measure.${m.id}.how`,
        ...(m.kind === 'look'
          ? m.outcomes.map((o) => `fault-bench.outcome.${m.id}.${o}`)
          : m.methods.map((w) => `fault-bench.method.${w.id}`)),
      ]),
    ];
    expect(keys.filter((key) => !Object.hasOwn(en, key))).toEqual([]);
  });

  it('have a published schema, the one that the validator gives (npm run schemas), named on top of each', () => {
    const kept = readFileSync(resolve(import.meta.dirname, '../../models/faults.schema.json'), 'utf8');
    const now = z.toJSONSchema(faultFileSchema, { io: 'input', unrepresentable: 'any' });
    expect(JSON.parse(kept)).toEqual({ title: 'Drumbench fault file', ...now });
    for (const { text } of faultFiles)
      expect(text.split('\n')[0]).toBe('# yaml-language-server: $schema=../../faults.schema.json');
  });

  it('tell file, line and path of what is wrong, all at once', () => {
    const broken = withText('faults/drum.yaml', (text) =>
      text
        .replace('parts: [hub-bolts]', 'parts: [no-such-part]')
        .replace('torn-rubber: 0.25', 'no-such-outcome: 0.25'),
    );
    const result = parseFaultBook(broken, machine);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    const text = broken.find((f) => f.name === 'faults/drum.yaml')!.text.split('\n');
    expect(result.faults).toHaveLength(2);
    for (const fault of result.faults) {
      expect(fault.file).toBe('faults/drum.yaml');
      expect(fault.line).toBeGreaterThan(1);
      const near = text.slice(fault.line! - 1, fault.line! + 3).join('\n');
      expect(near).toContain(fault.found);
    }
  });

  it('refuse a fault that stands twice, and levels that do not fit what is counted', () => {
    const twice = parseFaultBook([...faultFiles, { ...faultFiles[1]!, name: 'faults/again.yaml' }], machine);
    expect(twice.ok).toBe(false);
    const uneven = parseFaultBook(
      withText('faults/drum.yaml', (text) =>
        text.replace(
          'isolators_missing_left, mild: 1, severe: 3',
          'isolators_missing_left, mild: 1, severe: 4',
        ),
      ),
      machine,
    );
    expect(!uneven.ok && uneven.faults[0]!.expected.key).toBe('fault.whole-steps');
  });

  it('never break the reader, whatever is done to a file', () => {
    const file = faultFiles[2]!;
    fc.assert(
      fc.property(
        fc.nat(file.text.length),
        fc.nat(40),
        fc.oneof(
          fc.string({ maxLength: 8 }),
          fc.constantFrom('[', '}', ': ', '- ', '\n', '&a', '*a', '1e999'),
        ),
        (at, cut, put) => {
          const text = file.text.slice(0, at) + put + file.text.slice(at + cut);
          const result = parseFaultBook(
            [...faultFiles.filter((f) => f !== file), { ...file, text }],
            machine,
          );
          if (result.ok) return;
          expect(result.faults.length).toBeGreaterThan(0);
          for (const fault of result.faults) expect(fault.expected.key).not.toBe('');
        },
      ),
      { seed: 6, numRuns: 40 },
    );
  });
});
