/**
 * Subassemblies that must leave as one: when no body can leave by itself, the smallest sets that can, found as sink
 * components of the blocking graph of one direction (Wilson and Latombe 1994: a set is removable along d when no
 * arc of that direction's graph leaves it; its least removable sets are the strong components without way out).
 */
import { type Bits, bitsOf, emptyBits, hasBit, members, setBit } from './bits';
import { type Move, type MoveTable, togetherAllowed, togetherMove } from './moves';
import { DIRECTIONS } from './way';

/**
 * The best movable set among `present` in any direction: the lightest that holds no fixed body and is not all of
 * them. Null when every component is fixed or the whole.
 */
export function leastMovableSet(table: MoveTable, present: Bits, preferred: readonly number[]): Move | null {
  const all = members(present);
  let best: { move: Move; mass: number; rank: number } | null = null;
  for (let d = 0; d < DIRECTIONS.length; d++) {
    const rank = preferred.indexOf(d) < 0 ? preferred.length : preferred.indexOf(d);
    for (const list of sinkComponents(table, present, d)) {
      if (list.length === all.length) continue;
      const units = bitsOf(table.count, list);
      if (!togetherAllowed(table, units)) continue;
      const mass = list.reduce((sum, u) => sum + table.graph.bodies[u]!.mass_kg, 0);
      const better =
        best === null || mass < best.mass * 0.999 || (mass <= best.mass * 1.001 && rank < best.rank);
      if (better) best = { move: togetherMove(table, units, d), mass, rank };
    }
  }
  return best?.move ?? null;
}

/** Strong components of one direction's graph over `present` from which no arc leads out (Tarjan's algorithm). */
export function sinkComponents(table: MoveTable, present: Bits, direction: number): number[][] {
  const nodes = members(present);
  const arcs = new Map<number, number[]>();
  for (const u of nodes) {
    const out = emptyBits(table.count);
    for (const v of members(table.blocked[direction]![u]!)) if (hasBit(present, v)) setBit(out, v);
    for (const joint of table.jointsOf[u]!) if (hasBit(present, joint.to)) setBit(out, joint.to);
    arcs.set(u, members(out));
  }
  const order = new Map<number, number>();
  const low = new Map<number, number>();
  const onStack = new Set<number>();
  const stack: number[] = [];
  const component = new Map<number, number>();
  const components: number[][] = [];
  const visit = (u: number): void => {
    order.set(u, order.size);
    low.set(u, order.get(u)!);
    stack.push(u);
    onStack.add(u);
    for (const v of arcs.get(u)!) {
      if (!order.has(v)) {
        visit(v);
        low.set(u, Math.min(low.get(u)!, low.get(v)!));
      } else if (onStack.has(v)) low.set(u, Math.min(low.get(u)!, order.get(v)!));
    }
    if (low.get(u) !== order.get(u)) return;
    const list: number[] = [];
    for (;;) {
      const v = stack.pop()!;
      onStack.delete(v);
      component.set(v, components.length);
      list.push(v);
      if (v === u) break;
    }
    components.push(list);
  };
  for (const u of nodes) if (!order.has(u)) visit(u);
  return components.filter((list, c) => list.every((u) => arcs.get(u)!.every((v) => component.get(v) === c)));
}
