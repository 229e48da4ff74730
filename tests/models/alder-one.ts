/** Alder One with its solids, built once for all tests of a file. */
import { resolve } from 'node:path';
import { buildMachine, kindMasses, loadSolidKernel } from '../../src/core/geometry';
import { parseModel } from '../../src/core/studies';
import { readFitFiles, readModelFolder } from '../../src/edge/content/model-files';

const folder = resolve(import.meta.dirname, '../../models/alder-one');
const parsed = parseModel([...readModelFolder(folder), ...readFitFiles(folder)]);
if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults.slice(0, 5)));

export const { fit } = parsed.value;
export const { machine } = parsed.value.source;
export const kernel = await loadSolidKernel();
export const solids = buildMachine(kernel, machine);
export const masses = kindMasses(machine, solids);
