/** What all questions of order share: states of the teardown, units to ask about, names, seeded choice. */
import { baseBody, type Bar, type BlockingGraph, type Step } from '../../assembly';
import type { Message, MessageParam, Random } from '../../kernel';
import type { Content, ContentParam } from '../content';
import type { About, Difficulty, Option, Origin } from '../item';
import type { Subject } from '../subject';

export interface GraphSubject extends Subject {
  readonly graph: BlockingGraph;
}

/** A state on the way through the teardown of the subject. */
export interface OrderState {
  /** Unit after whose step the machine stands like this; null: assembled. */
  readonly after: string | null;
  /** Bodies that are still on the machine. */
  readonly left: ReadonlySet<number>;
  /** The steps that come next, supports and drains included. */
  readonly next: readonly Step[];
}

/** The states before each removal from the machine, from assembled on. */
export function orderStates({ graph, teardown }: GraphSubject): OrderState[] {
  const bodyOf = new Map(graph.bodies.flatMap((b, u) => b.unitIds.map((id) => [id, u] as const)));
  const left = new Set(graph.bodies.keys());
  const states: OrderState[] = [{ after: null, left: new Set(left), next: teardown.steps }];
  teardown.steps.forEach((step, i) => {
    if (step.kind !== 'remove') return;
    for (const id of step.unitIds) left.delete(bodyOf.get(id) ?? -1);
    states.push({
      after: step.unitIds[0] ?? null,
      left: new Set(left),
      next: teardown.steps.slice(i + 1),
    });
  });
  return states.filter((s) => s.next.some((step) => step.kind === 'remove'));
}

/** Bodies that a question may name: what stays has no place in an order. */
export function askable(graph: BlockingGraph, left: Iterable<number>): number[] {
  const base = baseBody(graph);
  return [...left].filter((u) => u !== base && !graph.bodies[u]!.fixed);
}

/** The pattern that a body is a copy of, else the body itself: two copies in one question cannot be told apart. */
export function patternOf({ machine, graph }: GraphSubject): (u: number) => string {
  const entries = new Map(machine.units.map((unit) => [unit.id, unit.entries[0]?.id ?? unit.id]));
  return (u) => entries.get(graph.bodies[u]!.id) ?? graph.bodies[u]!.id;
}

/** At most one of each pattern, the first stays; none of a pattern in `taken`. */
export function onePerPattern(
  subject: GraphSubject,
  list: readonly number[],
  taken: Iterable<number> = [],
): number[] {
  const pattern = patternOf(subject);
  const seen = new Set([...taken].map(pattern));
  return list.filter((u) => {
    const name = pattern(u);
    if (seen.has(name)) return false;
    seen.add(name);
    return true;
  });
}

export function shuffled<T>(random: Random, list: readonly T[]): T[] {
  const out = [...list];
  for (let i = out.length - 1; i > 0; i--) {
    const j = random.index(i + 1);
    [out[i], out[j]] = [out[j]!, out[i]!];
  }
  return out;
}

/** Distance between the boxes of two bodies, metres; 0 where they meet. What is near is what is confused. */
export function boxDistance_m(graph: BlockingGraph, u: number, v: number): number {
  const [a, b] = [graph.bodies[u]!.bounds, graph.bodies[v]!.bounds];
  const apart = [0, 1, 2].map((k) => Math.max(0, a[2 * k]! - b[2 * k + 1]!, b[2 * k]! - a[2 * k + 1]!));
  return Math.hypot(...apart);
}

/** Sorted from near to far from any of `to`; equals keep their order. */
export function byNearness(graph: BlockingGraph, to: readonly number[], list: readonly number[]): number[] {
  const distance = new Map(
    list.map((v) => [v, Math.min(...to.map((u) => boxDistance_m(graph, u, v)))] as const),
  );
  return [...list].sort((p, q) => distance.get(p)! - distance.get(q)!);
}

export const nameOf = (graph: BlockingGraph, u: number): Content => ({ part: graph.bodies[u]!.id });
export const namesOf = (graph: BlockingGraph, list: readonly number[]): Content[] =>
  list.map((u) => nameOf(graph, u));

/** A sentence reads at most this many names. */
const NAMES = 3;

/** Why `u` cannot come off: the bars of one kind, joints before solids, in one sentence. */
export function whyBarred(graph: BlockingGraph, u: number, bars: readonly Bar[]): Content {
  const kinds: readonly Bar['kind'][] = ['hose', 'drain', 'clamped', 'thread', 'path', 'tool', 'tight'];
  const kind = kinds.find((k) => bars.some((bar) => bar.kind === k)) ?? 'path';
  const by = bars.filter((bar) => bar.kind === kind).map((bar) => bar.body);
  return {
    phrase: `order.why.${kind}`,
    params: { part: nameOf(graph, u), by: namesOf(graph, by.slice(0, NAMES)) },
  };
}

/** Parameters of the planner's messages that are numbers, by the quantity that they are. */
const QUANTITIES = { force_N: 'force', lever_m: 'length', volume_m3: 'volume', slope: 'share' } as const;

/** A message of the planner, whose texts are names of units, as content. */
export function contentOf({ key, params = {} }: Message): Content {
  const param = (name: string, value: MessageParam): ContentParam => {
    if (typeof value === 'number')
      return name in QUANTITIES
        ? { si: value, quantity: QUANTITIES[name as keyof typeof QUANTITIES], figures: 2 }
        : value;
    if (typeof value === 'string') return { part: value };
    if (Array.isArray(value))
      return (value as readonly (string | Message)[]).map((v) =>
        typeof v === 'string' ? { part: v } : contentOf(v),
      );
    return typeof value === 'object' ? contentOf(value as Message) : String(value);
  };
  return {
    phrase: key,
    params: Object.fromEntries(Object.entries(params).map(([name, value]) => [name, param(name, value)])),
  };
}

export const option = (graph: BlockingGraph, u: number, why?: Content): Option => ({
  id: graph.bodies[u]!.id,
  says: nameOf(graph, u),
  ...(why === undefined ? {} : { why }),
});

/** What every item of these generators carries. */
export function frame(
  graph: BlockingGraph,
  generator: string,
  seed: number,
  difficulty: Difficulty,
  about: readonly number[],
  after: string | null,
): {
  id: string;
  origin: Origin;
  difficulty: Difficulty;
  source: string;
  about: About;
  stage: { taken_off?: string };
} {
  return {
    id: `gen/${generator}/${seed}`,
    origin: { from: 'generator', generator, seed },
    difficulty,
    source:
      'R. H. Wilson, J.-C. Latombe, Geometric reasoning about mechanical assembly, Artificial Intelligence 71 (1994)',
    about: { parts: about.map((u) => graph.bodies[u]!.id), step: null, place: null, terms: [] },
    stage: after === null ? {} : { taken_off: after },
  };
}
