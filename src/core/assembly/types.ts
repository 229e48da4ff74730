/**
 * What this folder hands out: the blocking graph, plans, timelines and exploded views. Plain data and typed arrays,
 * so that all of it passes through a worker's port. Directions and offsets are in the frame of the machine; metres,
 * kilograms, newtons, seconds.
 */
import type { Message, Vec3 } from '../kernel';

/** One straight stretch of a removal. */
export interface Leg {
  /** Unit vector. */
  readonly direction: Vec3;
  readonly distance_m: number;
  /** 'unscrew': turns by distance / pitch about `direction` while it moves. */
  readonly kind: 'unscrew' | 'slide';
  /** Metres a turn. */
  readonly pitch_m?: number;
}

export interface Tool {
  readonly kind:
    'socket' | 'spanner' | 'hex-key' | 'pin-spanner' | 'lifting-gear' | 'press' | 'drain-pan' | 'hand';
  /** Wrench size; 0 where the tool has none. */
  readonly size_m: number;
  readonly drive: string;
  /** Reach that an extension must have beyond the socket; 0: none. */
  readonly extension_m: number;
}

/** Something that holds a load from this step on. */
export interface Support {
  readonly kind: 'crib' | 'chock' | 'sling' | 'strap' | 'guide-bar';
  /** Unit that is held. */
  readonly what: string;
  readonly force_N: number;
  /** Where it acts. */
  readonly at_m: Vec3;
  readonly why: Message;
}

/**
 * 'remove': units leave the machine; 'bench': units leave a subassembly that is already out; 'support': something
 * is held before what carries it goes; 'drain': a fluid is let out.
 */
export type StepKind = 'remove' | 'bench' | 'support' | 'drain';

export interface Step {
  readonly index: number;
  readonly kind: StepKind;
  /** One unit, or those of a subassembly that leave together; the drained or supported units for the other kinds. */
  readonly unitIds: readonly string[];
  /** Units it is taken from on the bench (those left of the subassembly, this one excluded); empty elsewhere. */
  readonly fromIds: readonly string[];
  /** Path of the whole; empty for 'support' and 'drain'. */
  readonly legs: readonly Leg[];
  /** Paths of single parts where they differ from `legs` (each bolt along its own axis). */
  readonly partLegs: Readonly<Record<string, readonly Leg[]>>;
  /** Why it can and must go now: messages of `assemblyMessageKeys`. */
  readonly why: readonly Message[];
  readonly mass_kg: number;
  readonly tools: readonly Tool[];
  /** Caution keys of the model. */
  readonly cautions: readonly string[];
  readonly supports: readonly Support[];
  /** Work time, a training value. */
  readonly time_s: number;
}

export type Least = 'units' | 'mass' | 'time';

export interface Plan {
  readonly machineId: string;
  /** A unit's id, or 'all'. */
  readonly target: string;
  readonly least: Least;
  readonly steps: readonly Step[];
  /** False when some units are interlocked: `stuckIds` names them and the steps are those that could be done. */
  readonly orderExists: boolean;
  readonly stuckIds: readonly string[];
  /** Units that stay where they are: fixed ones, the last one that all others came off, those not needed. */
  readonly stayIds: readonly string[];
  /** True only when the search ended by itself and nothing cheaper exists among the moves it knows. */
  readonly provenLeast: boolean;
  /** Cost in the measure of `least`, and a bound that no plan of these moves beats. */
  readonly cost: number;
  readonly lowerBound: number;
}

/** Play of a plan: one track a part, in the order of `machine.parts`. */
export interface Timeline {
  /** Seconds of play. */
  readonly duration_s: number;
  /** Start and end of each step's motion, seconds of play; one a step of the plan. */
  readonly stepStart_s: Float64Array;
  readonly stepEnd_s: Float64Array;
  readonly partCount: number;
  /** First key of each part's track (partCount + 1 numbers). */
  readonly firstKey: Uint32Array;
  /** Start and end time of each key's motion. */
  readonly keyTimes: Float64Array;
  /** Eight numbers a key: dx dy dz turn at its start, then at its end. */
  readonly keyOffsets: Float32Array;
  /** Axis of each part's turn, through its pose's position (3 numbers a part). */
  readonly turnAxes: Float32Array;
  /** Step in which each part leaves for good (the last that moves it), -1: stays. */
  readonly leavesAt: Int32Array;
}

/** Where one step of the plan lays parts down: a shift from where they were before it. */
export interface LaidDown {
  /** Number of the step in the plan. */
  readonly step: number;
  /** Numbers in `machine.parts`. */
  readonly parts: readonly number[];
  readonly offset_m: Vec3;
}

/** Exploded view: one entry a part, in the order of `machine.parts`. */
export interface Explode {
  readonly partCount: number;
  /** Offset of its subassembly (or its own) when fully apart, x y z. */
  readonly groupOffsets: Float32Array;
  /** Further offset inside its subassembly, after the groups have parted. */
  readonly innerOffsets: Float32Array;
  /** Stretch of s in which each moves: start and end of the group's motion, then of the inner motion (4 a part). */
  readonly windows: Float32Array;
  /** The same lay-out step by step; the shifts of a part add up to its offsets. */
  readonly laidDown: readonly LaidDown[];
  /** Extent of the fully exploded machine along x, metres. */
  readonly spread_m: number;
}
