/** npm run package: builds when the sources changed, then packs one lesson for a school's system (scripts/package.ts). */
import { ensureBuilt } from './lib/built.mjs';
import { runBin } from './lib/run.mjs';

const args = process.argv.slice(2);
if (!args.includes('--help')) ensureBuilt();
const { status } = runBin('tsx', ['scripts/package.ts', ...args]);
process.exit(status);
