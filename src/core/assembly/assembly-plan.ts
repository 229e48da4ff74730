/** Putting together: the teardown run backwards, every motion reversed. */
import type { Leg, Plan, Step } from './types';

const backwards = (legs: readonly Leg[]): Leg[] =>
  [...legs].reverse().map((leg) => ({
    ...leg,
    direction: [-leg.direction[0] || 0, -leg.direction[1] || 0, -leg.direction[2] || 0],
  }));

/** A step run backwards: its paths reversed; reasons and tools stay. */
export const reverseStep = (step: Step): Step => ({
  ...step,
  legs: backwards(step.legs),
  partLegs: Object.fromEntries(Object.entries(step.partLegs).map(([id, legs]) => [id, backwards(legs)])),
});

/** The assembly that undoes a teardown: last step first, every one run backwards. */
export function reversePlan(plan: Plan): Plan {
  return {
    ...plan,
    steps: [...plan.steps].reverse().map((step, index) => ({ ...reverseStep(step), index })),
  };
}
