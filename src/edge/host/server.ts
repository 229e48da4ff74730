/** The host: serves the built app and one socket address for the class, on one port. */
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { WebSocketServer } from 'ws';
import { type ClassGreeting, MOST_BYTES_INSTRUCTOR, MOST_SEATS, TALK_VERSION } from '../../core/classroom';
import { type ClassStore, openClass } from './class-store';
import { attend } from './connection';
import { openDesk } from './desk';
import { SAFE_HEADERS, serveFile, tableOf } from './files';
import { addressOf, isOwnHost, isOwnPage } from './guard';
import { bucket, buckets } from './limits';
import { type Secrets, secretsOf } from './secrets';
import type { Stock } from './stock';

export interface HostOptions {
  /** Folder of the built app. */
  readonly app: string;
  /** Folder of the class: journals, code, secret. */
  readonly data: string;
  /** Address of the interface to listen on. */
  readonly interface: string;
  /** 0: any free one. A taken port is an error, since phones know the old one. */
  readonly port: number;
  readonly stock: Stock;
  /** Addresses that phones may use, as shown to the instructor. */
  readonly addresses: (port: number) => readonly string[];
  /** Told when the disk refuses; the host answers nobody any more. */
  readonly onFailure: (reason: unknown) => void;
}

export interface RunningHost {
  readonly port: number;
  readonly secrets: Secrets;
  readonly store: ClassStore;
  close(): Promise<void>;
}

/** Phones of a full class, the instructor's screens, and some that are about to be noticed as gone. */
const MOST_CONNECTIONS = MOST_SEATS + 40;
const MOST_HEADER_BYTES = 16 * 1024;
/** A phone that has not answered two of these is gone. */
const PING_EVERY_ms = 15_000;
/** A class behind one address loads the app within a minute. */
const PAGE_RATE = { most: 4000, perSecond: 300 };
/** Wrong codes and secrets: of one address, and of all. */
const GUESS_RATE = { most: 10, perSecond: 1 / 6 };
const ALL_GUESSES_RATE = { most: 200, perSecond: 1 };

export async function startHost(options: HostOptions): Promise<RunningHost> {
  const secrets = secretsOf(options.data);
  const store = await openClass(options.data, options.onFailure);
  const files = tableOf(options.app);
  const pages = buckets(PAGE_RATE);
  const guesses = buckets(GUESS_RATE);
  const allGuesses = bucket(ALL_GUESSES_RATE, Date.now());
  let port = options.port;
  const desk = openDesk({
    folder: options.data,
    store,
    stock: options.stock,
    code: secrets.code,
    addresses: () => options.addresses(port),
  });

  const end = (response: ServerResponse, status: number, more: Record<string, string> = {}): void => {
    response.writeHead(status, { ...SAFE_HEADERS, 'content-type': 'text/plain; charset=utf-8', ...more });
    response.end();
  };
  const answer = (request: IncomingMessage, response: ServerResponse): void => {
    const { host } = request.headers;
    if (!isOwnHost(host)) return end(response, 421);
    if (!pages(addressOf(request), Date.now()).take(Date.now()))
      return end(response, 429, { 'retry-after': '5' });
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return end(response, 405, { allow: 'GET, HEAD' });
    let path: string;
    try {
      path = decodeURIComponent(new URL(request.url ?? '/', 'http://host').pathname);
    } catch {
      return end(response, 400);
    }
    if (path === '/class/info') {
      const greeting: ClassGreeting = {
        class: true,
        version: TALK_VERSION,
        settings: store.state().settings,
      };
      response.writeHead(200, {
        ...SAFE_HEADERS,
        'content-type': 'application/json',
        'cache-control': 'no-store',
      });
      response.end(JSON.stringify(greeting));
      return;
    }
    const file = files.get(path);
    if (file === undefined) return end(response, 404);
    serveFile(file, request, response).catch(() => response.destroy());
  };
  const server = createServer({ maxHeaderSize: MOST_HEADER_BYTES }, answer);
  server.headersTimeout = 10_000;
  server.requestTimeout = 30_000;

  const sockets = new WebSocketServer({
    noServer: true,
    maxPayload: MOST_BYTES_INSTRUCTOR,
    perMessageDeflate: false,
    clientTracking: true,
  });
  server.on('upgrade', (request: IncomingMessage, socket: Socket, head: Buffer) => {
    const turnAway = (status: string): void => {
      socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nRetry-After: 5\r\nContent-Length: 0\r\n\r\n`);
    };
    socket.on('error', () => socket.destroy());
    if (!isOwnHost(request.headers.host)) return turnAway('421 Misdirected Request');
    if (request.url !== '/class/socket') return turnAway('404 Not Found');
    if (!isOwnPage(request)) return turnAway('403 Forbidden');
    if (!pages(addressOf(request), Date.now()).take(Date.now())) return turnAway('429 Too Many Requests');
    if (sockets.clients.size >= MOST_CONNECTIONS) return turnAway('503 Service Unavailable');
    sockets.handleUpgrade(request, socket, head, (ws) => {
      alive.add(ws);
      ws.on('pong', () => alive.add(ws));
      attend(ws, { desk, secrets, guesses: guesses(addressOf(request), Date.now()), allGuesses });
    });
  });
  const alive = new WeakSet<object>();
  const beat = setInterval(() => {
    for (const ws of sockets.clients) {
      if (!alive.has(ws)) ws.terminate();
      else {
        alive.delete(ws);
        ws.ping();
      }
    }
  }, PING_EVERY_ms);

  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(options.port, options.interface, () => {
      server.off('error', reject);
      resolve();
    });
  });
  port = (server.address() as AddressInfo).port;
  return {
    port,
    secrets,
    store,
    async close() {
      clearInterval(beat);
      for (const ws of sockets.clients) ws.terminate();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await store.close();
    },
  };
}
