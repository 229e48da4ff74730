/** The open job with the machine as it has it. */
import { type JobProgress, machineFor } from '../../../core/jobs';
import type { MachineDocument } from '../../../core/document';
import { findPart, findUnit, type Machine } from '../../../core/machine';
import type { OpenJob } from '../../../store';
import { useApp } from '../../bind';
import { useMemo } from 'react';

export interface JobView extends OpenJob {
  readonly machine: Machine;
  readonly progress: JobProgress | null;
  /** Mass of all parts of a unit. */
  readonly massOf: (unitId: string) => number;
}

export const massOf = ({ machine, masses }: MachineDocument, unitId: string): number =>
  (findUnit(machine, unitId)?.partIds ?? []).reduce(
    (sum, id) => sum + (masses[findPart(machine, id)?.kind ?? '']?.mass_kg ?? 0),
    0,
  );

/** Null until the job of this id is open. */
export function useJob(id: string): JobView | null {
  const document = useApp((s) => s.document);
  const open = useApp((s) => s.jobs.open);
  const progress = useApp((s) => s.jobs.progress);
  return useMemo(
    () =>
      open === null || document === null || open.job.id !== id
        ? null
        : {
            ...open,
            machine: machineFor(document.machine, open.job),
            progress,
            massOf: (unitId) => massOf(document, unitId),
          },
    [open, document, progress, id],
  );
}
