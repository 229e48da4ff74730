/** The journal and the class on disk: whatever was promised is there, whatever happened to the end of the file. */
import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rightAnswer } from '../../src/core/quiz';
import { openClass } from '../../src/edge/host/class-store';
import { deleteClass, takeFolder, usedBy } from '../../src/edge/host/folder';
import { journalLine, openJournal, readJournal } from '../../src/edge/host/journal';
import { secretsOf } from '../../src/edge/host/secrets';
import { answer, ITEMS, join as joinEvent, move, questionsOf, session } from '../classroom/items';
import { temporaryFolder } from './client';

const fails = (reason: unknown): never => {
  throw reason;
};
const RECORDS = Array.from({ length: 20 }, (_, i) => ({
  n: i,
  text: i % 3 === 0 ? 'line\nbreak “ü”' : 'plain',
}));
const whole = RECORDS.map((record, i) => journalLine(i + 1, record)).join('');

describe('journal', () => {
  it('gives back what was appended, after any number of openings', async () => {
    const path = join(temporaryFolder(), 'j.log');
    for (const part of [RECORDS.slice(0, 7), RECORDS.slice(7)]) {
      const journal = await openJournal(path, readJournal(path));
      await Promise.all(part.map((record) => journal.append(record)));
      await journal.close();
    }
    expect(readJournal(path)).toMatchObject({ records: RECORDS, damaged: 0, torn: false });
    expect(readFileSync(path, 'utf8')).toBe(whole);
  });
  it('cut anywhere keeps every whole line and can be written on', async () => {
    const path = join(temporaryFolder(), 'j.log');
    const bytes = Buffer.from(whole);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: bytes.length }), async (cut) => {
        writeFileSync(path, bytes.subarray(0, cut));
        const found = readJournal(path);
        const lines = bytes.subarray(0, cut).toString().split('\n').length - 1;
        expect(found).toMatchObject({ records: RECORDS.slice(0, lines), damaged: 0 });
        const journal = await openJournal(path, found);
        await journal.append('more');
        await journal.close();
        expect(readJournal(path)).toMatchObject({
          records: [...RECORDS.slice(0, lines), 'more'],
          torn: false,
        });
      }),
      { numRuns: 25, seed: 3 },
    );
  });
  it('leaves out a changed, doubled or lost line and says so', () => {
    const path = join(temporaryFolder(), 'j.log');
    const lines = whole.trimEnd().split('\n');
    writeFileSync(
      path,
      lines.map((line, i) => (i === 4 ? line.replace('plain', 'plaim') : line)).join('\n') + '\n',
    );
    expect(readJournal(path)).toMatchObject({ damaged: 1 });
    expect(readJournal(path).records).toEqual(RECORDS.filter((_, i) => i !== 4));
    writeFileSync(path, [...lines.slice(0, 5), lines[2], ...lines.slice(5)].join('\n') + '\n');
    expect(readJournal(path)).toMatchObject({ records: RECORDS, damaged: 1 });
    writeFileSync(path, [...lines.slice(0, 5), ...lines.slice(6)].join('\n') + '\n');
    expect(readJournal(path)).toMatchObject({ records: RECORDS.filter((_, i) => i !== 5), damaged: 1 });
  });
});

describe('class on disk', () => {
  const right = (q: number) => rightAnswer(questionsOf(ITEMS)[q]!.item);
  it('is the same when it is opened again, in the middle of a question too', async () => {
    const folder = temporaryFolder();
    const store = await openClass(folder, fails);
    for (const event of [joinEvent(1), joinEvent(2), session(), move('open'), answer(1, 0, right(0))])
      expect(await store.put(event)).toEqual({ verdict: 'take' });
    expect(await store.put(answer(1, 0, right(0)))).toEqual({ verdict: 'repeat' });
    const before = store.state();
    await store.close();
    appendFileSync(join(folder, 'journal-000001.log'), '6 0123 {"event":{"type":"mo');
    const again = await openClass(folder, fails);
    expect(again.state()).toEqual(before);
    expect(again).toMatchObject({ torn: true, lost: 0 });
    expect(await again.put(answer(1, 0, right(0)))).toEqual({ verdict: 'repeat' });
    expect(await again.put(answer(2, 0, right(0)))).toEqual({ verdict: 'take' });
    await again.close();
  });
  it('keeps each session in a file of its own, with answers that come while the file changes', async () => {
    const folder = temporaryFolder();
    const store = await openClass(folder, fails);
    for (const event of [joinEvent(1), session(), move('open'), answer(1, 0, right(0)), move('end')])
      await store.put(event);
    const results = await Promise.all([
      store.put({ ...(session() as Extract<ReturnType<typeof session>, { type: 'session' }>), id: 's2' }),
      store.put(joinEvent(2)),
      store.put(joinEvent(3)),
    ]);
    expect(results.map((each) => each.verdict)).toEqual(['take', 'take', 'take']);
    expect(store.past().map((each) => each.id)).toEqual(['s1']);
    await store.close();
    const again = await openClass(folder, fails);
    expect(again.state()).toEqual(store.state());
    expect(Object.keys(again.state().learners)).toHaveLength(3);
    expect(again.past().map((each) => each.id)).toEqual(['s1']);
    expect(Object.keys(again.pastState('s1')!.session!.asked[0]!.answers)).toEqual(['1']);
    await again.close();
  });
  it('keeps its code and secret, knows its user, and is deleted without touching other files', async () => {
    const folder = temporaryFolder();
    const { code, secret } = secretsOf(folder);
    expect(secretsOf(folder)).toEqual({ code, secret });
    expect(code).toMatch(/^[A-HJ-NP-Z2-9]{6}$/);
    expect(secret.length).toBeGreaterThanOrEqual(32);
    const store = await openClass(folder, fails);
    await store.put(joinEvent(1));
    await store.close();
    takeFolder(folder);
    expect(usedBy(folder)).toBeNull();
    writeFileSync(join(folder, 'running.pid'), String(process.ppid));
    expect(usedBy(folder)).toBe(process.ppid);
    writeFileSync(join(folder, 'notes.txt'), 'mine');
    expect(deleteClass(folder)).toBe(3);
    expect(readFileSync(join(folder, 'notes.txt'), 'utf8')).toBe('mine');
  });
});
