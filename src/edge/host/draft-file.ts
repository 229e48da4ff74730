/**
 * The sheet that was drawn and not yet begun, in a file of its own beside the journals: it is replaced as a whole, so that
 * a host killed at any moment finds the old sheet or the new one.
 */
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { open, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { type ClassQuestion, readQuestions } from '../../core/classroom';

export const DRAFT_NAME = 'draft.json';
export type Draft = readonly ClassQuestion[] | null;

/** The kept sheet; null when there is none that can be read. */
export function readDraft(folder: string): Draft {
  const path = join(folder, DRAFT_NAME);
  if (!existsSync(path)) return null;
  try {
    return readQuestions(JSON.parse(readFileSync(path, 'utf8')));
  } catch {
    return null;
  }
}

/** Resolves once it is on the disk. */
export async function keepDraft(folder: string, draft: Draft): Promise<void> {
  const path = join(folder, DRAFT_NAME);
  if (draft === null) {
    rmSync(path, { force: true });
    return;
  }
  const handle = await open(`${path}.new`, 'w', 0o600);
  await handle.writeFile(JSON.stringify(draft));
  await handle.sync();
  await handle.close();
  await rename(`${path}.new`, path);
}
