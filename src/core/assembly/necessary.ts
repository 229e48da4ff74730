/**
 * What every plan must take off for a body, whatever it chooses: the least fixed point of 'all of a move's needs and
 * what they need in turn, common to all moves of the body'. It rules out moves that wait for themselves, drops moves
 * that another is as good as, and bounds the search from below.
 */
import {
  addBits,
  type Bits,
  bitsOf,
  copyBits,
  dropBits,
  emptyBits,
  hasBit,
  isSubset,
  members,
  sameBits,
  within,
} from './bits';
import type { Move } from './moves';

export interface Pruned {
  readonly moves: readonly Move[];
  /** By body: those gone before it or with it in every plan. */
  readonly necessary: readonly Bits[];
}

export function pruneMoves(count: number, all: readonly Move[]): Pruned {
  let moves = all;
  let necessary: Bits[] = Array.from({ length: count }, () => emptyBits(count));
  for (;;) {
    const closures = new Map(moves.map((m) => [m, closureOf(m, necessary)]));
    // A move all of whose bodies are gone before it can start frees nobody.
    const open = moves.filter((m) => !isSubset(m.units, closures.get(m)!));
    const next = necessary.map((_, u) => common(count, open, closures, u));
    const settled = open.length === moves.length && next.every((set, u) => sameBits(set, necessary[u]!));
    moves = open;
    necessary = next;
    if (settled) return { moves: undominated(moves, closures), necessary };
  }
}

/** What must be gone before a move, at least. */
function closureOf(move: Move, necessary: readonly Bits[]): Bits {
  const closure = copyBits(move.needs);
  for (const u of members(move.needs)) addBits(closure, necessary[u]!);
  return closure;
}

function common(count: number, moves: readonly Move[], closures: ReadonlyMap<Move, Bits>, u: number): Bits {
  let shared: Bits | null = null;
  for (const move of moves) {
    if (!hasBit(move.units, u)) continue;
    const set = copyBits(closures.get(move)!);
    addBits(set, move.units);
    shared = shared === null ? set : within(shared, set);
  }
  if (shared === null) return emptyBits(count);
  dropBits(shared, bitsOf(count, [u]));
  return shared;
}

/**
 * Of moves of the same bodies, those whose closure holds all that another one needs are left out: whenever such a
 * move can be made, the other can. Later ones go first, so that the more direct of two equals stays.
 */
function undominated(moves: readonly Move[], closures: ReadonlyMap<Move, Bits>): Move[] {
  const kept = new Set(moves);
  for (const move of [...moves].reverse()) {
    const closure = closures.get(move)!;
    const better = [...kept].some(
      (m) => m !== move && sameBits(m.units, move.units) && isSubset(m.needs, closure),
    );
    if (better) kept.delete(move);
  }
  return [...kept];
}
