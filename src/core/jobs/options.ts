/** The machine as a job finds it: its options on or off. */
import type { Machine } from '../machine';
import type { Job } from './schema';

/** The machine itself where the job asks for none. */
export function machineFor(machine: Machine, job: Job): Machine {
  if (job.options === undefined) return machine;
  const options = { ...machine.options };
  for (const [id, on] of Object.entries(job.options)) options[id] = { on };
  return { ...machine, options };
}
