/** `npm run check-model -- alder-one`: faults of a machine of models/, one a line; exit code 2 when there are any. */
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { buildMachine, loadSolidKernel } from '../../core/geometry';
import { parseMachine } from '../../core/machine';
import { checkModel } from '../../core/studies';
import { readModelFolder } from '../content/model-files';
import { printFaults } from './print-faults';

const name = process.argv[2] ?? 'alder-one';
const folder = existsSync(name)
  ? resolve(name)
  : join(resolve(import.meta.dirname, '../../..'), 'models', name);
const parsed = parseMachine(readModelFolder(folder));
let faults = parsed.ok ? [] : parsed.faults;
if (parsed.ok) {
  const kernel = await loadSolidKernel();
  faults = checkModel(parsed.value, buildMachine(kernel, parsed.value.machine), kernel);
  const { machine } = parsed.value;
  console.log(
    `${machine.name}: ${Object.keys(machine.kinds).length} kinds, ${machine.parts.length} parts, ${machine.relations.length} relations`,
  );
}
if (faults.length > 0) {
  console.error(printFaults(faults));
  process.exit(2);
}
console.log('No faults.');
