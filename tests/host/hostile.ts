/** Hostile and broken messages, drawn from a seed: half of them nearly right, since those get furthest. */
import { type Random, seededRandom } from '../../src/core/kernel';

const VALUES: readonly unknown[] = [
  null,
  true,
  -1,
  0,
  1e308,
  NaN,
  '',
  'x'.repeat(300),
  '__proto__',
  'constructor',
  '../../etc/passwd',
  '<img src=x onerror=alert(1)>',
  '\u202eevil\u0000',
  "'; DROP TABLE answers; --",
  [],
  {},
  [[[[[[]]]]]],
  { __proto__: { admin: true } },
];

const answers = [
  { type: 'choice', ids: ['o1'] },
  { type: 'order', ids: ['o1', 'o2', 'o3'] },
  { type: 'number', si: 3 },
  { type: 'match', pairs: { l1: 'o1' } },
  { type: 'part', partId: 'hub' },
];

/** Messages of the right form, for the session that is named; some of them are the instructor's. */
function templates(random: Random, session: string): readonly Record<string, unknown>[] {
  const id = `h${random.index(1e6)}`;
  return [
    {
      type: 'join',
      version: 1,
      code: 'AAAAAA',
      seat: 1 + random.index(30),
      name: 'A',
      token: 'a'.repeat(32),
    },
    { type: 'resume', version: 1, token: 'b'.repeat(32) },
    {
      type: 'answer',
      id,
      session,
      question: random.index(9),
      revision: 1 + random.index(5),
      answer: answers[random.index(answers.length)],
      certainty: 1 + random.index(3),
      kept: random.index(2) === 0,
    },
    { type: 'instruct', version: 1, secret: 'c'.repeat(32) },
    { type: 'move', id, move: 'reveal' },
    { type: 'free', id, seat: 1 },
    { type: 'keys', id },
    { type: 'report', id, session: null },
    { type: 'begin', id },
    { type: 'follow', id, follow: { type: 'stage', stage: {} } },
  ];
}

/** One of its keys is given another value, left out, or joined by one that does not belong. */
function broken(message: Record<string, unknown>, random: Random): Record<string, unknown> {
  const keys = Object.keys(message);
  const key = keys[random.index(keys.length)]!;
  const value = VALUES[random.index(VALUES.length)];
  switch (random.index(4)) {
    case 0:
      return Object.fromEntries(Object.entries(message).filter(([each]) => each !== key));
    case 1:
      return { ...message, extra: value };
    case 2:
      return typeof message[key] === 'object' && message[key] !== null
        ? { ...message, [key]: broken(message[key] as Record<string, unknown>, random) }
        : { ...message, [key]: value };
    default:
      return { ...message, [key]: value };
  }
}

/** Text or bytes of hostile message number `n`. */
export function hostileMessage(n: number, session: string): string | Buffer {
  const random = seededRandom(1000 + n);
  const all = templates(random, session);
  const message = all[random.index(all.length)]!;
  switch (random.index(8)) {
    case 0:
      return Buffer.from(Array.from({ length: random.index(200) }, () => random.index(256)));
    case 1:
      return JSON.stringify(message).slice(0, random.index(80));
    case 2:
      return `{"type":"answer","id":"${'y'.repeat(5000)}"}`;
    case 3:
      return '['.repeat(1000);
    // Right in form, and not allowed: without a code, without a secret, by another role.
    case 4:
      return JSON.stringify(all[[0, 1, 3, 4, 5, 6, 7, 8, 9][random.index(9)]!]);
    default:
      return JSON.stringify(broken(message, random));
  }
}

const PATHS = [
  '/../package.json',
  '/%2e%2e/%2e%2e/etc/passwd',
  '/..%2fhost.json',
  '/%00',
  '/%ff%fe',
  '/assets/../../host.json',
  '//etc/passwd',
  '/class/../journal-000001.log',
  '/journal-000001.log',
  '/host.json',
  '/class/socket',
  '/class/info/../../x',
  '/\\..\\..\\windows',
  '/?x=' + 'z'.repeat(3000),
];

/** Path, method and headers of hostile request number `n`. */
export function hostileRequest(n: number): {
  readonly path: string;
  readonly method: string;
  readonly headers: Readonly<Record<string, string>>;
} {
  const random = seededRandom(5000 + n);
  const methods = ['GET', 'POST', 'PUT', 'DELETE', 'OPTIONS', 'HEAD'];
  const hosts = [undefined, 'evil.example', '127.0.0.1.evil.example', '[::1', 'localhost'];
  const host = hosts[random.index(hosts.length)];
  return {
    path: PATHS[random.index(PATHS.length)]!,
    method: methods[random.index(methods.length)]!,
    headers: host === undefined ? {} : { host },
  };
}
