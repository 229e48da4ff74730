/** A machine named on the command line: its data, solids and masses. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import {
  buildMachine,
  kindMasses,
  type KindMass,
  type KindSolid,
  loadSolidKernel,
} from '../../core/geometry';
import { fail, message, ok, printFound, type Result } from '../../core/kernel';
import { type Machine, parseMachine } from '../../core/machine';
import { readModelFolder } from '../content/model-files';

export interface LoadedModel {
  readonly machine: Machine;
  readonly solids: Readonly<Record<string, KindSolid>>;
  readonly masses: Readonly<Record<string, KindMass>>;
}

const MODELS = join(resolve(import.meta.dirname, '../../..'), 'models');

/** Loads `name`: a folder of models/, a folder or a single file of the disk. */
export async function loadModel(name: string): Promise<Result<LoadedModel>> {
  const place = [join(MODELS, name), resolve(name)].find((path) => existsSync(path));
  if (place === undefined)
    return fail([{ path: 'model', expected: message('calc.fault.model'), found: printFound(name) }]);
  const files = statSync(place).isDirectory()
    ? readModelFolder(place)
    : [{ name: basename(place), text: readFileSync(place, 'utf8') }];
  const parsed = parseMachine(files);
  if (!parsed.ok) return parsed;
  const { machine } = parsed.value;
  const solids = buildMachine(await loadSolidKernel(), machine);
  return ok({ machine, solids, masses: kindMasses(machine, solids) });
}
