/** What follows from the state. Pure and memoised: the same state gives the same object, so readers do not redraw. */
import { exciterStudy, type ExciterStudy } from '../core/studies';
import { kindSolids, type MachineDocument } from '../core/document';
import type { AppState, ExciterSettings } from './state';

let lastStudy:
  { document: MachineDocument; exciter: ExciterSettings; study: ExciterStudy | null } | undefined;

/** The exciter's study for what is set; null without a machine or where it has no shot exciter. */
export function selectExciterStudy({ document, exciter }: AppState): ExciterStudy | null {
  if (document === null) return null;
  if (lastStudy?.document !== document || !sameInputs(lastStudy.exciter, exciter)) {
    lastStudy = {
      document,
      exciter,
      study: exciterStudy(document.machine, kindSolids(document), document.masses, exciter, document.fit),
    };
  }
  return lastStudy.study;
}

/** The spin direction changes which half of the study is looked at, not the study. */
const sameInputs = (a: ExciterSettings, b: ExciterSettings): boolean =>
  a.frequencyHigh_Hz === b.frequencyHigh_Hz &&
  a.frequencyLow_Hz === b.frequencyLow_Hz &&
  a.fill === b.fill &&
  a.bafflePsi_deg === b.bafflePsi_deg &&
  a.baffleOn === b.baffleOn;
