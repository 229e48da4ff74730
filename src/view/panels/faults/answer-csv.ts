/** Readings, ranking and gains as one table for a spreadsheet: SI, one head line. */
import type { Reading } from '../../../core/faults';
import type { FaultAnswer } from '../../../store';
import { csvText } from '../common/csv';

const HEAD = ['what', 'name', 'value_SI', 'error_SI', 'probability', 'severity', 'bits', 'minutes'] as const;

export function answerCsv(answer: FaultAnswer, readings: readonly Reading[]): string {
  return csvText(HEAD, [
    ...readings.map(
      (r) => ['reading', r.measurement, r.value, r.sd ?? null, null, null, null, null] as const,
    ),
    ...answer.ranking.map(
      (r) =>
        [
          'answer',
          r.ids.join(' / '),
          null,
          null,
          r.probability,
          r.severity?.mean ?? null,
          null,
          null,
        ] as const,
    ),
    ...answer.next.map((g) => ['next', g.measurement, null, null, null, null, g.bits, g.minutes] as const),
  ]);
}
