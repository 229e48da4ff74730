/** Entry of `npm run -s calc`: prints the list of calculations, or computes one from standard input. */
import { text } from 'node:stream/consumers';
import { CALCULATIONS } from './registry';
import { runCalc } from './run-calc';

const printed = await runCalc(CALCULATIONS, process.argv.slice(2), () =>
  // at a terminal there is nothing to read: say so instead of waiting
  process.stdin.isTTY ? Promise.resolve('') : text(process.stdin),
);
process.stdout.write(printed.stdout);
process.stderr.write(printed.stderr);
process.exitCode = printed.code;
