/** From a parsed machine to a prepared document: solids, checks, masses, drawing meshes, order, exploded view. */
import { type Fault, fail, message, ok, printFound, type Result } from '../kernel';
import {
  buildKind,
  kindMass,
  type KindSolid,
  meshIntegrals,
  type SolidKernel,
  toMeshData,
} from '../geometry';
import { buildExplode, planTeardown } from '../assembly';
import type { SourcedMachine } from '../machine';
import { checkModel, meshBox, type SettledFit } from '../studies';
import type { DrawnBody, KindMass, MachineDocument } from './types';

/** Called between stages and kinds: the stage and its share from 0 to 1. */
export type Progress = (phase: 'solids' | 'order', share: number) => void;

/** Builds the solids of all kinds; a builder that refuses its parameters is a fault of that kind. */
function buildSolids(
  source: SourcedMachine,
  kernel: SolidKernel,
  progress: Progress,
): Result<Record<string, KindSolid>> {
  const { machine, where } = source;
  const solids: Record<string, KindSolid> = {};
  const faults: Fault[] = [];
  const ids = Object.keys(machine.kinds);
  ids.forEach((id, i) => {
    progress('solids', i / ids.length);
    try {
      solids[id] = buildKind(kernel, machine.kinds[id]!, machine);
    } catch (error) {
      faults.push({
        ...where('kinds', id, 'params'),
        expected: message('fault.builds'),
        found: printFound((error as Error).message, 120),
      });
    }
  });
  return faults.length > 0 ? fail(faults) : ok(solids);
}

/**
 * Prepares a machine for the views. Faults of any stage come back all at once; a stage that needs a sound one before
 * it does not run on a broken one.
 * @param fit that came with the files, already read
 * @param hash of the source files, kept with the document so that caches can tell versions apart
 */
export function prepareMachine(
  source: SourcedMachine,
  hash: string,
  kernel: SolidKernel,
  progress: Progress = () => undefined,
  fit?: SettledFit,
): Result<MachineDocument> {
  const { machine } = source;
  const built = buildSolids(source, kernel, progress);
  if (!built.ok) return built;
  const faults = checkModel(source, built.value, kernel);
  if (faults.length > 0) return fail(faults);

  const solids: Record<string, DrawnBody[]> = {};
  const masses: Record<string, KindMass> = {};
  for (const [id, kind] of Object.entries(machine.kinds)) {
    const bodies = built.value[id]!.bodies;
    solids[id] = bodies.map((body) => ({ ...body, mesh: toMeshData(body.solid) }));
    const box = meshBox(bodies.map((b) => b.solid));
    masses[id] = {
      ...kindMass(kind, built.value[id]!, machine.materials),
      volume_m3: bodies.reduce((sum, body) => sum + meshIntegrals(body.solid).volume_m3, 0),
      min_m: box.low,
      max_m: box.high,
    };
  }
  progress('order', 0);
  const teardown = planTeardown(machine, built.value, masses);
  const explode = buildExplode(machine, built.value, masses, teardown);
  progress('order', 1);
  return ok({ machine, solids, masses, teardown, explode, hash, ...(fit === undefined ? {} : { fit }) });
}
