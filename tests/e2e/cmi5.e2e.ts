/** A lesson launched by cmi5: the page takes its token, says that it has begun, and that it has ended. */
import { expect, inject, it } from 'vitest';
import { testStore } from '../school/test-store';
import { theBrowser } from './app';

const ACTOR = { objectType: 'Agent', account: { homePage: 'https://school.example', name: 'p7' } };
const UNIT = 'https://school.example/units/17';
const REGISTRATION = '7f7a9a20-92aa-4f0c-8d9f-5b1f3c2a1e11';

it('a launch by cmi5 opens its lesson and speaks to the record store', async () => {
  const store = await testStore();
  const key = [
    `activityId=${UNIT}`,
    `agent=${JSON.stringify(ACTOR)}`,
    `registration=${REGISTRATION}`,
    'stateId=LMS.LaunchData',
  ].sort();
  store.state.set(
    key.join('&'),
    JSON.stringify({
      contextTemplate: {
        contextActivities: { grouping: [{ id: 'https://school.example/course' }] },
        extensions: { 'https://w3id.org/xapi/cmi5/context/extensions/sessionid': 'session-1' },
      },
      launchMode: 'Normal',
      masteryScore: 0.75,
      moveOn: 'CompletedAndPassed',
    }),
  );
  const launch = new URLSearchParams({
    endpoint: `${store.url}xapi/`,
    fetch: `${store.url}fetch`,
    actor: JSON.stringify(ACTOR),
    registration: REGISTRATION,
    activityId: UNIT,
    lesson: 'two-directions',
    tier: 'low',
  });
  const context = await (await theBrowser()).newContext({ serviceWorkers: 'block', reducedMotion: 'reduce' });
  const page = await context.newPage();
  const verbs = (): readonly string[] =>
    store.statements.map((each) => (each as unknown as { verb: { id: string } }).verb.id.split('/').at(-1)!);
  await page.goto(`${inject('appUrl')}?${launch.toString()}`);
  await page.getByText('Two directions').first().waitFor({ timeout: 60000 });
  await expect.poll(verbs, { timeout: 30000 }).toEqual(['initialized']);
  await page.goto('about:blank');
  await expect.poll(verbs, { timeout: 30000 }).toEqual(['initialized', 'terminated']);
  expect(store.faults).toEqual([]);
  await context.close();
  await store.close();
});
