/** Lifts of a step: what one lift takes, whether a person may carry it, what each leg of a sling pulls. */
import type { Masses, Step } from '../assembly';
import { type Message, message } from '../kernel';
import { findUnit, type Machine } from '../machine';
import { liftLimit, sling } from '../mechanics';
import { liftMass } from '../studies';
import type { SheetLift } from './sheet-types';
import { entryOf } from './units-of';

/** Angles from the horizontal that the table shows; below 30 degrees a sling is refused. */
const ANGLES_DEG = [90, 60, 45, 30] as const;
/** ISO 11228-1 reference mass and the load constant of the NIOSH equation. */
const LIMITS_KG = [25, 23] as const;

/** Null for a step that lifts nothing heavier than a handful: fasteners, supports, draining. */
export function liftOf(machine: Machine, masses: Masses, step: Step): SheetLift | null {
  if (step.kind !== 'remove' && step.kind !== 'bench') return null;
  if (step.unitIds.every((id) => findUnit(machine, id)?.group != null)) return null;
  return liftOfUnits(machine, masses, step.unitIds);
}

/** The lift of these units at once; copies of one entry are carried one by one. */
export function liftOfUnits(machine: Machine, masses: Masses, lifted: readonly string[]): SheetLift | null {
  const copies = new Set(lifted.map((id) => entryOf(machine, id))).size === 1;
  const unitIds = copies ? lifted.slice(0, 1) : lifted;
  const { mass_kg, centre_m } = liftMass(machine, masses, unitIds);
  if (mass_kg < 0.5) return null;
  const limit = liftLimit({ mass_kg });
  const byHand = limit.ok && limit.value.by_hand;
  const notes: Message[] = byHand ? [] : [message('job.note.over-one-person')];
  if (!byHand && mass_kg <= 2 * LIMITS_KG[1]) notes.push(message('job.note.two-people'));
  if (!byHand) notes.push(message('job.note.hook-over-centre'), message('job.note.two-legs-count'));
  return {
    unitIds: lifted,
    mass_kg,
    centre_m,
    byHand,
    limits_kg: LIMITS_KG,
    legs: byHand
      ? []
      : ANGLES_DEG.flatMap((angle_deg) => {
          const pull = sling({ mass_kg, legs: 2, angle_from_horizontal_deg: angle_deg });
          return pull.ok
            ? [{ angle_deg, tension_N: pull.value.leg_tension_N, factor: pull.value.factor }]
            : [];
        }),
    notes,
  };
}
