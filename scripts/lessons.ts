/**
 * Checks lessons, banks and glossary against the prepared machine and writes them for the app. Prints every fault as
 * `file:line path`. `--values WORD` lists the named values that hold WORD, with what they are now.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { decodeDocument, decodeGraph } from '../src/core/document';
import { toShown, UNITS } from '../src/core/kernel';
import { valuesOf } from '../src/core/quiz';
import { printFaults } from '../src/edge/cli/print-faults';
import { bakeLessons, subjectOf } from './lib/bake-lessons';

const root = resolve(import.meta.dirname, '..');
const baked = join(root, 'public', 'baked');
const bytes = (name: string): ArrayBuffer => {
  const { buffer, byteOffset, byteLength } = readFileSync(join(baked, name));
  return buffer.slice(byteOffset, byteOffset + byteLength) as ArrayBuffer;
};
if (!existsSync(join(baked, 'alder-one.bin'))) {
  console.error('No prepared machine: run `npm run bake` first.');
  process.exit(1);
}
const document = decodeDocument(bytes('alder-one.bin'));
const graph = existsSync(join(baked, 'alder-one.graph.bin'))
  ? decodeGraph(bytes('alder-one.graph.bin'), document.hash)
  : null;
const subject = subjectOf(document, graph);
const asked = process.argv.indexOf('--values');
if (asked > 0) {
  const word = process.argv[asked + 1] ?? '';
  for (const [name, value] of valuesOf(subject)) {
    if (!name.includes(word)) continue;
    if ('text' in value) console.log(`${name}  ${value.text}`);
    else {
      const shown = toShown(value.si, value.quantity, 'si');
      console.log(`${name}  ${Number(shown.toPrecision(4))} ${UNITS[value.quantity].si.symbol}`.trimEnd());
    }
  }
  process.exit(0);
}
const faults = bakeLessons(join(root, 'lessons'), join(baked, 'lessons'), subject);
if (faults.length > 0) console.error(printFaults(faults));
else console.log('lessons: no faults');
process.exit(faults.length > 0 ? 1 : 0);
