/** 'Which of these could come off now?' at a state of the teardown; what bars the wrong ones is their explanation. */
import { freedomOf, straightBlockers } from '../../assembly';
import { seededRandom } from '../../kernel';
import type { ChooseSeveral } from '../item';
import {
  askable,
  byNearness,
  frame,
  type GraphSubject,
  namesOf,
  onePerPattern,
  option,
  orderStates,
  shuffled,
  whyBarred,
} from './order-cases';

const MOST_RIGHT = 2;
const OPTIONS = 5;

export function orderNow(subject: GraphSubject, seed: number): ChooseSeveral | null {
  const { graph } = subject;
  const random = seededRandom(seed);
  for (const state of shuffled(random, orderStates(subject))) {
    const named = askable(graph, state.left).filter((u) => !graph.bodies[u]!.seal);
    const judged = new Map(named.map((u) => [u, freedomOf(graph, state.left, u)] as const));
    // What leaves only along with others is neither right nor wrong: it is not asked about.
    const free = named.filter((u) => judged.get(u)!.state === 'free');
    const barred = named.filter((u) => judged.get(u)!.state === 'barred');
    const right = onePerPattern(subject, shuffled(random, free)).slice(0, 1 + random.index(MOST_RIGHT));
    if (right.length === 0) continue;
    // Near at hand first; of those, what lies open to the eye but is held comes before what is covered.
    const near = byNearness(graph, right, barred).slice(0, 3 * OPTIONS);
    const open = (u: number): boolean =>
      [0, 1, 2, 3, 4, 5].some((d) => straightBlockers(graph, u, d).every((b) => !state.left.has(b.body)));
    const tempting = [...near.filter(open), ...near.filter((u) => !open(u))];
    const wrong = onePerPattern(subject, tempting, right).slice(0, OPTIONS - right.length);
    if (wrong.length < 2) continue;
    return {
      ...frame(graph, 'order-now', seed, 2, right, state.after),
      kind: 'choose-several',
      prompt: { phrase: state.after === null ? 'order.now.assembled' : 'order.now.stage' },
      options: shuffled(random, [
        ...right.map((u) => option(graph, u)),
        ...wrong.map((u) => option(graph, u, whyBarred(graph, u, judged.get(u)!.bars))),
      ]),
      right: right.map((u) => graph.bodies[u]!.id),
      keepOrder: false,
      explain: { phrase: 'order.now.explain', params: { parts: namesOf(graph, right) } },
    };
  }
  return null;
}
