/** Why a body cannot leave now, in one sentence: of its ways the one that wants least, and what holds or covers it. */
import { type Message, message } from '../../kernel';
import { type Bits, bitsOf, copyBits, dropBits, hasBit, members } from '../bits';
import { discoverWhole } from '../discover';
import { straightBlockers } from '../graph';
import type { JointKind } from '../joints';
import type { Move, MoveTable } from '../moves';
import { DIRECTIONS } from '../way';
import type { PracticeBench } from './bench';
import { closureAlong } from './parting';

/** At most this many names in one sentence. */
const NAMES = 3;

export interface Refusal {
  readonly reason: Message;
  /** Bodies that must go first. */
  readonly by: readonly number[];
}

type Cause = 'hose' | 'drain' | 'clamped' | 'thread' | 'covered' | 'tool' | 'tight';

/** What speaks first when several bar the way: what is quickest to understand and to do. */
const CAUSES: readonly Cause[] = ['hose', 'drain', 'clamped', 'thread', 'covered', 'tool', 'tight'];

/** @param present bodies of the assembly that `u` is in; `base` of it, -1: none stays */
export function whyNot(bench: PracticeBench, present: Bits, base: number, u: number): Refusal {
  const { graph } = bench;
  const id = (v: number): string => graph.bodies[v]!.id;
  if (u === base || graph.bodies[u]!.fixed)
    return { reason: message('practice.why.stays', { part: id(u) }), by: [] };
  const best = leastWanted(bench, present, base, u);
  if (best === null) return { reason: message('practice.why.no-way', { part: id(u) }), by: [] };
  const by = members(best.needs).filter((v) => hasBit(present, v));
  const causes = causesOf(bench, best, by);
  const cause = CAUSES.find((c) => causes.has(c)) ?? 'covered';
  const named = oneOfEach(bench, causes.get(cause) ?? by).map(id);
  const reason =
    best.way === null && best.lead !== u
      ? message('practice.why.with', { part: id(u), lead: id(best.lead), by: named })
      : message(`practice.why.${cause}`, { part: id(u), by: named });
  return { reason, by };
}

/** Of copies of a pattern one speaks for all; no more names than a sentence bears. */
function oneOfEach({ entryOf }: PracticeBench, list: readonly number[]): number[] {
  return list.filter((v, i) => list.findIndex((w) => entryOf[w] === entryOf[v]) === i).slice(0, NAMES);
}

/** The move of `u` that wants fewest gone, moves past what never leaves left out. */
function leastWanted(bench: PracticeBench, present: Bits, base: number, u: number): Move | null {
  const { table } = bench;
  const known = base === bench.base ? discoverWhole(table).movesOf[u]! : [];
  const moves =
    known.length > 0
      ? known
      : [...table.single[u]!, ...table.pressed[u]!, ...togetherMoves(table, present, u)];
  let best: Move | null = null;
  let least = Infinity;
  for (const move of moves) {
    if (base >= 0 && (hasBit(move.needs, base) || hasBit(move.units, base))) continue;
    const wanted = members(move.needs).filter((v) => hasBit(present, v)).length;
    if (wanted === 0 || wanted >= least) continue;
    least = wanted;
    best = move;
  }
  return best;
}

/** On the bench: `u` along each direction, with what bars it as what it needs gone. */
function togetherMoves(table: MoveTable, present: Bits, u: number): Move[] {
  return DIRECTIONS.map((_, direction) => {
    const units = bitsOf(table.count, [u]);
    const needs = copyBits(closureAlong(table, present, units, direction));
    dropBits(needs, units);
    return { units, lead: u, way: null, direction, needs, presses: false };
  });
}

const CAUSE_OF: Partial<Record<JointKind, Cause>> = {
  clamped: 'clamped',
  thread: 'thread',
  hose: 'hose',
  drain: 'drain',
  tight: 'tight',
};

/** Bodies in the way of a move by cause, what it strikes first named first. */
function causesOf({ table, graph }: PracticeBench, move: Move, by: readonly number[]): Map<Cause, number[]> {
  const found = new Map<Cause, number[]>();
  const named = new Set<number>();
  const add = (cause: Cause, v: number): void => {
    if (!by.includes(v) || named.has(v)) return;
    named.add(v);
    found.set(cause, [...(found.get(cause) ?? []), v]);
  };
  for (const u of members(move.units))
    for (const joint of table.jointsOf[u]!) {
      const cause = CAUSE_OF[joint.kind];
      if (cause !== undefined) add(cause, joint.to);
    }
  const strikes =
    move.way?.blockers ??
    (move.direction < 0
      ? []
      : members(move.units).flatMap((u) => straightBlockers(graph, u, move.direction)));
  for (const { body, cause } of [...strikes].sort((a, b) => a.strike_m - b.strike_m))
    add(cause === 'tool' ? 'tool' : 'covered', body);
  for (const v of by) add('covered', v);
  return found;
}
