/**
 * The class on disk: a folder with one journal a session. The state is what the newest journal comes to; older ones are
 * the sessions before. Events are judged against what has been written so far and what is on its way to the disk, and
 * are seen by others only once they are there.
 */
import { mkdirSync, readdirSync, renameSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { join } from 'node:path';
import {
  apply,
  type ClassEvent,
  type ClassState,
  EMPTY_CLASS,
  judge,
  type PastSession,
  readEvent,
  type Verdict,
} from '../../core/classroom';
import { type Journal, journalLine, openJournal, readJournal } from './journal';

const FORM = 1;
const NAME = /^journal-(\d{6})\.log$/;
const nameOf = (number: number): string => `journal-${String(number).padStart(6, '0')}.log`;

/** What a journal holds: first the class as it was, then what happened. */
type Entry = { readonly form: number; readonly state: ClassState } | { readonly event: unknown };

export interface Found {
  readonly state: ClassState;
  /** Lines that could not be read, or that did not fit what came before. */
  readonly lost: number;
  readonly torn: boolean;
}

const isState = (entry: Entry): entry is Extract<Entry, { state: ClassState }> =>
  'state' in entry && entry.form === FORM;

/** The class that a journal comes to. */
export function replay(path: string): Found {
  const { records, damaged, torn } = readJournal(path);
  let state = EMPTY_CLASS;
  let lost = damaged;
  for (const record of records as readonly Entry[]) {
    if (isState(record)) {
      state = record.state;
      continue;
    }
    const event = 'event' in record ? readEvent(record.event) : null;
    if (event !== null && judge(state, event).verdict === 'take') state = apply(state, event);
    else lost++;
  }
  return { state, lost, torn };
}

export interface ClassStore {
  /** What is on the disk; anyone may be told of it. */
  readonly state: () => ClassState;
  /** Takes an event, or says why not; resolves once it is on the disk. */
  put(event: ClassEvent): Promise<Verdict>;
  readonly past: () => readonly PastSession[];
  /** The class as it was in an earlier session; null when there is none of that id. */
  pastState(id: string): ClassState | null;
  /** Lines lost when the folder was opened. */
  readonly lost: number;
  readonly torn: boolean;
  close(): Promise<void>;
}

/** @param onFailure called once, when the disk refuses; nothing more is taken then */
export async function openClass(folder: string, onFailure: (reason: unknown) => void): Promise<ClassStore> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const numbers = readdirSync(folder)
    .flatMap((name) => NAME.exec(name)?.[1] ?? [])
    .map(Number)
    .sort((a, b) => a - b);
  let number = numbers.at(-1) ?? 1;
  const path = join(folder, nameOf(number));
  const found = replay(path);
  let ahead = found.state;
  let durable = found.state;
  let journal: Journal = await openJournal(path, readJournal(path));
  const past = new Map<string, PastSession & { readonly number: number }>();
  const remember = (state: ClassState, at: number): void => {
    const { session, settings } = state;
    if (session !== null)
      past.set(session.id, { id: session.id, title: settings.title, at_ms: session.at_ms, number: at });
  };
  for (const each of numbers.slice(0, -1)) remember(replay(join(folder, nameOf(each))).state, each);

  let failed = false;
  const fail = (reason: unknown): never => {
    if (!failed) onFailure(reason);
    failed = true;
    throw reason;
  };

  /** A session that has been asked from stays in its own file; the next begins a new one. */
  async function turnOver(): Promise<void> {
    const before = durable;
    const next = join(folder, nameOf(number + 1));
    const handle = await open(`${next}.new`, 'w', 0o600);
    await handle.writeFile(journalLine(1, { form: FORM, state: { ...ahead, session: null } }));
    await handle.sync();
    await handle.close();
    renameSync(`${next}.new`, next);
    await journal.close();
    remember(before, number);
    number++;
    ahead = { ...ahead, session: null };
    journal = await openJournal(next, readJournal(next));
  }

  let turning: Promise<void> | null = null;

  async function write(event: ClassEvent): Promise<Verdict> {
    const verdict = judge(ahead, event);
    if (verdict.verdict !== 'take') return verdict;
    ahead = apply(ahead, event);
    const reached = ahead;
    await journal.append({ event });
    durable = reached;
    return verdict;
  }

  return {
    state: () => durable,
    past: () => [...past.values()].map(({ id, title, at_ms }) => ({ id, title, at_ms })).reverse(),
    pastState(id) {
      const entry = past.get(id);
      return entry === undefined ? null : replay(join(folder, nameOf(entry.number))).state;
    },
    lost: found.lost,
    torn: found.torn,
    async put(event) {
      if (failed) throw new Error('host/put: the disk has refused');
      try {
        while (turning !== null) await turning;
        const begun = ahead.session !== null && ahead.session.phase !== 'lobby';
        if (event.type === 'session' && begun && judge(ahead, event).verdict === 'take') {
          turning = turnOver().finally(() => {
            turning = null;
          });
          await turning;
        }
        return await write(event);
      } catch (error) {
        return fail(error);
      }
    },
    async close() {
      while (turning !== null) await turning;
      await journal.close();
    },
  };
}
