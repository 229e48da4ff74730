/**
 * Everything that one browser keeps of a person's work as one file: each record under a checksum, so that a file that
 * was cut or changed gives back what is whole and says what is not.
 */
import { z } from 'zod';
import { type Fault, fail, hashText, message, ok, printFound, type Result } from '../kernel';

export interface KeptRecord {
  readonly collection: string;
  readonly key: string;
  readonly text: string;
}

export const ARCHIVE_FORMAT = 'drumbench-records';
export const ARCHIVE_VERSION = 1;
/** Larger files are no archive of one person. */
export const MOST_ARCHIVE_BYTES = 64 * 1024 * 1024;

const checkOf = ({ collection, key, text }: KeptRecord): string => hashText(collection, key, text);

const headSchema = z.object({
  format: z.literal(ARCHIVE_FORMAT),
  schema_version: z.int().min(1),
  records: z.array(z.unknown()),
});
const recordSchema = z.strictObject({
  collection: z.string().min(1).max(100),
  key: z.string().min(1).max(400),
  text: z.string().max(8 * 1024 * 1024),
  check: z.string(),
});

/** @param at_ms milliseconds of the clock, for the person to tell files apart */
export function archiveText(records: readonly KeptRecord[], at_ms: number): string {
  const sorted = [...records].sort((a, b) => compare(a.collection, b.collection) || compare(a.key, b.key));
  const lines = sorted.map(({ collection, key, text }) =>
    JSON.stringify({ collection, key, text, check: checkOf({ collection, key, text }) }),
  );
  const head = `"format":"${ARCHIVE_FORMAT}","schema_version":${ARCHIVE_VERSION},"at_ms":${at_ms}`;
  // One record a line, so that a file cut short can be read up to there.
  return `{${head},"records":[\n${lines.join(',\n')}\n]}\n`;
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export interface ReadArchive {
  readonly records: readonly KeptRecord[];
  /** What of the file could not be used, each with its place. */
  readonly faults: readonly Fault[];
}

/** Whole records of an archive beside the faults of the others; a failure where it is no archive at all. */
export function readArchive(text: string, file?: string): Result<ReadArchive> {
  const at = file === undefined ? {} : { file };
  const whole = parse(text);
  const data = whole ?? salvaged(text);
  const head = headSchema.safeParse(data);
  if (!head.success)
    return fail([
      {
        ...at,
        path: '(whole file)',
        expected: message('records.expected.archive'),
        found: printFound(data ?? text),
      },
    ]);
  if (head.data.schema_version > ARCHIVE_VERSION)
    return fail([
      {
        ...at,
        path: 'schema_version',
        expected: message('records.expected.version', { version: ARCHIVE_VERSION }),
        found: String(head.data.schema_version),
      },
    ]);
  const faults: Fault[] = [];
  if (whole === null)
    faults.push({
      ...at,
      path: 'records',
      expected: message('records.expected.end'),
      found: printFound(text.slice(-40)),
    });
  const records: KeptRecord[] = [];
  head.data.records.forEach((each, i) => {
    const read = recordSchema.safeParse(each);
    if (read.success && read.data.check === checkOf(read.data)) {
      const { collection, key, text: kept } = read.data;
      records.push({ collection, key, text: kept });
    } else
      faults.push({
        ...at,
        path: `records[${i}]`,
        expected: message('records.expected.whole'),
        found: printFound(each),
      });
  });
  return ok({ records, faults });
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return null;
  }
}

/** A file that was cut: its head and every line that is a record. */
function salvaged(text: string): unknown {
  const lines = text.split('\n');
  const head = parse(`${lines[0] ?? ''}]}`);
  if (typeof head !== 'object' || head === null) return null;
  const records = lines.slice(1).flatMap((line) => parse(line.replace(/,$/, '')) ?? []);
  return { ...head, records };
}
