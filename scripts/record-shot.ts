/**
 * Makes the recordings of the loose shot that ship with a machine, one a direction, from the machine's own data:
 *   npx tsx scripts/record-shot.ts [models/alder-one]
 * Writes recordings/low.bin and recordings/high.bin into the model's folder. The same seed gives the same bytes.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { parseMachine } from '../src/core/machine';
import { type Direction, openRecording, recordShot } from '../src/core/shot';
import { readModelFolder } from '../src/edge/content/model-files';
import { printFaults } from '../src/edge/cli/print-faults';
import { ownRun } from './lib/own-run';

const folder = resolve(process.argv[2] ?? join(import.meta.dirname, '..', 'models', 'alder-one'));
const parsed = parseMachine(readModelFolder(folder));
if (!parsed.ok) {
  console.error(printFaults(parsed.faults));
  process.exit(1);
}
mkdirSync(join(folder, 'recordings'), { recursive: true });
for (const direction of ['low', 'high'] satisfies Direction[]) {
  const run = recordShot(ownRun(parsed.value.machine, direction));
  let step = run.next();
  while (step.done !== true) step = run.next();
  const opened = openRecording(step.value);
  if (!opened.ok) throw new Error(printFaults(opened.faults));
  writeFileSync(join(folder, 'recordings', `${direction}.bin`), new Uint8Array(step.value));
  const { readings, count } = opened.value;
  const last = readings[readings.length - 1]!;
  const size = (step.value.byteLength / 1e3).toFixed(0);
  const share = last.captured_below_spill.toFixed(3);
  console.log(
    `${basename(folder)} ${direction}: ${count} balls, ${readings.length} frames, ${size} kB, ` +
      `captured below the spill radius ${share}, U of the shot ${last.shot_U_kgm.toFixed(2)} kg m`,
  );
}
