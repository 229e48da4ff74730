/** The fault book of a machine, checked, written for the app as faults.json; nothing where the machine has none. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseFaultBook } from '../../src/core/faults';
import { ok, type Result } from '../../src/core/kernel';
import type { Machine } from '../../src/core/machine';
import { readFaultFolder } from '../../src/edge/content/model-files';

/** @param folder of the machine's files; @param out folder that the app fetches from */
export function bakeFaults(folder: string, machine: Machine, out: string): Result<number> {
  const target = join(out, 'faults.json');
  rmSync(target, { force: true });
  const files = readFaultFolder(folder);
  if (files.length === 0) return ok(0);
  const book = parseFaultBook(files, machine);
  if (!book.ok) return book;
  mkdirSync(out, { recursive: true });
  writeFileSync(target, JSON.stringify(book.value));
  return ok(book.value.faults.length);
}
