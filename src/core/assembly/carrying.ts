/**
 * What carries what: weight paths from the declared `rests` relations and the exciter's bearings, and the load on
 * each support by static equilibrium. A body on two supports is a simple beam: the reaction at one is the weight
 * times the lever of the centre of mass about the other over their distance (statics, any textbook).
 */
import { STANDARD_GRAVITY, type Vec3 } from '../kernel';
import type { Machine } from '../machine';
import type { BlockingGraph } from './graph';

export interface Rest {
  /** Body that is carried, and the one that carries it. */
  readonly body: number;
  readonly on: number;
  /** Where the support acts. */
  readonly at_m: Vec3;
}

export interface Carrying {
  readonly rests: readonly Rest[];
  /** Weight that acts on a body from outside the planned machine (the rear frame at the hitch), newtons. */
  readonly extra_N: Float64Array;
}

export function findCarrying(machine: Machine, graph: BlockingGraph): Carrying {
  const bodiesOf = bodyNames(machine, graph);
  const rests: Rest[] = [];
  const seen = new Set<string>();
  const link = (body: number, on: number, at_m: Vec3): void => {
    const key = `${body} ${on}`;
    if (body === on || seen.has(key)) return;
    seen.add(key);
    rests.push({ body, on, at_m });
  };
  const extra_N = new Float64Array(graph.bodies.length);
  const context = new Set(machine.parts.filter((p) => p.context).map((p) => p.unit));
  const outside = new Set<string>();
  for (const relation of machine.relations) {
    if (relation.type !== 'rests') continue;
    const above = bodiesOf(relation.part);
    const below = bodiesOf(relation.on);
    if (above.length === 0 && context.has(relation.part)) outside.add(relation.on);
    const matched = above.length > 1 && above.length === below.length;
    above.forEach((a, i) => {
      for (const b of matched ? [below[i]!] : below) link(a, b, graph.bodies[b]!.centre_m);
    });
  }
  const { exciter_part, bearings } = machine.operation;
  for (const exciter of bodiesOf(exciter_part))
    for (const [id, x] of [
      [bearings.left, bearings.left_x_m],
      [bearings.right, bearings.right_x_m],
    ] as const)
      for (const bearing of bodiesOf(id)) link(exciter, bearing, [x, 0, 0]);

  // The rest of the machine leans on what its own weight path meets first.
  const planned = graph.bodies.reduce((sum, b) => sum + b.mass_kg, 0);
  const missing_kg = machine.operation.drum_axle_mass_kg - planned;
  const meets = [...outside].flatMap(bodiesOf);
  if (missing_kg > 0)
    for (const b of meets) extra_N[b] = extra_N[b]! + (missing_kg * STANDARD_GRAVITY) / meets.length;
  return { rests, extra_N };
}

function bodyNames(machine: Machine, graph: BlockingGraph): (id: string) => number[] {
  const byUnit = new Map<string, number>();
  graph.bodies.forEach((b, i) => b.unitIds.forEach((id) => byUnit.set(id, i)));
  const named = new Map<string, Set<number>>();
  for (const unit of machine.units) {
    const body = byUnit.get(unit.id);
    if (body === undefined) continue;
    for (const id of [unit.id, ...unit.partIds, ...unit.entries.map((e) => e.id)])
      named.set(id, (named.get(id) ?? new Set()).add(body));
  }
  return (id) => [...(named.get(id) ?? [])];
}

/** Reaction at `lost` when a weight at `centre_m` also stands on `kept`; all of it when nothing else carries. */
export function reaction_N(weight_N: number, centre_m: Vec3, lost: Vec3, kept: Vec3 | null): number {
  if (kept === null) return weight_N;
  const [dx, dz] = [lost[0] - kept[0], lost[2] - kept[2]];
  const span2 = dx * dx + dz * dz;
  if (span2 < 1e-6) return weight_N;
  const share = ((centre_m[0] - kept[0]) * dx + (centre_m[2] - kept[2]) * dz) / span2;
  return weight_N * Math.max(0, share);
}

/**
 * Weight that comes down through a body, its own included, from all bodies for which `present` holds: each body
 * hands its load to its supports by the beam rule (two supports), in equal parts (more), or whole (one).
 * Returns the load and where its resultant acts.
 */
export function loadOn(
  carrying: Carrying,
  graph: BlockingGraph,
  present: (u: number) => boolean,
  body: number,
  depth = 0,
): { readonly force_N: number; readonly at_m: Vec3 } {
  const own = graph.bodies[body]!;
  let force_N = own.mass_kg * STANDARD_GRAVITY + carrying.extra_N[body]!;
  const moment = own.centre_m.map((c) => c * force_N) as [number, number, number];
  if (depth < 12)
    for (const { body: above } of carrying.rests.filter((r) => r.on === body && present(r.body))) {
      const load = loadOn(carrying, graph, present, above, depth + 1);
      const supports = carrying.rests.filter((r) => r.body === above && present(r.on));
      const mine = supports.find((r) => r.on === body)!;
      const others = supports.filter((r) => r !== mine);
      const share =
        others.length === 1
          ? Math.min(load.force_N, reaction_N(load.force_N, load.at_m, mine.at_m, others[0]!.at_m))
          : load.force_N / supports.length;
      force_N += share;
      for (let k = 0; k < 3; k++) moment[k] = moment[k]! + share * mine.at_m[k]!;
    }
  return {
    force_N,
    at_m: force_N > 0 ? [moment[0] / force_N, moment[1] / force_N, moment[2] / force_N] : own.centre_m,
  };
}
