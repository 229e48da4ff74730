/** The study of the machine on the stage with what is set on the panel; null where the machine has no shot exciter. */
import type { ExciterStudy } from '../../../core/studies';
import { selectExciterStudy } from '../../../store';
import { useApp } from '../../bind';

export const useExciterStudy = (): ExciterStudy | null => useApp(selectExciterStudy);
