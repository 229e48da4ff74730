/**
 * Checks what was typed against a calculation's schema and reports every fault at once.
 *
 * A null in place of an input that may be left out counts as left out. Keys that the calculation does not
 * know are not an error, but they are noted: a misspelt optional key must not pass in silence.
 */
import { z } from 'zod';
import { fail, message, ok, printFound, type Fault, type Message, type Result } from '../../core/kernel';

export interface CheckedInput {
  readonly value: unknown;
  /** Paths of keys that the schema does not know. */
  readonly unknown: readonly string[];
}

export function checkInput(schema: z.ZodObject, raw: unknown): Result<CheckedInput> {
  const unknown: string[] = [];
  const tidy = dropNulls(schema, raw, '', unknown);
  const parsed = schema.safeParse(tidy);
  if (parsed.success) return ok({ value: parsed.data, unknown });
  return fail(parsed.error.issues.flatMap((issue) => faultsOf(issue, tidy)));
}

/** A copy without nulls where the schema lets a key be left out; notes keys that it does not know. */
function dropNulls(schema: unknown, value: unknown, path: string, unknown: string[]): unknown {
  const inner = unwrap(schema);
  if (Array.isArray(value)) {
    if (!(inner instanceof z.ZodArray)) return value;
    return value.map((item, i) => dropNulls(inner.element, item, `${path}[${i}]`, unknown));
  }
  if (!(inner instanceof z.ZodObject) || typeof value !== 'object' || value === null) return value;
  const copy: Record<string, unknown> = {};
  for (const [key, item] of Object.entries(value)) {
    const field: unknown = Object.hasOwn(inner.shape, key) ? inner.shape[key] : undefined;
    const at = path === '' ? key : `${path}.${key}`;
    if (field === undefined) {
      unknown.push(at);
    } else if (item !== null || !(field instanceof z.ZodOptional || field instanceof z.ZodDefault)) {
      copy[key] = dropNulls(field, item, at, unknown);
    }
  }
  return copy;
}

function unwrap(schema: unknown): unknown {
  let inner = schema;
  while (inner instanceof z.ZodOptional || inner instanceof z.ZodNullable || inner instanceof z.ZodDefault) {
    inner = inner.unwrap();
  }
  return inner;
}

function faultsOf(issue: z.core.$ZodIssue, raw: unknown): Fault[] {
  const path = issue.path.map(String);
  return [{ path: pathText(issue.path), expected: expectedOf(issue), found: printFound(valueAt(raw, path)) }];
}

function expectedOf(issue: z.core.$ZodIssue): Message {
  switch (issue.code) {
    case 'invalid_type':
      return message('calc.expected.type', { type: issue.expected });
    case 'too_small':
      return message(
        issue.inclusive === false ? 'calc.expected.above' : sized('calc.expected.at-least', issue.origin),
        {
          limit: Number(issue.minimum),
        },
      );
    case 'too_big':
      return message(
        issue.inclusive === false ? 'calc.expected.below' : sized('calc.expected.at-most', issue.origin),
        {
          limit: Number(issue.maximum),
        },
      );
    case 'invalid_value':
      return message('calc.expected.one-of', {
        words: issue.values.map((value) => JSON.stringify(value) ?? String(value)),
      });
    case 'invalid_union':
      return message('calc.expected.either', {
        options: issue.errors.flatMap((option) => option.slice(0, 1).map(expectedOf)),
      });
    default:
      return message('calc.expected.other', { what: issue.message });
  }
}

/** Lists and texts are measured by their length. */
const sized = (key: string, origin: string): string =>
  origin === 'array' || origin === 'string' ? `${key}-entries` : key;

function valueAt(raw: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[key] : undefined,
    raw,
  );
}

function pathText(path: readonly PropertyKey[]): string {
  const text = path
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '');
  return text === '' ? '(input)' : text;
}
