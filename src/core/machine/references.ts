/** Checks that everything a machine file names exists, and that no id or item number stands twice. */
import { type Fault, message, printFound } from '../kernel';
import { patternPoses } from './machine';
import type { CompleteMachineFile, GroupEntry, MachineFile, PartEntry, Relation } from './schema';

/** Where an entry of the merged files came from, for faults found after merging. */
export type Locate = (
  section: keyof MachineFile,
  key: string | number,
  ...rest: (string | number)[]
) => Pick<Fault, 'file' | 'line' | 'path'>;

/** The ids that a relation names, with the key each stands under. */
export function relationRefs(relation: Relation): readonly (readonly [string, string])[] {
  switch (relation.type) {
    case 'seat':
      return [
        ['inner', relation.inner],
        ['outer', relation.outer],
      ];
    case 'weld':
    case 'bond':
    case 'contact':
      return relation.parts.map((p, i) => [`parts.${i}`, p] as const);
    case 'thread':
    case 'spline':
      return [
        ['male', relation.male],
        ['female', relation.female],
      ];
    case 'seal':
      return [['seal', relation.seal], ...relation.between.map((p, i) => [`between.${i}`, p] as const)];
    case 'fluid':
      return [
        ...relation.boundary.map((p, i) => [`boundary.${i}`, p] as const),
        ...(relation.drain === null ? [] : [['drain', relation.drain] as const]),
      ];
    case 'hose':
      return [
        ['hose', relation.hose],
        ['port', relation.port],
      ];
    case 'rests':
      return [
        ['part', relation.part],
        ['on', relation.on],
      ];
  }
}

/** Every id by which parts can be named: entries, their copies, groups, weldments. */
function namesOf(file: CompleteMachineFile): {
  names: Set<string>;
  twice: { section: 'parts' | 'groups'; index: number; id: string }[];
} {
  const names = new Set<string>();
  const twice: { section: 'parts' | 'groups'; index: number; id: string }[] = [];
  const take = (section: 'parts' | 'groups', index: number, id: string): void => {
    if (names.has(id)) twice.push({ section, index, id });
    names.add(id);
  };
  (file.parts ?? []).forEach((entry, i) => {
    take('parts', i, entry.id);
    if (entry.pattern)
      patternPoses(entry.pattern).forEach((_, n) => take('parts', i, `${entry.id}-${n + 1}`));
  });
  (file.groups ?? []).forEach((entry, i) => take('groups', i, entry.id));
  for (const relation of file.relations ?? []) if (relation.type === 'weld') names.add(relation.unit);
  return { names, twice };
}

export function checkReferences(file: CompleteMachineFile, locate: Locate): Fault[] {
  const faults: Fault[] = [];
  const { names, twice } = namesOf(file);
  for (const { section, index, id } of twice)
    faults.push({ ...locate(section, index, 'id'), expected: message('fault.unique-id'), found: id });

  const items = new Map<number, string>();
  for (const [id, kind] of Object.entries(file.kinds)) {
    if (file.materials?.[kind.material] === undefined) {
      faults.push({
        ...locate('kinds', id, 'material'),
        expected: message('fault.known-material'),
        found: kind.material,
      });
    }
    const other = items.get(kind.item);
    if (other !== undefined)
      faults.push({
        ...locate('kinds', id, 'item'),
        expected: message('fault.own-item', { other }),
        found: String(kind.item),
      });
    items.set(kind.item, id);
  }

  const checkEntry = (section: 'parts' | 'groups', index: number, entry: PartEntry | GroupEntry): void => {
    if (file.kinds[entry.kind] === undefined) {
      faults.push({
        ...locate(section, index, 'kind'),
        expected: message('fault.known-kind-id'),
        found: entry.kind,
      });
    }
    if (entry.option !== undefined && file.options?.[entry.option] === undefined) {
      faults.push({
        ...locate(section, index, 'option'),
        expected: message('fault.known-option'),
        found: entry.option,
      });
    }
    if (
      section === 'parts' &&
      'pattern' in entry &&
      entry.pattern !== undefined &&
      ('at_m' in entry || 'turn_deg' in entry)
    ) {
      faults.push({
        ...locate(section, index, 'at_m'),
        expected: message('fault.pattern-or-place'),
        found: entry.id,
      });
    }
  };
  (file.parts ?? []).forEach((entry, i) => checkEntry('parts', i, entry));
  (file.groups ?? []).forEach((entry, i) => {
    checkEntry('groups', i, entry);
    entry.joins.forEach((ref, n) => {
      if (!names.has(ref))
        faults.push({
          ...locate('groups', i, 'joins', n),
          expected: message('fault.known-part'),
          found: ref,
        });
    });
  });
  (file.relations ?? []).forEach((relation, i) => {
    for (const [key, ref] of relationRefs(relation)) {
      const path = key.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));
      if (!names.has(ref))
        faults.push({
          ...locate('relations', i, ...path),
          expected: message('fault.known-part'),
          found: printFound(ref),
        });
    }
  });
  for (const list of ['knuckle', 'left_out'] as const)
    (file.articulation?.[list] ?? []).forEach((ref, n) => {
      if (!names.has(ref))
        faults.push({
          ...locate('articulation', '', list, n),
          expected: message('fault.known-part'),
          found: ref,
        });
    });
  const { exciter_part, shot_part, bearings } = file.operation;
  for (const [path, ref] of [
    [['exciter_part'], exciter_part],
    [['shot_part'], shot_part],
    [['bearings', 'left'], bearings.left],
    [['bearings', 'right'], bearings.right],
  ] as const) {
    if (ref !== null && !names.has(ref))
      faults.push({ ...locate('operation', '', ...path), expected: message('fault.known-part'), found: ref });
  }
  return faults;
}
