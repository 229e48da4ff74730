/**
 * A prepared machine: everything that views, lists and plans read, computed once from the machine file
 * (at build time for the shipped machine, in a worker for a dropped one).
 */
import type { Explode, Plan } from '../assembly';
import type { Body, MeshData } from '../geometry';
import type { Vec3 } from '../kernel';
import type { Machine } from '../machine';

/** A body with what the scene draws of it. */
export interface DrawnBody extends Body {
  readonly mesh: MeshData;
}

/** Mass of one instance of a kind and where it comes from. */
export interface KindMass {
  readonly mass_kg: number;
  /** Mass by volume and density, whether or not a declared mass wins over it. */
  readonly solid_kg: number;
  readonly declared: boolean;
  readonly volume_m3: number;
  /** In the kind's own frame. */
  readonly centre_m: Vec3;
  /** Inertia about the centre of mass, kind's axes: xx, yy, zz, xy, yz, zx. */
  readonly inertia_kgm2: readonly [number, number, number, number, number, number];
  /** Smallest box around the kind, own frame. */
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
}
