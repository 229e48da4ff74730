/** Why a step comes when it comes, as message keys: what it sets free, and why several leave together. */
import { message, type Message } from '../kernel';
import { hasBit, intersects, members } from './bits';
import type { Move, MoveTable } from './moves';

/** At most this many names in one list; a sentence has to be read. */
const NAMES = 4;

/** Reasons of a move that stands before `later` in a sequence. */
export function reasonsFor(table: MoveTable, move: Move, later: readonly Move[]): Message[] {
  const { graph } = table;
  const id = (u: number): string => graph.bodies[u]!.id;
  const part = id(move.lead);
  const reasons: Message[] = [];
  const list = (key: string, param: string, names: ReadonlySet<string>): void => {
    if (names.size > 0) reasons.push(message(key, { part, [param]: [...names].slice(0, NAMES) }));
  };
  if (move.way === null) reasons.push(...togetherReasons(table, move));
  const covers = new Set<string>();
  const tools = new Set<string>();
  const byJoint = new Map<string, Set<string>>();
  for (const next of later) {
    if (!intersects(next.needs, move.units)) continue;
    for (const u of members(next.units)) {
      for (const joint of table.jointsOf[u]!) {
        if (!hasBit(move.units, joint.to) || joint.kind === 'holds') continue;
        byJoint.set(joint.kind, (byJoint.get(joint.kind) ?? new Set()).add(id(u)));
      }
    }
    if (next.way !== null) {
      for (const blocker of next.way.blockers) {
        if (!hasBit(move.units, blocker.body)) continue;
        (blocker.cause === 'tool' ? tools : covers).add(id(next.lead));
      }
    } else if (members(next.units).some((u) => intersects(table.blocked[next.direction]![u]!, move.units))) {
      covers.add(id(next.lead));
    }
  }
  list('why.clamps', 'clamped', byJoint.get('clamped') ?? new Set());
  list('why.thread', 'threaded', byJoint.get('thread') ?? new Set());
  list('why.hose', 'port', byJoint.get('hose') ?? new Set());
  list('why.drain', 'boundary', byJoint.get('drain') ?? new Set());
  list('why.tight', 'other', byJoint.get('tight') ?? new Set());
  for (const names of byJoint.values()) for (const name of names) covers.delete(name);
  list('why.covers', 'covers', covers);
  list('why.bars-tool', 'fasteners', tools);
  if (reasons.length === 0) reasons.push(message('why.free', { part }));
  return reasons;
}

/** Why several leave together: they are one, and which thread or fastener inside cannot be undone in place. */
function togetherReasons(table: MoveTable, move: Move): Message[] {
  const { graph } = table;
  const list = members(move.units);
  const id = (u: number): string => graph.bodies[u]!.id;
  const out = [
    message('why.together', { part: id(move.lead), members: list.filter((u) => u !== move.lead).map(id) }),
  ];
  for (const u of list) {
    const way = graph.ways[u]!.find((w) => w.kind === 'unscrew' || w.kind === 'fastener');
    if (way === undefined) continue;
    const barred = way.blockers.filter((b) => b.body !== way.releases && hasBit(move.units, b.body));
    if (barred.length > 0)
      out.push(
        message('why.together-thread', {
          part: id(u),
          'barred-by': barred.slice(0, NAMES).map((b) => id(b.body)),
        }),
      );
  }
  return out;
}
