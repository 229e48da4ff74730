/** From chosen moves to steps that a person can read and a stage can play. */
import { message } from '../kernel';
import type { Machine } from '../machine';
import { dot, scale, type Vec3 } from '../kernel';
import { type Bits, dropBits, hasBit, intersects, members } from './bits';
import { exitTravel_m, type Move, type MoveTable } from './moves';
import { reasonsFor } from './reasons';
import { toolOfThreaded, toolsOf } from './sizes';
import type { Leg, Step, Tool } from './types';
import { DIRECTIONS, type Way, type WayLeg } from './way';

/** Training values where the model names none, seconds. */
const DEFAULT_TIME_S = { fastener: 30, part: 600, press: 1200 } as const;
/** Above this a lift needs gear (common practice for one person). */
const LIFT_BY_HAND_KG = 25;
/** Number of the direction towards the ground, and how much longer a way there may seem. */
const DOWN = 3;
const DOWN_PENALTY = 4;
/** Room left behind a part that has come clear, metres. */
const CLEAR_M = 0.02;

/** Work time of a body, seconds. */
export function bodyTime_s(machine: Machine, table: MoveTable, u: number): number {
  const body = table.graph.bodies[u]!;
  let time = 0;
  for (const id of body.unitIds) {
    const unit = machine.units.find((x) => x.id === id);
    if (unit === undefined) continue;
    const given = unit.entries.find((e) => e.time_s !== undefined)?.time_s;
    time +=
      unit.group === null
        ? (given ?? DEFAULT_TIME_S.part)
        : (given ?? DEFAULT_TIME_S.fastener) * unit.partIds.length;
  }
  return time;
}

/** Work time of a move: several that leave together count as one lift of the heaviest. */
export function moveTime_s(machine: Machine, table: MoveTable, move: Move): number {
  const time = bodyTime_s(machine, table, move.lead);
  return move.presses ? Math.max(time, DEFAULT_TIME_S.press) : time;
}

export const moveMass_kg = (table: MoveTable, move: Move): number =>
  members(move.units).reduce((sum, u) => sum + table.graph.bodies[u]!.mass_kg, 0);

export interface StepContext {
  readonly machine: Machine;
  readonly table: MoveTable;
  /** Bodies that are still there, this move's included; changed by `makeStep`. */
  readonly present: Bits;
  readonly bench: boolean;
  readonly later: readonly Move[];
}

/** The step of one move; takes its bodies out of `present`. */
export function makeStep(context: StepContext, move: Move): Step {
  const { machine, table, present, bench, later } = context;
  const { graph } = table;
  const going = members(move.units).filter((u) => hasBit(present, u));
  const lead = graph.bodies[move.lead]!;
  dropBits(present, move.units);
  const way = plainestWay(table, present, going, move);
  const legs = runLegs(
    table,
    present,
    going,
    way?.legs ?? [{ direction: DIRECTIONS[move.direction]!, distance_m: null, pitch_m: null }],
  );
  const partLegs: Record<string, readonly Leg[]> = {};
  for (const [part, own] of Object.entries(way?.partLegs ?? {}))
    partLegs[machine.parts[Number(part)]!.id] = runLegs(table, present, going, own);
  const units = machine.units.filter((u) => going.some((g) => graph.bodies[g]!.unitIds.includes(u.id)));
  const mass_kg = going.reduce((sum, u) => sum + graph.bodies[u]!.mass_kg, 0);
  const group = units.length === 1 ? (units[0]?.group ?? null) : null;
  const tools: Tool[] = [];
  if (group !== null)
    tools.push(...toolsOf(group, goesStraight(way) ? extensionFor(table, present, move) : null));
  else if (way?.kind === 'unscrew')
    tools.push(toolOfThreaded(machine.kinds[machine.parts[lead.parts[0]!]!.kind]!));
  else if (lead.hose) tools.push({ kind: 'spanner', size_m: 0, drive: '', extension_m: 0 });
  if (move.presses) tools.push({ kind: 'press', size_m: 0, drive: '', extension_m: 0 });
  if (group === null && liftMass_kg(table, going, move.way === null) > LIFT_BY_HAND_KG)
    tools.push({ kind: 'lifting-gear', size_m: 0, drive: '', extension_m: 0 });
  if (tools.length === 0) tools.push({ kind: 'hand', size_m: 0, drive: '', extension_m: 0 });
  const why = reasonsFor(table, move, later);
  // Copies of a pattern are worked one after the other; a subassembly is one lift, a carried seal no work.
  const copies =
    move.way === null ? [move.lead] : going.filter((u) => u === move.lead || !graph.bodies[u]!.seal);
  const rest = members(present).map((u) => graph.bodies[u]!.id);
  if (bench) why.unshift(message('why.bench', { part: lead.id, from: rest }));
  return {
    index: 0,
    kind: bench ? 'bench' : 'remove',
    unitIds: units.map((u) => u.id),
    fromIds: bench ? rest : [],
    legs,
    partLegs,
    why,
    mass_kg,
    tools,
    cautions: [...new Set(units.flatMap((u) => u.entries.flatMap((e) => e.cautions ?? [])))],
    supports: [],
    time_s: copies.reduce((sum, u) => sum + moveTime_s(machine, table, { ...move, lead: u }), 0),
  };
}

/** What one lift takes: the whole of a subassembly, else one body at a time. */
export function liftMass_kg(table: MoveTable, going: readonly number[], together: boolean): number {
  const masses = going.map((u) => table.graph.bodies[u]!.mass_kg);
  return together ? masses.reduce((sum, m) => sum + m, 0) : Math.max(...masses);
}

/**
 * The plainest way that is free by now, which may need more gone than the move that was planned: of a fastener the
 * most direct, of a part the shortest way out. Other moves keep theirs.
 */
function plainestWay(table: MoveTable, present: Bits, going: readonly number[], move: Move): Way | null {
  const ways = table.graph.ways[move.lead]!;
  if (move.way?.kind === 'fastener')
    return ways.find((w) => w.blockers.every((b) => !hasBit(present, b.body))) ?? move.way;
  if (move.way?.kind !== 'straight' || move.direction < 0) return move.way;
  const free = ways.filter(
    (w) =>
      w.kind === 'straight' &&
      w.direction >= 0 &&
      going.every((u) => !intersects(table.blocked[w.direction]![u]!, present)),
  );
  const cost = (w: Way): number =>
    exitTravel_m(table.graph, move.lead, w.direction) * (w.direction === DOWN ? DOWN_PENALTY : 1);
  return free.reduce<Way>((best, w) => (cost(w) < cost(best) ? w : best), move.way);
}

/** Gives each open leg the distance that takes the bodies clear of all that remain. */
function runLegs(table: MoveTable, present: Bits, going: readonly number[], legs: readonly WayLeg[]): Leg[] {
  let shift: Vec3 = [0, 0, 0];
  const total = legs.length;
  return legs.map((leg, i) => {
    const { direction } = leg;
    const distance_m = leg.distance_m ?? exitDistance_m(table, present, going, direction, shift);
    shift = [
      shift[0] + direction[0] * distance_m,
      shift[1] + direction[1] * distance_m,
      shift[2] + direction[2] * distance_m,
    ];
    return {
      direction,
      distance_m: i === total - 1 ? Math.max(distance_m, CLEAR_M) : distance_m,
      kind: leg.pitch_m === null ? 'slide' : 'unscrew',
      ...(leg.pitch_m === null ? {} : { pitch_m: leg.pitch_m }),
    };
  });
}

/** Travel until the boxes of the going bodies have passed all boxes that lie in their lane. */
function exitDistance_m(
  table: MoveTable,
  present: Bits,
  going: readonly number[],
  direction: Vec3,
  shift: Vec3,
): number {
  let distance = 0;
  const offset = dot(shift, direction);
  const across = [0, 1, 2].filter((k) => Math.abs(direction[k]!) < 0.5);
  for (const u of going) {
    const mine = table.graph.bodies[u]!.bounds;
    const low = boxReach(mine, scale(direction, -1));
    for (const v of members(present)) {
      const other = table.graph.bodies[v]!.bounds;
      const inLane = across.every(
        (k) => mine[2 * k]! + shift[k]! < other[2 * k + 1]! && mine[2 * k + 1]! + shift[k]! > other[2 * k]!,
      );
      if (inLane) distance = Math.max(distance, boxReach(other, direction) + low - offset + CLEAR_M);
    }
  }
  return distance;
}

/** Greatest coordinate of a box along a direction. */
function boxReach(bounds: Float64Array, direction: Vec3): number {
  let sum = 0;
  for (let k = 0; k < 3; k++)
    sum += Math.max(direction[k]! * bounds[2 * k]!, direction[k]! * bounds[2 * k + 1]!);
  return sum;
}

/** Whether every copy of a fastener leaves along one line. */
const goesStraight = (way: Way | null): boolean =>
  [way?.legs ?? [], ...Object.values(way?.partLegs ?? {})].every((legs) =>
    legs.every((leg) => dot(leg.direction, legs[0]!.direction) > 0.999),
  );

/** How far the heads lie inside what still surrounds them, along the way out; below a socket's length: none. */
function extensionFor(table: MoveTable, present: Bits, move: Move): number {
  const direction = move.direction < 0 ? null : DIRECTIONS[move.direction]!;
  if (direction === null) return 0;
  const mine = table.graph.bodies[move.lead]!.bounds;
  const head = boxReach(mine, direction);
  let depth = 0;
  for (const v of members(present)) {
    const other = table.graph.bodies[v]!.bounds;
    const around = [0, 1, 2].every(
      (k) =>
        Math.abs(direction[k]!) > 0.5 ||
        (other[2 * k]! <= mine[2 * k]! && other[2 * k + 1]! >= mine[2 * k + 1]!),
    );
    if (around) depth = Math.max(depth, boxReach(other, direction) - head);
  }
  return depth > 0.05 ? depth : 0;
}
