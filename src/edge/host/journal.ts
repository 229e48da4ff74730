/**
 * An append-only journal: one record a line, with its number and a checksum. A record counts once it is on the disk
 * (fdatasync); many that come at the same time share one. Killed at any moment, what was promised is there: a line
 * that was torn when the power went is dropped, since nobody had been told of it.
 */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, truncateSync } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';

const CHECK_LETTERS = 16;
const checkOf = (number: number, text: string): string =>
  createHash('sha256').update(`${number} ${text}`).digest('hex').slice(0, CHECK_LETTERS);

export const journalLine = (number: number, record: unknown): string => {
  const text = JSON.stringify(record);
  return `${number} ${checkOf(number, text)} ${text}\n`;
};

export interface JournalRead {
  readonly records: readonly unknown[];
  /** Bytes up to the end of the last whole line. */
  readonly bytes: number;
  /** Highest number given so far. */
  readonly last: number;
  /** Records that are missing or cannot be read, and lines that come a second time. */
  readonly damaged: number;
  /** A last line that was not written to its end. */
  readonly torn: boolean;
}

/** Reads what can be read; a file that is not there is empty. */
export function readJournal(path: string): JournalRead {
  if (!existsSync(path)) return { records: [], bytes: 0, last: 0, damaged: 0, torn: false };
  const data = readFileSync(path);
  const end = data.lastIndexOf(0x0a) + 1;
  const records: unknown[] = [];
  const lines = data.subarray(0, end).toString('utf8').split('\n').slice(0, -1);
  let last = 0;
  for (const line of lines) {
    const read = readLine(line);
    // Numbers rise: a line that was copied to another place is not what happened there.
    if (read === null || read.number <= last) continue;
    last = read.number;
    records.push(read.record);
  }
  last = Math.max(last, lines.length);
  return { records, bytes: end, last, damaged: last - records.length, torn: end < data.length };
}

function readLine(line: string): { readonly number: number; readonly record: unknown } | null {
  const [at, check] = line.split(' ', 2);
  const number = Number(at);
  const text = line.slice((at?.length ?? 0) + (check?.length ?? 0) + 2);
  if (!Number.isInteger(number) || check !== checkOf(number, text)) return null;
  try {
    return { number, record: JSON.parse(text) as unknown };
  } catch {
    return null;
  }
}

export interface Journal {
  /** Resolves once the record is on the disk; rejects when it could not be written. */
  append(record: unknown): Promise<void>;
  close(): Promise<void>;
}

/** Opens for writing after what `readJournal` found; a torn end is cut off first. */
export async function openJournal(path: string, found: JournalRead): Promise<Journal> {
  if (found.torn) truncateSync(path, found.bytes);
  const handle = await open(path, 'a', 0o600);
  return writer(handle, found.last);
}

interface Waiting {
  readonly line: string;
  readonly done: () => void;
  readonly failed: (reason: unknown) => void;
}

function writer(handle: FileHandle, written: number): Journal {
  let number = written;
  let queue: Waiting[] = [];
  let working: Promise<void> | null = null;
  let broken: unknown;

  async function work(): Promise<void> {
    while (queue.length > 0) {
      const batch = queue;
      queue = [];
      try {
        if (broken !== undefined) throw broken;
        await handle.appendFile(batch.map((each) => each.line).join(''));
        await handle.datasync();
        for (const each of batch) each.done();
      } catch (error) {
        // After a failed write nobody knows what is on the disk: nothing more is promised.
        broken = error;
        for (const each of batch) each.failed(error);
      }
    }
    working = null;
  }

  return {
    append: (record) =>
      new Promise((done, failed) => {
        queue.push({ line: journalLine(++number, record), done, failed });
        working ??= Promise.resolve().then(work);
      }),
    async close() {
      await working;
      await handle.close();
    },
  };
}
