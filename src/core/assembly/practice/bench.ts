/** What practice on one machine works with: its graph, its least plans, and names to numbers. Built once a machine. */
import type { Machine } from '../../machine';
import { type Bits, bitsOf } from '../bits';
import { baseOf } from '../discover';
import { type BlockingGraph, strikeDistance_m } from '../graph';
import { type MoveTable, moveTable } from '../moves';
import { planOnGraph } from '../plan';
import type { Plan } from '../types';
import { DIRECTIONS } from '../way';
import type { PracticeGoal } from './types';

/** Parts this near to each other, along an axis, seat on each other, metres. */
const SEATED_M = 0.002;

export interface PracticeBench {
  readonly machine: Machine;
  readonly graph: BlockingGraph;
  readonly modelHash: string;
  readonly table: MoveTable;
  readonly all: Bits;
  /** The body that all others come off. */
  readonly base: number;
  /** Pattern that a body is a copy of. */
  readonly entryOf: readonly string[];
  /** What each body is joined to or seats on. */
  readonly touching: readonly Bits[];
  /** Number of the body that a unit or a part belongs to; -1: it takes no part (context, an option that is off). */
  bodyOf(id: string): number;
  /** The least plan for a goal, kept. */
  plan(goal: PracticeGoal): Plan;
}

/** @param modelHash of the machine's files: runs are kept with it */
export function practiceBench(machine: Machine, graph: BlockingGraph, modelHash: string): PracticeBench {
  const table = moveTable(graph);
  const { count } = table;
  const numbers = graph.bodies.map((_, u) => u);
  const bodies = new Map<string, number>();
  graph.bodies.forEach((body, u) => {
    for (const part of body.parts) bodies.set(machine.parts[part]!.id, u);
    for (const id of body.unitIds) bodies.set(id, u);
  });
  const entries = new Map(machine.units.map((u) => [u.id, u.entries[0]?.id ?? u.id]));
  const plans = new Map<string, Plan>();
  return {
    machine,
    graph,
    modelHash,
    table,
    all: bitsOf(count, numbers),
    base: baseOf(graph, numbers),
    entryOf: graph.bodies.map((b) => entries.get(b.id) ?? b.id),
    touching: numbers.map((u) => bitsOf(count, touchedBy(graph, u))),
    bodyOf: (id) => bodies.get(id) ?? -1,
    plan(goal) {
      const target = goal.kind === 'all' ? 'all' : goal.unitId;
      const known = plans.get(target) ?? planOnGraph(machine, graph, { target });
      plans.set(target, known);
      return known;
    },
  };
}

function touchedBy(graph: BlockingGraph, u: number): number[] {
  const joined = graph.joints.flatMap((j) => (j.from === u ? [j.to] : j.to === u ? [j.from] : []));
  const seated = graph.bodies.flatMap((_, v) =>
    v !== u && DIRECTIONS.some((__, d) => strikeDistance_m(graph, u, v, d) < SEATED_M) ? [v] : [],
  );
  return [...joined, ...seated];
}
