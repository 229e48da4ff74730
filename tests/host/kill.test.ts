/** Killed without warning while answers come in: whatever was confirmed is there once the host runs again. */
import { type ChildProcess, spawn } from 'node:child_process';
import { resolve } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { rightAnswer } from '../../src/core/quiz';
import { replay } from '../../src/edge/host/class-store';
import { secretsOf } from '../../src/edge/host/secrets';
import { ITEMS, questionsOf } from '../classroom/items';
import { connect, EVERYTHING, hostHere, instructor, learner, temporaryFolder } from './client';

const root = resolve(import.meta.dirname, '../..');
const children: ChildProcess[] = [];
afterAll(() => children.forEach((child) => child.kill('SIGKILL')));

async function start(folder: string, port: number): Promise<{ child: ChildProcess; port: number }> {
  const child = spawn(process.execPath, ['--import', 'tsx', 'tests/host/run-host.ts', folder, String(port)], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  children.push(child);
  const line = await new Promise<string>((done) => child.stdout!.on('data', (data) => done(String(data))));
  return { child, port: Number(/listening (\d+)/.exec(line)?.[1]) };
}

it('kill -9 in the middle of answering, and on again on the same port', async () => {
  const folder = temporaryFolder();
  const secrets = secretsOf(folder);
  const first = await start(folder, 0);
  const { port } = first;
  const teacher = await instructor({ port, secrets });
  await teacher.ask({ type: 'draw', wish: EVERYTHING });
  await teacher.ask({ type: 'begin' });
  await teacher.ask({ type: 'move', move: 'open' });
  const members = await Promise.all(Array.from({ length: 12 }, (_, i) => learner(port, secrets.code, i + 1)));
  const { page } = await teacher.next('page', ({ page }) => page.view.phase === 'asking');
  const right = rightAnswer(questionsOf(ITEMS)[0]!.item) as { type: 'choice'; ids: string[] };
  const confirmed = new Map<number, number>();
  let killed = false;
  // Everyone changes their answer over and over; the host dies after some forty confirmations.
  let count = 0;
  await Promise.all(
    members.map(async (member, i) => {
      for (let revision = 1; !killed && revision <= 30; revision++) {
        member.send({
          type: 'answer',
          id: `m${i}-${revision}`,
          session: page.view.session!,
          question: 0,
          revision,
          answer: right,
          certainty: 2,
          kept: false,
        });
        const reply = await Promise.race([member.next('accepted').catch(() => null), member.closed]);
        if (reply === null || typeof reply === 'number') return;
        confirmed.set(i + 1, revision);
        if (++count === 40) {
          killed = true;
          first.child.kill('SIGKILL');
        }
      }
    }),
  );
  expect(killed).toBe(true);
  // What a fresh process reads is what this one reads from the same folder.
  const { state, lost } = replay(`${folder}/journal-000001.log`);
  expect(lost).toBe(0);
  const { answers } = state.session!.asked[0]!;
  expect(confirmed.size).toBe(12);
  for (const [seat, revision] of confirmed) {
    const given = answers[seat]!;
    const kept = given.via === 'phone' ? Object.values(given.revisions) : [];
    expect(kept).toHaveLength(1);
    expect(kept[0]).toBeGreaterThanOrEqual(revision);
  }
  const again = await hostHere(folder, port);
  const back = await connect(port);
  back.send({ type: 'resume', version: 1, token: members[0]!.token });
  const { view } = await back.next('joined');
  expect(view).toMatchObject({ seat: 1, session: page.view.session, phase: 'asking' });
  expect(view.own!.revision).toBeGreaterThanOrEqual(confirmed.get(1)!);
  back.close();
  await again.close();
});
