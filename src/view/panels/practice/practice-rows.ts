/** Rows of the list that equals the stage: what is still to be tried, those alike in one row, by where they are. */
import { openBodies, placeOf, type PracticeBench, type PracticeState } from '../../../core/assembly';
import type { Machine } from '../../../core/machine';
import type { Speech } from '../../bind';
import { folded } from '../common/names';
import { bodyName, itemOf } from './practice-words';

export interface PracticeRow {
  readonly key: string;
  readonly unitIds: readonly string[];
  readonly name: string;
  readonly item: number | null;
}

export interface RowGroup {
  /** Null: on the machine; 'laid': by itself, off; else the body that it is joined to on the bench. */
  readonly place: string | null;
  readonly rows: readonly PracticeRow[];
}

export function rowGroups(
  speech: Speech,
  machine: Machine,
  bench: PracticeBench,
  state: PracticeState,
  search: string,
): readonly RowGroup[] {
  const places = new Map<string | null, Map<string, string[]>>();
  const open = openBodies(bench, state);
  const at = open.map((u) => placeOf(bench, state, u));
  const shared = new Map<string, number>();
  for (const place of at) if (place !== null) shared.set(place, (shared.get(place) ?? 0) + 1);
  open.forEach((u, i) => {
    const own = at[i]!;
    const place = own !== null && shared.get(own) === 1 ? 'laid' : own;
    const rows = places.get(place) ?? new Map<string, string[]>();
    places.set(place, rows);
    const entry = bench.entryOf[u]!;
    rows.set(entry, [...(rows.get(entry) ?? []), bench.graph.bodies[u]!.id]);
  });
  const wanted = folded(search.trim());
  return [...places]
    .map(([place, rows]) => ({
      place,
      rows: [...rows]
        .map(([entry, unitIds]): PracticeRow => {
          const name = bodyName(speech, machine, bench, unitIds[0]!);
          return { key: `${place ?? ''}/${entry}`, unitIds, name, item: itemOf(machine, bench, unitIds[0]!) };
        })
        .filter((row) => folded(row.name).includes(wanted) || String(row.item) === wanted)
        .sort((a, b) => (a.item ?? 0) - (b.item ?? 0)),
    }))
    .filter(({ rows }) => rows.length > 0)
    .sort((a, b) => Number(a.place !== null) - Number(b.place !== null));
}
