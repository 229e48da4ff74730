/**
 * How a body may leave an assembly at this moment: by itself, with what it cannot be parted from in place, or (tight
 * fits) pulled off. The least set that must move with a body along a direction is the closure of what it strikes and
 * what it is joined to (Wilson and Latombe 1994, Geometric reasoning about mechanical assembly, Artificial
 * Intelligence 71). All of it is monotone: taking more away never bars a move, so no legal order runs into a dead end.
 */
import {
  type Bits,
  bitsOf,
  copyBits,
  hasBit,
  intersects,
  isSubset,
  members,
  sameBits,
  setBit,
} from '../bits';
import { type Move, type MoveTable, togetherAllowed, togetherMove } from '../moves';
import { DIRECTIONS } from '../way';

/** Towards the ground: a lift downwards is the last choice. */
const DOWN = 3;

/** Bodies of `present` that cannot stay when `start` moves along a direction, `start` included. */
export function closureAlong(table: MoveTable, present: Bits, start: Bits, direction: number): Bits {
  const set = copyBits(start);
  const open = members(start);
  const add = (v: number): void => {
    if (!hasBit(present, v) || hasBit(set, v)) return;
    setBit(set, v);
    open.push(v);
  };
  for (let u = open.pop(); u !== undefined; u = open.pop()) {
    members(table.blocked[direction]![u]!).forEach(add);
    for (const joint of table.jointsOf[u]!) add(joint.to);
  }
  return set;
}

/** A body and the seals that leave with it. */
export function withSeals(table: MoveTable, u: number): Bits {
  const own = copyBits(table.carried[u]!);
  setBit(own, u);
  return own;
}

/** The free move of a body by itself; `pressing`: tight fits may be pulled off. */
export function freeAlone(table: MoveTable, present: Bits, u: number, pressing = false): Move | null {
  const moves = (pressing ? table.pressed : table.single)[u]!;
  return moves.find((m) => !intersects(m.needs, present)) ?? null;
}

/**
 * The move that takes `u` off `present` now; null: none. `base` stays (-1: nothing does, as on the bench).
 */
export function partingOf(table: MoveTable, present: Bits, base: number, u: number): Move | null {
  if (u === base || table.graph.bodies[u]!.fixed) return null;
  const fits = (move: Move | null): move is Move =>
    move !== null && !hasBit(move.units, base) && !isSubset(present, move.units);
  const alone = freeAlone(table, present, u);
  if (fits(alone)) return alone;
  const together = freeTogether(table, present, base, u);
  if (together !== null) return together;
  const pulled = freeAlone(table, present, u, true);
  return fits(pulled) ? pulled : null;
}

/** The lightest set with `u` that may move as one, in any direction. */
function freeTogether(table: MoveTable, present: Bits, base: number, u: number): Move | null {
  const { bodies } = table.graph;
  let best: Move | null = null;
  let least = Infinity;
  const seen: Bits[] = [];
  for (let d = 0; d < DIRECTIONS.length; d++) {
    const set = closureAlong(table, present, bitsOf(table.count, [u]), d);
    if (hasBit(set, base) || sameBits(set, present)) continue;
    const known = seen.some((s) => sameBits(s, set));
    if (!known && !(togetherAllowed(table, set) && holdsTogether(table, present, set, u))) continue;
    seen.push(set);
    const mass = members(set).reduce((sum, v) => sum + bodies[v]!.mass_kg, 0) + (d === DOWN ? 1e-3 : 0);
    if (mass >= least - 1e-9) continue;
    least = mass;
    best = togetherMove(table, set, d);
  }
  return best;
}

/**
 * Whether a set can be lifted as one: each of it is joined to `u` or shut in. A loose part that only stands in front
 * is to be taken off first, not pushed along.
 */
function holdsTogether(table: MoveTable, present: Bits, set: Bits, u: number): boolean {
  const joined = bitsOf(table.count, [u]);
  const inside = table.graph.joints.filter((j) => hasBit(set, j.from) && hasBit(set, j.to));
  for (let grew = true; grew;) {
    grew = false;
    for (const { from, to } of inside)
      if (hasBit(joined, from) !== hasBit(joined, to)) {
        setBit(joined, from);
        setBit(joined, to);
        grew = true;
      }
  }
  return members(set).every((v) => hasBit(joined, v) || freeAlone(table, present, v) === null);
}
