/** Numbers of the sheet's sources, so that each computed number can point at its own: [3]. */
import type { JobSheet } from '../../../../core/jobs';

export type SourceNumbers = ReadonlyMap<string, number>;

export const sourceNumbers = (sheet: JobSheet): SourceNumbers =>
  new Map(sheet.sources.map(({ source }, i) => [source.key, i + 1]));
