/** What kept tests, practice runs and job sheets come to, and as which statements they are told. */
import { describe, expect, it } from 'vitest';
import { exportHistory, type HistoryEntry } from '../../src/core/jobs';
import { eventStatements, summariseWork } from '../../src/core/records';

const test = (right: number, at_ms: number, count = 10): string =>
  JSON.stringify({
    version: 1,
    topics: ['a'],
    count,
    right,
    mark: 0,
    best: 30,
    began_ms: at_ms - 60_000,
    at_ms,
  });
const practice = (lost: number | null, elapsed_s: number): string =>
  JSON.stringify({
    version: 1,
    id: 'x',
    machineId: 'm',
    task: { mode: 'put-together', aid: 'exam', goal: { kind: 'all' } },
    started_ms: 0,
    saved_ms: 5,
    elapsed_s,
    score: lost === null ? null : { lost, wrong: 0, hints: 0, extra: 0 },
    run: '',
  });
const job = (complete: boolean, result: HistoryEntry['result']): string =>
  exportHistory([
    {
      schema_version: 1,
      machineId: 'm',
      jobId: 'grease',
      id: 'j',
      at_ms: 7,
      complete,
      result,
      measured: { high: null, low: null },
      progress: {
        machineId: 'm',
        jobId: 'grease',
        id: 'j',
        started_ms: 1,
        changed_ms: 2,
        done: [],
        values: {},
        notes: {},
        signed: {},
      },
    },
  ]);

describe('summary of work', () => {
  it('counts tests, runs and sheets, and says how many it could not read', () => {
    expect(
      summariseWork({
        tests: [test(9, 200), test(4, 300), test(7, 100), '{"version":1'],
        practice: [practice(5, 100), practice(2, 50), practice(null, 30), '{}'],
        jobs: ['{"format":"sheet"}'],
        jobHistory: [job(true, 'passed'), job(true, 'failed'), job(true, 'open'), job(false, 'open'), 'x'],
      }),
    ).toEqual({
      tests: { taken: 3, best: 0.9, last: 0.4 },
      practice: { finished: 2, open: 1, fewestLost: 2, time_s: 180 },
      jobs: { open: 1, finished: 3, endedEarly: 1, passed: 1, failed: 1 },
      unreadable: 3,
    });
  });
  it('of nothing is nothing', () => {
    expect(summariseWork({ tests: [], practice: [], jobs: [], jobHistory: [] })).toEqual({
      tests: { taken: 0, best: null, last: null },
      practice: { finished: 0, open: 0, fewestLost: null, time_s: 0 },
      jobs: { open: 0, finished: 0, endedEarly: 0, passed: 0, failed: 0 },
      unreadable: 0,
    });
  });
});

describe('statements of what happened', () => {
  const collections = { lessons: 'lessons', tests: 'tests', practice: 'practice', jobs: 'job-history' };
  const facts = {
    actor: { homePage: 'https://school.example', name: 'p' },
    language: 'en',
    mastery: 0.7,
    steps: { a: ['one', 'two'] },
  };
  const told = (collection: string, text: string) =>
    eventStatements([{ collection, key: 'k', text }], collections, facts).map(
      ({ verb }) => verb.display['en'],
    );
  it('a lesson is attempted, then completed; a test passes at the mark itself; open runs and sheets say nothing', () => {
    const lesson = (done: string[]) => JSON.stringify({ lesson: 'a', done, tasks: [], at: null, day: 3 });
    expect(told('lessons', lesson(['one']))).toEqual(['attempted']);
    expect(told('lessons', lesson(['two', 'one']))).toEqual(['attempted', 'completed']);
    expect(told('tests', test(7, 9e5))).toEqual(['attempted', 'passed']);
    expect(told('tests', test(6, 9e5))).toEqual(['attempted', 'failed']);
    expect(told('tests', test(0, 9e5, 0))).toEqual([]);
    expect(told('practice', practice(null, 1))).toEqual([]);
    expect(told('practice', practice(0, 1))).toEqual(['completed']);
    expect(told('job-history', job(false, 'open'))).toEqual([]);
    expect(told('job-history', job(true, 'open'))).toEqual(['completed']);
    expect(told('other', '{}')).toEqual([]);
    for (const collection of Object.values(collections)) expect(told(collection, '{"damaged"')).toEqual([]);
  });
  it('keep their ids while a record grows', () => {
    const of = (done: string[]) =>
      eventStatements(
        [
          {
            collection: 'lessons',
            key: 'a',
            text: JSON.stringify({ lesson: 'a', done, tasks: [], at: null, day: 3 + done.length }),
          },
        ],
        collections,
        facts,
      )[0]!.id;
    expect(of([])).toBe(of(['one', 'two']));
  });
});
