/** Putting together: the teardown run backwards, every motion reversed. */
import type { Leg, Plan, Step } from './types';

const backwards = (legs: readonly Leg[]): Leg[] =>
  [...legs].reverse().map((leg) => ({
    ...leg,
    direction: [-leg.direction[0] || 0, -leg.direction[1] || 0, -leg.direction[2] || 0],
  }));

/** The assembly that undoes a teardown: last step first, paths reversed; reasons and tools stay. */
export function reversePlan(plan: Plan): Plan {
  const steps = [...plan.steps].reverse().map((step, index): Step => ({
    ...step,
    index,
    legs: backwards(step.legs),
    partLegs: Object.fromEntries(Object.entries(step.partLegs).map(([id, legs]) => [id, backwards(legs)])),
  }));
  return { ...plan, steps };
}
