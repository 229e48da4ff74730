/** Builds the app into dist/: bakes the machines into public/baked, bundles, then lists the files for offline use. */
import { buildServiceWorker } from './lib/precache.mjs';
import { runBin } from './lib/run.mjs';

for (const [name, args] of [
  ['tsx', ['scripts/bake.ts']],
  ['vite', ['build', '--logLevel', 'warn']],
]) {
  const { status } = runBin(name, args);
  if (status !== 0) process.exit(status);
}
await buildServiceWorker();
