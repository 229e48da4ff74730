/** Named sizes of part kinds, as their builders have them: `part.<kind>.bore_m`, `part.<kind>.chamber.radius_m`. */
import type { Machine } from '../../machine';
import { flatten, namedNumber, type NamedValue } from './quantity-of';

/** Numbers of every kind's builder; of parts turned about the axis also the greatest diameter and the length over all. */
export function* sizeValues({ kinds }: Machine): Generator<readonly [string, NamedValue]> {
  for (const [id, { params }] of Object.entries(kinds)) {
    yield* flatten(`part.${id}`, params);
    if (params.builder !== 'turned' && params.builder !== 'coupling-shaft') continue;
    const outer = params.stations.map((s) => Math.max(s.outer_m, s.outer_end_m ?? 0));
    const ends = params.stations.flatMap((s) => [s.from_x_m, s.to_x_m]);
    if (params.builder === 'coupling-shaft') ends.push(params.female.from_x_m, params.female.to_x_m);
    yield [`part.${id}.outside_m`, namedNumber('_m', 2 * Math.max(...outer))];
    yield [`part.${id}.over_all_m`, namedNumber('_m', Math.max(...ends) - Math.min(...ends))];
  }
}
