/** The host as phones and the instructor's screen meet it, over real sockets of this machine. */
import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { withoutKey } from '../../src/core/classroom';
import { rightAnswer } from '../../src/core/quiz';
import type { RunningHost } from '../../src/edge/host/server';
import { ITEMS, questionsOf } from '../classroom/items';
import { connect, EVERYTHING, hostHere, instructor, learner, newToken } from './client';
import { hostileMessage, hostileRequest } from './hostile';

const items = questionsOf(ITEMS).map((question) => question.item);

/** Status, headers and body of a request with any path, method and headers. */
const ask = (
  port: number,
  path: string,
  method = 'GET',
  headers: Readonly<Record<string, string>> = {},
): Promise<{ status: number; headers: Record<string, unknown>; body: string }> =>
  new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      let body = '';
      response.on('data', (chunk: Buffer) => {
        body += String(chunk);
      });
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
      );
    });
    sent.on('error', reject);
    sent.end();
  });

describe('a class', () => {
  let host: RunningHost;
  beforeAll(async () => {
    host = await hostHere();
  });
  afterAll(() => host.close());

  it('goes through a question; no phone is sent anything of its key before the reveal', async () => {
    const { port, secrets } = host;
    const teacher = await instructor(host);
    const early = await learner(port, secrets.code.toLowerCase(), 1);
    expect(early.view).toMatchObject({ seat: 1, session: null, question: null });
    await teacher.ask({ type: 'draw', wish: EVERYTHING });
    await teacher.ask({ type: 'begin' });
    const { view } = await early.next('view', ({ view }) => view.phase === 'lobby');
    await teacher.ask({ type: 'move', move: 'open' });
    const open = await early.next('view', ({ view }) => view.question?.phase === 'open');
    expect(open.view.question!.item).toEqual(JSON.parse(JSON.stringify(withoutKey(items[0]!))));
    const answer = {
      type: 'answer' as const,
      session: view.session!,
      question: 0,
      answer: { type: 'choice' as const, ids: ['o2'] },
      certainty: 3 as const,
      kept: false,
    };
    early.send({ ...answer, id: 'a1', revision: 1 });
    early.send({ ...answer, id: 'a1', revision: 1 });
    await early.next('accepted');
    await early.next('accepted');
    early.send({ ...answer, id: 'a2', revision: 2, answer: rightAnswer(items[0]!) as typeof answer.answer });
    await early.next('accepted', ({ id }) => id === 'a2');
    const late = await learner(port, secrets.code, 2);
    expect(late.view.question).toMatchObject({ phase: 'open', number: 0 });
    const { page } = await teacher.next('page', ({ page }) => page.view.answered === 1);
    expect(page.view.seats.map((each) => [each.seat, each.here])).toContainEqual([1, true]);
    expect([...early.heard, ...late.heard, ...teacher.heard].join('')).not.toContain('KEY-');
    await teacher.ask({ type: 'move', move: 'reveal' });
    const told = await early.next('view', ({ view }) => view.question?.phase === 'revealed');
    expect(told.view.question!.item).toMatchObject({ right: 'o1' });
    expect(told.view.question!.shares).toMatchObject({ count: 1, right: 1 });
    late.send({ ...answer, id: 'b1', revision: 1 });
    expect((await late.next('refused')).why.key).toBe('class.refused.not-open');
    early.send({ ...answer, id: 'a2', revision: 2 });
    await early.next('accepted');
    expect(Object.keys(host.store.state().session!.asked[0]!.answers)).toEqual(['1']);
    // A phone that went away comes back by its token, into the same place.
    early.close();
    const back = await connect(port);
    back.send({ type: 'resume', version: 1, token: early.token });
    expect((await back.next('joined')).view).toMatchObject({ seat: 1, own: { revision: 2 } });
    await teacher.ask({ type: 'move', move: 'end' });
    teacher.send({ type: 'report', id: 'r', session: null });
    expect((await teacher.next('report')).report.items[0]).toMatchObject({ difficulty: 1 });
    for (const each of [teacher, late, back]) each.close();
  });

  it('takes nobody without the code, and no instructor without the secret', async () => {
    const stranger = await connect(host.port);
    stranger.send({ type: 'join', version: 1, code: 'WRONG2', seat: 5, name: null, token: newToken() });
    expect((await stranger.next('refused')).why.key).toBe('class.refused.code');
    stranger.send({ type: 'instruct', version: 1, secret: 'x'.repeat(32) });
    expect((await stranger.next('refused')).why.key).toBe('class.refused.secret');
    stranger.send({ type: 'resume', version: 1, token: newToken() });
    expect((await stranger.next('refused')).why.key).toBe('class.refused.unknown');
    stranger.send({ type: 'move', id: 'm', move: 'reveal' });
    expect((await stranger.next('refused')).why.key).toBe('class.refused.words');
    // Guesses run out, and then even the right code has to wait.
    for (let i = 0; i < 10; i++)
      stranger.send({ type: 'join', version: 1, code: 'WRONG2', seat: 5, name: null, token: newToken() });
    await stranger.next('refused', ({ why }) => why.key === 'class.refused.slow');
    const other = await connect(host.port);
    other.send({ type: 'join', version: 1, code: host.secrets.code, seat: 5, name: null, token: newToken() });
    expect((await other.next('refused')).why.key).toBe('class.refused.slow');
    for (const each of [stranger, other]) each.close();
  });

  it('serves the app alone, with headers that keep it to itself', async () => {
    const { port } = host;
    const home = await ask(port, '/');
    expect(home).toMatchObject({ status: 200, body: expect.stringContaining('<title>app') as string });
    expect(home.headers['content-security-policy']).toMatch(/default-src 'self'.*frame-ancestors 'none'/);
    expect(home.headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    });
    expect((await ask(port, '/', 'GET', { 'if-none-match': String(home.headers['etag']) })).status).toBe(304);
    expect((await ask(port, '/app.js', 'HEAD')).body).toBe('');
    expect((await ask(port, '/app.js', 'POST')).status).toBe(405);
    expect((await ask(port, '/', 'GET', { host: 'evil.example' })).status).toBe(421);
    for (const path of [
      '/../host.json',
      '/%2e%2e/host.json',
      '/..%2fhost.json',
      '/host.json',
      '//etc/passwd',
    ])
      expect((await ask(port, path)).status, path).toBe(404);
    const greeting = await ask(port, '/class/info');
    expect(JSON.parse(greeting.body)).toMatchObject({ class: true });
    expect(greeting.body).not.toContain(host.secrets.code);
  });

  it('opens a socket to its own pages alone', async () => {
    const own = `http://127.0.0.1:${host.port}`;
    await expect(connect(host.port, { origin: 'http://evil.example' })).rejects.toThrow('403');
    await expect(connect(host.port, { origin: `${own}.evil.example` })).rejects.toThrow('403');
    await expect(connect(host.port, { origin: 'null' })).rejects.toThrow('403');
    await expect(connect(host.port, { host: 'evil.example', origin: 'http://evil.example' })).rejects.toThrow(
      '421',
    );
  });
});

describe('hostile words', () => {
  it('1,000 messages and 100 requests: nothing falls over, changes or leaks', async () => {
    const host = await hostHere();
    const teacher = await instructor(host);
    await teacher.ask({ type: 'draw', wish: EVERYTHING });
    await teacher.ask({ type: 'begin' });
    await teacher.ask({ type: 'move', move: 'next' });
    const member = await learner(host.port, host.secrets.code, 1);
    const session = host.store.state().session!.id;
    const before = JSON.stringify(host.store.state());
    const heard: string[] = [];
    for (let n = 0; n < 1000;) {
      const client = await connect(host.port);
      // Every other connection is a member's own, since members get further in.
      if (n % 2 === 0) client.send({ type: 'resume', version: 1, token: member.token });
      // Connections are cut after so many faults; the next batch comes on a fresh one.
      for (let k = 0; k < 19 && n < 1000; k++) client.sendText(hostileMessage(n++, session));
      client.send({ type: 'ping' });
      await Promise.race([client.next('pong'), client.closed]);
      heard.push(...client.heard);
      client.close();
    }
    for (let n = 0; n < 100; n++) {
      const { path, method, headers } = hostileRequest(n);
      const reply = await ask(host.port, path, method, headers).catch(() => ({ status: 400, body: '' }));
      expect([200, 400, 404, 405, 421, 431], path).toContain(reply.status);
      heard.push(reply.body);
    }
    expect(JSON.stringify(host.store.state())).toBe(before);
    expect(heard.join('')).not.toMatch(/KEY-|77123/);
    expect(heard.join('')).not.toContain(host.secrets.secret);
    expect(heard.join('')).not.toContain(host.secrets.code);
    // The member who was there all along goes on.
    await teacher.ask({ type: 'move', move: 'open' });
    member.send({
      type: 'answer',
      id: 'fine',
      session,
      question: 0,
      revision: 1,
      answer: rightAnswer(items[0]!) as { type: 'choice'; ids: string[] },
      certainty: 2,
      kept: false,
    });
    await member.next('accepted');
    await host.close();
  });
});
