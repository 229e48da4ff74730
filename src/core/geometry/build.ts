/** From a part kind's parameters to its solid, through the table of builders. */
import type { Kind, Machine } from '../machine';
import { type BuildContext, builders, type Builder } from './builders';
import { type SolidKernel, withSolids } from './solid-kernel';
import type { KindSolid } from './types';

/**
 * The closed solid bodies of a kind, in metres in the kind's own frame. `machine` is what the few builders read
 * that take numbers from another kind (the shot from its housing). Throws on parameters that give no solid.
 */
export function buildKind(
  kernel: SolidKernel,
  kind: Kind,
  machine: Pick<Machine, 'kinds' | 'operation'>,
): KindSolid {
  return withSolids(kernel, (solids) => {
    const context: BuildContext = { solids, kind, machine };
    // The table pairs every name with its own parameters; the pairing is lost on indexing, so it is restored here.
    const build = builders[kind.params.builder] as Builder<Kind['params']>;
    return { bodies: build(context, kind.params) };
  });
}

/** Solids of all kinds of a machine, by kind id. */
export function buildMachine(
  kernel: SolidKernel,
  machine: Pick<Machine, 'kinds' | 'operation'>,
): Readonly<Record<string, KindSolid>> {
  return Object.fromEntries(
    Object.entries(machine.kinds).map(([id, kind]) => [id, buildKind(kernel, kind, machine)]),
  );
}
