/** Rows of the parts list: families, under them kinds, under an open kind its single parts. Pure. */
import type { MachineDocument } from '../../../core/document';
import { isPresent } from '../../../core/machine';
import { folded } from '../common/names';

export interface FamilyRow {
  readonly level: 1;
  readonly key: string;
  readonly family: string;
  readonly open: boolean;
  readonly partIds: readonly string[];
  readonly kinds: number;
  readonly mass_kg: number;
}

export interface KindRow {
  readonly level: 2;
  readonly key: string;
  readonly family: string;
  readonly kind: string;
  readonly item: number;
  readonly open: boolean;
  readonly partIds: readonly string[];
  readonly each_kg: number;
  readonly mass_kg: number;
}

export interface PartRow {
  readonly level: 3;
  readonly key: string;
  readonly kind: string;
  readonly partId: string;
  readonly partIds: readonly string[];
  readonly mass_kg: number;
}

export type Row = FamilyRow | KindRow | PartRow;

export interface RowQuery {
  readonly showContext: boolean;
  readonly optionsOn: Readonly<Record<string, boolean>>;
  readonly search: string;
  readonly closedFamilies: ReadonlySet<string>;
  readonly openKinds: ReadonlySet<string>;
  readonly nameOf: (kind: string) => string;
}

/** Order in which the families are listed. */
export const FAMILIES = [
  'drum',
  'exciter',
  'vibration-side',
  'drive-side',
  'oil',
  'frame',
  'scrapers',
  'pads',
  'fasteners',
  'rear',
] as const;

export interface RowList {
  readonly rows: readonly Row[];
  readonly kinds: number;
  readonly parts: number;
  readonly mass_kg: number;
}

/** Whether every word of the search is found in the name, the item number, the kind or a part's id. */
function matches(
  search: string,
  name: string,
  item: number,
  kind: string,
  partIds: readonly string[],
): boolean {
  const words = folded(search).split(/\s+/).filter(Boolean);
  if (words.length === 0) return true;
  const text = folded(`${name} ${item} ${kind} ${partIds.join(' ')}`);
  return words.every((word) =>
    /^\d+$/.test(word) ? new RegExp(`\\b0*${word}\\b`).test(text) : text.includes(word),
  );
}

export function partRows(document: MachineDocument, query: RowQuery): RowList {
  const { machine, masses } = document;
  const byKind = new Map<string, string[]>();
  for (const part of machine.parts) {
    if (!isPresent(part, query.optionsOn, query.showContext)) continue;
    const known = byKind.get(part.kind);
    if (known === undefined) byKind.set(part.kind, [part.id]);
    else known.push(part.id);
  }
  const searching = query.search.trim() !== '';
  const rows: Row[] = [];
  let kinds = 0;
  let parts = 0;
  let mass_kg = 0;
  for (const family of FAMILIES) {
    const inside = [...byKind]
      .filter(([kind]) => machine.kinds[kind]!.family === family)
      .filter(([kind, ids]) =>
        matches(query.search, query.nameOf(kind), machine.kinds[kind]!.item, kind, ids),
      )
      .sort(([a], [b]) => machine.kinds[a]!.item - machine.kinds[b]!.item);
    if (inside.length === 0) continue;
    const massOf = (kind: string): number => masses[kind]?.mass_kg ?? 0;
    const familyMass = inside.reduce((sum, [kind, ids]) => sum + massOf(kind) * ids.length, 0);
    const open = searching || !query.closedFamilies.has(family);
    rows.push({
      level: 1,
      key: `family:${family}`,
      family,
      open,
      partIds: inside.flatMap(([, ids]) => ids),
      kinds: inside.length,
      mass_kg: familyMass,
    });
    kinds += inside.length;
    mass_kg += familyMass;
    for (const [kind, ids] of inside) {
      parts += ids.length;
      if (!open) continue;
      const kindOpen = ids.length > 1 && query.openKinds.has(kind);
      rows.push({
        level: 2,
        key: `kind:${kind}`,
        family,
        kind,
        item: machine.kinds[kind]!.item,
        open: kindOpen,
        partIds: ids,
        each_kg: massOf(kind),
        mass_kg: massOf(kind) * ids.length,
      });
      if (!kindOpen) continue;
      for (const partId of ids) {
        rows.push({
          level: 3,
          key: `part:${partId}`,
          kind,
          partId,
          partIds: [partId],
          mass_kg: massOf(kind),
        });
      }
    }
  }
  return { rows, kinds, parts, mass_kg };
}
