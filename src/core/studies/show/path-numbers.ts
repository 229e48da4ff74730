/** Numbers of load path and torque path: what each end of the drum carries, and what the drive can put through. */
import { massOfParts, type KindMass } from '../../geometry';
import { STANDARD_GRAVITY } from '../../kernel';
import { defaultOptions, isPresent, type Machine, partOf } from '../../machine';
import { hydraulicMotor } from '../../mechanics';
import type { RollerBasis } from '../whole/roller-basis';

type Masses = Readonly<Record<string, KindMass>>;

export interface EndLoad {
  readonly end: 'left' | 'right';
  readonly isolators: readonly string[];
  /** Weight of the frame that comes down through this end's isolators, all of them and each. */
  readonly force_N: number;
  readonly each_N: number;
}

export interface FrameLoads {
  readonly ends: readonly EndLoad[];
  /** All of the drum's axle load, what shakes included. */
  readonly ground_N: number;
}

/**
 * Weight of the frame on both sets of isolators, by the rule for a beam on two supports: the reaction at one is the
 * load times the lever about the other over their distance (statics, any textbook). The beam carries the parts outside
 * the isolators, each at its centre of mass, and at `source` what else of the frame's share the drum bears.
 * @param source part id where the rest of the machine leans on the frame
 * @returns null where the machine has isolators at one end only
 */
export function frameLoads(
  machine: Machine,
  masses: Masses,
  basis: RollerBasis,
  source: string,
): FrameLoads | null {
  const options = defaultOptions(machine);
  const outside = massOfParts(
    machine,
    masses,
    machine.parts.filter((p) => p.side === 'still' && isPresent(p, options)).map((p) => p.id),
  );
  const sets = (['left', 'right'] as const).map((end) => {
    const ids = basis.isolators.filter((set) => set.end === end).flatMap((set) => set.partIds);
    return { end, ids, x_m: ids.length === 0 ? 0 : massOfParts(machine, masses, ids).centre_m[0] };
  });
  const [left, right] = sets as [(typeof sets)[0], (typeof sets)[0]];
  if (left.ids.length === 0 || right.ids.length === 0) return null;
  const leaning_kg = basis.frameMass_kg - outside.mass_kg;
  const leaning_m = massOfParts(machine, masses, [partOf(machine, source).id]).centre_m[0];
  const middle_m =
    (outside.mass_kg * outside.centre_m[0] + leaning_kg * leaning_m) / (outside.mass_kg + leaning_kg);
  const weight_N = basis.frameMass_kg * STANDARD_GRAVITY;
  const onRight = (weight_N * (middle_m - left.x_m)) / (right.x_m - left.x_m);
  const load = (set: typeof left, force_N: number): EndLoad => ({
    end: set.end,
    isolators: set.ids,
    force_N,
    each_N: force_N / set.ids.length,
  });
  return {
    ends: [load(left, weight_N - onRight), load(right, onRight)],
    ground_N: basis.drumAxleMass_kg * STANDARD_GRAVITY,
  };
}

export interface DriveTorque {
  /** Torque on the drum at the relief pressure in the low range. */
  readonly torque_Nm: number;
  readonly relief_Pa: number;
}

/** What the drum's motor turns the drum with at most; null where the machine file holds no travel drive. */
export function driveTorque(machine: Machine): DriveTorque | null {
  const { drive } = machine;
  if (drive === undefined) return null;
  const { displacement_low_m3_rev, gear_ratio, efficiency } = drive.drum;
  const motor = hydraulicMotor({
    displacement_m3_rev: displacement_low_m3_rev,
    pressure_Pa: drive.relief_Pa,
    eta_mechanical: efficiency,
  });
  if (!motor.ok) return null;
  return { torque_Nm: motor.value.torque_Nm * gear_ratio, relief_Pa: drive.relief_Pa };
}

/**
 * Force along the circle on each of several alike parts that share a torque, newtons: torque over number and radius.
 * Null where they do not stand on a circle about the drum's axis.
 */
export function forceOnEach_N(
  machine: Machine,
  partIds: readonly string[],
  torque_Nm: number,
): number | null {
  const radii = partIds.map((id) => {
    const [, y, z] = partOf(machine, id).pose.position_m;
    return Math.hypot(y, z);
  });
  const radius = radii[0] ?? 0;
  if (radius < 0.01 || radii.some((r) => Math.abs(r - radius) > 1e-3)) return null;
  return torque_Nm / (partIds.length * radius);
}
