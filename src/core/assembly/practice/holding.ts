/**
 * What must be held or drained before a move: the planner's own support steps, asked of the order in which things
 * have gone so far, this move, and what the least plan would do after it.
 */
import { hasBit } from '../bits';
import { withDrains } from '../plan';
import { withSupports } from '../supports';
import type { Step } from '../types';
import type { PracticeBench } from './bench';
import { bodiesOf } from './position';

export interface Holding {
  readonly before: readonly Step[];
  readonly step: Step;
  readonly after: readonly Step[];
}

/** @param gone steps that were made, oldest first; `step` the one to be made now */
export function holdingFor(bench: PracticeBench, gone: readonly Step[], step: Step): Holding {
  const { machine, graph } = bench;
  const off = bodiesOf(
    bench,
    [...gone, step].flatMap((s) => s.unitIds),
  );
  const later = bench.plan({ kind: 'all' }).steps.flatMap((s): Step[] => {
    if (s.kind !== 'remove') return [];
    const unitIds = s.unitIds.filter((id) => !hasBit(off, Math.max(0, bench.bodyOf(id))));
    return unitIds.length === 0 ? [] : [{ ...s, unitIds, supports: [] }];
  });
  const all = withSupports(machine, graph, withDrains(machine, [...gone, step, ...later]));
  const at = all.findIndex((s) => s.unitIds === step.unitIds && s.kind === step.kind);
  const made = (s: Step | undefined): boolean => s === undefined || s.kind === 'remove' || s.kind === 'bench';
  const before: Step[] = [];
  for (let i = at - 1; !made(all[i]); i--) before.unshift(all[i]!);
  const after: Step[] = [];
  for (let i = at + 1; all[i]?.kind === 'drain'; i++) after.push(all[i]!);
  // A drain that the last move opened has run by now; one that this move would open by itself comes first.
  const opened = (s: Step): boolean =>
    machine.relations.some((r) => r.type === 'fluid' && r.drain !== null && s.unitIds.includes(r.fluid));
  return {
    before: before.filter((s) => s.kind === 'support' || !opened(s)),
    step: all[at] ?? step,
    after: after.filter(opened),
  };
}
