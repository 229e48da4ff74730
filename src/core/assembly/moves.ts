/**
 * Moves: what one step may take off, and what must be gone before it. A body moves by itself in one of its ways,
 * with the seals it carries; or several move together along one direction (a subassembly). Taking more away never
 * bars a move, so every question here is monotone in the set of what is gone.
 */
import { addBits, type Bits, bitsOf, dropBits, emptyBits, hasBit, isSubset, members, setBit } from './bits';
import { type BlockingGraph, straightBlockers } from './graph';
import type { Joint } from './joints';
import { type Blocker, DIRECTIONS, type Way } from './way';

export interface Move {
  /** Bodies that leave. */
  readonly units: Bits;
  readonly lead: number;
  /** The body's own way; null for several along `direction`. */
  readonly way: Way | null;
  readonly direction: number;
  /** Bodies that must be gone. */
  readonly needs: Bits;
  /** Tight fits that the step parts (a press or puller job). */
  readonly presses: boolean;
}

/** What the planner asks of a graph again and again, as bits. */
export interface MoveTable {
  readonly graph: BlockingGraph;
  readonly count: number;
  /** blocked[direction][u]: bodies that u strikes. */
  readonly blocked: readonly (readonly Bits[])[];
  readonly jointsOf: readonly (readonly Joint[])[];
  /** Bodies that u takes along when it leaves by itself: the seals in it. */
  readonly carried: readonly Bits[];
  /** Moves of each body by itself, dominated ones left out. */
  readonly single: readonly (readonly Move[])[];
  /** The same with tight fits let go. */
  readonly pressed: readonly (readonly Move[])[];
}

const tables = new WeakMap<BlockingGraph, MoveTable>();

export function moveTable(graph: BlockingGraph): MoveTable {
  const known = tables.get(graph);
  if (known !== undefined) return known;
  const count = graph.bodies.length;
  const blocked = DIRECTIONS.map((_, d) =>
    graph.bodies.map((__, u) =>
      bitsOf(
        count,
        straightBlockers(graph, u, d).map((b) => b.body),
      ),
    ),
  );
  const jointsOf = graph.bodies.map((_, u) => graph.joints.filter((j) => j.from === u));
  const carried = graph.bodies.map((_, u) => {
    const set = emptyBits(count);
    for (const joint of jointsOf[u]!)
      if (joint.kind === 'carries' && graph.bodies[joint.to]?.fixed !== true) setBit(set, joint.to);
    return set;
  });
  const bare = { graph, count, blocked, jointsOf, carried };
  const moves = (pressing: boolean): Move[][] =>
    graph.ways.map((ways, body) =>
      undominated(
        [...ways]
          .sort((a, b) => exitTravel_m(graph, body, a.direction) - exitTravel_m(graph, body, b.direction))
          .map((way) => singleMove(bare, body, way, pressing)),
      ),
    );
  const table: MoveTable = { ...bare, single: moves(false), pressed: moves(true) };
  tables.set(graph, table);
  return table;
}

type BareTable = Pick<MoveTable, 'graph' | 'count' | 'blocked' | 'jointsOf' | 'carried'>;

function singleMove(table: BareTable, body: number, way: Way, pressing: boolean): Move {
  const { count, blocked, jointsOf, carried } = table;
  const units = bitsOf(count, [body]);
  // A fastener or nut is turned out of its seal; only what moves as a whole takes its seals along.
  const whole = way.kind === 'straight';
  if (whole) addBits(units, carried[body]!);
  const needs = bitsOf(
    count,
    way.blockers.map((b: Blocker) => b.body),
  );
  let presses = false;
  for (const joint of jointsOf[body]!) {
    if (joint.kind === 'carries' || joint.kind === 'holds') continue;
    if (joint.kind === 'thread' && joint.to === way.releases) continue;
    if (joint.kind === 'tight' && pressing) {
      presses = true;
      continue;
    }
    setBit(needs, joint.to);
  }
  if (whole && way.direction >= 0)
    for (const seal of members(carried[body]!)) addBits(needs, blocked[way.direction]![seal]!);
  dropBits(needs, units);
  dropCarried(carried, needs);
  return { units, lead: body, way, direction: way.direction, needs, presses };
}

/** Travel that takes a body's box out of all bodies' bounds along a direction; oblique ones count as long. */
export function exitTravel_m(graph: BlockingGraph, body: number, direction: number): number {
  if (direction < 0) return 1e3;
  const axis = direction >> 1;
  const { bounds } = graph.bodies[body]!;
  return (direction & 1) === 0
    ? Math.max(...graph.bodies.map((b) => b.bounds[2 * axis + 1]!)) - bounds[2 * axis]!
    : bounds[2 * axis + 1]! - Math.min(...graph.bodies.map((b) => b.bounds[2 * axis]!));
}

/** Leaves out moves that need all that another of the same units needs, and more; the first of equals stays. */
function undominated(moves: readonly Move[]): Move[] {
  const kept: Move[] = [];
  moves.forEach((move, i) => {
    const beaten = moves.some(
      (other, j) =>
        i !== j &&
        isSubset(other.units, move.units) &&
        isSubset(other.needs, move.needs) &&
        (j < i || !isSubset(move.needs, other.needs)),
    );
    if (!beaten) kept.push(move);
  });
  return kept;
}

/** Bodies that bar `units` from moving together along a direction, those themselves left out. */
export function needsTogether(table: MoveTable, units: Bits, direction: number): Bits {
  const needs = emptyBits(table.count);
  for (const u of members(units)) {
    addBits(needs, table.blocked[direction]![u]!);
    for (const joint of table.jointsOf[u]!) setBit(needs, joint.to);
  }
  dropBits(needs, units);
  dropCarried(table.carried, needs);
  return needs;
}

/** A seal need not be named beside the part that carries it: it is gone when that is. */
function dropCarried(carried: readonly Bits[], needs: Bits): void {
  for (const u of members(needs)) dropBits(needs, carried[u]!);
}

/** Whether several may move together: no fluid boundary or hose inside that must be dealt with first. */
export function togetherAllowed(table: MoveTable, units: Bits): boolean {
  return members(units).every(
    (u) =>
      table.graph.bodies[u]?.fixed !== true &&
      table.jointsOf[u]!.every((joint) => joint.along || !hasBit(units, joint.to)),
  );
}

/** The move of several along a direction. */
export function togetherMove(table: MoveTable, units: Bits, direction: number): Move {
  const list = members(units);
  const heaviest = list.reduce(
    (best, u) => (table.graph.bodies[u]!.mass_kg > table.graph.bodies[best]!.mass_kg ? u : best),
    list[0] ?? 0,
  );
  return {
    units,
    lead: heaviest,
    way: null,
    direction,
    needs: needsTogether(table, units, direction),
    presses: false,
  };
}
