/** The settled fit that may come with a machine's files: found among them by its name, and read with them. */
import { fail, message, ok, type Result } from '../kernel';
import { parseMachine, readYaml, type SourcedMachine, type SourceFile } from '../machine';
import { type SettledFit, settledFitSchema } from '../shot';

export type { SettledFit };

/** `fit.yaml`, also with a folder or a machine's name before it. */
export const isFitFile = (name: string): boolean => /(^|[-./\\])fit\.yaml$/.test(name);

/** Reads a fit; every fault with its file, line and path. */
export function parseFit(file: SourceFile): Result<SettledFit> {
  const read = readYaml(file, settledFitSchema);
  return read.ok ? ok(read.value.data) : read;
}

/** A machine as its files tell it, with the fit that lies among them; undefined where there is none. */
export interface ModelSource {
  readonly source: SourcedMachine;
  readonly fit: SettledFit | undefined;
}

/** Reads all files of a model, the fit among them; all faults of all files at once. */
export function parseModel(files: readonly SourceFile[]): Result<ModelSource> {
  const [first, ...more] = files.filter((file) => isFitFile(file.name));
  const machine = parseMachine(files.filter((file) => !isFitFile(file.name)));
  const fit = first === undefined ? ok(undefined) : parseFit(first);
  const faults = [
    ...(machine.ok ? [] : machine.faults),
    ...(fit.ok ? [] : fit.faults),
    ...more.map(({ name }) => ({
      file: name,
      path: '(whole file)',
      expected: message('fault.one-fit'),
      found: name,
    })),
  ];
  return machine.ok && fit.ok && faults.length === 0
    ? ok({ source: machine.value, fit: fit.value })
    : fail(faults);
}
