/**
 * A full class on the loopback: 300 phones answer within 3 s, ten sessions in a row, with the host in a process of its
 * own; then phones beyond the limit, and 50,000 hostile messages.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { MOST_SEATS } from '../../src/core/classroom';
import { seededRandom } from '../../src/core/kernel';
import { rightAnswer } from '../../src/core/quiz';
import { replay } from '../../src/edge/host/class-store';
import { secretsOf } from '../../src/edge/host/secrets';
import { ITEMS, questionsOf } from '../classroom/items';
import { type Client, connect, EVERYTHING, instructor, learner } from '../host/client';
import { hostileMessage } from '../host/hostile';
import type { Measure, Row } from './row';

const root = resolve(import.meta.dirname, '../..');
const SESSIONS = 10;
const WITHIN_ms = 3000;
const LIMIT_ms = 250;
const HOSTILE = 50_000;
const BEYOND = 60;

const wait = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** Resident memory of a process in MB; where the system does not tell, NaN. */
function memoryOf(pid: number): number {
  try {
    const found = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'));
    return found === null ? NaN : Number(found[1]) / 1024;
  } catch {
    return NaN;
  }
}

const percentile = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(share * values.length))]!;

export const measure: Measure = async () => {
  const data = mkdtempSync(join(tmpdir(), 'class-'));
  const secrets = secretsOf(data);
  const child = spawn(process.execPath, ['--import', 'tsx', 'tests/host/run-host.ts', data, '0'], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  try {
    const line = await new Promise<string>((done) => child.stdout.once('data', (text) => done(String(text))));
    const port = Number(/listening (\d+)/.exec(line)?.[1]);
    const teacher = await instructor({ port, secrets });
    await teacher.ask({
      type: 'settings',
      settings: { title: '', mode: 'solo', seats: MOST_SEATS, names: false },
    });
    const members = await joinAll(port, secrets.code);
    const random = seededRandom(7);
    const right = rightAnswer(questionsOf(ITEMS)[0]!.item) as { type: 'choice'; ids: string[] };
    const took: number[] = [];
    const memory: number[] = [];
    for (let n = 0; n < SESSIONS; n++) {
      await teacher.ask({ type: 'draw', wish: EVERYTHING });
      await teacher.ask({ type: 'begin' });
      await teacher.ask({ type: 'move', move: 'open' });
      const { view } = await members[0]!.next('view', ({ view }) => view.question?.phase === 'open');
      took.push(
        ...(await Promise.all(
          members.map(async (member, i) => {
            await wait(random.next() * WITHIN_ms);
            const id = `${n}-${i}`;
            const start = performance.now();
            member.send({
              type: 'answer',
              id,
              session: view.session!,
              question: 0,
              revision: n + 1,
              answer: right,
              certainty: 2,
              kept: false,
            });
            await member.next('accepted', (accepted) => accepted.id === id);
            return performance.now() - start;
          }),
        )),
      );
      await teacher.ask({ type: 'move', move: 'reveal' });
      await teacher.ask({ type: 'move', move: 'end' });
      members.forEach((member) => member.forget());
      teacher.forget();
      memory.push(memoryOf(child.pid!));
    }
    const kept = Array.from({ length: SESSIONS }, (_, i) => {
      const { state } = replay(join(data, `journal-${String(i + 1).padStart(6, '0')}.log`));
      return Object.keys(state.session!.asked[0]!.answers).length;
    });
    if (kept.some((count) => count !== MOST_SEATS)) throw new Error(`answers kept: ${kept.join(', ')}`);
    const turnedAway = await crowd(port);
    const hostile = await hostileWords(port);
    await teacher.ask({ type: 'follow', follow: null });
    return rows(took, memory, turnedAway, hostile);
  } finally {
    child.kill('SIGKILL');
  }
};

async function joinAll(port: number, code: string): Promise<readonly Client[]> {
  const members: Client[] = [];
  for (let seat = 1; seat <= MOST_SEATS; seat += 20)
    members.push(...(await Promise.all(Array.from({ length: 20 }, (_, i) => learner(port, code, seat + i)))));
  return members;
}

/** How many connections beyond a full class are turned away at once rather than left waiting. */
async function crowd(port: number): Promise<number> {
  const results = await Promise.all(
    Array.from({ length: BEYOND }, () =>
      connect(port).then(
        (client) => ({ client, away: false }),
        (error: Error) => ({ client: null, away: /503/.test(error.message) }),
      ),
    ),
  );
  await Promise.all(
    results.map(async ({ client }) => {
      client?.close();
      await client?.closed;
    }),
  );
  return results.filter(({ away }) => away).length;
}

/** Milliseconds a message; the host must still be there afterwards. */
async function hostileWords(port: number): Promise<number> {
  const start = performance.now();
  for (let n = 0; n < HOSTILE;) {
    const client = await connect(port);
    for (let k = 0; k < 19 && n < HOSTILE; k++) client.sendText(hostileMessage(n++, 's-none'));
    client.send({ type: 'ping' });
    await Promise.race([client.next('pong'), client.closed]);
    if (client.heard.join('').match(/KEY-|77123/)) throw new Error('a key came out');
    client.close();
    await client.closed;
  }
  return (performance.now() - start) / HOSTILE;
}

function rows(
  took: readonly number[],
  memory: readonly number[],
  turnedAway: number,
  hostile: number,
): readonly Row[] {
  const late = memory.slice(-3).reduce((sum, each) => sum + each, 0) / 3;
  return [
    {
      name: 'p95 from answer to confirmation on disk',
      unit: 'ms',
      ours: percentile(took, 0.95),
      baseline: 'the stated limit',
      baseline_value: LIMIT_ms,
      more_is_better: false,
      note: `${MOST_SEATS} phones, ${SESSIONS} sessions, ${took.length} answers within ${WITHIN_ms} ms each session; median ${percentile(took, 0.5).toFixed(1)} ms, worst ${percentile(took, 1).toFixed(1)} ms; phones and host share the machine`,
    },
    {
      name: 'memory of the host, mean of the last three sessions',
      unit: 'MB',
      ours: late,
      baseline: 'after the third session',
      baseline_value: memory[2]!,
      more_is_better: false,
      note: `after each session: ${memory.map((each) => each.toFixed(0)).join(', ')}`,
    },
    {
      name: 'connections beyond a full class turned away at once',
      unit: 'of 60',
      ours: turnedAway,
      baseline: 'those that must be',
      baseline_value: BEYOND + MOST_SEATS + 1 - (MOST_SEATS + 40),
      more_is_better: true,
    },
    {
      name: 'a hostile message refused',
      unit: 'ms',
      ours: hostile,
      baseline: 'none',
      baseline_value: null,
      more_is_better: false,
      note: `${HOSTILE} messages, connections included; no crash, nothing of a key came out`,
    },
  ];
}
