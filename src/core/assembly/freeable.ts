/**
 * What can come off while some bodies stay where they are, and what therefore must go before a body in every order.
 * Taking away never bars a move, so one sweep that takes all it can finds the whole set.
 */
import { bitsOf, dropBits, intersects, members } from './bits';
import { discoverWhole } from './discover';
import type { BlockingGraph } from './graph';
import { moveTable } from './moves';

/** Bodies that some order takes off without ever moving one of `kept`. */
export function freeableWithout(graph: BlockingGraph, kept: readonly number[]): ReadonlySet<number> {
  const { moves } = discoverWhole(moveTable(graph));
  const { count } = moveTable(graph);
  const left = bitsOf(
    count,
    graph.bodies.map((_, u) => u),
  );
  const staying = bitsOf(count, kept);
  const gone = new Set<number>();
  let waiting = moves.filter((m) => !intersects(m.units, staying));
  for (;;) {
    const free = waiting.filter((m) => !intersects(m.needs, left));
    if (free.length === 0) return gone;
    for (const move of free) {
      dropBits(left, move.units);
      for (const u of members(move.units)) gone.add(u);
    }
    waiting = waiting.filter((m) => !free.includes(m));
  }
}

const needed = new WeakMap<BlockingGraph, readonly (readonly number[])[]>();

/**
 * Bodies that every order takes off before `u` or along with it: those without whose leaving it stays. None for a body
 * that never leaves. Found once for a graph.
 */
export function neededBefore(graph: BlockingGraph, u: number): readonly number[] {
  const known = needed.get(graph) ?? findNeeded(graph);
  needed.set(graph, known);
  return known[u] ?? [];
}

function findNeeded(graph: BlockingGraph): number[][] {
  const leaving = freeableWithout(graph, []);
  const found: number[][] = graph.bodies.map(() => []);
  for (const v of leaving) {
    const still = freeableWithout(graph, [v]);
    for (const u of leaving) if (u !== v && !still.has(u)) found[u]!.push(v);
  }
  return found;
}

/** The body that all others come off: it stays. */
export const baseBody = (graph: BlockingGraph): number => discoverWhole(moveTable(graph)).base;
