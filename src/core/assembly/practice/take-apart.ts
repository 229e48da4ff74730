/** Taking apart: what a try on a body does in a position. */
import { message, type Message } from '../../kernel';
import { addBits, type Bits, copyBits, hasBit, members, sameBits } from '../bits';
import { baseOf } from '../discover';
import type { Move } from '../moves';
import { makeStep } from '../steps';
import type { Step } from '../types';
import type { PracticeBench } from './bench';
import { freeAlone, partingOf } from './parting';
import { assemblyOf, isParted, type Position } from './position';
import { type Refusal, whyNot } from './refusal';
import type { PracticeMove } from './types';

export interface Taking {
  readonly move: PracticeMove;
  readonly step: Step;
  readonly note: Message | null;
}

/** Whether a body is off by itself: nothing is left to be parted from it. */
export function isOff(bench: PracticeBench, position: Position, u: number): boolean {
  const from = assemblyOf(position, u);
  return from !== position.main && isParted(bench, from);
}

/** Takes a body off the machine, or off its subassembly on the bench, when it can go; else why not. */
export function takeFrom(bench: PracticeBench, position: Position, u: number): Taking | Refusal {
  const { graph, table } = bench;
  const from = assemblyOf(position, u);
  const base = baseFor(bench, position, from, u);
  const alone = partingOf(table, from, base, u);
  if (alone === null) return whyNot(bench, from, base, u);
  const move = withCopies(bench, from, base, alone);
  const going = members(move.units).filter((v) => hasBit(from, v));
  const onBench = from !== position.main;
  const step = makeStep(
    { machine: bench.machine, table, present: copyBits(from), bench: onBench, later: [] },
    move,
  );
  const together = move.way === null && going.length > 1;
  const id = (v: number): string => graph.bodies[v]!.id;
  return {
    move: { lead: id(u), bodies: going.map(id), together, onto: null },
    step,
    note: together
      ? message('practice.note.together', {
          part: id(move.lead),
          members: going.filter((v) => v !== move.lead).map(id),
        })
      : move.presses
        ? message('practice.note.pressed', { part: id(u), other: tightIn(bench, from, u) })
        : null,
  };
}

/** What stays: the machine's base; on the bench the heaviest, unless it is the one that is taken in hand. */
function baseFor({ base, graph }: PracticeBench, position: Position, from: Bits, u: number): number {
  if (from === position.main) return base;
  const heaviest = baseOf(graph, members(from));
  return heaviest === u ? -1 : heaviest;
}

/** Copies of one pattern that are free in the same way go in one move: eight shim packs, ten plugs. */
function withCopies(bench: PracticeBench, from: Bits, base: number, move: Move): Move {
  const { table, graph, entryOf } = bench;
  if (move.way === null || move.direction < 0 || graph.bodies[move.lead]!.fastener) return move;
  const units = copyBits(move.units);
  for (const v of members(from)) {
    if (v === base || hasBit(units, v) || entryOf[v] !== entryOf[move.lead]) continue;
    const other = (move.presses ? table.pressed : table.single)[v]!.find(
      (m) =>
        m.way?.kind === move.way!.kind &&
        m.direction === move.direction &&
        m.presses === move.presses &&
        m === freeAlone(table, from, v, move.presses),
    );
    if (other !== undefined) addBits(units, other.units);
  }
  return sameBits(units, move.units) ? move : { ...move, units };
}

function tightIn({ table, graph }: PracticeBench, from: Bits, u: number): string[] {
  return table.jointsOf[u]!.filter((j) => j.kind === 'tight' && hasBit(from, j.to)).map(
    (j) => graph.bodies[j.to]!.id,
  );
}
