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

/** The YAML files of a folder within a machine's, named by their path in it; an empty list where there is none. */
function yamlFiles(folder: string, within: string): readonly SourceFile[] {
  const place = join(folder, within);
  if (!existsSync(place)) return [];
  return readdirSync(place)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => ({ name: `${within}/${name}`, text: readFileSync(join(place, name), 'utf8') }));
}

/** The job files of a machine, `jobs/<id>.yaml` in its folder. */
export const readJobFiles = (folder: string): readonly SourceFile[] => yamlFiles(folder, 'jobs');

/** The words of its jobs in further languages, `jobs/texts/<language>.yaml`. */
export const readJobTexts = (folder: string): readonly SourceFile[] => yamlFiles(folder, 'jobs/texts');

/** The fault files of a machine, `faults/<topic>.yaml` in its folder. */
export const readFaultFolder = (folder: string): readonly SourceFile[] => yamlFiles(folder, 'faults');
