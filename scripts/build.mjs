/** Builds the app into dist/: bakes the machines into public/baked, then bundles. */
import { runBin } from './lib/run.mjs';

for (const [name, args] of [
  ['tsx', ['scripts/bake.ts']],
  ['vite', ['build', '--logLevel', 'warn']],
]) {
  const { status } = runBin(name, args);
  if (status !== 0) process.exit(status);
}
