/** A machine named on the command line: its data, solids and masses. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { type BlockingGraph, buildGraph } from '../../core/assembly';
import {
  buildMachine,
  kindMasses,
  type KindMass,
  type KindSolid,
  loadSolidKernel,
} from '../../core/geometry';
import { fail, message, ok, printFound, type Result } from '../../core/kernel';
import { type Machine, parseMachine } from '../../core/machine';
import { parseFit, type SettledFit } from '../../core/studies';
import { readFitFiles, readModelFolder } from '../content/model-files';

export interface LoadedModel {
  readonly machine: Machine;
  readonly solids: Readonly<Record<string, KindSolid>>;
  readonly masses: Readonly<Record<string, KindMass>>;
  readonly graph: BlockingGraph;
}

/**
 * The settled fit of `name`: that of a folder of models/, of a folder of the disk, or a fit file itself. Undefined
 * where nothing of that name exists or no fit lies there; a fit with faults is refused with all of them.
 */
export function loadFit(name: string): Result<SettledFit | undefined> {
  const place = [join(MODELS, name), resolve(name)].find((path) => existsSync(path));
  if (place === undefined) return ok(undefined);
  const [file] = statSync(place).isDirectory()
    ? readFitFiles(place)
    : [{ name: basename(place), text: readFileSync(place, 'utf8') }];
  return file === undefined ? ok(undefined) : parseFit(file);
}

/** Models already loaded by this process. */
const loaded = new Map<string, Result<LoadedModel>>();

const MODELS = join(resolve(import.meta.dirname, '../../..'), 'models');

/** Loads `name`: a folder of models/, a folder or a single file of the disk; with what blocks what in it. */
export async function loadModel(name: string): Promise<Result<LoadedModel>> {
  const known = loaded.get(name) ?? (await readModel(name));
  loaded.set(name, known);
  return known;
}

async function readModel(name: string): Promise<Result<LoadedModel>> {
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
  const masses = kindMasses(machine, solids);
  return ok({ machine, solids, masses, graph: buildGraph(machine, solids, masses) });
}
