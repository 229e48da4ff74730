/**
 * The least teardown that frees a target: an AND/OR search. To free a body choose one of its moves (OR); all that
 * the move needs gone must be freed too (AND). Depth-first branch and bound over the sets, with a bound that shares
 * each move's cost among the bodies it frees; the answer is proven when the search ends within its budget.
 */
import {
  addBits,
  type Bits,
  bitsOf,
  copyBits,
  dropBits,
  emptyBits,
  intersects,
  isEmpty,
  members,
  within,
} from './bits';
import type { Discovery } from './discover';
import type { Move } from './moves';

export interface LeastResult {
  /** Moves chosen, in no order; null when the target cannot be freed. */
  readonly moves: readonly Move[] | null;
  readonly cost: number;
  readonly lowerBound: number;
  readonly proven: boolean;
}

export const SEARCH_BUDGET = 60000;

/** Searches the cheapest set of moves that frees every body of `targets` among `present`. */
export function leastMoves(
  found: Discovery,
  present: Bits,
  targets: readonly number[],
  costOf: (move: Move) => number,
  budget = SEARCH_BUDGET,
): LeastResult {
  const { movesOf, table, necessary } = found;
  const { count } = table;
  const costs = new Map(found.moves.map((m) => [m, costOf(m)]));
  const share = table.graph.bodies.map((_, u) =>
    Math.min(...movesOf[u]!.map((m) => costs.get(m)! / members(m.units).length)),
  );
  let best: readonly Move[] | null = null;
  let bestCost = Infinity;
  let nodes = 0;
  /** Required bodies with all that they cannot do without, of what is not covered yet. */
  const unavoidable = (required: Bits, covered: Bits): Bits => {
    const all = copyBits(required);
    for (const u of members(required)) addBits(all, necessary[u]!);
    dropBits(all, covered);
    return within(all, present);
  };
  const bound = (required: Bits): number => members(required).reduce((sum, u) => sum + share[u]!, 0);

  const search = (chosen: Move[], covered: Bits, required: Bits, cost: number): void => {
    if (nodes++ > budget) return;
    if (isEmpty(required)) {
      if (cost < bestCost && canFollow(chosen, emptyBits(count))) {
        best = [...chosen];
        bestCost = cost;
      }
      return;
    }
    if (cost + bound(required) >= bestCost - 1e-9) return;
    let pick = -1;
    let fewest = Infinity;
    for (const u of members(required)) {
      const ways = movesOf[u]!.length;
      if (ways < fewest) {
        fewest = ways;
        pick = u;
      }
    }
    const ordered = [...movesOf[pick]!]
      .map((move) => {
        const nextCovered = copyBits(covered);
        addBits(nextCovered, move.units);
        const nextRequired = copyBits(required);
        addBits(nextRequired, within(move.needs, present));
        const open = unavoidable(nextRequired, nextCovered);
        nextRequired.set(open);
        const nextCost = cost + costs.get(move)!;
        return { move, nextCovered, nextRequired, nextCost, guess: nextCost + bound(nextRequired) };
      })
      .sort((a, b) => a.guess - b.guess);
    for (const { move, nextCovered, nextRequired, nextCost, guess } of ordered) {
      if (guess >= bestCost - 1e-9) continue;
      chosen.push(move);
      if (canFollow(chosen, nextRequired)) search(chosen, nextCovered, nextRequired, nextCost);
      chosen.pop();
    }
  };
  const goal = unavoidable(bitsOf(count, targets), emptyBits(count));
  const rootBound = bound(goal);
  search([], emptyBits(count), goal, 0);
  const proven = nodes <= budget;
  return {
    moves: best,
    cost: bestCost,
    lowerBound: proven ? bestCost : rootBound,
    proven,
  };
}

/** Whether the chosen moves can be put in an order, those still open (`granted`) taken as gone. */
function canFollow(chosen: readonly Move[], granted: Bits): boolean {
  const left = emptyBits(granted.length * 32);
  for (const move of chosen) addBits(left, move.units);
  dropBits(left, granted);
  let waiting = chosen;
  for (;;) {
    const next = waiting.filter((move) => {
      const barred = intersects(move.needs, left);
      return barred;
    });
    if (next.length === 0) return true;
    if (next.length === waiting.length) return false;
    const still = emptyBits(granted.length * 32);
    for (const move of next) addBits(still, move.units);
    dropBits(still, granted);
    left.set(still);
    waiting = next;
  }
}
