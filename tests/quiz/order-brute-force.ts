/**
 * The plain way to answer questions of order, for machines small enough: every set of bodies that some order leaves
 * on, straight from the ways and joints of the graph. Shares nothing with the generators but the graph itself.
 */
import type { BlockingGraph } from '../../src/core/assembly';

/** Whether `u` leaves by itself with `left` still there. */
export function canLeave(graph: BlockingGraph, left: ReadonlySet<number>, u: number): boolean {
  if (graph.bodies[u]!.fixed) return false;
  return graph.ways[u]!.some(
    (way) =>
      way.blockers.every((b) => !left.has(b.body)) &&
      graph.joints.every(
        (j) =>
          j.from !== u ||
          j.kind === 'holds' ||
          j.kind === 'carries' ||
          j.to === way.releases ||
          !left.has(j.to),
      ),
  );
}

/** All complete orders of taking the bodies off, as lists of ids. */
export function allOrders(graph: BlockingGraph): string[][] {
  const orders: string[][] = [];
  const go = (left: ReadonlySet<number>, gone: readonly string[]): void => {
    const free = [...left].filter((u) => canLeave(graph, left, u));
    if (free.length === 0) orders.push([...gone]);
    for (const u of free) {
      const rest = new Set(left);
      rest.delete(u);
      go(rest, [...gone, graph.bodies[u]!.id]);
    }
  };
  go(new Set(graph.bodies.keys()), []);
  return orders;
}

/** Whether `first` comes before `second` in every order. */
export const alwaysBefore = (orders: readonly string[][], first: string, second: string): boolean =>
  orders.every((order) => order.indexOf(first) >= 0 && order.indexOf(first) < order.indexOf(second));
