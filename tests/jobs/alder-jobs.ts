/** Jobs of Alder One with their plans, made once for all tests of a file. */
import { resolve } from 'node:path';
import { buildGraph, type BlockingGraph, type Plan } from '../../src/core/assembly';
import {
  buildJobSheet,
  type FieldValues,
  type Job,
  type JobSheet,
  machineFor,
  parseJobs,
  planJob,
} from '../../src/core/jobs';
import { exciterStudy, OWN_CHOICE } from '../../src/core/studies';
import { loadFit } from '../../src/edge/cli/model';
import { readJobFiles } from '../../src/edge/content/model-files';
import { machine, masses, solids } from '../models/alder-one';

const parsed = parseJobs(readJobFiles(resolve(import.meta.dirname, '../../models/alder-one')), machine);
if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults.slice(0, 5)));

export const jobs: readonly Job[] = parsed.value;
const fit = loadFit('alder-one');
export const study = exciterStudy(machine, solids, masses, OWN_CHOICE, fit.ok ? fit.value : undefined);

let graph: BlockingGraph | undefined;
const plans = new Map<string, Plan | null>();

export function planOf(job: Job): Plan | null {
  let plan = plans.get(job.id);
  if (plan === undefined) {
    plan =
      job.targets === undefined
        ? null
        : planJob(machine, (graph ??= buildGraph(machine, solids, masses)), job);
    plans.set(job.id, plan);
  }
  return plan;
}

export function jobNamed(id: string): Job {
  const job = jobs.find((j) => j.id === id);
  if (job === undefined) throw new Error(`no job ${id}`);
  return job;
}

export function sheetOf(job: Job, values: FieldValues = {}): JobSheet {
  const own = machineFor(machine, job);
  return buildJobSheet({ machine: own, solids, masses, job, plan: planOf(job), study, values });
}

export { goodValue } from './good-value';
