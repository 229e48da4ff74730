// @vitest-environment jsdom
/** One file out and in, whatever happens to it on the way; what is kept, seen and erased. */
import { cleanup, fireEvent } from '@testing-library/react';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { archiveText, type KeptRecord, readArchive, statementsOf, summarise } from '../../src/core/records';
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
  JSON.stringify({
    item,
    answer: { type: 'choice', ids: ['a'] },
    certainty,
    right,
    mark: right ? certainty : 0,
    mode: 'test',
    at_ms: 5,
  });

it('summary counts answers, and does not guess at what it cannot read', () => {
  const left = JSON.stringify({
    item: 'q',
    answer: null,
    certainty: 1,
    right: false,
    mark: 0,
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

/**
 * Rules of the Experience API 1.0.3, part 2: ids are UUIDs (2.4.1), verbs and activities are absolute IRIs with language
 * maps (2.4.3, 2.4.4), an account has a home page and a name (2.4.2.4), scaled scores lie within -1 and 1 and raw ones
 * within min and max (2.4.5.1), times are ISO 8601 (4.5), nothing is null (2.2).
 */
describe('statements', () => {
  const kinds = [
    { type: 'choice', ids: ['a', 'b'] },
    { type: 'order', ids: ['b', 'a'] },
    { type: 'number', si: 0.25 },
    { type: 'part', partId: 'hub/01' },
    { type: 'match', pairs: { l: 'a', m: 'b' } },
  ];
  const kept = kinds.flatMap((given, i) =>
    [true, false].map((right, k): KeptRecord => ({
      collection: 'answers',
      key: `${i}-${k}`,
      text: JSON.stringify({
        item: `gen/force number/${i}`,
        answer: given,
        certainty: 3,
        right,
        mark: right ? 3 : -6,
        mode: 'test',
        at_ms: 1_700_000_000_000 + i,
      }),
    })),
  );
  const actor = { homePage: 'https://school.example', name: 'learner-7' };
  const statements = statementsOf([...kept, { collection: 'answers', key: 'x', text: '{' }], actor, 'en');

  it('keep the rules of the specification', () => {
    expect(statements).toHaveLength(kept.length);
    for (const { id, verb, object, result, timestamp, actor: who } of statements) {
      expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
      for (const iri of [verb.id, object.id, object.definition.type, ...Object.keys(result.extensions)])
        expect(iri).toMatch(/^[a-z]+:\S+$/);
      expect(Object.keys(verb.display)).toEqual(['en']);
      expect(who.account).toEqual(actor);
      expect(Math.abs(result.score.scaled)).toBeLessThanOrEqual(1);
      expect(result.score.raw).toBeGreaterThanOrEqual(result.score.min);
      expect(result.score.raw).toBeLessThanOrEqual(result.score.max);
      expect(new Date(timestamp).toISOString()).toBe(timestamp);
    }
    expect(JSON.stringify(statements)).not.toContain('null');
    expect(statements.map((each) => each.result.response).filter((_, i) => i % 2 === 0)).toEqual([
      'a[,]b',
      'b[,]a',
      '0.25',
      'hub/01',
      'l[.]a[,]m[.]b',
    ]);
  });
  it('have an id each, the same whenever they are made, so that a store keeps each once', () => {
    expect(new Set(statements.map((each) => each.id)).size).toBe(statements.length);
    expect(statementsOf(kept, actor, 'en')).toEqual(statements);
    expect(statementsOf(kept, { ...actor, name: 'other' }, 'en')[0]!.id).not.toBe(statements[0]!.id);
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
