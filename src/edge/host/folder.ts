/** The data folder: one host at a time, and deleting what it holds. */
import { existsSync, readdirSync, readFileSync, rmdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const LOCK = 'running.pid';
/** What the host writes; nothing else in the folder is ever touched. */
const OWN = /^(journal-\d{6}\.log(\.new)?|draft\.json(\.new)?|host\.json|running\.pid)$/;

const lives = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
};

/** Number of the process that uses the folder, as far as can be told; null: nobody. */
export function usedBy(folder: string): number | null {
  const path = join(folder, LOCK);
  if (!existsSync(path)) return null;
  const pid = Number(readFileSync(path, 'utf8'));
  return Number.isInteger(pid) && pid > 0 && pid !== process.pid && lives(pid) ? pid : null;
}

/** Marks the folder as in use; the function returned gives it free. */
export function takeFolder(folder: string): () => void {
  const path = join(folder, LOCK);
  writeFileSync(path, String(process.pid), { mode: 0o600 });
  return () => rmSync(path, { force: true });
}

/** Deletes all that hosts have written there, and the folder when nothing else is in it. How many files went. */
export function deleteClass(folder: string): number {
  if (!existsSync(folder)) return 0;
  const own = readdirSync(folder).filter((name) => OWN.test(name));
  for (const name of own) rmSync(join(folder, name));
  if (readdirSync(folder).length === 0) rmdirSync(folder);
  return own.length;
}
