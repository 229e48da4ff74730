/** What a hand on the stage has hold of: the way that it can be moved along, or that it gives only a little. */
import { type Explode, layMove, tryUnit } from '../../core/assembly';
import { confirmations } from './confirmations';
import { partsOfBodies, wayOut } from './stage';
import type { PracticeHold, PracticeRun, PracticeStage } from './state';

/**
 * The hold on a part, with nothing tried and nothing counted yet. A unit that can go and waits for nothing to be
 * confirmed has its whole way; any other gives only a little. Null: the part is of no unit, or trying it is no mistake
 * and no move either (what stays, what is off already), so that a hand on it may turn the view.
 */
export function holdOf(
  run: PracticeRun,
  { to }: PracticeStage,
  explode: Explode,
  partId: string,
): PracticeHold | null {
  const { bench, state, made } = run;
  const lead = bench.machine.parts.findIndex((part) => part.id === partId);
  if (lead < 0 || bench.bodyOf(partId) < 0) return null;
  const { outcome } = tryUnit(bench, state, partId);
  if (outcome.kind === 'refused') {
    if (!outcome.counts) return null;
    const parts = partsOfBodies(bench, [partId]);
    return { partId, lead, laid: to, parts, direction: wayOut(explode, lead), way: null, clear_m: 0 };
  }
  const { step, move } = outcome;
  const legs = step.partLegs[partId] ?? step.legs;
  const way = layMove(bench, explode, state, move, step, to);
  const held = confirmations(outcome, made).length > 0;
  return {
    partId,
    lead,
    laid: to,
    parts: way.parts,
    direction: legs[0]?.direction ?? wayOut(explode, lead),
    way: held ? null : way,
    clear_m: way.reverse ? Infinity : legs.reduce((sum, leg) => sum + leg.distance_m, 0),
  };
}
