/** The run of the loose shot with a machine's own numbers, for scripts that cannot do without it. */
import type { Machine } from '../../src/core/machine';
import type { Direction, ShotParameters } from '../../src/core/shot';
import { ownShotParameters } from '../../src/core/studies';

/** Throws where the machine has no exciter with loose shot. */
export function ownRun(machine: Machine, direction: Direction): ShotParameters {
  const own = ownShotParameters(machine, direction);
  if (own === null) throw new Error('scripts/ownRun: the machine has no exciter with loose shot');
  return own;
}
