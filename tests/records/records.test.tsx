// @vitest-environment jsdom
/** One file out and in, whatever happens to it on the way; what is kept, seen and erased. */
import { cleanup, fireEvent } from '@testing-library/react';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { archiveText, type KeptRecord, readArchive, summarise } from '../../src/core/records';
import { createRecordsCommands } from '../../src/store';
import RecordsPlace from '../../src/view/panels/records/RecordsPlace';
import { memoryRecords, show } from '../panels/fixture';

afterEach(cleanup);

const RECORDS: readonly KeptRecord[] = Array.from({ length: 12 }, (_, i) => ({
  collection: i % 2 === 0 ? 'answers' : 'lessons',
  key: `k${String(i).padStart(2, '0')}`,
  text: JSON.stringify({ n: i, words: 'ü “quoted”\nline' }),
}));
const sorted = [...RECORDS].sort((a, b) => (a.collection + a.key < b.collection + b.key ? -1 : 1));
const whole = archiveText(RECORDS, 1_700_000_000_000);

describe('archive', () => {
  it('gives back what went in', () => {
    const read = readArchive(whole);
    expect(read.ok && read.value).toEqual({ records: sorted, faults: [] });
  });
  it('cut anywhere gives back every record before the cut, and says that its end is missing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: whole.length - 4 }), (cut) => {
        const text = whole.slice(0, cut);
        const read = readArchive(text);
        const lines = text.split('\n').length - 1;
        if (lines === 0) {
          expect(read.ok).toBe(false);
          return;
        }
        if (!read.ok) throw new Error('not read');
        const before = lines - 1;
        // A line that lacks its comma alone is whole.
        expect([before, before + 1]).toContain(read.value.records.length);
        expect(read.value.records).toEqual(sorted.slice(0, read.value.records.length));
        expect(read.value.faults.length).toBeGreaterThan(0);
      }),
      { numRuns: 60, seed: 9 },
    );
  });
  it('leaves out a record that was changed, and names it', () => {
    const read = readArchive(whole.replace('{\\"n\\":4', '{\\"n\\":5'));
    if (!read.ok) throw new Error('not read');
    expect(read.value.records).toHaveLength(11);
    expect(read.value.faults[0]).toMatchObject({ expected: { key: 'records.expected.whole' } });
  });
  it('takes nothing else and nothing newer', () => {
    for (const text of [
      '',
      '[]',
      '{"format":"other"}',
      'PK\u0003\u0004',
      whole.replace('"schema_version":1', '"schema_version":2'),
    ])
      expect(readArchive(text).ok).toBe(false);
  });
});

const answer = (right: boolean, certainty: number, item = 'q') =>
  JSON.stringify({ item, answer: { type: 'choice', ids: ['a'] }, certainty, right, mode: 'test', at_ms: 5 });

it('summary counts answers, and does not guess at what it cannot read', () => {
  const left = JSON.stringify({
    item: 'q',
    answer: null,
    certainty: 1,
    right: false,
    mode: 'test',
    at_ms: 9,
  });
  expect(summarise([answer(true, 2), answer(false, 3, 'r'), left, '{"item":'])).toEqual({
    answered: 2,
    right: 1,
    sureAndWrong: 1,
    items: 2,
    first_ms: 5,
    last_ms: 5,
    unreadable: 1,
  });
});

describe('the place', () => {
  it('shows what is kept, takes a file in, keeps what is there unless told otherwise, and erases', async () => {
    const port = memoryRecords();
    await port.write('answers', '1', answer(false, 3));
    await port.write('lessons', 'k01', 'mine');
    const shown = await show(<RecordsPlace />, {}, { records: port });
    await shown.findByTestId('answered');
    expect(shown.container.querySelector('[data-collection="answers"]')!.textContent).toContain(
      'Answers to questions',
    );
    const commands = createRecordsCommands(shown.store, {
      records: port,
      keep: { read: () => null, write: () => true },
    } as never);
    await commands.take('f.json', whole, false);
    expect(shown.store.getState().records.imported).toMatchObject({
      taken: 11,
      known: 1,
      refused: 0,
      faults: [],
    });
    expect(await port.read('lessons', 'k01')).toBe('mine');
    await commands.take('f.json', whole, true);
    expect(await port.read('lessons', 'k01')).toBe(RECORDS[1]!.text);
    const back = readArchive(await commands.exported());
    expect(back.ok && back.value.records).toHaveLength(13);
    await commands.take('broken.json', 'nothing', false);
    expect((await shown.findByText(/broken\.json/)).textContent).toContain('1 faults');
    fireEvent.click(shown.getByText('Erase everything'));
    expect(await port.read('answers', '1')).not.toBeNull();
    shown.getByText('Erase for good');
    await commands.eraseAll();
    expect((await port.all()).records).toEqual([]);
  });
});
