/** `npm run classroom`: the class host on the instructor's laptop. `--help` lists the options. */
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { MessageParam } from '../../core/kernel';
import { printFaults } from '../cli/print-faults';
import { say } from '../cli/say';
import { readSubject } from '../content/subject-file';
import { listenOn, ownAddresses, webAddresses } from './addresses';
import { deleteClass, takeFolder, usedBy } from './folder';
import { qrLines } from './qr';
import { startHost } from './server';
import { openStock } from './stock';

const root = resolve(import.meta.dirname, '../../..');
const tell = (key: string, params: Readonly<Record<string, MessageParam>> = {}): void =>
  console.log(say({ key: `class-host.${key}`, params }));
const stop = (key: string, params: Readonly<Record<string, MessageParam>> = {}): never => {
  console.error(say({ key: `class-host.${key}`, params }));
  process.exit(1);
};

function options() {
  try {
    return parseArgs({
      options: {
        interface: { type: 'string', default: 'all' },
        port: { type: 'string', default: '4180' },
        data: { type: 'string', default: 'class-data' },
        language: { type: 'string', default: 'en' },
        app: { type: 'string', default: 'dist' },
        lessons: { type: 'string', default: 'lessons' },
        delete: { type: 'boolean', default: false },
        help: { type: 'boolean', default: false },
      },
    }).values;
  } catch (error) {
    return stop('bad-option', { reason: error instanceof Error ? error.message : String(error) });
  }
}

const given = options();
const data = resolve(given.data);
if (given.help) {
  tell('help');
  process.exit(0);
}
const user = usedBy(data);
if (user !== null) stop('in-use', { folder: given.data, pid: user });
if (given.delete) {
  tell('deleted', { count: deleteClass(data), folder: given.data });
  process.exit(0);
}
const listening =
  listenOn(given.interface) ??
  stop('no-interface', { name: given.interface, known: ownAddresses().map((each) => each.interface) });
const port = Number(given.port);
if (!Number.isInteger(port) || port < 0 || port > 65535) stop('bad-port', { port: given.port });
const app = resolve(root, given.app);
if (!existsSync(join(app, 'index.html'))) stop('no-app', { folder: given.app });

const stock = openStock(
  resolve(root, given.lessons),
  given.language,
  readSubject(join(app, 'baked'), 'alder-one'),
  (faults) => {
    console.error(printFaults(faults));
    tell('no-course');
  },
);

const host = await startHost({
  app,
  data,
  interface: listening,
  port,
  stock,
  addresses: (at) => webAddresses(listening, at),
  onFailure: (reason) =>
    stop('disk', { folder: given.data, reason: reason instanceof Error ? reason.message : String(reason) }),
}).catch((error: NodeJS.ErrnoException) =>
  stop(error.code === 'EADDRINUSE' ? 'port-taken' : 'no-start', { port: given.port, reason: error.message }),
);
const giveFree = takeFolder(data);

const addresses = webAddresses(listening, host.port);
const phones = `${addresses[0]}#/class/${host.secrets.code}`;
console.log('');
for (const line of qrLines(phones, process.stdout.isTTY === true)) console.log(`  ${line}`);
console.log('');
for (const address of addresses) tell('join', { address: `${address}#/class` });
tell('code', { code: host.secrets.code });
tell('instructor', { address: `http://127.0.0.1:${host.port}/#/class/host/${host.secrets.secret}` });
tell('data', { folder: given.data });
if (host.store.lost > 0) tell('lost', { count: host.store.lost });
const { session } = host.store.state();
if (session !== null) tell('resumed', { title: host.store.state().settings.title, at: session.at + 1 });
tell('stop');

let stopping = false;
for (const signal of ['SIGINT', 'SIGTERM'] as const)
  process.on(signal, () => {
    if (stopping) process.exit(1);
    stopping = true;
    void host.close().then(() => {
      giveFree();
      process.exit(0);
    });
  });
