/** Development server: bakes the machines once, then serves with hot reload. */
import { runBin, startBin } from './lib/run.mjs';

const baked = runBin('tsx', ['scripts/bake.ts']);
if (baked.status !== 0) process.exit(baked.status);
const child = startBin('vite', process.argv.slice(2));
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
child.on('exit', (code) => process.exit(code ?? 0));
