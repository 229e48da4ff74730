/** The sheet of a job on the machine at hand, and what the stage shows at each of its steps. */
import { buildExplode, type Explode, type Plan } from '../../core/assembly';
import { kindSolids, type MachineDocument } from '../../core/document';
import type { KindSolid } from '../../core/geometry';
import { buildJobSheet, type FieldValues, type Job, type JobSheet, machineFor } from '../../core/jobs';
import { exciterStudy, type ExciterStudy, OWN_CHOICE } from '../../core/studies';
import type { JobStage, JobSummary } from './state';

interface Base {
  readonly solids: Readonly<Record<string, KindSolid>>;
  /** Of the machine as it is, whatever a person has set in the exciter panel. */
  readonly study: ExciterStudy | null;
}

const bases = new WeakMap<MachineDocument, Base>();

/** What numbers of sheets are made from, once a machine. */
export function jobBase(document: MachineDocument): Base {
  let base = bases.get(document);
  if (base === undefined) {
    const solids = kindSolids(document);
    const { machine, masses, fit } = document;
    base = { solids, study: exciterStudy(machine, solids, masses, OWN_CHOICE, fit) };
    bases.set(document, base);
  }
  return base;
}

export function makeSheet(
  document: MachineDocument,
  job: Job,
  plan: Plan | null,
  values: FieldValues,
): JobSheet {
  const { solids, study } = jobBase(document);
  const machine = machineFor(document.machine, job);
  return buildJobSheet({ machine, solids, masses: document.masses, job, plan, study, values });
}

export function summaryOf(sheet: JobSheet, plan: Plan | null): JobSummary {
  const [heaviest] = [...sheet.lifts].sort((a, b) => b.mass_kg - a.mass_kg);
  return {
    time_s: sheet.time_s,
    people: sheet.people,
    steps: sheet.steps.length,
    holds: sheet.steps.filter((s) => s.hold).length,
    heaviest: heaviest === undefined ? null : { mass_kg: heaviest.mass_kg, byHand: heaviest.byHand },
    plan,
  };
}

const explodes = new WeakMap<Plan, Explode>();

/** Where the steps of a plan lay their parts down, worked out once. */
export function explodeOf(document: MachineDocument, job: Job, plan: Plan): Explode {
  let explode = explodes.get(plan);
  if (explode === undefined) {
    const machine = machineFor(document.machine, job);
    explode = buildExplode(machine, jobBase(document).solids, document.masses, plan);
    explodes.set(plan, explode);
  }
  return explode;
}

/** A plan of no steps, for jobs that take nothing apart. */
export const noPlan = (document: MachineDocument): Plan => ({
  ...document.teardown,
  target: '',
  steps: [],
  stuckIds: [],
});

/** How far the plan is played once a step of the sheet (by its place in the list) is done, and what leads there. */
export function stageAt(sheet: JobSheet, index: number): Pick<JobStage, 'step' | 'leads' | 'partIds'> {
  let step = -1;
  for (const each of sheet.steps.slice(0, index + 1))
    if (each.planStep !== null) step = each.phase === 'together' ? each.planStep - 1 : each.planStep;
  const now = sheet.steps[index];
  return { step, leads: now?.planStep ?? -1, partIds: now?.partIds ?? [] };
}
