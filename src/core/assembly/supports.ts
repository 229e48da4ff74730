/**
 * Support steps: what must be held before a step takes away what carries it. A frame part gets a crib, a rotor whose
 * bearing leaves a guide bar, the drum a chock before what holds it from rolling is undone, a heavy part a sling
 * before its last fasteners.
 */
import { message, STANDARD_GRAVITY, type Vec3 } from '../kernel';
import type { Machine } from '../machine';
import { type Carrying, findCarrying, loadOn, reaction_N } from './carrying';
import type { BlockingGraph } from './graph';
import type { Step, Support } from './types';

/** Heavier parts are slung before their fasteners leave (common practice for one person). */
const SLING_KG = 25;
/** Slope that a chock must hold on level ground of a yard (common practice, no source). */
const CHOCK_SLOPE = 0.02;
/** Loads below these need no support step of their own: a rotor's end, and a part of the frame (it is slung). */
const LEAST_FORCE_N = { 'guide-bar': SLING_KG * STANDARD_GRAVITY, crib: 1000 } as const;

/** Puts support steps before the steps that need them; indices are renumbered by the caller. */
export function withSupports(machine: Machine, graph: BlockingGraph, steps: readonly Step[]): Step[] {
  const carrying = findCarrying(machine, graph);
  const bodyOf = new Map<string, number>();
  graph.bodies.forEach((b, i) => b.unitIds.forEach((id) => bodyOf.set(id, i)));
  const movesWith = (u: number): string => machine.parts[graph.bodies[u]!.parts[0]!]!.movesWith;
  const goesAt = new Map<number, number>();
  const lifts = new Map<number, Step>();
  steps.forEach((step, i) => {
    if (step.kind !== 'remove') return;
    for (const id of step.unitIds) {
      goesAt.set(bodyOf.get(id) ?? -1, i);
      lifts.set(bodyOf.get(id) ?? -1, step);
    }
  });
  const gone = new Set<number>();
  const undone = new Set<string>();
  const held = new Set<number>();
  let chocked = false;
  const out: Step[] = [];

  for (const step of steps) {
    if (step.kind !== 'remove') {
      out.push(step);
      continue;
    }
    const going = step.unitIds.map((id) => bodyOf.get(id) ?? -1).filter((u) => u >= 0);
    const present = (u: number): boolean => !gone.has(u);
    const supports: Support[] = [];
    for (const lost of lostRests(carrying, graph, going, gone, undone)) {
      const holder = latestAbove(carrying, graph, present, lost.body, goesAt);
      if (held.has(holder) || going.includes(lost.body)) continue;
      // What leaves soon hangs on its sling; the frame and the rotor stay and need something under them.
      if (movesWith(holder) !== 'frame' && movesWith(holder) !== 'exciter') continue;
      const support = holdUp(carrying, graph, present, lost, holder, movesWith(holder), undone);
      if (support === null) continue;
      held.add(holder);
      supports.push(support);
    }
    if (!chocked && joinsDrumToFrame(graph, going, movesWith)) {
      chocked = true;
      supports.push(chock(machine, graph, going));
    }
    if (supports.length > 0) out.push(supportStep(step, supports));
    out.push({
      ...step,
      supports: [
        ...step.supports,
        ...slings(graph, step, going, gone, lifts),
        ...strap(machine, graph, going),
      ],
    });
    for (const u of going) {
      gone.add(u);
      held.delete(u);
    }
  }
  return out;
}

interface LostRest {
  readonly body: number;
  readonly on: number;
  readonly at_m: Vec3;
}

/** Weight paths that a step opens: their carrier leaves, or the fasteners between the two. */
function lostRests(
  carrying: Carrying,
  graph: BlockingGraph,
  going: readonly number[],
  gone: ReadonlySet<number>,
  undone: Set<string>,
): LostRest[] {
  return carrying.rests.filter((rest) => {
    const key = `${rest.body} ${rest.on}`;
    if (undone.has(key) || gone.has(rest.body) || gone.has(rest.on)) return false;
    const carrierGoes = going.includes(rest.on) && !going.includes(rest.body);
    const fastenerGoes = going.some(
      (u) =>
        graph.bodies[u]!.fastener &&
        graph.joints.some((j) => j.kind === 'holds' && j.from === u && j.to === rest.body) &&
        graph.joints.some((j) => j.kind === 'holds' && j.from === u && j.to === rest.on),
    );
    if (!carrierGoes && !fastenerGoes) return false;
    undone.add(key);
    return true;
  });
}

/**
 * Of the bodies up the weight path that bring at least half of the load, the one that stays longest: that is where a
 * support belongs.
 */
function latestAbove(
  carrying: Carrying,
  graph: BlockingGraph,
  present: (u: number) => boolean,
  body: number,
  goesAt: ReadonlyMap<number, number>,
): number {
  const half = loadOn(carrying, graph, present, body).force_N / 2;
  let best = body;
  const seen = new Set<number>();
  const walk = (u: number): void => {
    if (seen.has(u)) return;
    seen.add(u);
    if (u !== body) {
      // A body on several supports is not held by one of them.
      if (carrying.rests.filter((r) => r.body === u && present(r.on)).length > 1) return;
      if (loadOn(carrying, graph, present, u).force_N < half) return;
    }
    if ((goesAt.get(u) ?? Infinity) > (goesAt.get(best) ?? Infinity)) best = u;
    for (const r of carrying.rests) if (r.on === u && present(r.body)) walk(r.body);
  };
  walk(body);
  return best;
}

function holdUp(
  carrying: Carrying,
  graph: BlockingGraph,
  present: (u: number) => boolean,
  lost: LostRest,
  holder: number,
  movesWith: string,
  undone: ReadonlySet<string>,
): Support | null {
  const load = loadOn(carrying, graph, present, holder);
  const rests = carrying.rests.filter((r) => r.body === holder && present(r.on));
  const kept = rests.filter((r) => !undone.has(`${r.body} ${r.on}`));
  if (kept.length > 1) return null;
  const at_m = holder === lost.body ? lost.at_m : graph.bodies[holder]!.centre_m;
  const force_N = kept.length === 0 ? load.force_N : reaction_N(load.force_N, load.at_m, at_m, kept[0]!.at_m);
  const kind = movesWith === 'exciter' ? 'guide-bar' : 'crib';
  if (force_N < LEAST_FORCE_N[kind]) return null;
  return {
    kind,
    what: graph.bodies[holder]!.id,
    force_N,
    at_m,
    why: message('why.support', {
      part: graph.bodies[holder]!.id,
      carrier: graph.bodies[lost.on]!.id,
      force_N,
    }),
  };
}

/** Whether a step undoes fasteners between what turns with the drum and what stands with the frame. */
function joinsDrumToFrame(
  graph: BlockingGraph,
  going: readonly number[],
  movesWith: (u: number) => string,
): boolean {
  return going.some((u) => {
    if (!graph.bodies[u]!.fastener) return false;
    const sides = new Set(
      graph.joints.filter((j) => j.kind === 'holds' && j.from === u).map((j) => movesWith(j.to)),
    );
    return sides.has('drum') && sides.has('frame');
  });
}

function chock(machine: Machine, graph: BlockingGraph, going: readonly number[]): Support {
  const force_N = CHOCK_SLOPE * machine.operation.drum_axle_mass_kg * STANDARD_GRAVITY;
  const drum = graph.bodies
    .filter((b) => machine.parts[b.parts[0]!]!.movesWith === 'drum')
    .reduce((best, b) => (b.mass_kg > best.mass_kg ? b : best));
  return {
    kind: 'chock',
    what: drum.id,
    force_N,
    at_m: [drum.centre_m[0], -machine.drumRadius_m, 0],
    why: message('why.chock', {
      part: drum.id,
      carrier: graph.bodies[going[0]!]!.id,
      force_N,
      slope: CHOCK_SLOPE,
    }),
  };
}

/** Slings on what this step's fasteners held last and the next removal of it lifts: itself or its subassembly. */
function slings(
  graph: BlockingGraph,
  step: Step,
  going: readonly number[],
  gone: ReadonlySet<number>,
  lifts: ReadonlyMap<number, Step>,
): Support[] {
  const inLift = (u: number, lift: Step): boolean => lifts.get(u) === lift;
  const loose = (lift: Step): boolean =>
    graph.joints
      .filter((j) => j.kind === 'clamped' && inLift(j.from, lift))
      .every((j) => gone.has(j.to) || going.includes(j.to) || inLift(j.to, lift));
  const lifted = new Set<Step>();
  for (const u of going.filter((g) => graph.bodies[g]!.fastener))
    for (const joint of graph.joints.filter((j) => j.kind === 'holds' && j.from === u)) {
      const lift = lifts.get(joint.to);
      if (lift === undefined || gone.has(joint.to) || going.includes(joint.to)) continue;
      if (lift.tools.some((t) => t.kind === 'lifting-gear') && loose(lift)) lifted.add(lift);
    }
  return [...lifted].map((lift) => sling(graph, lift, step));
}

function sling(graph: BlockingGraph, lift: Step, step: Step): Support {
  const bodies = graph.bodies.filter((b) => b.unitIds.some((id) => lift.unitIds.includes(id)));
  const body = bodies.reduce((best, b) => (b.mass_kg > best.mass_kg ? b : best));
  const force_N = lift.mass_kg * STANDARD_GRAVITY;
  return {
    kind: 'sling',
    what: body.id,
    force_N,
    at_m: body.centre_m,
    why: message('why.sling', { part: body.id, fasteners: step.unitIds, force_N }),
  };
}

/** A rotor with its mass to one side swings when it is free: the strap holds m g e at its outside. */
function strap(machine: Machine, graph: BlockingGraph, going: readonly number[]): Support[] {
  return going.flatMap((u): Support[] => {
    const body = graph.bodies[u]!;
    if (!body.unitIds.includes(machine.operation.exciter_part)) return [];
    const [, y, z] = body.centre_m;
    const lever = Math.hypot(y, z);
    const outside = Math.max(...[2, 3, 4, 5].map((i) => Math.abs(body.bounds[i]!)));
    if (lever < 0.005 || outside === 0) return [];
    const force_N = (body.mass_kg * STANDARD_GRAVITY * lever) / outside;
    return [
      {
        kind: 'strap',
        what: body.id,
        force_N,
        at_m: body.centre_m,
        why: message('why.strap', { part: body.id, force_N, lever_m: lever }),
      },
    ];
  });
}

function supportStep(before: Step, supports: readonly Support[]): Step {
  return {
    index: 0,
    kind: 'support',
    unitIds: [...new Set(supports.map((s) => s.what))],
    fromIds: [],
    legs: [],
    partLegs: {},
    why: supports.map((s) => s.why),
    mass_kg: 0,
    tools: [],
    cautions: before.cautions,
    supports,
    time_s: 600 * supports.length,
  };
}
