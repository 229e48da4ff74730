/**
 * A prepared machine: everything that views, lists and plans read, computed once from the machine file
 * (at build time for the shipped machine, in a worker for a dropped one).
 */
import type { Explode, Plan } from '../assembly';
import type { Body, KindMass as SolidKindMass, MeshData } from '../geometry';
import type { Vec3 } from '../kernel';
import type { Machine } from '../machine';
import type { SettledFit } from '../studies';

/** A body with what the scene draws of it. */
export interface DrawnBody extends Body {
  readonly mesh: MeshData;
}

/** Mass of one instance of a kind, with the volume of its solids and the box around it, all in the kind's frame. */
export interface KindMass extends SolidKindMass {
  readonly volume_m3: number;
  readonly min_m: Vec3;
  readonly max_m: Vec3;
}

export interface MachineDocument {
  readonly machine: Machine;
  /** Bodies by kind id. */
  readonly solids: Readonly<Record<string, readonly DrawnBody[]>>;
  readonly masses: Readonly<Record<string, KindMass>>;
  /** Taking the whole drum apart, in order. */
  readonly teardown: Plan;
  readonly explode: Explode;
  /** Hash of the source files. */
  readonly hash: string;
  /** Where the shot settles, from simulated runs; absent where the machine's files bring no fit. */
  readonly fit?: SettledFit;
}
