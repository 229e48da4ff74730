/**
 * Machine files in, a machine or all their faults out. Each file is checked against the schema by itself, then the
 * files are merged and every reference is checked. A fault names file, line and path.
 */
import { isNode, LineCounter, parseDocument, type Document } from 'yaml';
import type { z } from 'zod';
import { type Fault, fail, message, type Message, ok, printFound, type Result } from '../kernel';
import { expandMachine, type Machine } from './machine';
import { type CompleteMachineFile, type MachineFile, machineFileSchema, SCHEMA_VERSION } from './schema';
import { checkReferences, type Locate } from './references';

export interface SourceFile {
  readonly name: string;
  readonly text: string;
}

/** Largest text that is read, in characters; a machine is some hundred thousand. */
const TEXT_LIMIT = 5_000_000;

interface Read {
  readonly name: string;
  readonly data: MachineFile;
  readonly lineOf: (path: readonly PropertyKey[]) => number | undefined;
}

/** `parts[3].bore_m` from ['parts', 3, 'bore_m']. */
export function printPath(path: readonly PropertyKey[]): string {
  let text = '';
  for (const step of path)
    text += typeof step === 'number' ? `[${step}]` : text === '' ? String(step) : `.${String(step)}`;
  return text === '' ? '(whole file)' : text;
}

/** The line on which a path stands, or the nearest line above it in the data. */
function lineFinder(doc: Document, counter: LineCounter): Read['lineOf'] {
  return (path) => {
    for (let length = path.length; length >= 0; length--) {
      const at = path.slice(0, length);
      const node = at.length === 0 ? doc.contents : doc.getIn(at as unknown[], true);
      if (isNode(node) && node.range) return counter.linePos(node.range[0]).line;
    }
    return undefined;
  };
}

/** What a schema issue expected, as a catalogue message. */
function expectedOf(issue: z.core.$ZodIssue): Message {
  switch (issue.code) {
    case 'invalid_type':
      return message('fault.type', { type: message(`fault.type.${issue.expected}`) });
    case 'too_small':
      return message(
        issue.origin === 'number' || issue.origin === 'int'
          ? issue.inclusive
            ? 'fault.at-least'
            : 'fault.greater'
          : 'fault.more-entries',
        {
          limit: Number(issue.minimum),
        },
      );
    case 'too_big':
      return message(issue.inclusive ? 'fault.at-most' : 'fault.less', { limit: Number(issue.maximum) });
    case 'invalid_value':
      return message('fault.one-of', { values: issue.values.map(String) });
    case 'invalid_format':
      return message('fault.id');
    case 'unrecognized_keys':
      return message('fault.no-such-key', { keys: [...issue.keys] });
    case 'invalid_union':
      return issue.discriminator === undefined
        ? message('fault.shape')
        : message('fault.known-kind', { key: issue.discriminator });
    default:
      return message('fault.shape');
  }
}

/** Follows a path into plain data; undefined where it leads nowhere. */
function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, step) =>
      typeof at === 'object' && at !== null ? (at as Record<PropertyKey, unknown>)[step] : undefined,
    data,
  );
}

function readFile(file: SourceFile): Result<Read> {
  if (file.text.length > TEXT_LIMIT) {
    return fail([
      {
        file: file.name,
        path: printPath([]),
        expected: message('fault.text-limit', { limit: TEXT_LIMIT }),
        found: String(file.text.length),
      },
    ]);
  }
  const counter = new LineCounter();
  const doc = parseDocument(file.text, { lineCounter: counter, prettyErrors: false, uniqueKeys: true });
  if (doc.errors.length > 0) {
    return fail(
      doc.errors.map((e) => ({
        file: file.name,
        line: counter.linePos(e.pos[0]).line,
        path: printPath([]),
        expected: message('fault.yaml'),
        found: printFound(e.message),
      })),
    );
  }
  let data: unknown;
  try {
    data = doc.toJS({ maxAliasCount: 100 });
  } catch (e) {
    return fail([
      {
        file: file.name,
        path: printPath([]),
        expected: message('fault.yaml'),
        found: printFound((e as Error).message),
      },
    ]);
  }
  const lineOf = lineFinder(doc, counter);
  const parsed = machineFileSchema.safeParse(data);
  if (!parsed.success) {
    return fail(
      parsed.error.issues.map((issue) => {
        const line = lineOf(issue.path);
        const found =
          issue.code === 'unrecognized_keys' ? issue.keys.join(', ') : printFound(valueAt(data, issue.path));
        return {
          file: file.name,
          ...(line === undefined ? {} : { line }),
          path: printPath(issue.path),
          expected: expectedOf(issue),
          found,
        };
      }),
    );
  }
  return ok({ name: file.name, data: parsed.data, lineOf });
}

const LISTS = ['parts', 'groups', 'relations'] as const;
const MAPS = ['sources', 'materials', 'kinds', 'options', 'set_names'] as const;
const SINGLES = ['machine', 'operation'] as const;

/** Joins read files; a map's key or a single section that stands twice is a fault. */
function merge(reads: readonly Read[], faults: Fault[]): { file: MachineFile; locate: Locate } {
  const out: Record<string, unknown> = { schema_version: SCHEMA_VERSION };
  const origin = new Map<string, { read: Read; path: PropertyKey[] }>();
  const at = (read: Read, path: PropertyKey[]): Pick<Fault, 'file' | 'line' | 'path'> => {
    const line = read.lineOf(path);
    return { file: read.name, ...(line === undefined ? {} : { line }), path: printPath(path) };
  };
  for (const read of reads) {
    for (const section of LISTS) {
      const list = (out[section] ??= []) as unknown[];
      (read.data[section] ?? []).forEach((entry, i) => {
        origin.set(`${section}/${list.length}`, { read, path: [section, i] });
        list.push(entry);
      });
    }
    for (const section of MAPS) {
      const map = (out[section] ??= {}) as Record<string, unknown>;
      for (const [key, value] of Object.entries(read.data[section] ?? {})) {
        if (key in map)
          faults.push({ ...at(read, [section, key]), expected: message('fault.once'), found: key });
        else origin.set(`${section}/${key}`, { read, path: [section, key] });
        map[key] = value;
      }
    }
    for (const section of SINGLES) {
      const value = read.data[section];
      if (value === undefined) continue;
      if (out[section] !== undefined)
        faults.push({ ...at(read, [section]), expected: message('fault.once'), found: section });
      else origin.set(`${section}/`, { read, path: [section] });
      out[section] = value;
    }
  }
  const locate: Locate = (section, key, ...rest) => {
    const home = origin.get(`${section}/${key}`);
    return home === undefined
      ? { path: printPath([section, key, ...rest]) }
      : at(home.read, [...home.path, ...rest]);
  };
  return { file: out as MachineFile, locate };
}

/** A machine together with the way back to its files, for faults that only show once solids are built. */
export interface SourcedMachine {
  readonly machine: Machine;
  /** The files as one, validated: what `yaml` writes of it is a machine file again. */
  readonly file: CompleteMachineFile;
  /** File, line and path of an entry by its id (of `parts`, `groups`, `kinds`) or its number (of `relations`). */
  readonly where: (
    section: 'parts' | 'groups' | 'kinds' | 'relations',
    id: string | number,
    ...rest: (string | number)[]
  ) => Pick<Fault, 'file' | 'line' | 'path'>;
}

/** Reads the files of one machine; all faults at once, each with its file, line and path. */
export function parseMachine(files: readonly SourceFile[]): Result<SourcedMachine> {
  const reads: Read[] = [];
  const faults: Fault[] = [];
  for (const file of files) {
    const read = readFile(file);
    if (read.ok) reads.push(read.value);
    else faults.push(...read.faults);
  }
  if (faults.length > 0) return fail(faults);
  const { file, locate } = merge(reads, faults);
  for (const section of ['machine', 'operation', 'kinds', 'parts'] as const) {
    const value = file[section];
    if (value === undefined || Object.keys(value).length === 0) {
      faults.push({
        file: files.map((f) => f.name).join(', '),
        path: section,
        expected: message('fault.section'),
        found: printFound(undefined),
      });
    }
  }
  if (faults.length > 0) return fail(faults);
  const complete = file as CompleteMachineFile;
  faults.push(...checkReferences(complete, locate));
  if (faults.length > 0) return fail(faults);
  const numberOf = (section: 'parts' | 'groups', id: string): number =>
    (complete[section] ?? []).findIndex((entry) => entry.id === id);
  const where: SourcedMachine['where'] = (section, id, ...rest) =>
    locate(
      section,
      typeof id === 'string' && section !== 'kinds' && section !== 'relations' ? numberOf(section, id) : id,
      ...rest,
    );
  return ok({ machine: expandMachine(complete), file: complete, where });
}
