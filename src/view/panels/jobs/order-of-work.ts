/** What is known of a sheet's order: nothing comes off, proven least, proven possible, or not wholly possible. */
import type { JobSheet, SheetStep } from '../../../core/jobs';

export function orderKey({ plan }: JobSheet): string {
  if (plan === null) return 'jobs.order.none';
  if (!plan.orderExists) return 'jobs.order.stuck';
  return plan.provenLeast ? 'jobs.order.least' : 'jobs.order.proven';
}

/** Steps of one phase that follow one another. */
export function phasesOf(
  steps: readonly SheetStep[],
): readonly { readonly phase: string; readonly steps: readonly SheetStep[] }[] {
  const out: { phase: string; steps: SheetStep[] }[] = [];
  for (const step of steps) {
    const last = out.at(-1);
    if (last?.phase === step.phase) last.steps.push(step);
    else out.push({ phase: step.phase, steps: [step] });
  }
  return out;
}
