/** Mass, centre of mass and inertia of parts, units and any set of parts, from their solids. */
import {
  add,
  composePoses,
  dot,
  panic,
  type Pose,
  rotate,
  sub,
  transformPoint,
  type Vec3,
  ZERO,
} from '../kernel';
import type { Kind, Machine, Material } from '../machine';
import { meshIntegrals } from './integrals';
import type { KindSolid } from './types';

/** Symmetric 3 by 3: xx, yy, zz, xy, xz, yz. */
export type Symmetric = readonly [number, number, number, number, number, number];

export interface MassProperties {
  readonly mass_kg: number;
  /** Centre of mass in the frame that the reader named. */
  readonly centre_m: Vec3;
  /**
   * Second mass moments about the centre of mass, integral of a_i a_j dm, in kg m2 (see `inertiaTensor`).
   * Kept in this form since it turns and adds without special cases.
   */
  readonly second_kg_m2: Symmetric;
}

/** A kind's mass as solids and densities give it, and as it counts (a declared mass of a bought part wins). */
export interface KindMass extends MassProperties {
  readonly solidMass_kg: number;
  readonly declared: boolean;
}

/** Inertia tensor about the centre of mass: xx = second yy + zz, xy = minus second xy, and so on. */
export function inertiaTensor({ second_kg_m2: s }: MassProperties): Symmetric {
  return [s[1] + s[2], s[0] + s[2], s[0] + s[1], -s[3], -s[4], -s[5]];
}

/** Moment of inertia about the line through `through_m` along the unit vector `axis`. */
export function inertiaAboutAxis(mass: MassProperties, through_m: Vec3, axis: Vec3): number {
  const i = inertiaTensor(mass);
  const [x, y, z] = axis;
  const own = i[0] * x * x + i[1] * y * y + i[2] * z * z + 2 * (i[3] * x * y + i[4] * x * z + i[5] * y * z);
  const arm = sub(mass.centre_m, through_m);
  return own + mass.mass_kg * (dot(arm, arm) - dot(arm, axis) ** 2);
}

/** Mass properties of a kind in its own frame; a declared mass scales the solids' result. */
export function kindMass(
  kind: Kind,
  solid: KindSolid,
  materials: Readonly<Record<string, Material>>,
): KindMass {
  const bodies = solid.bodies.map((b) => {
    const material = materials[b.material ?? kind.material];
    if (material === undefined) panic('geometry/kindMass', 'unknown material', b.material ?? kind.material);
    const { volume_m3, centroid_m, second_m5 } = meshIntegrals(b.solid);
    const density = material.density_kg_m3;
    return {
      mass_kg: volume_m3 * density,
      centre_m: centroid_m,
      second_kg_m2: scaled(second_m5, density),
    };
  });
  const sum = combineMasses(bodies);
  const factor = kind.mass_kg === undefined ? 1 : kind.mass_kg / sum.mass_kg;
  return {
    mass_kg: sum.mass_kg * factor,
    centre_m: sum.centre_m,
    second_kg_m2: scaled(sum.second_kg_m2, factor),
    solidMass_kg: sum.mass_kg,
    declared: kind.mass_kg !== undefined,
  };
}

/** The same mass in the frame that `pose` stands in. */
export function poseMass(pose: Pose, mass: MassProperties): MassProperties {
  const axes = ([[1, 0, 0], [0, 1, 0], [0, 0, 1]] as const).map((a) => rotate(pose.rotation, a)); // prettier-ignore
  const s = mass.second_kg_m2;
  const own = [[s[0], s[3], s[4]], [s[3], s[1], s[5]], [s[4], s[5], s[2]]]; // prettier-ignore
  const turned = (i: number, j: number): number => {
    let sum = 0;
    for (let p = 0; p < 3; p++)
      for (let q = 0; q < 3; q++) sum += (axes[p]?.[i] ?? 0) * (own[p]?.[q] ?? 0) * (axes[q]?.[j] ?? 0);
    return sum;
  };
  return {
    mass_kg: mass.mass_kg,
    centre_m: transformPoint(pose, mass.centre_m),
    second_kg_m2: [turned(0, 0), turned(1, 1), turned(2, 2), turned(0, 1), turned(0, 2), turned(1, 2)],
  };
}

/** Sum of masses given in one frame, by Steiner's theorem; nothing weighs nothing at the origin. */
export function combineMasses(masses: readonly MassProperties[]): MassProperties {
  const mass_kg = masses.reduce((sum, m) => sum + m.mass_kg, 0);
  if (mass_kg === 0) return { mass_kg: 0, centre_m: ZERO, second_kg_m2: [0, 0, 0, 0, 0, 0] };
  const moment = masses.reduce<Vec3>(
    (sum, m) => add(sum, [m.mass_kg * m.centre_m[0], m.mass_kg * m.centre_m[1], m.mass_kg * m.centre_m[2]]),
    ZERO,
  );
  const centre_m: Vec3 = [moment[0] / mass_kg, moment[1] / mass_kg, moment[2] / mass_kg];
  const sum = [0, 0, 0, 0, 0, 0];
  for (const m of masses) {
    const [x, y, z] = sub(m.centre_m, centre_m);
    [x * x, y * y, z * z, x * y, x * z, y * z].forEach((product, i) => {
      sum[i] = (sum[i] ?? 0) + (m.second_kg_m2[i] ?? 0) + m.mass_kg * product;
    });
  }
  return { mass_kg, centre_m, second_kg_m2: sum as unknown as Symmetric };
}

/** Mass properties of every kind of a machine, each in its own frame. */
export function kindMasses(
  machine: Pick<Machine, 'kinds' | 'materials'>,
  solids: Readonly<Record<string, KindSolid>>,
): Readonly<Record<string, KindMass>> {
  return Object.fromEntries(
    Object.entries(machine.kinds).map(([id, kind]) => {
      const solid = solids[id] ?? panic('geometry/kindMasses', 'no solid for kind', id);
      return [id, kindMass(kind, solid, machine.materials)];
    }),
  );
}

/**
 * Mass properties of a set of parts in the machine's frame, assembled, or with `moved` poses on top
 * (a part id to the pose that moves it from its seat).
 */
export function massOfParts(
  machine: Pick<Machine, 'parts'>,
  kinds: Readonly<Record<string, MassProperties>>,
  partIds: Iterable<string>,
  moved: Readonly<Record<string, Pose>> = {},
): MassProperties {
  const wanted = new Set(partIds);
  return combineMasses(
    machine.parts
      .filter((part) => wanted.has(part.id))
      .map((part) => {
        const mass = kinds[part.kind] ?? panic('geometry/massOfParts', 'no mass for kind', part.kind);
        const extra = moved[part.id];
        return poseMass(extra === undefined ? part.pose : composePoses(extra, part.pose), mass);
      }),
  );
}

function scaled(s: Symmetric, factor: number): Symmetric {
  return [s[0] * factor, s[1] * factor, s[2] * factor, s[3] * factor, s[4] * factor, s[5] * factor];
}
