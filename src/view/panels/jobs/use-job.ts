/** The open job with the machine as it has it. */
import { type JobProgress, machineFor } from '../../../core/jobs';
import type { Machine } from '../../../core/machine';
import type { OpenJob } from '../../../store';
import { useApp } from '../../bind';
import { useMemo } from 'react';

export interface JobView extends OpenJob {
  readonly machine: Machine;
  readonly progress: JobProgress | null;
}

/** Null until the job of this id is open. */
export function useJob(id: string): JobView | null {
  const machine = useApp((s) => s.document?.machine);
  const open = useApp((s) => s.jobs.open);
  const progress = useApp((s) => s.jobs.progress);
  return useMemo(
    () =>
      open === null || machine === undefined || open.job.id !== id
        ? null
        : { ...open, machine: machineFor(machine, open.job), progress },
    [open, machine, progress, id],
  );
}
