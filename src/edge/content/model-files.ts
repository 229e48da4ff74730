/** The files of a model folder, for Node (build, command line). */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SourceFile } from '../../core/machine';
import { isFitFile } from '../../core/studies';

/** The fit of the settled shot that lies with a machine; an empty list where there is none. */
export function readFitFiles(folder: string): readonly SourceFile[] {
  return readdirSync(folder)
    .filter(isFitFile)
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
}

/** Every .yaml file of a machine that stands directly in its folder, machine.yaml first; its fit is not among them. */
export function readModelFolder(folder: string): readonly SourceFile[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.yaml') && !isFitFile(name))
    .sort((a, b) => Number(b === 'machine.yaml') - Number(a === 'machine.yaml') || a.localeCompare(b))
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
}

/** The job files of a machine, `jobs/<id>.yaml` in its folder; an empty list where there are none. */
export function readJobFiles(folder: string): readonly SourceFile[] {
  const place = join(folder, 'jobs');
  if (!existsSync(place)) return [];
  return readdirSync(place)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => ({ name: `jobs/${name}`, text: readFileSync(join(place, name), 'utf8') }));
}

/** The fault files of a machine, `faults/<topic>.yaml` in its folder; an empty list where there are none. */
export function readFaultFolder(folder: string): readonly SourceFile[] {
  const place = join(folder, 'faults');
  if (!existsSync(place)) return [];
  return readdirSync(place)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => ({ name: `faults/${name}`, text: readFileSync(join(place, name), 'utf8') }));
}
