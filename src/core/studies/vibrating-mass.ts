/**
 * The mass that shakes: everything inside the isolators, from the model's own solids. Of each isolator the bonded
 * plate on the shaking side counts whole and the rubber half (a spring's half; common practice, no source), the
 * other plate not at all.
 */
import { kindMass, massOfParts, type KindMass, type KindSolid } from '../geometry';
import { transformPoint, type Vec3 } from '../kernel';
import { defaultOptions, isPresent, type Machine, type Part } from '../machine';
import { meshBox } from './overlap';

export interface VibratingMass {
  readonly mass_kg: number;
  readonly centre_m: Vec3;
  /** Share of it that comes from the isolators. */
  readonly isolators_kg: number;
  /** Share of it that is oil of the exciter case. */
  readonly fluids_kg: number;
}

/** Mass of one isolator that moves with the shaking side. */
function shakingShare(machine: Machine, part: Part, solid: KindSolid): number {
  const kind = machine.kinds[part.kind]!;
  const bodies = solid.bodies.map((body) => {
    const mass = kindMass(
      { ...kind, mass_kg: undefined } as typeof kind,
      { bodies: [body] },
      machine.materials,
    ).mass_kg;
    const box = meshBox([body.solid]);
    const middle = transformPoint(part.pose, [
      (box.low[0] + box.high[0]) / 2,
      (box.low[1] + box.high[1]) / 2,
      (box.low[2] + box.high[2]) / 2,
    ]);
    return { mass, x: Math.abs(middle[0]), rubber: body.finish === 'rubber' };
  });
  const total = bodies.reduce((sum, b) => sum + b.mass, 0);
  const rubberX = bodies.find((b) => b.rubber)?.x;
  if (rubberX === undefined || total === 0) return (kind.mass_kg ?? total) / 2;
  // The shaking side is the one nearer to the drum's middle on both ends of the drum.
  const shaking = bodies.reduce((sum, b) => sum + (b.rubber ? b.mass / 2 : b.x < rubberX ? b.mass : 0), 0);
  return ((kind.mass_kg ?? total) * shaking) / total;
}

/** Sums the shaking side of a machine as it stands (its own options). */
export function vibratingMass(
  machine: Machine,
  solids: Readonly<Record<string, KindSolid>>,
  masses: Readonly<Record<string, KindMass>>,
): VibratingMass {
  const options = defaultOptions(machine);
  const present = machine.parts.filter((p) => isPresent(p, options));
  const inside = massOfParts(
    machine,
    masses,
    present.filter((p) => p.side === 'vibrating').map((p) => p.id),
  );
  const isolators = present
    .filter((p) => p.side === 'isolator')
    .map((p) => ({ kg: shakingShare(machine, p, solids[p.kind]!), at: p.pose.position_m }));
  const isolators_kg = isolators.reduce((sum, i) => sum + i.kg, 0);
  const fluids_kg = machine.relations.reduce((sum, relation) => {
    if (relation.type !== 'fluid' || relation.volume_m3 === undefined) return sum;
    const holders = machine.parts.filter(
      (p) => relation.boundary.includes(p.id) || relation.boundary.includes(p.unit),
    );
    const shakes = holders.length > 0 && holders.every((p) => p.side === 'vibrating');
    // A fluid with a solid of its own is already among the parts.
    const solid = machine.parts.some((p) => p.id === relation.fluid);
    return shakes && !solid
      ? sum + relation.volume_m3 * (machine.materials['oil']?.density_kg_m3 ?? 870)
      : sum;
  }, 0);
  const mass_kg = inside.mass_kg + isolators_kg + fluids_kg;
  const centre_m = [0, 1, 2].map(
    (k) =>
      (inside.centre_m[k]! * inside.mass_kg + isolators.reduce((sum, i) => sum + i.kg * i.at[k]!, 0)) /
      (inside.mass_kg + isolators_kg || 1),
  ) as unknown as Vec3;
  return { mass_kg, centre_m, isolators_kg, fluids_kg };
}
