/** Signal words of cautions, for lists: the table is the machine's (core/machine). */
import { byGravity, signalOf } from '../../../core/machine';

export { KNOWN_CAUTIONS, signalOf } from '../../../core/machine';

/** Gravest first. */
export const bySeverity = (cautions: readonly string[]): readonly string[] =>
  [...new Set(cautions)].sort((a, b) => byGravity(signalOf(a), signalOf(b)));
