/**
 * Prepares every machine of models/ for the app: public/baked/<machine>.bin, and beside it its blocking graph and its
 * recordings of the shot.
 */
import { cpSync, existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { stringify } from 'yaml';
import {
  documentGraph,
  encodeDocument,
  encodeGraph,
  graphSource,
  kindSolids,
  prepareMachine,
} from '../src/core/document';
import { loadSolidKernel } from '../src/core/geometry';
import { hashText } from '../src/core/kernel';
import { parseModel } from '../src/core/studies';
import { readFitFiles, readModelFolder } from '../src/edge/content/model-files';
import { printFaults } from '../src/edge/cli/print-faults';
import { bakeFaults } from './lib/bake-faults';
import { prepareJobs, writeJobs } from './lib/bake-jobs';
import { bakeLessons, LESSON_MACHINE, subjectOf } from './lib/bake-lessons';

const root = resolve(import.meta.dirname, '..');
const out = join(root, 'public', 'baked');
mkdirSync(out, { recursive: true });
const kernel = await loadSolidKernel();
let bad = false;
for (const folder of readdirSync(join(root, 'models'), { withFileTypes: true }).filter((e) =>
  e.isDirectory(),
)) {
  const from = join(root, 'models', folder.name);
  const files = [...readModelFolder(from), ...readFitFiles(from)];
  const parsed = parseModel(files);
  const prepared = parsed.ok
    ? prepareMachine(
        parsed.value.source,
        hashText(...files.map((f) => f.text)),
        kernel,
        undefined,
        parsed.value.fit,
      )
    : parsed;
  if (!prepared.ok) {
    console.error(printFaults(prepared.faults));
    bad = true;
    continue;
  }
  const bytes = encodeDocument(prepared.value);
  writeFileSync(join(out, `${folder.name}.bin`), bytes);
  // Beside the document, not in it: read only where someone asks what blocks what.
  const graph = documentGraph(graphSource(prepared.value));
  writeFileSync(join(out, `${folder.name}.graph.bin`), encodeGraph(graph, prepared.value.hash));
  if (folder.name === LESSON_MACHINE) {
    const faults = bakeLessons(join(root, 'lessons'), join(out, 'lessons'), subjectOf(prepared.value, graph));
    if (faults.length > 0) console.error(printFaults(faults));
    bad ||= faults.length > 0;
  }
  if (parsed.ok)
    writeFileSync(
      join(out, `${folder.name}.yaml`),
      stringify(parsed.value.source.file, { aliasDuplicateObjects: false }),
    );
  const recordings = join(root, 'models', folder.name, 'recordings');
  if (existsSync(recordings)) cpSync(recordings, join(out, folder.name), { recursive: true });
  const { machine, teardown, masses } = prepared.value;
  const jobs = prepareJobs(from, machine, kindSolids(prepared.value), masses);
  if (jobs.ok) writeJobs(join(out, folder.name), machine.id, jobs.value);
  else {
    console.error(printFaults(jobs.faults));
    bad = true;
  }
  const book = bakeFaults(from, machine, join(out, folder.name));
  if (!book.ok) {
    console.error(printFaults(book.faults));
    bad = true;
  }
  console.log(
    `${folder.name}: ${Object.keys(machine.kinds).length} kinds, ${machine.parts.length} parts, ${teardown.steps.length} steps, ${(bytes.length / 1e6).toFixed(1)} MB`,
  );
}
process.exit(bad ? 1 : 0);
