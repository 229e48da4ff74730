/** Where everything is in a run: what is still together on the machine, and the pieces that are off it. */
import {
  addBits,
  type Bits,
  bitsOf,
  copyBits,
  dropBits,
  hasBit,
  intersects,
  isEmpty,
  isSubset,
  members,
  setBit,
} from '../bits';
import type { PracticeBench } from './bench';
import { withSeals } from './parting';
import type { PracticeMove } from './types';

export interface Position {
  readonly main: Bits;
  /** Each moves as one: a single body with its seals, or a subassembly on the bench. */
  readonly pieces: readonly Bits[];
}

/** The assembly that a body is in. */
export const assemblyOf = ({ main, pieces }: Position, u: number): Bits =>
  pieces.find((piece) => hasBit(piece, u)) ?? main;

/** Whether a piece is one body, with no more than the seals that it carries. */
export function isParted({ table }: PracticeBench, piece: Bits): boolean {
  return members(piece).some((u) => isSubset(piece, withSeals(table, u)));
}

export const bodiesOf = (bench: PracticeBench, ids: readonly string[]): Bits =>
  bitsOf(
    bench.table.count,
    ids.map((id) => bench.bodyOf(id)).filter((u) => u >= 0),
  );

/** The pieces that a set of bodies becomes when each leaves by itself: every body with the seals it takes along. */
export function singlePieces({ table }: PracticeBench, units: Bits): Bits[] {
  const list = members(units);
  const carried = (u: number): boolean => list.some((v) => v !== u && hasBit(table.carried[v]!, u));
  return list
    .filter((u) => !carried(u))
    .map((u) => {
      const piece = bitsOf(table.count, [u]);
      for (const seal of list) if (hasBit(table.carried[u]!, seal)) setBit(piece, seal);
      return piece;
    });
}

/** The position after bodies have left the assembly that they are in. */
export function takenOff(bench: PracticeBench, position: Position, move: PracticeMove): Position {
  const units = bodiesOf(bench, move.bodies);
  const rest = copyBits(position.main);
  dropBits(rest, units);
  const pieces = position.pieces
    .map((piece) => {
      const left = copyBits(piece);
      dropBits(left, units);
      return left;
    })
    .filter((piece) => !isEmpty(piece));
  return { main: rest, pieces: [...pieces, ...(move.together ? [units] : singlePieces(bench, units))] };
}

/** The position after pieces have been put onto the assembly that holds `move.onto`. */
export function putOn(bench: PracticeBench, position: Position, move: PracticeMove): Position {
  const units = bodiesOf(bench, move.bodies);
  const host = bench.bodyOf(move.onto ?? '');
  const grown = copyBits(assemblyOf(position, host));
  addBits(grown, units);
  const inMain = hasBit(position.main, host);
  const pieces = position.pieces.filter((piece) => !intersects(piece, grown));
  return inMain ? { main: grown, pieces } : { main: position.main, pieces: [...pieces, grown] };
}
