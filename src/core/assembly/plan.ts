/** Plans: the whole teardown, or the least that frees a target. */
import { message } from '../kernel';
import type { Machine } from '../machine';
import { bitsOf, copyBits, hasBit, intersects, members } from './bits';
import { baseOf, discoverMoves, discoverWhole } from './discover';
import { buildGraph } from './build-graph';
import type { BlockingGraph } from './graph';
import { leastMoves } from './least';
import { type Move, moveTable, type MoveTable } from './moves';
import { orderMoves } from './order';
import { gatherCopies, sequenceAll } from './sequence';
import { makeStep, moveMass_kg, moveTime_s } from './steps';
import { withSupports } from './supports';
import type { Least, Plan, Step } from './types';
import type { Masses, Solids } from './world';
import type { Bits } from './bits';

export interface PlanOptions {
  /** A unit's id or 'all' (the default). */
  readonly target?: string;
  readonly least?: Least;
}

/** Builds the blocking graph of a machine and plans on it. */
export function planTeardown(
  machine: Machine,
  solids: Solids,
  masses: Masses,
  options: PlanOptions = {},
): Plan {
  return planOnGraph(machine, buildGraph(machine, solids, masses), options);
}

/** Plans on a graph that is already there. */
export function planOnGraph(machine: Machine, graph: BlockingGraph, options: PlanOptions = {}): Plan {
  const { target = 'all', least = 'units' } = options;
  const table = moveTable(graph);
  const present = bitsOf(
    table.count,
    graph.bodies.map((_, u) => u),
  );
  return target === 'all'
    ? planAll(machine, table, present, least)
    : planFor(machine, table, present, target, least);
}

function planAll(machine: Machine, table: MoveTable, present: Bits, least: Least): Plan {
  const { graph } = table;
  const found = discoverWhole(table);
  const moves = sequenceAll(found, present);
  const gone = new Set(moves.flatMap((m) => members(m.units)));
  const bench = moves.filter((m) => m.way === null).flatMap((m) => benchMoves(table, m.units));
  const steps = writeSteps(machine, table, present, moves, bench);
  const stuck = members(found.stuck);
  const cost = costBy(machine, table, least);
  const total = [...moves, ...bench.flatMap((b) => b.moves)].reduce((sum, m) => sum + cost(m), 0);
  const orderExists = stuck.length === 0 && bench.every((b) => b.stuck.length === 0);
  return {
    machineId: machine.id,
    target: 'all',
    least,
    steps,
    orderExists,
    stuckIds: [...stuck, ...bench.flatMap((b) => b.stuck)].map((u) => graph.bodies[u]!.id),
    stayIds: members(present)
      .filter((u) => !gone.has(u))
      .map((u) => graph.bodies[u]!.id),
    // Every order that parts all pieces two by two has the same number of steps; what is lifted or worked is least
    // when nothing is handled twice.
    provenLeast: orderExists && (least === 'units' || bench.length === 0),
    cost: total,
    lowerBound: total,
  };
}

function planFor(machine: Machine, table: MoveTable, present: Bits, target: string, least: Least): Plan {
  const { graph } = table;
  const goal = graph.bodies.findIndex((b) => b.unitIds.includes(target) || b.id === target);
  const empty = { machineId: machine.id, target, least, steps: [], stayIds: [], cost: 0, lowerBound: 0 };
  if (goal < 0) return { ...empty, orderExists: false, stuckIds: [target], provenLeast: false };
  const found = discoverWhole(table);
  const { base } = found;
  const cost = costBy(machine, table, least);
  const benchFor = new Map<Move, readonly BenchWork[]>();
  const withBench = (move: Move): number => {
    if (move.way !== null || !hasBit(move.units, goal)) return cost(move);
    const work = benchTarget(table, move.units, goal, cost);
    benchFor.set(move, work);
    return work.flatMap((w) => w.moves).reduce((sum, m) => sum + cost(m), cost(move));
  };
  // The base itself is free once everything else is off it.
  const goals =
    goal === base ? members(present).filter((u) => u !== base && !graph.bodies[u]!.fixed) : [goal];
  const result = leastMoves(found, present, goals, withBench);
  if (result.moves === null) return { ...empty, orderExists: false, stuckIds: [target], provenLeast: false };
  const moves = orderMoves(table, result.moves, goals, null);
  const bench = moves.flatMap((m) => benchFor.get(m) ?? []);
  const gone = new Set(moves.flatMap((m) => members(m.units)));
  return {
    machineId: machine.id,
    target,
    least,
    steps: writeSteps(machine, table, present, moves, bench),
    orderExists: bench.every((b) => b.stuck.length === 0),
    stuckIds: bench.flatMap((b) => b.stuck).map((u) => graph.bodies[u]!.id),
    stayIds: members(present)
      .filter((u) => !gone.has(u))
      .map((u) => graph.bodies[u]!.id),
    provenLeast: result.proven,
    cost: result.cost,
    lowerBound: result.lowerBound,
  };
}

interface BenchWork {
  readonly units: Bits;
  readonly moves: readonly Move[];
  readonly stuck: readonly number[];
}

/** Takes a subassembly apart on the bench, and what comes off as a piece again after it. */
function benchMoves(table: MoveTable, units: Bits): BenchWork[] {
  const list = members(units);
  if (list.length < 2) return [];
  const found = discoverMoves(table, units, baseOf(table.graph, list));
  const moves = sequenceAll(found, units);
  const inner = moves.filter((m) => m.way === null).flatMap((m) => benchMoves(table, m.units));
  return [{ units, moves, stuck: members(found.stuck) }, ...inner];
}

/** Frees one body of a subassembly on the bench, and again where it leaves that with others. */
function benchTarget(table: MoveTable, units: Bits, goal: number, cost: (m: Move) => number): BenchWork[] {
  const list = members(units);
  const base = baseOf(table.graph, list);
  const found = discoverMoves(table, units, base);
  const goals = goal === base ? list.filter((u) => u !== base) : [goal];
  const least = leastMoves(found, units, goals, cost);
  if (least.moves === null) return [{ units, moves: [], stuck: [goal] }];
  const moves = orderMoves(table, least.moves, goals, null);
  const inner = moves.find((m) => m.way === null && hasBit(m.units, goal));
  return [
    { units, moves, stuck: [] },
    ...(inner === undefined ? [] : benchTarget(table, inner.units, goal, cost)),
  ];
}

function costBy(machine: Machine, table: MoveTable, least: Least): (move: Move) => number {
  if (least === 'mass') return (move) => moveMass_kg(table, move);
  if (least === 'time') return (move) => moveTime_s(machine, table, move);
  return () => 1;
}

function writeSteps(
  machine: Machine,
  table: MoveTable,
  all: Bits,
  moves: readonly Move[],
  bench: readonly BenchWork[],
): Step[] {
  const entries = new Map(machine.units.map((u) => [u.id, u.entries[0]?.id ?? u.id]));
  const entryOf = (u: number): string => entries.get(table.graph.bodies[u]!.id) ?? '';
  const write = (list: readonly Move[], from: Bits, onBench: boolean): Step[] => {
    const gathered = gatherCopies(table, list, entryOf);
    const present = copyBits(from);
    return gathered.flatMap((move, i) =>
      intersects(move.units, present)
        ? [makeStep({ machine, table, present, bench: onBench, later: gathered.slice(i + 1) }, move)]
        : [],
    );
  };
  const steps = [
    ...write(moves, all, false),
    ...bench.flatMap((work) => write(work.moves, work.units, true)),
  ];
  return withSupports(machine, table.graph, withDrains(machine, steps)).map((step, index) => ({
    ...step,
    index,
  }));
}

/** Puts a drain step where each fluid is let out: after its drain is open, or before its vessel is. */
export function withDrains(machine: Machine, steps: readonly Step[]): Step[] {
  const out = [...steps];
  for (const relation of machine.relations) {
    if (relation.type !== 'fluid') continue;
    const opens = (step: Step, id: string): boolean =>
      step.unitIds.includes(id) ||
      machine.units.some((u) => step.unitIds.includes(u.id) && u.entries.some((e) => e.id === id));
    const atDrain = relation.drain === null ? -1 : out.findIndex((s) => opens(s, relation.drain!));
    const atBoundary = out.findIndex((s) => relation.boundary.some((id) => opens(s, id)));
    const place = atDrain >= 0 ? atDrain + 1 : atBoundary;
    if (place < 0) continue;
    out.splice(place, 0, {
      index: 0,
      kind: 'drain',
      unitIds: [relation.fluid],
      fromIds: [],
      legs: [],
      partLegs: {},
      why: [
        message('why.fluid', {
          fluid: relation.fluid,
          boundary: relation.boundary,
          volume_m3: relation.volume_m3 ?? 0,
        }),
      ],
      mass_kg: 0,
      tools: [{ kind: 'drain-pan', size_m: 0, drive: '', extension_m: 0 }],
      cautions: [],
      supports: [],
      time_s: 900,
    });
  }
  return out;
}
