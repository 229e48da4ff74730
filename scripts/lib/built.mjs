/** Builds the app into dist/ when something that the build reads has changed since the last time. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root, runScript } from './run.mjs';

/** One hash over everything the build reads. */
function sourcesHash() {
  const hash = createHash('sha256');
  const walk = (path) => {
    for (const entry of readdirSync(path, { withFileTypes: true }).sort((a, b) =>
      a.name.localeCompare(b.name),
    )) {
      const full = join(path, entry.name);
      if (entry.isDirectory()) {
        if (entry.name !== 'baked') walk(full);
      } else hash.update(full.slice(root.length)).update(readFileSync(full));
    }
  };
  for (const folder of ['src', 'models', 'lessons', 'public', 'scripts'])
    if (existsSync(join(root, folder))) walk(join(root, folder));
  for (const file of ['package-lock.json', 'vite.config.ts', 'index.html', 'tsconfig.json'])
    hash.update(readFileSync(join(root, file)));
  return hash.digest('hex');
}

/** Ends the process when the build fails. */
export function ensureBuilt() {
  const stamp = join(root, '.cache', 'built');
  const hash = sourcesHash();
  const fresh =
    existsSync(join(root, 'dist', 'index.html')) && existsSync(stamp) && readFileSync(stamp, 'utf8') === hash;
  if (fresh) return;
  console.log('Building Drumbench ...');
  const { status } = runScript('build.mjs');
  if (status !== 0) process.exit(status);
  mkdirSync(join(root, '.cache'), { recursive: true });
  writeFileSync(stamp, hash);
}
