/** What the planner's graph says must go before what, among units that a bank puts on cards. */
import { cardNeeds } from './generate/order-sequence';
import type { Readiness } from './item';
import type { Subject } from './subject';

/**
 * Readiness of cards by their ids; null while the graph is not known, or where a unit is none of its bodies or can
 * never come off.
 */
export function orderNeeds(
  { graph }: Subject,
  cards: readonly { readonly id: string; readonly unit: string }[],
): Readiness | null {
  if (graph === null) return null;
  const bodies = cards.map(({ unit }) =>
    graph.bodies.findIndex((body) => body.id === unit || body.unitIds.includes(unit)),
  );
  if (bodies.includes(-1)) return null;
  const needs = cardNeeds(graph, bodies);
  if (needs.some((alternatives) => alternatives.length === 0)) return null;
  const idOf = (body: number): string => cards[bodies.indexOf(body)]!.id;
  return Object.fromEntries(
    cards.flatMap(({ id }, i) => {
      const alternatives = needs[i]!.map((set) => set.map(idOf));
      return alternatives.some((set) => set.length === 0) ? [] : [[id, alternatives]];
    }),
  );
}
