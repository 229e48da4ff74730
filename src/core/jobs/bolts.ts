/** How a group of fasteners is tightened: tool, the manual's torque field, the order round the ring. */
import type { Quantity } from '../kernel';
import { findUnit, type Machine } from '../machine';
import { bolt, proofStrength_Pa, starSequence } from '../mechanics';
import { numberOf } from './numbers/context';
import type { FieldValues, SheetBolts, SheetField, SheetNumber } from './sheet-types';
import { unitsOf } from './units-of';
import { message } from '../kernel';

/** Passes of a ring, shares of the torque; then once round at the last (common practice, no source). */
const STAGES = [0.3, 0.7, 1] as const;
/** Nut factor as received, and by how much the preload scatters at one torque (from memory). */
const NUT_FACTOR = 0.2;
const SCATTER = 0.25;
const PRELOAD_SHARE = 0.75;

export const torqueFieldOf = (groupId: string): string => `torque-${groupId}`;

/** Null for a unit that is no group of threaded fasteners. */
export function boltsOf(machine: Machine, groupId: string, values: FieldValues): SheetBolts | null {
  const unit = findUnit(machine, groupId);
  const group = unit?.group;
  if (unit === undefined || group == null || group.tool.drive === 'none') return null;
  const count = unit.partIds.length;
  const own = values[torqueFieldOf(groupId)];
  const perPart = group.pattern.type === 'circle' ? null : copiesShare(machine, group.joins, count);
  const ring = starSequence({ count: perPart ?? count });
  return {
    groupId,
    count,
    designation: group.thread.designation,
    propertyClass: group.thread.class,
    tool_m: group.tool.size_m,
    drive: group.tool.drive,
    torqueField: torqueFieldOf(groupId),
    ownTorque_Nm: typeof own === 'number' ? own : null,
    illustration: illustrate(groupId, group.thread),
    order: group.pattern.type === 'circle' || perPart !== null ? (ring.ok ? ring.value.order : []) : [],
    perPart,
    stages: STAGES,
  };
}

/** Bolts of each of several alike (the ears of an isolator); null where they join single parts. */
function copiesShare(machine: Machine, joins: readonly string[], count: number): number | null {
  const copies = Math.max(...joins.map((id) => unitsOf(machine, id).length));
  return copies > 1 && count % copies === 0 && count / copies > 1 ? count / copies : null;
}

/** T = K F d, to show the relation; never a torque for a real machine. */
function illustrate(
  groupId: string,
  thread: { diameter_m: number; pitch_m: number; class: string | null },
): readonly SheetNumber[] {
  const proof_Pa = thread.class === null ? null : proofStrength_Pa(thread.class, thread.diameter_m);
  if (proof_Pa === null) return [];
  const found = bolt({
    diameter_m: thread.diameter_m,
    pitch_m: thread.pitch_m,
    proof_Pa,
    preload_fraction: PRELOAD_SHARE,
    K: NUT_FACTOR,
  });
  if (!found.ok) return [];
  const { preload_N, torque_Nm } = found.value;
  const of = (name: string, value: SheetNumber['value'], quantity: Quantity): SheetNumber =>
    numberOf({
      name,
      params: { group: groupId, K: NUT_FACTOR, scatter: SCATTER },
      value,
      quantity,
      source: 'torque-relation',
      calculation: 'bolt',
      notes: [message('job.note.illustration-only')],
    });
  return [
    of('illustrated-torque', torque_Nm, 'torque'),
    of('illustrated-preload', [preload_N / (1 + SCATTER), preload_N / (1 - SCATTER)], 'force-large'),
  ];
}

/** The field that asks for the torque of one's own machine. */
export function torqueField(bolts: SheetBolts, stepId: string): SheetField {
  return {
    id: bolts.torqueField,
    stepId,
    type: 'number',
    label: message('job.field.torque', { group: bolts.groupId, designation: bolts.designation }),
    unit: 'Nm',
    quantity: 'torque',
    min: null,
    max: null,
    source: message('job.source.from-manual'),
    fromManual: true,
    choices: [],
    optional: true,
  };
}
