/** Jobs of a machine, checked, planned and proven, written for the app: jobs.json and one plan a job. */
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildGraph, type Masses, type Solids, verifyPlan } from '../../src/core/assembly';
import { fail, message, ok, type Result } from '../../src/core/kernel';
import {
  machineFor,
  type Job,
  type JobPlan,
  lostAnchors,
  parseJobs,
  planJob,
  withTexts,
} from '../../src/core/jobs';
import type { Machine } from '../../src/core/machine';
import { readJobFiles, readJobTexts } from '../../src/edge/content/model-files';

export interface BakedJob {
  readonly job: Job;
  readonly plan: JobPlan;
}

/** Parses and plans every job; a plan that does not exist, touches something or misses an anchor is a fault. */
export function prepareJobs(
  folder: string,
  machine: Machine,
  solids: Solids,
  masses: Masses,
): Result<readonly BakedJob[]> {
  const parsed = parseJobs(readJobFiles(folder), machine);
  if (!parsed.ok) return parsed;
  const inAll = withTexts(parsed.value, readJobTexts(folder));
  if (!inAll.ok) return inAll;
  const graphs = new Map<string, ReturnType<typeof buildGraph>>();
  const out: BakedJob[] = [];
  for (const job of inAll.value) {
    const own = machineFor(machine, job);
    const key = JSON.stringify(own.options);
    const graph = job.targets === undefined ? null : (graphs.get(key) ?? buildGraph(own, solids, masses));
    if (graph !== null) graphs.set(key, graph);
    const plan = graph === null ? null : planJob(own, graph, job);
    const verdict = plan === null ? null : verifyPlan(own, solids, masses, plan);
    const lost = lostAnchors(own, job, plan);
    const at = { file: `jobs/${job.id}.yaml` };
    if (plan?.orderExists === false)
      return fail([
        { ...at, path: 'targets', expected: message('fault.job.order'), found: plan.stuckIds.join(', ') },
      ]);
    if (lost.length > 0)
      return fail(
        lost.map((s) => ({ ...at, path: 'steps', expected: message('fault.job.anchor'), found: s.id })),
      );
    const touched = verdict?.contacts[0];
    if (touched !== undefined)
      return fail([
        {
          ...at,
          path: 'targets',
          expected: message('fault.job.clear'),
          found: `${touched.partId}, ${touched.otherId}`,
        },
      ]);
    out.push({ job, plan: { plan, positionsLookedAt: verdict?.positionsLookedAt ?? 0 } });
  }
  return ok(out);
}

/** Writes `out`/jobs.json and `out`/jobs/<id>.json. */
export function writeJobs(out: string, machineId: string, jobs: readonly BakedJob[]): void {
  const plans = join(out, 'jobs');
  if (existsSync(plans)) rmSync(plans, { recursive: true });
  mkdirSync(plans, { recursive: true });
  writeFileSync(join(out, 'jobs.json'), JSON.stringify({ machineId, jobs: jobs.map((j) => j.job) }));
  for (const { job, plan } of jobs) writeFileSync(join(plans, `${job.id}.json`), JSON.stringify(plan));
}
