/**
 * Whether an assembly can be parted into given pieces, each kept as one: asked when something is put on, since what
 * goes together must be the end of some order of taking apart. Pieces are peeled off as long as any is free; taking
 * more away never bars one, so the order of peeling does not matter.
 */
import {
  addBits,
  type Bits,
  copyBits,
  dropBits,
  hasBit,
  intersects,
  isEmpty,
  isSubset,
  members,
  sameBits,
} from '../bits';
import { type Move, type MoveTable, needsTogether, togetherAllowed, togetherMove } from '../moves';
import { DIRECTIONS } from '../way';
import { closureAlong, freeAlone, withSeals } from './parting';

/** How `piece` may leave `present` as one, the rest staying; null: it cannot. */
export function pieceMove(table: MoveTable, present: Bits, piece: Bits): Move | null {
  const others = copyBits(present);
  dropBits(others, piece);
  for (const u of members(piece)) {
    // One body with its seals leaves by its own way, turned or pulled.
    if (!isSubset(piece, withSeals(table, u))) continue;
    const move = freeAlone(table, others, u) ?? freeAlone(table, others, u, true);
    if (move !== null && !intersects(move.units, others)) return move;
  }
  for (let d = 0; d < DIRECTIONS.length; d++)
    if (!intersects(needsTogether(table, piece, d), others) && togetherAllowed(table, piece))
      return togetherMove(table, piece, d);
  return null;
}

/** Pieces that cannot be brought off; none: the assembly parts into its pieces. `base` is the piece that stays. */
export function stuckPieces(
  table: MoveTable,
  whole: Bits,
  pieces: readonly Bits[],
  base: Bits | null,
): Bits[] {
  const left = copyBits(whole);
  let waiting = pieces.filter((piece) => piece !== base);
  while (waiting.length > 0) {
    const still = waiting.filter((piece) => {
      if (sameBits(piece, left) || pieceMove(table, left, piece) === null) return true;
      dropBits(left, piece);
      return false;
    });
    if (base === null && still.length === 1 && sameBits(still[0]!, left)) return [];
    if (still.length < waiting.length) {
      waiting = still;
      continue;
    }
    const set = separable(table, left, waiting, base);
    if (set === null) return waiting;
    dropBits(left, set);
    waiting = waiting.filter((piece) => !isSubset(piece, set));
    if (base === null && isEmpty(left)) return [];
  }
  return [];
}

/** Several pieces that leave as one and come apart on the bench. */
function separable(table: MoveTable, left: Bits, waiting: readonly Bits[], base: Bits | null): Bits | null {
  for (const piece of waiting)
    for (let d = 0; d < DIRECTIONS.length; d++) {
      const set = closureOfPieces(table, left, waiting, piece, d);
      if (base !== null && intersects(set, base)) continue;
      if (sameBits(set, left) || !togetherAllowed(table, set)) continue;
      const inside = waiting.filter((p) => isSubset(p, set));
      if (stuckPieces(table, set, inside, null).length === 0) return set;
    }
  return null;
}

function closureOfPieces(
  table: MoveTable,
  left: Bits,
  pieces: readonly Bits[],
  start: Bits,
  d: number,
): Bits {
  let set = copyBits(start);
  for (;;) {
    const next = closureAlong(table, left, set, d);
    for (const piece of pieces) if (intersects(piece, next) && !isSubset(piece, next)) addBits(next, piece);
    if (sameBits(next, set)) return set;
    set = next;
  }
}

/** Bodies of `among` that `piece` needs gone to leave by the way that needs fewest. */
export function barredBy(table: MoveTable, piece: Bits, among: Bits): number[] {
  let best: number[] | null = null;
  const ask = (needs: Bits): void => {
    const list = members(needs).filter((v) => hasBit(among, v) && !hasBit(piece, v));
    if (best === null || list.length < best.length) best = list;
  };
  const list = members(piece);
  if (list.length === 1 || list.some((u) => isSubset(piece, withSeals(table, u))))
    for (const u of list) for (const move of table.pressed[u]!) ask(move.needs);
  else for (let d = 0; d < DIRECTIONS.length; d++) ask(needsTogether(table, piece, d));
  return best ?? [];
}
