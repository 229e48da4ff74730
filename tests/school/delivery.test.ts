/**
 * Statements to a learning record store: each there exactly once, whatever gets lost on the way. The store is a real
 * HTTP server that validates by the specification's rules.
 */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { exportHistory, type HistoryEntry } from '../../src/core/jobs';
import { deliveryOf, waitBefore_ms } from '../../src/core/records';
import { sendStatements } from '../../src/edge/school';
import {
  ANSWER_RECORDS,
  createAppStore,
  createDeliveryCommands,
  DELIVERY_NOTE,
  type DeliverySettings,
  JOB_HISTORY,
  LESSON_RECORDS,
  PRACTICE_RECORDS,
  QUEUE_RECORDS,
  type RecordPort,
  REFUSED_RECORDS,
  SENT_RECORDS,
  TEST_RECORDS,
  visitKeep,
  visitRecords,
} from '../../src/store';
import { course } from '../panels/learn-fixture';
import { testStore, type TestStore } from './test-store';

let server: TestStore;
beforeEach(async () => {
  server = await testStore();
});
afterEach(async () => {
  vi.useRealTimers();
  await server.close();
});

const settings = (more: Partial<DeliverySettings> = {}): DeliverySettings => ({
  endpoint: `${server.url}xapi/`,
  user: 'yard',
  secret: 'geheim-ß',
  keepSecret: false,
  homePage: 'https://school.example',
  name: 'learner-7',
  mastery: 0.8,
  ...more,
});

const job = (id: string, more: Partial<HistoryEntry>): string =>
  exportHistory([
    {
      schema_version: 1,
      machineId: 'small',
      jobId: 'grease',
      id,
      at_ms: 1_790_000_100_000,
      complete: true,
      result: 'passed',
      measured: { high: null, low: null },
      progress: {
        id,
        machineId: 'small',
        jobId: 'grease',
        started_ms: 1,
        changed_ms: 2,
        done: [],
        values: {},
        notes: {},
        signed: {},
      },
      ...more,
    },
  ]);

async function work(records: RecordPort, answers = 120): Promise<void> {
  for (let i = 0; i < answers; i++)
    await records.write(
      ANSWER_RECORDS,
      `${i}`,
      JSON.stringify({
        item: `q/${i}`,
        answer: { type: 'choice', ids: ['a'] },
        certainty: 2,
        right: i % 2 === 0,
        mark: i % 2 === 0 ? 2 : -2,
        mode: 'test',
        at_ms: 1_790_000_000_000 + i,
      }),
    );
  await records.write(
    LESSON_RECORDS,
    'small',
    JSON.stringify({
      lesson: 'small',
      done: ['find-it', 'say-first', 'set-it'],
      tasks: [],
      at: null,
      day: 20_000,
    }),
  );
  for (const [key, right] of [
    ['a', 9],
    ['b', 5],
  ] as const)
    await records.write(
      TEST_RECORDS,
      key,
      JSON.stringify({
        version: 1,
        topics: ['small'],
        count: 10,
        right,
        mark: 3,
        best: 30,
        seed: 1,
        began_ms: 1_790_000_000_000,
        at_ms: 1_790_000_061_500,
      }),
    );
  const run = {
    version: 1,
    id: 'r',
    machineId: 'small',
    task: { mode: 'take-apart', aid: 'free', goal: { kind: 'unit', unitId: 'tube' } },
    started_ms: 1,
    saved_ms: 1_790_000_000_000,
    moves: 3,
    leastMoves: 3,
    elapsed_s: 61,
    run: '',
  };
  await records.write(
    PRACTICE_RECORDS,
    'r',
    JSON.stringify({
      ...run,
      score: { wrong: 1, hints: 0, extra: 0, fiveMinutes: 0, lost: 3, moves: 3, leastMoves: 3 },
    }),
  );
  await records.write(PRACTICE_RECORDS, 's', JSON.stringify({ ...run, id: 's', score: null }));
}
/** Two for the lesson, two for each test, one for the run that was finished. */
const EVENTS = 2 + 4 + 1;

function app(records: RecordPort, keep = visitKeep()) {
  const store = createAppStore();
  const recordStore = { send: sendStatements };
  return {
    store,
    keep,
    records,
    commands: createDeliveryCommands(store, { records, keep, recordStore, course }),
  };
}
const sizes = async (records: RecordPort) =>
  Promise.all(
    [QUEUE_RECORDS, SENT_RECORDS, REFUSED_RECORDS].map(async (name) => (await records.list(name)).length),
  );
const ids = () => server.statements.map((each) => each.id);

describe('delivery', () => {
  it('sends every answer and event once, in batches, and nothing the second time', async () => {
    const own = app(visitRecords(() => {}));
    await work(own.records);
    await own.commands.use(settings());
    expect(server.faults).toEqual([]);
    expect(own.store.getState().delivery).toMatchObject({
      phase: 'idle',
      trouble: null,
      queued: 0,
      sent: 120 + EVENTS,
    });
    expect(new Set(ids()).size).toBe(120 + EVENTS);
    expect(server.requests).toHaveLength(3);
    await own.commands.deliver();
    expect(server.requests).toHaveLength(3);
    const verbs = server.statements.map((each) => each.verb.id.split('/').at(-1)!);
    const counted = Object.fromEntries(
      [...new Set(verbs)].map((verb) => [verb, verbs.filter((each) => each === verb).length]),
    );
    expect(counted).toEqual({ answered: 120, attempted: 3, completed: 2, passed: 1, failed: 1 });
    expect(server.statements.find((each) => each.verb.id.endsWith('passed'))).toMatchObject({
      object: { id: 'tag:drumbench,2026:test/small' },
      result: { success: true, score: { scaled: 0.9, raw: 9, min: 0, max: 10 }, duration: 'PT61.5S' },
      context: { platform: 'Drumbench' },
    });
  });

  it('sends a job sheet that was filed, with what it came to', async () => {
    const own = app(visitRecords(() => {}));
    await own.records.write(JOB_HISTORY, 'j1', job('j1', {}));
    await own.commands.use(settings());
    expect(server.statements).toHaveLength(1);
    expect(server.statements[0]).toMatchObject({
      object: { id: 'tag:drumbench,2026:job/small/grease' },
      result: { success: true },
    });
  });

  it('loses nothing and doubles nothing when replies are lost, connections dropped and the store is busy', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const own = app(visitRecords(() => {}));
    await work(own.records);
    server.mishaps.push('lose-reply', 'drop', 503, 429);
    await own.commands.use(settings());
    for (let i = 0; i < 3; i++) {
      expect(own.store.getState().delivery).toMatchObject({ phase: 'waiting' });
      await own.commands.deliver();
    }
    await own.commands.deliver();
    expect(own.store.getState().delivery).toMatchObject({ phase: 'idle', queued: 0, trouble: null });
    expect(ids()).toHaveLength(120 + EVENTS);
    expect(new Set(ids()).size).toBe(120 + EVENTS);
    // The first batch came twice, since its reply was lost; the store kept one of each.
    expect(server.repeats).toBe(50);
  });

  it('tries again by itself, later each time', async () => {
    const own = app(visitRecords(() => {}));
    await work(own.records, 1);
    server.mishaps.push('drop');
    const planned: number[] = [];
    const real = globalThis.setTimeout;
    const spy = vi.spyOn(globalThis, 'setTimeout').mockImplementation(((act: () => void, wait: number) => {
      if (wait !== waitBefore_ms(1)) return real(act, wait);
      planned.push(wait);
      return real(act, 1);
    }) as typeof setTimeout);
    await own.commands.use(settings());
    await vi.waitFor(() => expect(own.store.getState().delivery.phase).toBe('idle'));
    spy.mockRestore();
    expect(planned).toEqual([5000]);
    expect(ids()).toHaveLength(1 + EVENTS);
    expect([1, 2, 3, 40].map(waitBefore_ms)).toEqual([5000, 10_000, 20_000, 600_000]);
  });

  it('goes on after the page was closed in the middle, with the ids of before', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const first = app(visitRecords(() => {}));
    await work(first.records);
    server.mishaps.push('lose-reply');
    await first.commands.use(settings());
    expect(await sizes(first.records)).toEqual([120 + EVENTS, 0, 0]);
    const queued = (await first.records.list(QUEUE_RECORDS)).map(({ key }) => key).sort();
    // Another page over the same records; the secret was not kept.
    const second = app(first.records, first.keep);
    await second.commands.load();
    expect(second.store.getState().delivery.settings).toMatchObject({ user: 'yard', secret: '' });
    await second.commands.deliver();
    expect(second.store.getState().delivery.trouble?.key).toBe('delivery.trouble.no-secret');
    await second.commands.use(settings());
    expect(ids().sort()).toEqual(queued);
    expect(await sizes(first.records)).toEqual([0, 120 + EVENTS, 0]);
  });

  it('counts a conflict as delivered, and lays aside what the store will never take', async () => {
    const own = app(visitRecords(() => {}));
    await work(own.records, 3);
    await own.commands.use(settings());
    const before = ids().length;
    // The note of what was sent is lost, and one statement was changed since: the store has it under its id already.
    const [known] = await own.records.list(SENT_RECORDS);
    const changed = {
      ...server.statements.find((each) => each.id === known!.key),
      verb: { id: 'https://x.example/other' },
    };
    await own.records.write(QUEUE_RECORDS, known!.key, JSON.stringify(changed));
    await own.records.write(QUEUE_RECORDS, 'bad', JSON.stringify({ id: 'no-uuid', actor: {} }));
    await own.commands.deliver();
    expect(await sizes(own.records)).toEqual([0, 3 + EVENTS, 1]);
    expect(ids()).toHaveLength(before);
    expect(JSON.parse((await own.records.list(REFUSED_RECORDS))[0]!.text)).toMatchObject({ status: 400 });
  });

  it.each([
    ['a wrong secret', { secret: 'other' }, 'delivery.trouble.not-let-in'],
    ['a wrong address', { endpoint: 'elsewhere' }, 'delivery.trouble.no-store'],
    ['nobody there', { endpoint: 'http://127.0.0.1:9/xapi' }, 'delivery.trouble.unreachable'],
  ])('says in words what is wrong: %s', async (_, more: { secret?: string; endpoint?: string }, key) => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const own = app(visitRecords(() => {}));
    await work(own.records, 1);
    const wrong = settings(more);
    await own.commands.use(
      more.endpoint === 'elsewhere' ? { ...wrong, endpoint: `${server.url}elsewhere` } : wrong,
    );
    expect(own.store.getState().delivery.trouble?.key).toBe(key);
    expect(await sizes(own.records)).toEqual([1 + EVENTS, 0, 0]);
  });

  it('keeps the secret only where asked, never among the records that a file carries', async () => {
    const own = app(visitRecords(() => {}));
    await own.commands.use(settings());
    expect(own.keep.read(DELIVERY_NOTE)).not.toContain('geheim');
    await own.commands.use(settings({ keepSecret: true }));
    expect(own.keep.read(DELIVERY_NOTE)).toContain('geheim');
    await work(own.records, 1);
    await own.commands.deliver();
    expect(JSON.stringify((await own.records.all()).records)).not.toContain('geheim');
    own.commands.stop();
    expect(own.keep.read(DELIVERY_NOTE)).toBe('');
    expect(own.store.getState().delivery.settings).toBeNull();
  });
});

it('answers of a store, as the specification means them', () => {
  expect([200, 204, 409, 401, 403, 404, 413, 429, 500, 503, 400, null].map(deliveryOf)).toEqual([
    'taken',
    'taken',
    'taken',
    'not-let-in',
    'not-let-in',
    'no-store',
    'too-large',
    'busy',
    'busy',
    'busy',
    'refused',
    'unreachable',
  ]);
});
