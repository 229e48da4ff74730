/** Alder One with its solids, built once for all tests of a file. */
import { resolve } from 'node:path';
import { buildMachine, kindMasses, loadSolidKernel } from '../../src/core/geometry';
import { parseMachine } from '../../src/core/machine';
import { readModelFolder } from '../../src/edge/content/model-files';

const parsed = parseMachine(readModelFolder(resolve(import.meta.dirname, '../../models/alder-one')));
if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults.slice(0, 5)));

export const { machine } = parsed.value;
export const kernel = await loadSolidKernel();
export const solids = buildMachine(kernel, machine);
export const masses = kindMasses(machine, solids);
