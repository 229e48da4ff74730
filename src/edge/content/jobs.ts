/** Fetches the jobs that ship with a machine, and the proven plan of one. */
import type { Job, JobPlan } from '../../core/jobs';
import { fetchJson } from './fetch-json';

/** Jobs of a machine in the order of their list; empty where none ship with it. */
export async function loadJobs(machineId: string): Promise<readonly Job[]> {
  const found = (await fetchJson(`./baked/${machineId}/jobs.json`)) as { jobs: readonly Job[] } | null;
  return found?.jobs ?? [];
}

/** The plan of a job; throws where there is no such job. */
export async function loadJobPlan(machineId: string, jobId: string): Promise<JobPlan> {
  const url = `./baked/${machineId}/jobs/${jobId}.json`;
  const found = (await fetchJson(url)) as JobPlan | null;
  if (found === null) throw new Error(`edge/loadJobPlan: ${url} is not there`);
  return found;
}
