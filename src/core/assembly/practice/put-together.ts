/**
 * Putting together: the legal relation run backwards. A piece goes on where it could come off again, when all that must
 * be in before it is in: what is then together must be the end of some order of taking apart, so that no try leads
 * into a dead end.
 */
import { message, type Message } from '../../kernel';
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
  sameBits,
} from '../bits';
import { reverseStep } from '../assembly-plan';
import { makeStep } from '../steps';
import type { Step } from '../types';
import type { PracticeBench } from './bench';
import { assemblyOf, isParted, type Position } from './position';
import { barredBy, pieceMove, stuckPieces } from './reach';
import type { Refusal } from './refusal';
import type { PracticeMove } from './types';

const NAMES = 3;

export interface Putting {
  readonly move: PracticeMove;
  /** Way in. */
  readonly step: Step;
  /** The same as it would come off, for what must be held. */
  readonly off: Step;
  readonly note: Message | null;
}

/**
 * Puts the piece that holds `u` onto the machine, else onto a piece of its subassembly on the bench; else why not.
 * @param groups subassemblies that may be built on the bench: those that the least plan takes out as one
 */
export function putFrom(
  bench: PracticeBench,
  groups: readonly Bits[],
  position: Position,
  u: number,
): Putting | Refusal {
  const piece = assemblyOf(position, u);
  const seats = seatsOf(bench, piece);
  const group = subassemblyOf(groups, piece);
  const hosts = [
    position.main,
    ...position.pieces
      .filter((p) => p !== piece && group !== null && isSubset(p, group))
      .sort((a, b) => mass(bench, b) - mass(bench, a)),
  ];
  let refusal: Refusal | null = null;
  for (const host of hosts) {
    if (!isEmpty(seats) && !intersects(seats, host) && !standsOnCribs(bench, piece)) continue;
    const copies = copiesOf(bench, position, piece, host);
    for (const pieces of copies.length > 0 ? [[piece, ...copies], [piece]] : [[piece]]) {
      const found = fit(bench, position, pieces, host, u);
      if ('move' in found) return found;
      refusal ??= found;
    }
  }
  const id = (v: number): string => bench.graph.bodies[v]!.id;
  return (
    refusal ?? {
      reason: message('practice.why.no-seat', { part: id(u), by: members(seats).slice(0, NAMES).map(id) }),
      by: members(seats),
    }
  );
}

/** The smallest subassembly that a piece is a part of, not the whole of. */
function subassemblyOf(groups: readonly Bits[], piece: Bits): Bits | null {
  const around = groups.filter((g) => isSubset(piece, g) && !sameBits(piece, g));
  const size = (g: Bits): number => members(g).length;
  return around.reduce<Bits | null>((best, g) => (best === null || size(g) < size(best) ? g : best), null);
}

/** Parts of the frame stand on cribs until they are joined; everything else needs something to sit on. */
const standsOnCribs = ({ machine, graph }: PracticeBench, piece: Bits): boolean =>
  members(piece).some((v) => machine.parts[graph.bodies[v]!.parts[0]!]!.movesWith === 'frame');

/** What a piece is joined to or seats on, itself left out. */
function seatsOf({ table, touching }: PracticeBench, piece: Bits): Bits {
  const seats = bitsOf(table.count, []);
  for (const v of members(piece)) addBits(seats, touching[v]!);
  dropBits(seats, piece);
  return seats;
}

function fit(
  bench: PracticeBench,
  position: Position,
  pieces: readonly Bits[],
  host: Bits,
  u: number,
): Putting | Refusal {
  const { table, graph } = bench;
  const id = (v: number): string => graph.bodies[v]!.id;
  const units = bitsOf(table.count, pieces.flatMap(members));
  const grown = copyBits(host);
  addBits(grown, units);
  const piece = pieces[0]!;
  const own = pieceMove(table, grown, piece);
  // On the bench either of the two may be the one that is brought.
  const other = own === null && host !== position.main ? pieceMove(table, grown, host) : null;
  const way = own ?? other;
  if (way === null) {
    const by = barredBy(table, piece, host);
    return { reason: message('practice.why.way-shut', { part: id(u), by: by.slice(0, NAMES).map(id) }), by };
  }
  for (const copy of pieces.slice(1))
    if (pieceMove(table, grown, copy) === null)
      return { reason: message('practice.why.no-way', { part: id(u) }), by: [] };
  const rest = position.pieces.filter((p) => p !== host && !pieces.includes(p));
  const inMain = host === position.main;
  const stays = inMain ? grown : position.main;
  const stuck = stuckPieces(
    table,
    bench.all,
    inMain ? [grown, ...rest] : [position.main, grown, ...rest],
    stays,
  );
  if (stuck.length > 0) {
    const by = firstOf(bench, stuck, grown, units);
    return { reason: message('practice.why.before', { part: id(u), by: by.slice(0, NAMES).map(id) }), by };
  }
  const onto = heaviest(bench, host);
  const going = members(units);
  const off = makeStep(
    { machine: bench.machine, table, present: copyBits(grown), bench: !inMain, later: [] },
    own === null
      ? {
          ...way,
          units,
          way: null,
          lead: heaviest(bench, piece),
          direction: way.direction < 0 ? 0 : way.direction ^ 1,
        }
      : { ...way, units },
  );
  return {
    move: { lead: id(u), bodies: going.map(id), together: going.length > 1, onto: id(onto) },
    step: reverseStep(off),
    off,
    note: inMain ? null : message('practice.note.onto', { part: id(u), other: id(onto) }),
  };
}

/** Of what could no longer be put on, that which the new pieces themselves would bar. */
function firstOf(
  { table, graph }: PracticeBench,
  stuck: readonly Bits[],
  grown: Bits,
  units: Bits,
): number[] {
  const lead = (piece: Bits): number[] => members(piece).filter((v) => !hasBit(grown, v));
  const barred = stuck.filter((piece) => barredBy(table, piece, units).length > 0);
  const list = (barred.length > 0 ? barred : stuck).flatMap((piece) => {
    const bodies = lead(piece);
    if (bodies.length === 0) return [];
    return [bodies.reduce((best, v) => (graph.bodies[v]!.mass_kg > graph.bodies[best]!.mass_kg ? v : best))];
  });
  return [...new Set(list)];
}

/** Other pieces that are copies of this one, each by itself. */
function copiesOf(bench: PracticeBench, position: Position, piece: Bits, host: Bits): Bits[] {
  if (!isParted(bench, piece)) return [];
  const entry = bench.entryOf[heaviest(bench, piece)];
  if (bench.graph.bodies[heaviest(bench, piece)]!.fastener) return [];
  return position.pieces.filter(
    (p) => p !== piece && p !== host && isParted(bench, p) && bench.entryOf[heaviest(bench, p)] === entry,
  );
}

function heaviest({ graph }: PracticeBench, set: Bits): number {
  const list = members(set);
  return list.reduce(
    (best, v) => (graph.bodies[v]!.mass_kg > graph.bodies[best]!.mass_kg ? v : best),
    list[0] ?? 0,
  );
}

const mass = ({ graph }: PracticeBench, set: Bits): number =>
  members(set).reduce((sum, v) => sum + graph.bodies[v]!.mass_kg, 0);
