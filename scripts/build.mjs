/** Builds the app into dist/: bakes the machines into public/baked, bundles, then lists the files for offline use. */
import { join } from 'node:path';
import { buildServiceWorker, writeFileList } from './lib/precache.mjs';
import { root, runBin } from './lib/run.mjs';

for (const [name, args] of [
  ['tsx', ['scripts/bake.ts']],
  ['vite', ['build', '--logLevel', 'warn']],
]) {
  const { status } = runBin(name, args);
  if (status !== 0) process.exit(status);
}
writeFileList(join(root, 'dist'));
await buildServiceWorker();
