/** Bakes only the jobs of every machine (public/baked/<machine>/jobs.json and plans), for work on job files. */
import { existsSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { loadModel } from '../src/edge/cli/model';
import { printFaults } from '../src/edge/cli/print-faults';
import { prepareJobs, writeJobs } from './lib/bake-jobs';

const root = resolve(import.meta.dirname, '..');
for (const { name } of readdirSync(join(root, 'models'), { withFileTypes: true }).filter((e) =>
  e.isDirectory(),
)) {
  const folder = join(root, 'models', name);
  if (!existsSync(join(folder, 'jobs'))) continue;
  const model = await loadModel(name);
  const jobs = model.ok
    ? prepareJobs(folder, model.value.machine, model.value.solids, model.value.masses)
    : model;
  if (!jobs.ok) {
    console.error(printFaults(jobs.faults));
    process.exitCode = 1;
    continue;
  }
  writeJobs(join(root, 'public', 'baked', name), name, jobs.value);
  console.log(`${name}: ${jobs.value.length} jobs`);
}
