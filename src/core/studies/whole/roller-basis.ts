/**
 * What the studies of the whole machine share, from the solids and the machine file: masses on both sides of the
 * isolators, the isolators' stiffness, the drum's size and load.
 */
import type { KindMass, KindSolid } from '../../geometry';
import { defaultOptions, isPresent, type Isolation, type IsolatorParams, type Machine } from '../../machine';
import { rubberMount } from '../../mechanics';
import { vibratingMass } from '../vibrating-mass';

type Masses = Readonly<Record<string, KindMass>>;
type Solids = Readonly<Record<string, KindSolid>>;

/** All isolators of one kind; they stand at one end of the drum. */
export interface IsolatorSet {
  readonly kind: string;
  readonly end: 'left' | 'right';
  readonly partIds: readonly string[];
  readonly params: IsolatorParams;
}

export interface RollerBasis {
  /** All that shakes with the drum. */
  readonly vibratingMass_kg: number;
  /** The frame's share that rests on the drum through the isolators. */
  readonly frameMass_kg: number;
  readonly drumAxleMass_kg: number;
  readonly operatingMass_kg: number;
  readonly drumWidth_m: number;
  readonly drumRadius_m: number;
  readonly isolation: Isolation;
  readonly isolators: readonly IsolatorSet[];
}

/** Rubber where a machine file says nothing: middle of the handbook's ranges. */
const PLAIN_RUBBER: Isolation = {
  hardness_IRHD: 60,
  dynamic_factor: 1.3,
  damping_ratio: 0.06,
  source: 'handbook value',
};

const known = new WeakMap<Machine, RollerBasis | null>();

/** The basis of a machine, worked out once; null where it has no isolators or nothing of the frame rests on them. */
export function rollerBasis(machine: Machine, solids: Solids, masses: Masses): RollerBasis | null {
  let basis = known.get(machine);
  if (basis === undefined) {
    basis = workOut(machine, solids, masses);
    known.set(machine, basis);
  }
  return basis;
}

function workOut(machine: Machine, solids: Solids, masses: Masses): RollerBasis | null {
  const options = defaultOptions(machine);
  const sets = new Map<string, IsolatorSet & { partIds: string[] }>();
  for (const part of machine.parts) {
    const params = machine.kinds[part.kind]?.params;
    if (params?.builder !== 'isolator' || !isPresent(part, options)) continue;
    const end = part.pose.position_m[0] < 0 ? 'left' : 'right';
    const key = `${part.kind} ${end}`;
    const set = sets.get(key);
    if (set === undefined) sets.set(key, { kind: part.kind, end, partIds: [part.id], params });
    else set.partIds.push(part.id);
  }
  if (sets.size === 0) return null;
  const { mass_kg } = vibratingMass(machine, solids, masses);
  const { drum_axle_mass_kg, operating_mass_kg } = machine.operation;
  const frameMass_kg = drum_axle_mass_kg - mass_kg;
  if (!(frameMass_kg > 0)) return null;
  return {
    vibratingMass_kg: mass_kg,
    frameMass_kg,
    drumAxleMass_kg: drum_axle_mass_kg,
    operatingMass_kg: operating_mass_kg,
    drumWidth_m: machine.drumWidth_m,
    drumRadius_m: machine.drumRadius_m,
    isolation: machine.isolation ?? PLAIN_RUBBER,
    isolators: [...sets.values()],
  };
}

/** Static shear stiffness of one isolator of a set, N/m: drum and frame move across its axis. */
export function isolatorShear_N_m(set: IsolatorSet, hardness_IRHD: number): number {
  const { rubber_diameter_m, rubber_length_m } = set.params;
  const mount = rubberMount({ shape: 'disc', d_m: rubber_diameter_m, t_m: rubber_length_m, hardness_IRHD });
  return mount.ok ? mount.value.shear_N_m : 0;
}

export interface MountStiffness {
  /** All isolators that stand, at rest and in motion. */
  readonly static_N_m: number;
  readonly moving_N_m: number;
  readonly damping_Ns_m: number;
}

/** Stiffness of all mounts with a given hardness, and the damper that stands for the rubber's losses. */
export function mountStiffness(
  basis: RollerBasis,
  hardness_IRHD: number = basis.isolation.hardness_IRHD,
): MountStiffness {
  const static_N_m = basis.isolators.reduce(
    (sum, set) => sum + set.partIds.length * isolatorShear_N_m(set, hardness_IRHD),
    0,
  );
  const moving_N_m = static_N_m * basis.isolation.dynamic_factor;
  const critical = 2 * Math.sqrt(moving_N_m * basis.frameMass_kg);
  return { static_N_m, moving_N_m, damping_Ns_m: basis.isolation.damping_ratio * critical };
}
