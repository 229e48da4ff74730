/** What hangs on the hook: mass and centre of mass of parts that leave together, at their place in the machine. */
import { massOfParts, type KindMass } from '../geometry';
import type { Vec3 } from '../kernel';
import { findUnit, type Machine } from '../machine';

export interface LiftMass {
  readonly mass_kg: number;
  /** In the machine's frame; the origin where nothing weighs anything. */
  readonly centre_m: Vec3;
}

/** Mass and centre of all parts of these units. */
export function liftMass(
  machine: Machine,
  masses: Readonly<Record<string, KindMass>>,
  unitIds: readonly string[],
): LiftMass {
  const parts = unitIds.flatMap((id) => findUnit(machine, id)?.partIds ?? []);
  const { mass_kg, centre_m } = massOfParts(machine, masses, parts);
  return { mass_kg, centre_m };
}
