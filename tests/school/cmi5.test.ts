/**
 * A launch by cmi5 against a store that gives its token once and validates statements: order, categories, mastery,
 * session id, what is said only once in a registration.
 */
import { randomUUID } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { rightAnswer } from '../../src/core/quiz';
import { readCmi5Launch, schoolAnswer, type SchoolReport, type SchoolTrouble } from '../../src/core/records';
import { cmi5Link } from '../../src/edge/school';
import { ITEMS } from '../classroom/items';
import { testStore, type TestStore } from './test-store';

const ACTOR = {
  objectType: 'Agent',
  account: { homePage: 'https://school.example', name: 'p7' },
  name: 'Pat Roe',
};
const UNIT = 'https://school.example/units/17';
const REGISTRATION = '7f7a9a20-92aa-4f0c-8d9f-5b1f3c2a1e11';
const SESSION = 'https://w3id.org/xapi/cmi5/context/extensions/sessionid';
const MASTERY = 'https://w3id.org/xapi/cmi5/context/extensions/masteryscore';

let server: TestStore;
beforeEach(async () => {
  server = await testStore();
});
afterEach(() => server.close());

/** As the system writes it before a launch. */
function prepare(more: object = {}): void {
  const key = [
    `activityId=${UNIT}`,
    `agent=${JSON.stringify(ACTOR)}`,
    `registration=${REGISTRATION}`,
    'stateId=LMS.LaunchData',
  ]
    .sort()
    .join('&');
  server.state.set(
    key,
    JSON.stringify({
      contextTemplate: {
        contextActivities: { grouping: [{ id: 'https://drumbench.invalid/course/x/lesson' }] },
        extensions: { [SESSION]: 'session-1' },
      },
      launchMode: 'Normal',
      masteryScore: 0.75,
      moveOn: 'CompletedAndPassed',
      ...more,
    }),
  );
}
const address = (): string =>
  `?${new URLSearchParams({ endpoint: `${server.url}xapi/`, fetch: `${server.url}fetch`, actor: JSON.stringify(ACTOR), registration: REGISTRATION, activityId: UNIT }).toString()}`;

function launched() {
  const troubles: (SchoolTrouble | null)[] = [];
  const link = cmi5Link(readCmi5Launch(address()), {
    hear: (each) => troubles.push(each),
    now: () => Date.now(),
    newId: randomUUID,
  });
  return { link, troubles };
}
const REPORT: SchoolReport = {
  completed: false,
  passed: null,
  score: null,
  attempts: 0,
  progress: 0.2,
  place: 'a',
  resume: 'r1',
  session_s: 12.5,
};
const verbs = (): string[] => server.statements.map((each) => each.verb.id.split('/').at(-1)!);
const settled = (count: number) =>
  vi.waitFor(() => expect(server.statements).toHaveLength(count), { timeout: 3000 });
const contextOf = (i: number) =>
  server.statements[i]!['context'] as {
    registration: string;
    extensions: Record<string, unknown>;
    contextActivities: { grouping: { id: string }[]; category?: { id: string }[] };
  };
const categories = (i: number): string[] =>
  (contextOf(i).contextActivities.category ?? []).map(({ id }) => id.split('/').at(-1)!);

describe('cmi5', () => {
  it('fetches the token, says everything in its order, and each thing once', async () => {
    prepare();
    const { link, troubles } = launched();
    expect(await link.open()).toMatchObject({ mastery: 0.75, judged: true, learner: 'Pat Roe', resume: '' });
    expect(server.requests.slice(0, 2)).toEqual(['POST /fetch', 'GET /xapi/activities/state']);
    expect(server.requests).toContain('GET /xapi/agents/profile');
    const given = { answer: rightAnswer(ITEMS[0]!), certainty: 3 as const };
    link.answered(schoolAnswer(ITEMS[0]!, given, 'Which?', { latency_s: 4, at_ms: Date.now() }));
    link.tell(REPORT);
    link.tell({ ...REPORT, passed: false, score: 0.5, attempts: 1 });
    link.tell({ ...REPORT, passed: false, score: 0.5, attempts: 1 });
    link.tell({ ...REPORT, passed: true, score: 0.8, attempts: 2, completed: true });
    link.tell({ ...REPORT, passed: true, score: 0.9, attempts: 3, completed: true, resume: 'r9' });
    await settled(5);
    link.end({ ...REPORT, passed: true, score: 0.9, attempts: 3, completed: true, resume: 'r9' });
    await settled(6);
    expect(verbs()).toEqual(['initialized', 'answered', 'failed', 'completed', 'passed', 'terminated']);
    expect(server.faults).toEqual([]);
    expect(troubles.filter((each) => each !== null)).toEqual([]);
    expect([0, 1, 2, 3, 4, 5].map(categories)).toEqual([
      ['cmi5'],
      [],
      ['cmi5', 'moveon'],
      ['cmi5', 'moveon'],
      ['cmi5', 'moveon'],
      ['cmi5'],
    ]);
    server.statements.forEach((each, i) => {
      expect(contextOf(i)).toMatchObject({
        registration: REGISTRATION,
        extensions: { [SESSION]: 'session-1' },
      });
      expect(contextOf(i).contextActivities.grouping).toHaveLength(1);
      expect(each['actor']).toEqual(ACTOR);
      expect(MASTERY in contextOf(i).extensions).toBe(['failed', 'passed'].includes(verbs()[i]!));
      if (verbs()[i] !== 'answered') expect(each['object']).toMatchObject({ id: UNIT });
    });
    expect(server.statements[2]!['result']).toEqual({
      success: false,
      score: { scaled: 0.5 },
      duration: 'PT12.5S',
    });
    expect(server.statements[3]!['result']).toEqual({ completion: true, duration: 'PT12.5S' });
    expect(server.statements[5]!['result']).toMatchObject({
      duration: expect.stringMatching(/^PT[\d.]+S$/) as string,
    });
  });

  it('goes on in a later session of the same registration, and says nothing of it twice', async () => {
    prepare();
    const first = launched();
    await first.link.open();
    first.link.end({ ...REPORT, completed: true, passed: true, score: 1, attempts: 1, resume: 'here' });
    await settled(4);
    await vi.waitFor(() => expect([...server.state.values()].join()).toContain('here'));
    // A second launch has a token of its own.
    const again = await testStore();
    for (const [key, text] of server.state) again.state.set(key, text);
    await server.close();
    server = again;
    const second = launched();
    expect(await second.link.open()).toMatchObject({ resume: 'here' });
    second.link.tell({ ...REPORT, completed: true, passed: true, score: 1, attempts: 2, resume: 'there' });
    second.link.end({ ...REPORT, completed: true, passed: true, score: 1, attempts: 2, resume: 'there' });
    await settled(2);
    expect(verbs()).toEqual(['initialized', 'terminated']);
  });

  it.each(['Browse', 'Review'])('judges nothing in mode %s', async (launchMode) => {
    prepare({ launchMode });
    const { link } = launched();
    expect((await link.open())?.judged).toBe(false);
    link.tell({ ...REPORT, completed: true, passed: true, score: 1, attempts: 1 });
    link.end({ ...REPORT, completed: true, passed: true, score: 1, attempts: 1 });
    await settled(2);
    expect(verbs()).toEqual(['initialized', 'terminated']);
  });

  it('sends what was lost with what comes next, in the same order, and once', async () => {
    prepare();
    const { link, troubles } = launched();
    await link.open();
    server.mishaps.push('lose-reply');
    link.tell({ ...REPORT, completed: true });
    await vi.waitFor(() => expect(troubles.at(-1)?.what).toBe('lost'));
    link.tell({ ...REPORT, completed: true, passed: true, score: 0.75, attempts: 1 });
    await settled(3);
    await vi.waitFor(() => expect(troubles.at(-1)).toBeNull());
    expect(verbs()).toEqual(['initialized', 'completed', 'passed']);
    expect(server.repeats).toBe(1);
  });

  it('says plainly why it cannot begin: a token that was given before, no launch data, no launch', async () => {
    prepare();
    await launched().link.open();
    const reloaded = launched();
    expect(await reloaded.link.open()).toBeNull();
    expect(reloaded.troubles).toEqual([{ what: 'refused', code: '', about: 'The token was given already.' }]);
    expect(verbs()).toEqual(['initialized']);
    expect(readCmi5Launch('?endpoint=x&fetch=y&actor=nobody&registration=z&activityId=a')).toBeNull();
    const heard: (SchoolTrouble | null)[] = [];
    const none = cmi5Link(readCmi5Launch('?tier=low'), {
      hear: (each) => heard.push(each),
      now: () => 0,
      newId: randomUUID,
    });
    expect(await none.open()).toBeNull();
    expect(heard).toEqual([{ what: 'missing', code: '', about: '' }]);
  });
});
