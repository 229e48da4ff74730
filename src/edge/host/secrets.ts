/** What lets people in: the class code, the instructor's secret, and the hashes by which the host knows phones. */
import { createHash, randomBytes, randomInt, timingSafeEqual } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CODE_LENGTH, CODE_LETTERS } from '../../core/classroom';

export interface Secrets {
  readonly code: string;
  /** 192 random bits, in the instructor's address only. */
  readonly secret: string;
}

const FILE = 'host.json';
const SECRET_BYTES = 24;

const newSecrets = (): Secrets => ({
  code: Array.from({ length: CODE_LENGTH }, () => CODE_LETTERS[randomInt(CODE_LETTERS.length)]).join(''),
  secret: randomBytes(SECRET_BYTES).toString('base64url'),
});

/** Those of the data folder, made once, so that addresses stay good when the host starts again. */
export function secretsOf(folder: string): Secrets {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const path = join(folder, FILE);
  if (existsSync(path)) {
    try {
      const { code, secret } = JSON.parse(readFileSync(path, 'utf8')) as Partial<Secrets>;
      if (typeof code === 'string' && typeof secret === 'string' && secret.length >= 32)
        return { code, secret };
    } catch {
      // A torn file is made anew: the addresses change, the class stays.
    }
  }
  const made = newSecrets();
  writeFileSync(path, JSON.stringify(made), { mode: 0o600 });
  return made;
}

/** Id of a phone: a hash of its token, so that the journal holds nothing that lets anyone in. */
export const learnerIdOf = (token: string): string =>
  createHash('sha256').update(token).digest('hex').slice(0, 32);

/** Compares in a time that does not tell how much was right. */
export function sameSecret(a: string, b: string): boolean {
  const digest = (text: string): Buffer => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(a), digest(b));
}
