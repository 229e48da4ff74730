/** npm run classroom: builds when the sources changed, then runs the class host (src/edge/host/main.ts). */
import { spawn } from 'node:child_process';
import { ensureBuilt } from './lib/built.mjs';
import { root } from './lib/run.mjs';

const args = process.argv.slice(2);
if (!args.includes('--help') && !args.includes('--delete')) ensureBuilt();
const host = spawn(process.execPath, ['--import', 'tsx', 'src/edge/host/main.ts', ...args], {
  cwd: root,
  stdio: 'inherit',
});
// Ctrl+C reaches both from the terminal; the host closes its files, then this process ends with it.
process.on('SIGINT', () => {});
process.on('SIGTERM', () => host.kill('SIGTERM'));
host.on('exit', (code) => process.exit(code ?? 1));
