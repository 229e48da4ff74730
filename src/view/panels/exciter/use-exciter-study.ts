/** The study of the machine on the stage with what is set on the panel; null where the machine has no shot exciter. */
import type { ExciterStudyShape } from './shape';

export function useExciterStudy(): ExciterStudyShape | null {
  return null;
}
