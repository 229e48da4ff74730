/** `npm run check-model -- alder-one`: faults of a machine of models/, one a line; exit code 2 when there are any. */
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { buildMachine, loadSolidKernel } from '../../core/geometry';
import { checkModel, parseModel } from '../../core/studies';
import { readFitFiles, readModelFolder } from '../content/model-files';
import { printFaults } from './print-faults';

const name = process.argv[2] ?? 'alder-one';
const folder = existsSync(name)
  ? resolve(name)
  : join(resolve(import.meta.dirname, '../../..'), 'models', name);
const parsed = parseModel([...readModelFolder(folder), ...readFitFiles(folder)]);
let faults = parsed.ok ? [] : parsed.faults;
if (parsed.ok) {
  const kernel = await loadSolidKernel();
  const { source } = parsed.value;
  const { machine } = source;
  faults = checkModel(source, buildMachine(kernel, machine), kernel);
  console.log(
    `${machine.name}: ${Object.keys(machine.kinds).length} kinds, ${machine.parts.length} parts, ${machine.relations.length} relations`,
  );
}
if (faults.length > 0) {
  console.error(printFaults(faults));
  process.exit(2);
}
console.log('No faults.');
