/** The order of a sheet: the planner's steps there and back, and the job's own steps between them. */
import type { Plan, Step } from '../assembly';
import { reversePlan } from '../assembly';
import type { Machine } from '../machine';
import type { Job, JobStep, Phase } from './schema';
import { unitsOf } from './units-of';

export type Placed =
  | {
      readonly from: 'planner';
      readonly phase: 'apart' | 'together';
      readonly step: Step;
      readonly planStep: number;
    }
  | { readonly from: 'job'; readonly phase: Phase; readonly step: JobStep };

/** Prepare, take apart, work, measure, put together, test run. */
export function orderSteps(machine: Machine, job: Job, plan: Plan | null): readonly Placed[] {
  const own = (phase: Phase): Placed[] =>
    job.steps.filter((s) => s.phase === phase).map((step) => ({ from: 'job', phase, step }));
  const there = plan?.steps ?? [];
  const back = plan === null ? [] : refillLast(machine, reversePlan(plan).steps);
  return [
    ...own('prepare'),
    ...weave(machine, 'apart', there, job),
    ...own('work'),
    ...own('measure'),
    ...weave(machine, 'together', back, job),
    ...own('test'),
  ];
}

/** A fluid is filled in again only when all that holds it, its drain too, is back. */
function refillLast(machine: Machine, steps: readonly Step[]): readonly Step[] {
  const out = [...steps];
  for (const drain of steps.filter((s) => s.kind === 'drain')) {
    const relation = machine.relations.find((r) => r.type === 'fluid' && drain.unitIds.includes(r.fluid));
    if (relation?.type !== 'fluid') continue;
    const holds = [...relation.boundary, ...(relation.drain === null ? [] : [relation.drain])];
    out.splice(out.indexOf(drain), 1);
    const last = Math.max(...holds.map((id) => lastOf(out, id)));
    out.splice(last + 1, 0, drain);
  }
  return out;
}

/** Puts the job's steps of a phase among the planner's. */
function weave(machine: Machine, phase: 'apart' | 'together', steps: readonly Step[], job: Job): Placed[] {
  const total = steps.length;
  const at = new Map<number, JobStep[]>();
  for (const step of job.steps) {
    if (step.phase !== phase) continue;
    const place = placeOf(machine, steps, step);
    at.set(place, [...(at.get(place) ?? []), step]);
  }
  const own = (place: number): Placed[] =>
    (at.get(place) ?? []).map((step) => ({ from: 'job', phase, step }));
  return [
    ...steps.flatMap((step, i): Placed[] => [
      ...own(i),
      { from: 'planner', phase, step, planStep: phase === 'apart' ? i : total - 1 - step.index },
    ]),
    ...own(total),
  ];
}

/** Number of the planner's step that a job's step stands before. */
export function placeOf(machine: Machine, steps: readonly Step[], step: JobStep): number {
  const anchored = step.after ?? step.before;
  if (anchored === undefined) return steps.length;
  const units = anchored.flatMap((id) => unitsOf(machine, id));
  const hits = units.map((id) => (step.after === undefined ? firstOf(steps, id) : lastOf(steps, id)));
  const found = hits.filter((i) => i >= 0);
  if (found.length === 0) return steps.length;
  return step.after === undefined ? Math.min(...found) : Math.max(...found) + 1;
}

const takes = (step: Step, id: string): boolean =>
  (step.kind === 'remove' || step.kind === 'bench') && step.unitIds.includes(id);
const firstOf = (steps: readonly Step[], id: string): number => steps.findIndex((s) => takes(s, id));
const lastOf = (steps: readonly Step[], id: string): number =>
  steps.reduce((last, s, i) => (takes(s, id) ? i : last), -1);

/** Anchors of a job that its plan never reaches. */
export function lostAnchors(machine: Machine, job: Job, plan: Plan | null): readonly JobStep[] {
  return job.steps.filter((step) => {
    const anchored = step.after ?? step.before;
    if (anchored === undefined) return false;
    const units = anchored.flatMap((id) => unitsOf(machine, id));
    return units.every((id) => lastOf(plan?.steps ?? [], id) < 0);
  });
}
