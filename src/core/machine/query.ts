/** Questions to a machine. Indexes are built once per machine object and kept beside it. */
import type { Kind } from './schema';
import type { Machine, Part, Unit } from './machine';
import { panic } from '../kernel';

interface Index {
  readonly parts: ReadonlyMap<string, Part>;
  readonly units: ReadonlyMap<string, Unit>;
  /** Any id that a relation may name -> the part ids it stands for. */
  readonly refs: ReadonlyMap<string, readonly string[]>;
}

const indexes = new WeakMap<Machine, Index>();

function indexOf(machine: Machine): Index {
  let index = indexes.get(machine);
  if (index === undefined) {
    const refs = new Map<string, string[]>();
    const refer = (ref: string, id: string): void => {
      const known = refs.get(ref);
      if (known === undefined) refs.set(ref, [id]);
      else if (!known.includes(id)) known.push(id);
    };
    for (const unit of machine.units) {
      for (const id of unit.partIds) {
        refer(id, id);
        refer(unit.id, id);
        // A pattern's own id stands for all its copies.
        for (const entry of unit.entries) if (id === entry.id || isCopyOf(id, entry.id)) refer(entry.id, id);
      }
    }
    index = {
      parts: new Map(machine.parts.map((p) => [p.id, p])),
      units: new Map(machine.units.map((u) => [u.id, u])),
      refs,
    };
    indexes.set(machine, index);
  }
  return index;
}

const isCopyOf = (id: string, entry: string): boolean =>
  id.startsWith(`${entry}-`) && /^\d+$/.test(id.slice(entry.length + 1));

/** The part of this id, or undefined. */
export const findPart = (machine: Machine, id: string): Part | undefined => indexOf(machine).parts.get(id);

/** The unit of this id, or undefined. */
export const findUnit = (machine: Machine, id: string): Unit | undefined => indexOf(machine).units.get(id);

/** The part of this id; throws when there is none. */
export const partOf = (machine: Machine, id: string): Part =>
  findPart(machine, id) ?? panic('machine/partOf', 'part', id, 'a part id of this machine');

/** The kind of a part or of its id. */
export const kindOf = (machine: Machine, part: Part): Kind =>
  machine.kinds[part.kind] ?? panic('machine/kindOf', 'kind', part.kind, 'a kind of this machine');

/** Part ids that a relation's word stands for: a part, a pattern's copies, a group's or a weldment's parts. */
export const partsOfRef = (machine: Machine, ref: string): readonly string[] =>
  indexOf(machine).refs.get(ref) ?? [];

/** Kind of the first part that a word names; null when it names none. */
export function kindNamed(machine: Machine, ref: string): Kind | null {
  const part = findPart(machine, partsOfRef(machine, ref)[0] ?? '');
  return part === undefined ? null : (machine.kinds[part.kind] ?? null);
}

/** Whether a part takes part while these options are on (context parts only when asked for). */
export function isPresent(
  part: Part,
  optionsOn: Readonly<Record<string, boolean>>,
  context = false,
): boolean {
  if (part.context && !context) return false;
  return part.option === null || optionsOn[part.option] === true;
}

/** The machine's own state of its options. */
export function defaultOptions(machine: Machine): Readonly<Record<string, boolean>> {
  return Object.fromEntries(Object.entries(machine.options).map(([id, option]) => [id, option.on]));
}
