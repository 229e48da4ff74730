/**
 * Whether a body can come off at a given state of the teardown, and what bars it. Three answers, because some bodies
 * leave only along with others or by force: those are neither simply free nor simply barred.
 */
import { bitsOf, hasBit, intersects, members, within } from './bits';
import { baseOf } from './discover';
import type { BlockingGraph } from './graph';
import type { JointKind } from './joints';
import { type Move, moveTable, type MoveTable } from './moves';
import { DIRECTIONS } from './way';

/** What bars a body: another one's solid in its way, in its tool's way, or a joint that must be undone first. */
export interface Bar {
  readonly body: number;
  readonly kind: 'path' | 'tool' | Exclude<JointKind, 'holds' | 'carries'>;
}

export interface Freedom {
  /** 'with-others': it can leave now, but only together with others or by parting a tight fit. */
  readonly state: 'free' | 'barred' | 'with-others';
  /** Of the way that is barred by fewest: all that must go before it can be used. Empty when free. */
  readonly bars: readonly Bar[];
  /** Bodies that bar each of its ways, whichever is chosen. */
  readonly always: readonly number[];
  /** Bodies that bar at least one of its ways. */
  readonly any: readonly number[];
}

/** @param left bodies that are still on the machine, `u` among them */
export function freedomOf(graph: BlockingGraph, left: ReadonlySet<number>, u: number): Freedom {
  const table = moveTable(graph);
  const present = bitsOf(table.count, left);
  const moves = table.single[u]!;
  if (moves.some((m) => !intersects(m.needs, present)))
    return { state: 'free', bars: [], always: [], any: [] };
  const all = moves.map((move) => ({ move, needed: members(within(move.needs, present)) }));
  // Ways that run into what never leaves are none, where there are others.
  const stays = stayingIn(graph);
  const ways = all.filter(({ needed }) => !needed.some(stays));
  const open = ways.length > 0 ? ways : all;
  const least = open.reduce<(typeof all)[number] | null>(
    (best, way) => (best === null || way.needed.length < best.needed.length ? way : best),
    null,
  );
  const bars =
    least === null ? [] : least.needed.map((v) => ({ body: v, kind: barKind(table, least.move, v) }));
  const always = (least?.needed ?? []).filter((v) => open.every(({ needed }) => needed.includes(v)));
  const any = [...new Set(all.flatMap(({ needed }) => needed))];
  const pressed = table.pressed[u]!.some((m) => !intersects(m.needs, present));
  return { state: pressed || leavesWithOthers(table, left, u) ? 'with-others' : 'barred', bars, always, any };
}

function barKind(table: MoveTable, move: Move, v: number): Bar['kind'] {
  const joint = table.jointsOf[move.lead]!.find((j) => j.to === v && j.kind !== 'holds');
  if (joint !== undefined && joint.kind !== 'holds' && joint.kind !== 'carries') return joint.kind;
  return move.way?.blockers.find((b) => b.body === v)?.cause ?? 'path';
}

/**
 * Whether all that must move along with `u` in some direction, taken together, is free of the base: strike and joint
 * arcs are followed until nothing is added.
 */
function leavesWithOthers(table: MoveTable, left: ReadonlySet<number>, u: number): boolean {
  const { graph, blocked, jointsOf, count } = table;
  const stays = stayingIn(graph);
  return DIRECTIONS.some((_, d) => {
    const lump = bitsOf(count, [u]);
    const open = [u];
    for (let v = open.pop(); v !== undefined; v = open.pop()) {
      if (stays(v)) return false;
      const barring = [...members(blocked[d]![v]!), ...jointsOf[v]!.map((j) => j.to)];
      // Hoses and drains are dealt with first: moving along does not satisfy them.
      if (jointsOf[v]!.some((j) => !j.along && left.has(j.to))) return false;
      for (const w of barring) {
        if (!left.has(w) || hasBit(lump, w)) continue;
        lump[w >>> 5]! |= 1 << (w & 31);
        open.push(w);
      }
    }
    return true;
  });
}

/** Whether a body stays where it is: the base that all others come off, and fixed ones. */
function stayingIn(graph: BlockingGraph): (v: number) => boolean {
  const base = baseOf(graph, [...graph.bodies.keys()]);
  return (v) => v === base || graph.bodies[v]!.fixed;
}
