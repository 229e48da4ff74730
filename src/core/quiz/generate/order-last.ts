/**
 * 'What is the last thing that must be off before this can move?': of all that every order takes off before it, the
 * one that waits for all the others. Asked only where there is exactly one such.
 */
import { neededBefore } from '../../assembly';
import { seededRandom } from '../../kernel';
import type { ChooseOne } from '../item';
import {
  askable,
  byNearness,
  frame,
  type GraphSubject,
  nameOf,
  onePerPattern,
  option,
  shuffled,
} from './order-cases';

const WRONG = 3;
/** Fewer would make no question. */
const LEAST_NEEDED = 3;

/** What every order takes off before `u`, what leaves along with it not counted. */
export function goneBefore(subject: GraphSubject, u: number): number[] {
  return neededBefore(subject.graph, u).filter((v) => !neededBefore(subject.graph, v).includes(u));
}

export function orderLast(subject: GraphSubject, seed: number): ChooseOne | null {
  const { graph } = subject;
  const random = seededRandom(seed);
  const named = askable(graph, graph.bodies.keys()).filter((u) => !graph.bodies[u]!.seal);
  for (const u of shuffled(random, named)) {
    const before = goneBefore(subject, u);
    const needs = new Map(before.map((v) => [v, new Set(goneBefore(subject, v))] as const));
    // The last ones: nothing else that is needed waits for them.
    const last = before.filter((v) => before.every((w) => !needs.get(w)!.has(v)));
    const right = last[0];
    if (right === undefined || last.length > 1 || before.length < LEAST_NEEDED || !named.includes(right))
      continue;
    const earlier = before.filter((v) => v !== right && named.includes(v));
    const near = byNearness(
      graph,
      [u],
      named.filter(
        (v) => v !== u && !neededBefore(graph, u).includes(v) && !neededBefore(graph, v).includes(u),
      ),
    );
    const some = onePerPattern(subject, byNearness(graph, [right, u], earlier), [u, right]).slice(
      0,
      WRONG - 1,
    );
    const wrong = [...some, ...onePerPattern(subject, near, [u, right, ...some])].slice(0, WRONG);
    if (wrong.length < WRONG) continue;
    const params = { part: nameOf(graph, u), last: nameOf(graph, right) };
    return {
      ...frame(graph, 'order-last', seed, 3, [u, right], null),
      kind: 'choose-one',
      prompt: { phrase: 'order.last.ask', params: { part: nameOf(graph, u) } },
      options: shuffled(random, [
        option(graph, right),
        ...wrong.map((v) =>
          option(graph, v, {
            phrase: earlier.includes(v) ? 'order.last.earlier' : 'order.last.apart',
            params: { ...params, other: nameOf(graph, v) },
          }),
        ),
      ]),
      right: graph.bodies[right]!.id,
      keepOrder: false,
      explain: { phrase: 'order.last.explain', params: { ...params, count: before.length - 1 } },
    };
  }
  return null;
}
