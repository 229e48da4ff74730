/** What every study starts from: the machine at hand, its masses about the isolators, and what its exciter does. */
import { kindSolids, type MachineDocument } from '../../../core/document';
import { type ExciterStudy, rollerBasis, type RollerBasis } from '../../../core/studies';
import { selectExciterStudy, type SpinDirection } from '../../../store';
import { useApp } from '../../bind';

export interface StudyBase {
  readonly document: MachineDocument;
  readonly basis: RollerBasis;
  readonly exciter: ExciterStudy | null;
}

/** Null while no machine is there, or where it has no isolators to study. */
export function useStudyBase(): StudyBase | null {
  const document = useApp((s) => s.document);
  const exciter = useApp(selectExciterStudy);
  if (document === null) return null;
  const basis = rollerBasis(document.machine, kindSolids(document), document.masses);
  return basis === null ? null : { document, basis, exciter };
}

/** Unbalance of a direction; null where the exciter's study does not know it. */
export const unbalanceOf = (base: StudyBase, direction: SpinDirection): number | null =>
  base.exciter?.[direction].value?.U_kgm ?? null;

export const frequencyOf = (base: StudyBase, direction: SpinDirection): number => {
  const { operation } = base.document.machine;
  const own = direction === 'high' ? operation.frequency_high_Hz : operation.frequency_low_Hz;
  return base.exciter?.[direction].frequency_Hz ?? own;
};
