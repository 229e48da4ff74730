/** 'What must be held before this comes off?': the support steps of the teardown, with their force by statics. */
import { type BlockingGraph, strikeDistance_m } from '../../assembly';
import { seededRandom } from '../../kernel';
import type { ChooseOne } from '../item';
import {
  askable,
  byNearness,
  contentOf,
  frame,
  type GraphSubject,
  nameOf,
  onePerPattern,
  option,
  orderStates,
  shuffled,
} from './order-cases';

const WRONG = 3;
/** Lighter parts nobody would think of holding. */
const HEAVY_KG = 5;

export function orderSupport(subject: GraphSubject, seed: number): ChooseOne | null {
  const { graph } = subject;
  const random = seededRandom(seed);
  const bodyOf = (id: string): number => graph.bodies.findIndex((b) => b.id === id || b.unitIds.includes(id));
  for (const state of shuffled(random, orderStates(subject))) {
    const at = state.next.findIndex((step) => step.kind === 'remove');
    const step = state.next[at]!;
    const held = [...state.next.slice(0, at), step].flatMap((s) => (s.kind === 'drain' ? [] : s.supports));
    const bodies = new Set(held.map((s) => bodyOf(s.what)));
    const comes = bodyOf(step.unitIds[0] ?? '');
    // One thing to hold, and not the one that comes off: else the question names its answer.
    if (held.length === 0 || bodies.size !== 1 || comes < 0) continue;
    const [right] = [...bodies] as [number];
    const going = step.unitIds.map(bodyOf);
    if (right < 0 || going.includes(right)) continue;
    // What the step lets go of, if only a little, is no clear answer either way.
    const others = [...state.left].filter(
      (v) =>
        v !== right &&
        !going.includes(v) &&
        graph.bodies[v]!.mass_kg > HEAVY_KG &&
        !going.some((g) => isTied(graph, g, v)),
    );
    const wrong = onePerPattern(subject, byNearness(graph, [right, comes], others), [right, comes]).slice(
      0,
      WRONG,
    );
    if (wrong.length < WRONG || askable(graph, [comes]).length === 0) continue;
    return {
      ...frame(graph, 'order-support', seed, 3, [right, comes], state.after),
      kind: 'choose-one',
      prompt: { phrase: 'order.support.ask', params: { part: nameOf(graph, comes) } },
      options: shuffled(random, [
        option(graph, right),
        ...wrong.map((v) =>
          option(graph, v, {
            phrase: 'order.support.keeps',
            params: { other: nameOf(graph, v), part: nameOf(graph, comes) },
          }),
        ),
      ]),
      right: graph.bodies[right]!.id,
      keepOrder: false,
      explain: contentOf(held[0]!.why),
    };
  }
  return null;
}

/** Number of the direction towards the ground, and how near a part must be to stand on another, metres. */
const DOWN = 3;
const STANDS_M = 0.002;

const isTied = (graph: BlockingGraph, g: number, v: number): boolean =>
  graph.joints.some((j) => (j.from === g && j.to === v) || (j.from === v && j.to === g)) ||
  strikeDistance_m(graph, v, g, DOWN) < STANDS_M;
