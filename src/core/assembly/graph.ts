/**
 * The blocking graph: for every body and every way that it may leave, what stands in its way, at which distance and
 * why. Plain data; built once from the solids (in a worker), read by the planner, by practice and by questions.
 */
import type { Vec3 } from '../kernel';
import type { Joint } from './joints';
import type { Blocker, Way } from './way';

export interface GraphBody {
  readonly id: string;
  readonly unitIds: readonly string[];
  readonly parts: readonly number[];
  readonly fixed: boolean;
  readonly fastener: boolean;
  readonly hose: boolean;
  readonly seal: boolean;
  readonly mass_kg: number;
  readonly centre_m: Vec3;
  readonly bounds: Float64Array;
}

export interface BlockingGraph {
  readonly machineId: string;
  readonly bodies: readonly GraphBody[];
  /** By axis: travel of u along +axis until it strikes v, at u * bodies + v. */
  readonly gaps_m: readonly [Float32Array, Float32Array, Float32Array];
  /** Number of grid lines behind each gap. */
  readonly lines: readonly [Uint32Array, Uint32Array, Uint32Array];
  readonly joints: readonly Joint[];
  /** Ways of each body. */
  readonly ways: readonly (readonly Way[])[];
  /** Six numbers a part: its bounds. */
  readonly partBounds: Float64Array;
  readonly bodyOfPart: Int32Array;
}

/** Strike distance of `u` moving in DIRECTIONS[direction] against `v`; Infinity: never. */
export function strikeDistance_m(graph: BlockingGraph, u: number, v: number, direction: number): number {
  const gaps = graph.gaps_m[(direction >> 1) as 0 | 1 | 2];
  const n = graph.bodies.length;
  return (direction & 1) === 0 ? gaps[u * n + v]! : gaps[v * n + u]!;
}

/** Bodies that `u` strikes when it moves straight in DIRECTIONS[direction], with all others at their places. */
export function straightBlockers(graph: BlockingGraph, u: number, direction: number): Blocker[] {
  const out: Blocker[] = [];
  for (let v = 0; v < graph.bodies.length; v++) {
    if (v === u) continue;
    const strike_m = strikeDistance_m(graph, u, v, direction);
    if (strike_m < Infinity) out.push({ body: v, strike_m, cause: 'path' });
  }
  return out;
}
