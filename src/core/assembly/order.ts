/** Puts chosen moves in the order that a mechanic would work: from the outside in, what has just come free next. */
import { addBits, dropBits, emptyBits, hasBit, intersects, members } from './bits';
import type { Move, MoveTable } from './moves';
import { DIRECTIONS } from './way';

/**
 * Orders `moves` so that each finds what it needs gone. `last` is the move that came before.
 * The base order is depth first from the targets, the outermost obstacle first; a part that the last step has set
 * free comes right after it.
 */
export function orderMoves(
  table: MoveTable,
  moves: readonly Move[],
  targets: readonly number[],
  last: Move | null,
): Move[] {
  const takes = (u: number): Move | undefined => moves.find((m) => hasBit(m.units, u));
  const rank = new Map<Move, number>();
  const open = new Set<Move>();
  const visit = (move: Move): void => {
    if (rank.has(move) || open.has(move)) return;
    open.add(move);
    // Fasteners wait until what lies over them is off; each comes with the part that it clamps.
    const late = (u: number): number => (table.graph.bodies[u]!.fastener ? 1 : 0);
    const needed = members(move.needs).sort(
      (a, b) =>
        late(a) - late(b) || reach(table, b, move.direction) - reach(table, a, move.direction) || a - b,
    );
    for (const u of needed) {
      const by = takes(u);
      if (by !== undefined) visit(by);
    }
    rank.set(move, rank.size);
  };
  for (const target of targets) {
    const by = takes(target);
    if (by !== undefined) visit(by);
  }
  for (const move of moves) visit(move);

  const left = emptyBits(table.count);
  for (const move of moves) addBits(left, move.units);
  const waiting = [...moves].sort((a, b) => rank.get(a)! - rank.get(b)!);
  const out: Move[] = [];
  // Parts that some step has just freed come next, all of them, before the work turns elsewhere.
  const fresh = new Set<Move>();
  if (last !== null) for (const m of waiting) if (frees(table, last, m)) fresh.add(m);
  while (waiting.length > 0) {
    const ready = waiting.filter((m) => !intersects(m.needs, left));
    if (ready.length === 0) break;
    const next = ready.find((m) => fresh.has(m)) ?? ready[0]!;
    waiting.splice(waiting.indexOf(next), 1);
    dropBits(left, next.units);
    out.push(next);
    for (const m of waiting) if (!intersects(m.needs, left) && frees(table, next, m)) fresh.add(m);
  }
  return out;
}

/** Whether `before` stood in the way of `move`, a part (no fastener) that leaves along the same line. */
function frees(table: MoveTable, before: Move, move: Move): boolean {
  if (table.graph.bodies[move.lead]!.fastener || !intersects(move.needs, before.units)) return false;
  return move.direction === before.direction || table.graph.bodies[before.lead]!.fastener;
}

/** How far a body reaches along a direction, metres. */
function reach(table: MoveTable, u: number, direction: number): number {
  const { bounds } = table.graph.bodies[u]!;
  const d = direction < 0 ? 0 : direction;
  const axis = d >> 1;
  return (DIRECTIONS[d]![axis] ?? 0) > 0 ? bounds[2 * axis + 1]! : -bounds[2 * axis]!;
}
