/** 'What stands in the way of this?' at a state of the teardown: one answer bars every way out, the others none. */
import { freedomOf, neededBefore } from '../../assembly';
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
  orderStates,
  shuffled,
  whyBarred,
} from './order-cases';

const WRONG = 3;

export function orderBlocks(subject: GraphSubject, seed: number): ChooseOne | null {
  const { graph } = subject;
  const random = seededRandom(seed);
  for (const state of shuffled(random, orderStates(subject))) {
    const named = askable(graph, state.left).filter((u) => !graph.bodies[u]!.seal);
    for (const u of shuffled(random, named)) {
      const { state: freedom, always, any, bars } = freedomOf(graph, state.left, u);
      if (freedom !== 'barred') continue;
      const asked = always.filter((v) => named.includes(v));
      const right = shuffled(random, asked)[0];
      if (right === undefined) continue;
      // A wrong answer bars no way of it, neither now nor by what it holds in turn.
      const bound = new Set([u, ...any, ...neededBefore(graph, u)]);
      const none = named.filter((v) => !bound.has(v));
      const wrong = onePerPattern(subject, byNearness(graph, [u], none), [u, right]).slice(0, WRONG);
      if (wrong.length < WRONG) continue;
      const because = bars.filter((b) => b.body === right);
      return {
        ...frame(graph, 'order-blocks', seed, 2, [u, right], state.after),
        kind: 'choose-one',
        prompt: { phrase: 'order.blocks.ask', params: { part: nameOf(graph, u) } },
        options: shuffled(random, [
          option(graph, right),
          ...wrong.map((v) =>
            option(graph, v, {
              phrase: 'order.blocks.beside',
              params: { part: nameOf(graph, u), other: nameOf(graph, v) },
            }),
          ),
        ]),
        right: graph.bodies[right]!.id,
        keepOrder: false,
        explain: whyBarred(graph, u, because),
      };
    }
  }
  return null;
}
