/** What the calculations of whole-machine studies start from: a machine by name, its masses, what its exciter does. */
import { fail, message, ok, printFound, type Result } from '../../core/kernel';
import {
  type ExciterReading,
  exciterStudy,
  OWN_CHOICE,
  rollerBasis,
  type RollerBasis,
} from '../../core/studies';
import { choice, text } from './fields';
import { loadFit, loadModel, type LoadedModel } from './model';

export interface StudyModel extends LoadedModel {
  readonly basis: RollerBasis;
  /** The exciter with the machine's own settings; a direction is null where nothing is known of it. */
  readonly exciter: Readonly<Record<'high' | 'low', ExciterReading | null>>;
  readonly frequency_Hz: Readonly<Record<'high' | 'low', number>>;
}

/** Inputs that every such calculation has. */
export const modelInput = { model: text() };
export const directionInput = { direction: choice('high', 'low') };

/** Models already made ready by this process. */
const ready = new Map<string, Result<StudyModel>>();

/** Loads; refused where the machine has no isolators to study. */
export async function loadStudyModel(name: string): Promise<Result<StudyModel>> {
  const known = ready.get(name) ?? (await makeReady(name));
  ready.set(name, known);
  return known;
}

async function makeReady(name: string): Promise<Result<StudyModel>> {
  const loaded = await loadModel(name);
  if (!loaded.ok) return loaded;
  const { machine, solids, masses } = loaded.value;
  const basis = rollerBasis(machine, solids, masses);
  if (basis === null)
    return fail([{ path: 'model', expected: message('calc.fault.no-isolators'), found: printFound(name) }]);
  const fit = loadFit(name);
  if (!fit.ok) return fit;
  const study = exciterStudy(machine, solids, masses, OWN_CHOICE, fit.value);
  const { frequency_high_Hz, frequency_low_Hz } = machine.operation;
  return ok({
    ...loaded.value,
    basis,
    exciter: { high: study?.high.value ?? null, low: study?.low.value ?? null },
    frequency_Hz: { high: frequency_high_Hz, low: frequency_low_Hz },
  });
}

/** The fault of a direction of which the exciter's study knows nothing. */
export const unknownUnbalance = (direction: string) =>
  fail([
    { path: 'direction', expected: message('calc.fault.known-unbalance'), found: printFound(direction) },
  ]);

export const outsideFormulas = (path: string) =>
  fail([{ path, expected: message('calc.fault.within-formulas'), found: '(outside)' }]);
