/** npm start: builds when the sources changed, serves dist/ and prints the address. */
import { join } from 'node:path';
import { ensureBuilt } from './lib/built.mjs';
import { root } from './lib/run.mjs';
import { serveFolder } from './lib/serve.mjs';

ensureBuilt();
const portAt = process.argv.indexOf('--port');
const { url } = await serveFolder(join(root, 'dist'), {
  port: portAt > 0 ? Number(process.argv[portAt + 1]) : 4173,
});
console.log(`\n  Drumbench is ready: ${url}\n  (Ctrl+C stops it.)\n`);
