/** What the numbers of a sheet are made from, and how one is written down. */

import { type Message, message, type Quantity } from '../../kernel';
import type { Masses, Solids } from '../../assembly';
import type { Machine } from '../../machine';
import { type ExciterStudy, rollerBasis, type RollerBasis } from '../../studies';
import type { Job } from '../schema';
import type { FieldValues, SheetNumber } from '../sheet-types';

export interface NumberContext {
  readonly machine: Machine;
  readonly solids: Solids;
  readonly masses: Masses;
  readonly job: Job;
  /** Null where the machine has no shot exciter. */
  readonly study: ExciterStudy | null;
  readonly values: FieldValues;
}

export interface NumberParts {
  readonly name: string;
  readonly params?: Message['params'];
  readonly value: SheetNumber['value'];
  readonly quantity: Quantity;
  readonly source: string;
  readonly calculation: string;
  readonly training?: boolean;
  readonly verdict?: SheetNumber['verdict'];
  readonly notes?: readonly Message[];
}

/** One number; the id is made unique by the sheet. */
export function numberOf(parts: NumberParts): SheetNumber {
  const { name, params, value, quantity, source, calculation, training = true, verdict, notes = [] } = parts;
  return {
    id: name,
    label: message(`job.number.${name}`, params),
    value,
    quantity,
    source: message(`job.source.${source}`),
    calculation,
    training,
    ...(verdict === undefined ? {} : { verdict }),
    notes,
  };
}

/** A field's number; null while it is empty. */
export function valueOf(context: NumberContext, field: string): number | null {
  const value = context.values[field];
  return typeof value === 'number' && Number.isFinite(value) ? value : null;
}

/** Numbers of several fields; null while one of them is empty. */
export function valuesOf<K extends string>(
  context: NumberContext,
  fields: Readonly<Record<K, string>>,
): Record<K, number> | null {
  const found = Object.entries(fields).map(([key, id]) => [key, valueOf(context, id as string)] as const);
  return found.some(([, value]) => value === null) ? null : (Object.fromEntries(found) as Record<K, number>);
}

export const basisOf = ({ machine, solids, masses }: NumberContext): RollerBasis | null =>
  rollerBasis(machine, solids, masses);

/** Says that a number waits for its fields. */
export const WAITS: Message = message('job.note.waits-for-fields');
