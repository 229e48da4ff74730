/** The files of a model folder, for Node (build, command line). */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SourceFile } from '../../core/machine';

/** Every .yaml file that stands directly in the folder of a machine, machine.yaml first. */
export function readModelFolder(folder: string): readonly SourceFile[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.yaml') && name !== 'fit.yaml')
    .sort((a, b) => Number(b === 'machine.yaml') - Number(a === 'machine.yaml') || a.localeCompare(b))
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
}
