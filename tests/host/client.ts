/** A phone or an instructor's screen without a browser, and a host with a small app and fixed questions. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { randomBytes } from 'node:crypto';
import { WebSocket } from 'ws';
import { type HostMessage, type InstructorMessage, type LearnerMessage } from '../../src/core/classroom';
import { startHost, type RunningHost } from '../../src/edge/host/server';
import type { Stock } from '../../src/edge/host/stock';
import { ITEMS } from '../classroom/items';

export const fixedStock: Stock = {
  about: { topics: [{ id: 'brakes', title: 'Brakes', class: ITEMS.length, practice: 0 }], generates: false },
  draw: ({ count }) =>
    ITEMS.slice(0, count).map((item) => ({
      item,
      from: 'class-bank',
      original: item.id,
      topic: 'brakes',
    })),
};

export const temporaryFolder = (): string => mkdtempSync(join(tmpdir(), 'class-'));

export function smallApp(): string {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>app</title>');
  writeFileSync(join(folder, 'app.js'), 'export {}');
  return folder;
}

export const hostHere = (data = temporaryFolder(), port = 0): Promise<RunningHost> =>
  startHost({
    app: smallApp(),
    data,
    interface: '127.0.0.1',
    port,
    stock: fixedStock,
    addresses: (at) => [`http://127.0.0.1:${at}/`],
    onFailure: (reason) => {
      throw reason;
    },
  });

export const newToken = (): string => randomBytes(24).toString('base64url');

export interface Client {
  /** Everything that came, as text. */
  readonly heard: string[];
  send(message: LearnerMessage | InstructorMessage): void;
  sendText(text: string | Buffer): void;
  /** The next message (or one that came since the last wait) that fits. */
  next<T extends HostMessage['type']>(
    type: T,
    fits?: (message: Extract<HostMessage, { type: T }>) => boolean,
  ): Promise<Extract<HostMessage, { type: T }>>;
  readonly closed: Promise<number>;
  /** Lets go of what was heard, for long runs. */
  forget(): void;
  close(): void;
}

const PATIENCE_ms = 8000;

export async function connect(port: number, headers: Record<string, string> = {}): Promise<Client> {
  const socket = new WebSocket(`ws://127.0.0.1:${port}/class/socket`, {
    headers: { origin: `http://127.0.0.1:${port}`, ...headers },
  });
  const heard: string[] = [];
  let unread: HostMessage[] = [];
  let wake = (): void => {};
  socket.on('message', (data) => {
    const text = String(data as Buffer);
    heard.push(text);
    unread.push(JSON.parse(text) as HostMessage);
    wake();
  });
  const closed = new Promise<number>((resolve) => socket.on('close', resolve));
  await new Promise<void>((resolve, reject) => {
    socket.on('open', resolve);
    socket.on('error', reject);
  });
  const sendText = (text: string | Buffer): void => {
    if (socket.readyState === socket.OPEN) socket.send(text);
  };
  return {
    heard,
    closed,
    sendText,
    send: (message) => sendText(JSON.stringify(message)),
    async next(type, fits = () => true) {
      const until = Date.now() + PATIENCE_ms;
      for (;;) {
        const at = unread.findIndex((each) => each.type === type && fits(each as never));
        if (at >= 0) {
          const [found] = unread.splice(at, 1);
          unread = unread.slice(at);
          return found as never;
        }
        if (Date.now() > until) throw new Error(`no ${type} came; last: ${heard.at(-1)?.slice(0, 200)}`);
        await Promise.race([
          new Promise<void>((resolve) => {
            wake = resolve;
          }),
          new Promise((resolve) => setTimeout(resolve, 200)),
        ]);
      }
    },
    forget() {
      heard.length = 0;
      unread = [];
    },
    close: () => socket.close(),
  };
}

let ids = 0;
type Distributed<T> = T extends unknown ? Omit<T, 'id'> : never;

/** The instructor's screen; `ask` waits until the host has done it. */
export async function instructor(host: { readonly port: number; readonly secrets: { secret: string } }) {
  const client = await connect(host.port);
  client.send({ type: 'instruct', version: 1, secret: host.secrets.secret });
  await client.next('page');
  return {
    ...client,
    async ask(message: Distributed<Extract<InstructorMessage, { id: string }>>): Promise<void> {
      const id = `i${++ids}`;
      client.send({ ...message, id } as InstructorMessage);
      await client.next('done', (done) => done.id === id);
    },
  };
}

export const EVERYTHING = {
  topics: [],
  banks: 'both' as const,
  kinds: [],
  difficulties: [],
  generated: 0,
  count: ITEMS.length,
};

export async function learner(port: number, code: string, seat: number, token = newToken()) {
  const client = await connect(port);
  client.send({ type: 'join', version: 1, code, seat, name: null, token });
  const { view } = await client.next('joined');
  return { ...client, token, view };
}
