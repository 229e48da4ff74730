/** Parts that a word of a lesson or bank file stands for. */
import { type Machine, partsOfRef } from '../machine';

/** Part ids of a part, pattern, group, weldment or kind; empty when the machine knows none of that name. */
export function partsNamed(machine: Machine, ref: string): readonly string[] {
  const found = partsOfRef(machine, ref);
  return found.length > 0 ? found : machine.parts.filter((p) => p.kind === ref).map((p) => p.id);
}
