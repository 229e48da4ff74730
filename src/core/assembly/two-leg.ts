/**
 * Removals of two legs for bodies that no straight line frees: some way along one direction, then square to it.
 * Tried only where they are needed: on what is left when everything that leaves straight has left.
 */
import { dot, scale, type Vec3 } from '../kernel';
import { bitsOf, hasBit, intersects, members } from './bits';
import { baseOf, peel } from './discover';
import { type BlockingGraph, straightBlockers } from './graph';
import { moveTable } from './moves';
import { type Sighting, sightAlong, strikes } from './sight';
import { type Blocker, DIRECTIONS, type Way } from './way';

/** Shares of the free travel at which the second leg is tried, and travel too short to be a leg. */
const SHARES = [1, 0.75, 0.5, 0.25];
const LEAST_TRAVEL_M = 0.005;
/** Room kept before what the first leg would strike. */
const ROOM_M = 0.001;

/** The graph with two-leg ways added for bodies that need them. */
export function withTwoLegWays(sighting: Sighting, graph: BlockingGraph): BlockingGraph {
  let current = graph;
  for (;;) {
    const left = bitsOf(
      current.bodies.length,
      current.bodies.map((_, u) => u),
    );
    const base = baseOf(current, members(left));
    const table = moveTable(current);
    peel(left, (u) => u !== base && table.single[u]!.some((m) => !intersects(m.needs, left)));
    let added = false;
    const ways = current.ways.map((list, u) => {
      const body = current.bodies[u]!;
      if (added || u === base || !hasBit(left, u) || body.fixed || body.fastener) return list;
      if (list.some((w) => w.kind === 'two-leg')) return list;
      const held = table.jointsOf[u]!.some((j) => j.kind !== 'carries' && hasBit(left, j.to));
      const way = held ? null : twoLegWay(sighting, current, u, (v) => hasBit(left, v));
      if (way === null) return list;
      added = true;
      return [...list, way];
    });
    if (!added) return current;
    current = { ...current, ways };
  }
}

function twoLegWay(
  sighting: Sighting,
  graph: BlockingGraph,
  u: number,
  remains: (v: number) => boolean,
): Way | null {
  const { parts } = graph.bodies[u]!;
  for (const first of DIRECTIONS) {
    const d = DIRECTIONS.indexOf(first);
    const ahead = straightBlockers(graph, u, d);
    const travel = Math.min(...ahead.filter((b) => remains(b.body)).map((b) => b.strike_m)) - ROOM_M;
    if (!(travel > LEAST_TRAVEL_M) || travel === Infinity) continue;
    for (const share of SHARES) {
      const distance_m = travel * share;
      const shift: Vec3 = scale(first, distance_m);
      for (const second of DIRECTIONS) {
        if (Math.abs(dot(first, second)) > 0.5) continue;
        const sight = sightAlong(sighting, second, parts, shift);
        const met = strikes(sighting, sight, parts, shift, second, remains);
        if ([...met.keys()].some(remains)) continue;
        const blockers: Blocker[] = [...met].map(([body, strike_m]) => ({ body, strike_m, cause: 'path' }));
        for (const b of ahead) if (b.strike_m < distance_m && !met.has(b.body)) blockers.push(b);
        return {
          body: u,
          kind: 'two-leg',
          direction: DIRECTIONS.indexOf(second),
          legs: [
            { direction: first, distance_m, pitch_m: null },
            { direction: second, distance_m: null, pitch_m: null },
          ],
          partLegs: null,
          blockers,
          releases: -1,
        };
      }
    }
  }
  return null;
}
