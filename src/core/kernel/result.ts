/**
 * Results and faults: how bad data is reported.
 *
 * Bad data is a value, never a throw: a `Result` lists every fault at once, each with file, line and path.
 * A programmer's mistake throws (see `panic`). Core speaks in message keys with parameters; words/ turns
 * them into sentences of a language.
 */

/** A message of the catalogue: a key and its parameters (SI numbers, ids, or nested messages). */
export interface Message {
  readonly key: string;
  readonly params?: Readonly<Record<string, MessageParam>>;
}
export type MessageParam = string | number | boolean | Message | readonly Message[] | readonly string[];

/** Builds a message; `params` are SI numbers, ids or nested messages. */
export function message(key: string, params?: Readonly<Record<string, MessageParam>>): Message {
  return params === undefined ? { key } : { key, params };
}

/** One fault in data: where it is, what was expected, what was found. */
export interface Fault {
  /** File name as the person knows it, without folders of this machine. */
  readonly file?: string;
  /** Line in that file, from 1. */
  readonly line?: number;
  /** Path inside the data, such as `parts[3].bore_m`. */
  readonly path: string;
  /** What was expected, as a catalogue message. */
  readonly expected: Message;
  /** What was found, printed short (at most about 60 characters). */
  readonly found: string;
  /** 'error' stops the data from being used; 'note' does not. */
  readonly level?: 'error' | 'note';
}

export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly notes: readonly Fault[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export function ok<T>(value: T, notes: readonly Fault[] = []): Result<T> {
  return { ok: true, value, notes };
}

export function fail<T = never>(faults: readonly Fault[]): Result<T> {
  return { ok: false, faults };
}

/** Prints any found value short enough for one line of a fault list. */
export function printFound(value: unknown, limit = 60): string {
  if (value === undefined) return '(nothing)';
  let text: string;
  try {
    text = typeof value === 'bigint' ? `${value}n` : (JSON.stringify(value) ?? String(value));
  } catch {
    text = String(value);
  }
  return text.length > limit ? `${text.slice(0, limit - 1)}…` : text;
}

/** Throws a programmer's mistake: `folder/function: what, got, wanted`. */
export function panic(where: string, what: string, got?: unknown, wanted?: string): never {
  const tail = wanted === undefined ? '' : `, wanted ${wanted}`;
  throw new Error(
    got === undefined ? `${where}: ${what}${tail}` : `${where}: ${what}, got ${printFound(got)}${tail}`,
  );
}
