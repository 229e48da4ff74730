/**
 * Which moves a machine admits: bodies one by one as long as any can leave, then the least set that leaves together,
 * and so on; tight fits are let go in place only when nothing else can move. Since taking away never bars a move,
 * the order of this sweep does not matter for what it finds possible.
 */
import {
  type Bits,
  bitsOf,
  clearBit,
  copyBits,
  dropBits,
  hasBit,
  intersects,
  isEmpty,
  isSubset,
  members,
  within,
} from './bits';
import type { BlockingGraph } from './graph';
import { type Move, type MoveTable, needsTogether, togetherMove } from './moves';
import { pruneMoves } from './necessary';
import { leastMovableSet } from './subassembly';
import { DIRECTIONS } from './way';

export interface Discovery {
  readonly table: MoveTable;
  /** Bodies that stay: the fixed ones and the base. */
  readonly base: number;
  /** Every move, with all directions of each subassembly. */
  readonly moves: readonly Move[];
  /** Moves that take a body away, by body. */
  readonly movesOf: readonly (readonly Move[])[];
  /** Bodies that every plan takes off before a body, or with it. */
  readonly necessary: readonly Bits[];
  /** Subassemblies found, in the order in which they came off. */
  readonly together: readonly Bits[];
  /** Bodies that no sequence of these moves frees. */
  readonly stuck: Bits;
}

const wholes = new WeakMap<MoveTable, Discovery>();

/** The moves of the whole machine off its base; found once for a graph. */
export function discoverWhole(table: MoveTable): Discovery {
  const known = wholes.get(table);
  if (known !== undefined) return known;
  const all = table.graph.bodies.map((_, u) => u);
  const found = discoverMoves(table, bitsOf(table.count, all), baseOf(table.graph, all));
  wholes.set(table, found);
  return found;
}

/**
 * Finds the moves among `present`. `base` is the body that all others come off (kept in its place); `pressing` lets
 * tight fits part from the start (on the bench).
 */
export function discoverMoves(table: MoveTable, present: Bits, base: number, pressing = false): Discovery {
  const left = copyBits(present);
  const { count } = table;
  const pressed = new Set<number>();
  const together: Bits[] = [];
  const usable = (move: Move): boolean => !hasBit(move.units, base) && !intersects(move.needs, left);
  for (;;) {
    peel(left, (u) => u !== base && table.single[u]!.some(usable));
    const rest = members(left).filter((u) => u !== base && table.graph.bodies[u]!.fixed !== true);
    if (rest.length === 0) break;
    if (pressing) {
      const one = rest.find((u) => table.pressed[u]!.some(usable));
      if (one !== undefined) {
        pressed.add(one);
        dropBits(left, bitsOf(count, [one]));
        continue;
      }
    }
    const set = leastMovableSet(table, left, []);
    if (set !== null && !hasBit(set.units, base)) {
      together.push(set.units);
      dropBits(left, set.units);
      continue;
    }
    if (pressing) break;
    const one = rest.find((u) => table.pressed[u]!.some(usable));
    if (one === undefined) break;
    pressed.add(one);
    dropBits(left, bitsOf(count, [one]));
  }
  const stuckList = members(left).filter((u) => u !== base && table.graph.bodies[u]!.fixed !== true);

  const moves: Move[] = [];
  for (const u of members(present)) {
    if (u === base) continue;
    moves.push(...(pressed.has(u) ? table.pressed[u]! : table.single[u]!));
  }
  for (const units of together) {
    const ways = DIRECTIONS.map((_, d) => ({ d, needs: needsTogether(table, units, d) }));
    moves.push(
      ...ways
        .filter(
          ({ needs }) => !hasBit(needs, base) && members(needs).every((u) => !table.graph.bodies[u]!.fixed),
        )
        .map(({ d }) => togetherMove(table, units, d)),
    );
  }
  const { moves: usableMoves, necessary } = pruneMoves(
    count,
    moves
      .filter((m) => !hasBit(m.units, base))
      .map((m) => (isSubset(m.needs, present) ? m : { ...m, needs: within(m.needs, present) })),
  );
  const movesOf = table.graph.bodies.map((_, u) => usableMoves.filter((m) => hasBit(m.units, u)));
  return { table, base, moves: usableMoves, movesOf, necessary, together, stuck: bitsOf(count, stuckList) };
}

/** Takes out bodies as long as any is free. */
export function peel(left: Bits, free: (u: number) => boolean): void {
  for (let again = true; again && !isEmpty(left);) {
    again = false;
    for (const u of members(left))
      if (free(u)) {
        clearBit(left, u);
        again = true;
      }
  }
}

/** The body that all others come off: a fixed one, else the heaviest. */
export function baseOf(graph: BlockingGraph, among: readonly number[]): number {
  const fixed = among.filter((u) => graph.bodies[u]!.fixed);
  const pool = fixed.length > 0 ? fixed : among;
  return pool.reduce(
    (best, u) => (graph.bodies[u]!.mass_kg > graph.bodies[best]!.mass_kg ? u : best),
    pool[0] ?? -1,
  );
}
