/**
 * Machine files in, a machine or all their faults out. Each file is checked against the schema by itself, then the
 * files are merged and every reference is checked. A fault names file, line and path.
 */
import { type Fault, fail, message, ok, printFound, type Result } from '../kernel';
import { expandMachine, type Machine } from './machine';
import { type CompleteMachineFile, type MachineFile, machineFileSchema, SCHEMA_VERSION } from './schema';
import { placeIn, printPath, type ReadYaml, readYaml, type SourceFile } from './read-yaml';
import { checkReferences, type Locate } from './references';

type Read = ReadYaml<MachineFile>;

const LISTS = ['parts', 'groups', 'relations'] as const;
const MAPS = ['sources', 'materials', 'kinds', 'options', 'set_names'] as const;
const SINGLES = ['machine', 'operation', 'isolation', 'drive', 'articulation'] as const;

/** Joins read files; a map's key or a single section that stands twice is a fault. */
function merge(reads: readonly Read[], faults: Fault[]): { file: MachineFile; locate: Locate } {
  const out: Record<string, unknown> = { schema_version: SCHEMA_VERSION };
  const origin = new Map<string, { read: Read; path: PropertyKey[] }>();
  for (const read of reads) {
    for (const section of LISTS) {
      const list = (out[section] ??= []) as unknown[];
      (read.data[section] ?? []).forEach((entry, i) => {
        origin.set(`${section}/${list.length}`, { read, path: [section, i] });
        list.push(entry);
      });
    }
    for (const section of MAPS) {
      const map = (out[section] ??= {}) as Record<string, unknown>;
      for (const [key, value] of Object.entries(read.data[section] ?? {})) {
        if (key in map)
          faults.push({ ...placeIn(read, [section, key]), expected: message('fault.once'), found: key });
        else origin.set(`${section}/${key}`, { read, path: [section, key] });
        map[key] = value;
      }
    }
    for (const section of SINGLES) {
      const value = read.data[section];
      if (value === undefined) continue;
      if (out[section] !== undefined)
        faults.push({ ...placeIn(read, [section]), expected: message('fault.once'), found: section });
      else origin.set(`${section}/`, { read, path: [section] });
      out[section] = value;
    }
  }
  const locate: Locate = (section, key, ...rest) => {
    const home = origin.get(`${section}/${key}`);
    return home === undefined
      ? { path: printPath([section, key, ...rest]) }
      : placeIn(home.read, [...home.path, ...rest]);
  };
  return { file: out as MachineFile, locate };
}

/** A machine together with the way back to its files, for faults that only show once solids are built. */
export interface SourcedMachine {
  readonly machine: Machine;
  /** The files as one, validated: what `yaml` writes of it is a machine file again. */
  readonly file: CompleteMachineFile;
  /** File, line and path of an entry by its id (of `parts`, `groups`, `kinds`) or its number (of `relations`). */
  readonly where: (
    section: 'parts' | 'groups' | 'kinds' | 'relations',
    id: string | number,
    ...rest: (string | number)[]
  ) => Pick<Fault, 'file' | 'line' | 'path'>;
}

/** Reads the files of one machine; all faults at once, each with its file, line and path. */
export function parseMachine(files: readonly SourceFile[]): Result<SourcedMachine> {
  const reads: Read[] = [];
  const faults: Fault[] = [];
  for (const file of files) {
    const read = readYaml(file, machineFileSchema);
    if (read.ok) reads.push(read.value);
    else faults.push(...read.faults);
  }
  if (faults.length > 0) return fail(faults);
  const { file, locate } = merge(reads, faults);
  for (const section of ['machine', 'operation', 'kinds', 'parts'] as const) {
    const value = file[section];
    if (value === undefined || Object.keys(value).length === 0) {
      faults.push({
        file: files.map((f) => f.name).join(', '),
        path: section,
        expected: message('fault.section'),
        found: printFound(undefined),
      });
    }
  }
  if (faults.length > 0) return fail(faults);
  const complete = file as CompleteMachineFile;
  faults.push(...checkReferences(complete, locate));
  if (faults.length > 0) return fail(faults);
  const numberOf = (section: 'parts' | 'groups', id: string): number =>
    (complete[section] ?? []).findIndex((entry) => entry.id === id);
  const where: SourcedMachine['where'] = (section, id, ...rest) =>
    locate(
      section,
      typeof id === 'string' && section !== 'kinds' && section !== 'relations' ? numberOf(section, id) : id,
      ...rest,
    );
  return ok({ machine: expandMachine(complete), file: complete, where });
}
