/** One YAML file against a schema: the data, or every fault with its file, line and path. Any kind of model file. */
import { isNode, LineCounter, parseDocument, type Document } from 'yaml';
import type { z } from 'zod';
import { type Fault, fail, message, type Message, ok, printFound, type Result } from '../kernel';

export interface SourceFile {
  readonly name: string;
  readonly text: string;
}

/** Largest text that is read, in characters; a machine is some hundred thousand. */
const TEXT_LIMIT = 5_000_000;

/** A file that its schema accepts, with the way back to its lines. */
export interface ReadYaml<T> {
  readonly name: string;
  readonly data: T;
  readonly lineOf: (path: readonly PropertyKey[]) => number | undefined;
}

/** `parts[3].bore_m` from ['parts', 3, 'bore_m']. */
export function printPath(path: readonly PropertyKey[]): string {
  let text = '';
  for (const step of path)
    text += typeof step === 'number' ? `[${step}]` : text === '' ? String(step) : `.${String(step)}`;
  return text === '' ? '(whole file)' : text;
}

/** Where a path stands in a read file, for faults that its schema cannot see. */
export function placeIn(
  read: ReadYaml<unknown>,
  path: readonly PropertyKey[],
): Pick<Fault, 'file' | 'line' | 'path'> {
  const line = read.lineOf(path);
  return { file: read.name, ...(line === undefined ? {} : { line }), path: printPath(path) };
}

/** The line on which a path stands, or the nearest line above it in the data. */
function lineFinder(doc: Document, counter: LineCounter): ReadYaml<unknown>['lineOf'] {
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
export function expectedOf(issue: z.core.$ZodIssue): Message {
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
    case 'custom':
      // A schema's own check says itself what it expected.
      return (issue.params?.['expected'] as Message | undefined) ?? message('fault.shape');
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

/** What a schema issue found at its path, printed short. */
export const foundAt = (data: unknown, issue: z.core.$ZodIssue): string =>
  issue.code === 'unrecognized_keys' ? issue.keys.join(', ') : printFound(valueAt(data, issue.path));

/** Reads one file; its schema's issues, or what makes it no YAML at all, come back all at once. */
export function readYaml<S extends z.ZodType>(file: SourceFile, schema: S): Result<ReadYaml<z.output<S>>> {
  const whole = (expected: Message, found: string): Result<never> =>
    fail([{ file: file.name, path: printPath([]), expected, found }]);
  if (file.text.length > TEXT_LIMIT) {
    return whole(message('fault.text-limit', { limit: TEXT_LIMIT }), String(file.text.length));
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
    return whole(message('fault.yaml'), printFound((e as Error).message));
  }
  const lineOf = lineFinder(doc, counter);
  const parsed = schema.safeParse(data);
  if (!parsed.success) {
    return fail(
      parsed.error.issues.map((issue) => ({
        ...placeIn({ name: file.name, data, lineOf }, issue.path),
        expected: expectedOf(issue),
        found: foundAt(data, issue),
      })),
    );
  }
  return ok({ name: file.name, data: parsed.data, lineOf });
}
