/**
 * The teardown of a job: the least plan to each target, joined into one. What one plan takes off frees others all the
 * more, so the plans follow one another in the order of the job's targets, each adding what those before it left; copies of
 * one entry are worked in one step.
 */
import { type BlockingGraph, type Plan, planOnGraph, type Step, withSupports } from '../assembly';
import type { Machine } from '../machine';
import type { Job } from './schema';
import { entryOf, unitsOf } from './units-of';

/** Null for a job that takes nothing apart. The graph must be that of the machine with the job's options. */
export function planJob(machine: Machine, graph: BlockingGraph, job: Job): Plan | null {
  if (job.targets === undefined) return null;
  const targets = [...new Set(job.targets.flatMap((id) => unitsOf(machine, id)))];
  const plans: Plan[] = [];
  const covered = new Set<string>();
  // The first plan often reaches the other targets on its way: those need no search of their own.
  for (const target of targets) {
    if (covered.has(target)) continue;
    const plan = planOnGraph(machine, graph, { target, least: 'units' });
    plans.push(plan);
    for (const id of freedBy(plan)) covered.add(id);
  }
  return joinPlans(machine, graph, plans);
}

/** Units that end up by themselves (or with what is bonded to them). */
function freedBy(plan: Plan): readonly string[] {
  const heaviestAlone = plan.steps.filter((s) => s.kind === 'remove' && s.unitIds.length === 1);
  const bench = plan.steps.filter((s) => s.kind === 'bench');
  return [...heaviestAlone, ...bench].flatMap((s) => s.unitIds.slice(0, 1));
}

/** Joins plans of one machine; steps that a plan before has done are left out. */
export function joinPlans(machine: Machine, graph: BlockingGraph, plans: readonly Plan[]): Plan {
  const [first, ...rest] = plans;
  if (first === undefined) throw new Error('jobs/joinPlans: no plan');
  if (rest.length === 0) return first;
  // who carries what changes with the order: supports are worked out again at the end
  const bare = (plan: Plan): Step[] =>
    plan.steps.filter((s) => s.kind === 'remove' || s.kind === 'drain').map((s) => ({ ...s, supports: [] }));
  const removes = bare(first);
  const bench: Step[] = first.steps.filter((s) => s.kind === 'bench');
  for (const plan of rest) {
    const parted = new Set(bench.map((s) => s.unitIds.join()));
    bench.push(...plan.steps.filter((s) => s.kind === 'bench' && !parted.has(s.unitIds.join())));
    // everything that a plan has before a step stays before it: `floor` is the earliest place for the next
    let floor = 0;
    for (const step of bare(plan)) {
      const done = step.unitIds.filter((id) => placeIn(removes, step, id) >= 0);
      for (const id of done) floor = Math.max(floor, placeIn(removes, step, id) + 1);
      const left = step.unitIds.filter((id) => !done.includes(id));
      if (left.length === 0) continue;
      const added = left.length === step.unitIds.length ? step : { ...step, unitIds: left };
      const copy = removes.findLastIndex(
        (s) => s.kind === 'remove' && entryOf(machine, s.unitIds[0]!) === entryOf(machine, left[0]!),
      );
      const at = step.kind === 'remove' && copy >= floor - 1 && copy >= 0 ? copy + 1 : removes.length;
      removes.splice(at, 0, added);
      floor = at + 1;
    }
  }
  const steps = withSupports(machine, graph, gather(machine, [...removes, ...bench])).map((step, index) => ({
    ...step,
    index,
  }));
  const taken = new Set(steps.filter((s) => s.kind === 'remove').flatMap((s) => s.unitIds));
  return {
    ...first,
    target: plans.map((p) => p.target).join(' '),
    steps,
    orderExists: plans.every((p) => p.orderExists),
    stuckIds: [...new Set(plans.flatMap((p) => p.stuckIds))],
    stayIds: machine.units.map((u) => u.id).filter((id) => !taken.has(id)),
    // Each plan is the least for its own target; of the whole that is not proven.
    provenLeast: false,
    cost: steps.filter((s) => s.kind === 'remove' || s.kind === 'bench').length,
    lowerBound: Math.max(...plans.map((p) => p.lowerBound)),
  };
}

/** Place of the step that does the same to a unit; -1: none. */
const placeIn = (steps: readonly Step[], step: Step, id: string): number =>
  steps.findIndex((s) => s.kind === step.kind && s.unitIds.includes(id));

const sameLegs = (a: Step, b: Step): boolean =>
  a.legs.length === b.legs.length &&
  a.legs.every((leg, i) => {
    const other = b.legs[i]!;
    return leg.kind === other.kind && leg.direction.every((x, k) => Math.abs(x - other.direction[k]!) < 1e-6);
  });

/** Copies of one entry that leave one after the other the same way become one step. */
function gather(machine: Machine, steps: readonly Step[]): Step[] {
  const out: Step[] = [];
  for (const step of steps) {
    const before = out.at(-1);
    const together =
      before !== undefined &&
      step.kind === before.kind &&
      (step.kind === 'remove' || step.kind === 'bench') &&
      new Set([...before.unitIds, ...step.unitIds].map((id) => entryOf(machine, id))).size === 1 &&
      step.fromIds.join() === before.fromIds.join() &&
      sameLegs(before, step);
    if (!together) {
      out.push(step);
      continue;
    }
    out[out.length - 1] = {
      ...before,
      unitIds: [...before.unitIds, ...step.unitIds],
      legs: before.legs.map((leg, i) => ({
        ...leg,
        distance_m: Math.max(leg.distance_m, step.legs[i]!.distance_m),
      })),
      partLegs: { ...before.partLegs, ...step.partLegs },
      mass_kg: before.mass_kg + step.mass_kg,
      time_s: before.time_s + step.time_s,
    };
  }
  return out;
}

/** A job's plan as it ships: proven by replay (`verifyPlan`) when it was made. */
export interface JobPlan {
  readonly plan: Plan | null;
  readonly positionsLookedAt: number;
}
