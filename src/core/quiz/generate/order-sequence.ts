/** 'Put these in the order in which they come off': any order that the machine admits is right. */
import { type BlockingGraph, freeableWithout } from '../../assembly';
import { seededRandom } from '../../kernel';
import type { Order, Readiness } from '../item';
import {
  askable,
  byNearness,
  frame,
  type GraphSubject,
  namesOf,
  onePerPattern,
  option,
  shuffled,
} from './order-cases';
import { goneBefore } from './order-last';

const CARDS = 5;
/** Of all orders of the cards at most this share may be right; else there is nothing to know. */
const LARGEST_SHARE = 1 / 4;

/**
 * Which of `cards` must have gone before each: the least sets, found by holding the other cards in their places and
 * sweeping all else off.
 */
export function cardNeeds(graph: BlockingGraph, cards: readonly number[]): readonly (readonly number[][])[] {
  const subsets = Array.from({ length: 1 << cards.length }, (_, mask) => mask).sort(
    (p, q) => bitCount(p) - bitCount(q) || p - q,
  );
  return cards.map((card, i) => {
    const least: number[] = [];
    for (const mask of subsets) {
      if ((mask >> i) & 1 || least.some((known) => (known & mask) === known)) continue;
      const kept = cards.filter((c, j) => c !== card && ((mask >> j) & 1) === 0);
      if (freeableWithout(graph, kept).has(card)) least.push(mask);
    }
    return least.map((mask) => cards.filter((_, j) => ((mask >> j) & 1) === 1));
  });
}

const bitCount = (n: number): number => (n === 0 ? 0 : (n & 1) + bitCount(n >> 1));

/** Number of orders in which every card may go at its turn. */
export function countOrders(needs: readonly (readonly number[][])[], cards: readonly number[]): number {
  const count = (gone: readonly number[]): number =>
    gone.length === cards.length
      ? 1
      : cards.reduce((sum, card, i) => {
          const ready = !gone.includes(card) && needs[i]!.some((set) => set.every((c) => gone.includes(c)));
          return ready ? sum + count([...gone, card]) : sum;
        }, 0);
  return count([]);
}

export function orderSequence(subject: GraphSubject, seed: number): Order | null {
  const { graph } = subject;
  const random = seededRandom(seed);
  const named = askable(graph, graph.bodies.keys()).filter((u) => !graph.bodies[u]!.seal);
  for (const goal of shuffled(random, named)) {
    const before = goneBefore(subject, goal).filter((v) => named.includes(v));
    const near = shuffled(random, byNearness(graph, [goal], before).slice(0, 2 * CARDS));
    const cards = shuffled(random, [goal, ...onePerPattern(subject, near, [goal]).slice(0, CARDS - 1)]);
    if (cards.length < CARDS) continue;
    const needs = cardNeeds(graph, cards);
    const right = countOrders(needs, cards);
    if (right === 0 || right / factorial(CARDS) > LARGEST_SHARE) continue;
    const ids = (list: readonly number[]): string[] => list.map((u) => graph.bodies[u]!.id);
    const readiness: Record<string, string[][]> = {};
    cards.forEach((card, i) => {
      // A card that waits for nothing has no entry.
      if (needs[i]!.every((set) => set.length > 0)) readiness[graph.bodies[card]!.id] = needs[i]!.map(ids);
    });
    return {
      ...frame(graph, 'order-sequence', seed, 3, [goal], null),
      kind: 'order',
      prompt: { phrase: 'order.sequence.ask' },
      cards: cards.map((u) => option(graph, u)),
      needs: readiness satisfies Readiness,
      explain: {
        phrase: right === 1 ? 'order.sequence.one' : 'order.sequence.several',
        params: { parts: namesOf(graph, oneOrder(needs, cards)), count: right },
      },
    };
  }
  return null;
}

/** One right order: of the cards that may go the first as given. */
function oneOrder(needs: readonly (readonly number[][])[], cards: readonly number[]): number[] {
  const gone: number[] = [];
  while (gone.length < cards.length) {
    const next = cards.find(
      (card, i) => !gone.includes(card) && needs[i]!.some((set) => set.every((c) => gone.includes(c))),
    );
    if (next === undefined) break;
    gone.push(next);
  }
  return gone;
}

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
