/**
 * A learning record store for tests: it validates statements by the rules of the Experience API 1.0.3, keeps each id
 * once, and can be told to lose its replies, to be busy, to know nobody. With the launch of cmi5: a fetch address that
 * gives its token once, documents of state, and a learner's preferences.
 */
import { randomUUID } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface StoredStatement {
  readonly id: string;
  readonly verb: { readonly id: string };
  readonly timestamp: string;
  readonly [key: string]: unknown;
}

export interface TestStore {
  readonly url: string;
  /** In the order they came. */
  readonly statements: StoredStatement[];
  /** Why statements were refused. */
  readonly faults: string[];
  readonly state: Map<string, string>;
  readonly requests: string[];
  /** What the next requests meet with; the first entry is used up first. */
  readonly mishaps: ('lose-reply' | 'drop' | number)[];
  readonly tokens: Set<string>;
  /** Statement ids sent more than once. */
  repeats: number;
  close(): Promise<void>;
}

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/i;
const IRI = /^[a-z][a-z0-9+.-]*:\S+$/i;
const isObject = (x: unknown): x is Record<string, unknown> =>
  typeof x === 'object' && x !== null && !Array.isArray(x);
const KEYS = new Set([
  'id',
  'actor',
  'verb',
  'object',
  'result',
  'context',
  'timestamp',
  'version',
  'attachments',
  'authority',
  'stored',
]);
const DURATION = /^P(?=.)(\d+Y)?(\d+M)?(\d+D)?(T(?=.)(\d+H)?(\d+M)?(\d+(\.\d+)?S)?)?$/;
const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:?\d{2})$/;
const INTERACTIONS = [
  'true-false',
  'choice',
  'fill-in',
  'long-fill-in',
  'matching',
  'performance',
  'sequencing',
  'likert',
  'numeric',
  'other',
];

/** Faults of a statement by part 2 of the specification (sections 2.2 to 2.4). */
export function faultsOf(statement: unknown): readonly string[] {
  if (!isObject(statement)) return ['no object'];
  const faults: string[] = [];
  const need = (holds: boolean, what: string): void => void (holds || faults.push(what));
  const noNull = (value: unknown, path: string): void => {
    if (value === null) faults.push(`${path} is null`);
    else if (typeof value === 'object')
      for (const [key, each] of Object.entries(value))
        if (key !== 'extensions') noNull(each, `${path}.${key}`);
  };
  noNull(statement, 'statement');
  for (const key of Object.keys(statement)) need(KEYS.has(key), `unknown key ${key}`);
  const { id, actor, verb, object, result, context, timestamp } = statement;
  need(id === undefined || (typeof id === 'string' && UUID.test(id)), 'id');
  need(isObject(actor), 'actor');
  if (isObject(actor)) {
    const ways = ['mbox', 'mbox_sha1sum', 'openid', 'account'].filter((key) => key in actor);
    need(ways.length === 1, 'actor: one way to name');
    const { account } = actor;
    if (account !== undefined)
      need(
        isObject(account) &&
          typeof account['homePage'] === 'string' &&
          IRI.test(account['homePage']) &&
          typeof account['name'] === 'string' &&
          account['name'] !== '',
        'actor.account',
      );
  }
  need(isObject(verb) && typeof verb['id'] === 'string' && IRI.test(verb['id']), 'verb.id');
  if (isObject(verb) && verb['display'] !== undefined)
    need(
      isObject(verb['display']) && Object.values(verb['display']).every((each) => typeof each === 'string'),
      'verb.display',
    );
  need(isObject(object) && typeof object['id'] === 'string' && IRI.test(object['id']), 'object.id');
  if (isObject(object) && isObject(object['definition'])) {
    const { type, interactionType } = object['definition'];
    need(type === undefined || (typeof type === 'string' && IRI.test(type)), 'definition.type');
    need(
      interactionType === undefined || INTERACTIONS.includes(interactionType as string),
      'interactionType',
    );
  }
  if (result !== undefined) {
    need(isObject(result), 'result');
    if (isObject(result)) {
      const { score, success, completion, response, duration, extensions } = result;
      need(success === undefined || typeof success === 'boolean', 'success');
      need(completion === undefined || typeof completion === 'boolean', 'completion');
      need(response === undefined || typeof response === 'string', 'response');
      need(duration === undefined || (typeof duration === 'string' && DURATION.test(duration)), 'duration');
      if (isObject(score)) {
        const { scaled, raw, min, max } = score as Record<string, number | undefined>;
        need(scaled === undefined || (scaled >= -1 && scaled <= 1), 'scaled');
        need(min === undefined || max === undefined || min < max, 'min < max');
        need(raw === undefined || min === undefined || raw >= min, 'raw >= min');
        need(raw === undefined || max === undefined || raw <= max, 'raw <= max');
      }
      if (isObject(extensions))
        for (const key of Object.keys(extensions)) need(IRI.test(key), `extension ${key}`);
    }
  }
  if (isObject(context)) {
    const { registration, contextActivities, extensions } = context;
    need(
      registration === undefined || (typeof registration === 'string' && UUID.test(registration)),
      'registration',
    );
    if (isObject(contextActivities))
      for (const [key, list] of Object.entries(contextActivities)) {
        need(['parent', 'grouping', 'category', 'other'].includes(key), `contextActivities.${key}`);
        for (const each of Array.isArray(list) ? list : [list])
          need(
            isObject(each) && typeof each['id'] === 'string' && IRI.test(each['id']),
            `contextActivities.${key}`,
          );
      }
    if (isObject(extensions))
      for (const key of Object.keys(extensions)) need(IRI.test(key), `extension ${key}`);
  }
  need(timestamp === undefined || (typeof timestamp === 'string' && INSTANT.test(timestamp)), 'timestamp');
  return faults;
}

const body = async (request: IncomingMessage): Promise<string> => {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts).toString('utf8');
};

/** @param user who is let in, with `secret`; tokens of a fetch address are let in too */
export async function testStore(user = 'yard', secret = 'geheim-ß'): Promise<TestStore> {
  const statements: StoredStatement[] = [];
  const byId = new Map<string, string>();
  const known = `Basic ${Buffer.from(`${user}:${secret}`, 'utf8').toString('base64')}`;
  const store = {
    url: '',
    statements,
    faults: [] as string[],
    state: new Map<string, string>(),
    requests: [] as string[],
    mishaps: [] as ('lose-reply' | 'drop' | number)[],
    tokens: new Set<string>(),
    repeats: 0,
  };
  let tokenGiven = false;

  function keep(list: readonly unknown[]): { status: number; text: string } {
    const faults = list.flatMap((each) => faultsOf(each));
    store.faults.push(...faults);
    if (faults.length > 0) return { status: 400, text: faults.join('; ') };
    const all = list.map((each) => {
      const made = { id: randomUUID(), ...(each as object) } as unknown as StoredStatement;
      return { made, text: JSON.stringify(made) };
    });
    // All or none: one conflict refuses the lot.
    for (const { made, text } of all) {
      const before = byId.get(made.id);
      if (before !== undefined) store.repeats++;
      if (before !== undefined && before !== text) return { status: 409, text: `conflict ${made.id}` };
    }
    for (const { made, text } of all) {
      if (byId.has(made.id)) continue;
      byId.set(made.id, text);
      statements.push(made);
    }
    return { status: 200, text: JSON.stringify(all.map(({ made }) => made.id)) };
  }

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const url = new URL(request.url ?? '/', 'http://local');
    const text = await body(request);
    store.requests.push(`${request.method} ${url.pathname}`);
    response.setHeader('access-control-allow-origin', '*');
    response.setHeader(
      'access-control-allow-headers',
      'authorization,content-type,x-experience-api-version,if-none-match,if-match',
    );
    response.setHeader('access-control-allow-methods', 'GET,PUT,POST,OPTIONS');
    const say = (status: number, out = '', type = 'application/json'): void =>
      void response.writeHead(status, { 'content-type': type }).end(out);
    if (request.method === 'OPTIONS') return say(204);
    if (url.pathname === '/fetch') {
      if (request.method !== 'POST') return say(405);
      // A token is given once (cmi5, 8.2).
      if (tokenGiven)
        return say(200, JSON.stringify({ 'error-code': '1', 'error-text': 'The token was given already.' }));
      tokenGiven = true;
      const token = Buffer.from(randomUUID()).toString('base64');
      store.tokens.add(token);
      return say(200, JSON.stringify({ 'auth-token': token }));
    }
    const mishap = store.mishaps.shift();
    if (mishap === 'drop') return void request.socket.destroy();
    if (typeof mishap === 'number') return say(mishap, 'told to');
    const auth = request.headers.authorization ?? '';
    if (auth !== known && !store.tokens.has(auth.replace(/^Basic /, ''))) return say(401, 'who are you');
    if (!/^1\.0\.\d+$/.test(String(request.headers['x-experience-api-version'] ?? '')))
      return say(400, 'version');
    if (url.pathname === '/xapi/statements' && request.method === 'POST') {
      const read = JSON.parse(text) as unknown;
      const { status, text: out } = keep(Array.isArray(read) ? read : [read]);
      if (mishap === 'lose-reply') return void request.socket.destroy();
      return say(status, out);
    }
    if (url.pathname === '/xapi/activities/state' || url.pathname === '/xapi/agents/profile') {
      const key = [...url.searchParams]
        .map(([name, value]) => `${name}=${value}`)
        .sort()
        .join('&');
      if (request.method === 'PUT') {
        store.state.set(key, text);
        return say(204);
      }
      const found = store.state.get(key);
      return found === undefined ? say(404) : say(200, found);
    }
    say(404);
  }

  const server: Server = createServer((request, response) => void answer(request, response));
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  store.url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  return Object.assign(store, {
    close: () =>
      new Promise<void>((closed) => {
        server.closeAllConnections();
        server.close(() => closed());
      }),
  });
}
