/** Builds the blocking graph of a machine from its solids. */
import type { Vec3 } from '../kernel';
import type { Machine } from '../machine';
import { type AxisBlocking, axisBlocking, DEFAULT_GRID, type GridChoice } from './blocking';
import { fastenerWays } from './fastener-ways';
import { type BlockingGraph, straightBlockers } from './graph';
import { findJoints, threadTurns } from './joints';
import { LineScratch } from './lines';
import { pairRules } from './seats';
import { machineAxis, sightAlong, type Sighting, strikes } from './sight';
import { withTwoLegWays } from './two-leg';
import { directionNumber, DIRECTIONS, listBlockers, type Way } from './way';
import { buildWorld, type Masses, partAxis, type Solids } from './world';

export interface GraphOptions {
  readonly grid?: GridChoice;
  /** Called with the share done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
}

/** Shares of the work done after each stage, measured on a machine of a hundred bodies. */
const SHARES = { world: 0.03, axes: [0.42, 0.53, 0.63], ways: 0.97 } as const;

/** Hits that a machine of some hundred parts has along its longest-cut axis. */
const HITS_ROOM = 1 << 21;

/** Builds the graph of a machine from its solids. */
export function buildGraph(
  machine: Machine,
  solids: Solids,
  masses: Masses,
  options: GraphOptions = {},
): BlockingGraph {
  const tell = options.onProgress ?? (() => undefined);
  const world = buildWorld(machine, solids, masses);
  tell(SHARES.world);
  const rules = pairRules(world);
  const axes: AxisBlocking[] = [];
  const scratch = new LineScratch(HITS_ROOM);
  for (const axis of [0, 1, 2] as const) {
    axes.push(axisBlocking(world, rules, axis, options.grid ?? DEFAULT_GRID, scratch));
    tell(SHARES.axes[axis]);
  }
  const [x, y, z] = axes as [AxisBlocking, AxisBlocking, AxisBlocking];
  const joints = findJoints(world);
  const bare: BlockingGraph = {
    machineId: machine.id,
    bodies: world.bodies.map((b) => ({
      id: b.id,
      unitIds: b.unitIds,
      parts: b.parts,
      fixed: b.fixed,
      fastener: b.group !== null,
      hose: b.hose,
      seal: b.seal,
      mass_kg: b.mass_kg,
      centre_m: b.centre_m,
      bounds: b.bounds,
    })),
    gaps_m: [x.gap_m, y.gap_m, z.gap_m],
    lines: [x.lines, y.lines, z.lines],
    joints,
    ways: [],
    partBounds: world.partBounds,
    bodyOfPart: world.bodyOfPart,
  };
  const sighting: Sighting = { world, rules, axes: [x, y, z] };
  const turns = new Map(threadTurns(world).map((t) => [t.body, t]));
  const ways = world.bodies.map((body): readonly Way[] => {
    tell(SHARES.axes[2] + ((SHARES.ways - SHARES.axes[2]) * body.index) / world.bodies.length);
    if (body.fixed) return [];
    if (body.hose) return [hoseWay(bare, body.index)];
    if (body.group !== null) return fastenerWays(sighting, body);
    const turn = turns.get(body.index);
    if (turn !== undefined) return unscrewWays(sighting, bare, body.index, turn);
    return [...straightWays(bare, body.index), ...ownWays(sighting, body.index)];
  });
  const graph = withTwoLegWays(sighting, { ...bare, ways });
  tell(1);
  return graph;
}

function straightWays(graph: BlockingGraph, body: number): Way[] {
  return DIRECTIONS.map((direction, d) => ({
    body,
    kind: 'straight',
    direction: d,
    legs: [{ direction, distance_m: null, pitch_m: null }],
    partLegs: null,
    blockers: straightBlockers(graph, body, d),
    releases: -1,
  }));
}

/** Ways along the directions that the model declares for a body beyond the machine's axes. */
function ownWays(sighting: Sighting, index: number): Way[] {
  const body = sighting.world.bodies[index]!;
  return body.directions
    .filter((direction) => machineAxis(direction) < 0)
    .map((direction) => {
      const sight = sightAlong(sighting, direction, body.parts, [0, 0, 0]);
      return {
        body: index,
        kind: 'straight',
        direction: -1,
        legs: [{ direction, distance_m: null, pitch_m: null }],
        partLegs: null,
        blockers: listBlockers(strikes(sighting, sight, body.parts, [0, 0, 0], direction)),
        releases: -1,
      };
    });
}

/**
 * A hose bends out of its place: its own shape blocks nothing of its leaving. It is laid aside square to the drum
 * axis, where least stands.
 */
function hoseWay(graph: BlockingGraph, body: number): Way {
  const counts = DIRECTIONS.map((direction, d) =>
    direction[0] === 0 ? straightBlockers(graph, body, d).length : Infinity,
  );
  const best = counts.indexOf(Math.min(...counts));
  return {
    body,
    kind: 'hose',
    direction: best,
    legs: [{ direction: DIRECTIONS[best]!, distance_m: null, pitch_m: null }],
    partLegs: null,
    blockers: [],
    releases: -1,
  };
}

/** A nut-like part: turned off its thread either way along its axis, then straight on. */
function unscrewWays(
  sighting: Sighting,
  graph: BlockingGraph,
  index: number,
  turn: { part: number; partner: number; pitch_m: number; engaged_m: number },
): Way[] {
  const axis = partAxis(sighting.world.machine, turn.part);
  return [1, -1].map((sense) => {
    const direction: Vec3 = [axis[0] * sense, axis[1] * sense, axis[2] * sense];
    const d = directionNumber(direction);
    const parts = sighting.world.bodies[index]!.parts;
    const blockers =
      d >= 0
        ? straightBlockers(graph, index, d)
        : listBlockers(
            strikes(sighting, sightAlong(sighting, direction, parts, [0, 0, 0]), parts, [0, 0, 0], direction),
          );
    return {
      body: index,
      kind: 'unscrew',
      direction: d,
      legs: [
        { direction, distance_m: turn.engaged_m, pitch_m: turn.pitch_m },
        { direction, distance_m: null, pitch_m: null },
      ],
      partLegs: null,
      blockers,
      releases: turn.partner,
    };
  });
}
