/**
 * A full sequence: everything off the base. Deepest bodies are freed first, each by its own least teardown, so that
 * the work goes to the bottom of one side before it turns to the next.
 */
import { addBits, bitsOf, copyBits, dropBits, hasBit, intersects, members } from './bits';
import type { Discovery } from './discover';
import { leastMoves } from './least';
import type { Move, MoveTable } from './moves';
import { orderMoves } from './order';
import type { Bits } from './bits';

/** Moves in order that take away all of `present` that can leave. */
export function sequenceAll(found: Discovery, present: Bits): Move[] {
  const { table } = found;
  const depth = depths(found, present);
  const left = copyBits(present);
  const wanted = members(present)
    .filter((u) => u !== found.base && table.graph.bodies[u]!.fixed !== true && !hasBit(found.stuck, u))
    .sort((a, b) => depth[b]! - depth[a]! || table.graph.bodies[b]!.mass_kg - table.graph.bodies[a]!.mass_kg);
  const out: Move[] = [];
  for (const target of wanted) {
    if (!hasBit(left, target)) continue;
    const least = leastMoves(found, left, [target], () => 1, 4000);
    if (least.moves === null) continue;
    const ordered = orderMoves(table, least.moves, [target], out[out.length - 1] ?? null);
    for (const move of ordered) {
      out.push(move);
      dropBits(left, move.units);
    }
  }
  return out;
}

/** Round in which each body comes off when all that are free leave at once; -1: never. */
export function depths(found: Discovery, present: Bits): Int32Array {
  const depth = new Int32Array(found.table.count).fill(-1);
  const left = copyBits(present);
  for (let round = 0; ; round++) {
    const free = found.moves.filter(
      (m) => members(m.units).some((u) => hasBit(left, u)) && !intersects(m.needs, left),
    );
    if (free.length === 0) return depth;
    const gone = bitsOf(
      found.table.count,
      free.flatMap((m) => members(m.units)),
    );
    for (const u of members(gone)) if (hasBit(left, u)) depth[u] = round;
    dropBits(left, gone);
  }
}

/**
 * Runs together copies of one pattern that follow each other and leave the same way (eight shim packs, ten plugs):
 * one step of the plan takes them all, none of them in another's way.
 */
export function gatherCopies(
  table: MoveTable,
  moves: readonly Move[],
  entryOf: (u: number) => string,
): Move[] {
  const out: Move[] = [];
  for (const move of moves) {
    const before = out[out.length - 1];
    const alike =
      before !== undefined &&
      move.way !== null &&
      before.way !== null &&
      move.way.kind === before.way.kind &&
      move.direction >= 0 &&
      move.direction === before.direction &&
      move.presses === before.presses &&
      entryOf(move.lead) === entryOf(before.lead) &&
      !table.graph.bodies[move.lead]!.fastener &&
      !intersects(move.needs, before.units);
    if (!alike) {
      out.push(move);
      continue;
    }
    const units = copyBits(before.units);
    addBits(units, move.units);
    const needs = copyBits(before.needs);
    addBits(needs, move.needs);
    dropBits(needs, units);
    out[out.length - 1] = { ...before, units, needs };
  }
  return out;
}
