/** What the machine says about one part: what it touches and how, its fastener, its fits. Pure. */
import { findPart, findUnit, type GroupEntry, type Machine, type Relation } from '../../../core/machine';

/** How a part touches another; `ref` names the other as the machine file does. */
export interface Touch {
  readonly how:
    | 'sits-in'
    | 'carries'
    | 'welded'
    | 'bonded'
    | 'screwed'
    | 'splined'
    | 'seals'
    | 'sealed-by'
    | 'holds-fluid'
    | 'hose'
    | 'rests-on'
    | 'bears'
    | 'touches'
    | 'clamps'
    | 'clamped-by';
  readonly ref: string;
  /** Words of the relation: fit, fluid, thread. */
  readonly detail?: string;
}

export interface SeatFact {
  readonly fit: string;
  readonly diameter_m: number | null;
  readonly interference_m: number | null;
  readonly with: string;
}

export interface PartFacts {
  readonly touches: readonly Touch[];
  readonly seats: readonly SeatFact[];
  readonly group: GroupEntry | null;
}

/** All names under which relations may speak of a part: its own id, its unit's, its entries' (a pattern's). */
function namesOf(machine: Machine, partId: string): ReadonlySet<string> {
  const part = findPart(machine, partId);
  const unit = part === undefined ? undefined : findUnit(machine, part.unit);
  const pattern = partId.replace(/-\d+$/, '');
  const own = unit?.entries.filter(
    (entry) => entry.id === partId || entry.id === pattern || unit.group !== null,
  );
  return new Set([partId, ...(own ?? []).map((entry) => entry.id)]);
}

function touchesOf(relation: Relation, names: ReadonlySet<string>): readonly Touch[] {
  const is = (ref: string): boolean => names.has(ref);
  const others = (refs: readonly string[], how: Touch['how'], detail?: string): readonly Touch[] =>
    refs.some(is)
      ? refs
          .filter((ref) => !is(ref))
          .map((ref) => ({ how, ref, ...(detail === undefined ? {} : { detail }) }))
      : [];
  switch (relation.type) {
    case 'seat':
      if (is(relation.inner)) return [{ how: 'sits-in', ref: relation.outer, detail: relation.fit }];
      return is(relation.outer) ? [{ how: 'carries', ref: relation.inner, detail: relation.fit }] : [];
    case 'weld':
      return others(relation.parts, 'welded');
    case 'bond':
      return others(relation.parts, 'bonded');
    case 'thread':
      return others([relation.male, relation.female], 'screwed');
    case 'spline':
      return others([relation.male, relation.female], 'splined');
    case 'seal':
      if (is(relation.seal)) return relation.between.map((ref) => ({ how: 'seals', ref }));
      return relation.between.some(is) ? [{ how: 'sealed-by', ref: relation.seal }] : [];
    case 'fluid':
      return relation.boundary.some(is) ? [{ how: 'holds-fluid', ref: relation.fluid }] : [];
    case 'hose':
      return others([relation.hose, relation.port], 'hose');
    case 'rests':
      if (is(relation.part)) return [{ how: 'rests-on', ref: relation.on }];
      return is(relation.on) ? [{ how: 'bears', ref: relation.part }] : [];
    case 'contact':
      return others(relation.parts, 'touches');
  }
}

/** Facts of a part; each other part is named once a way of touching. */
export function partFacts(machine: Machine, partId: string): PartFacts {
  const names = namesOf(machine, partId);
  const part = findPart(machine, partId);
  const group = part === undefined ? null : (findUnit(machine, part.unit)?.group ?? null);
  const touches: Touch[] = [];
  const seen = new Set<string>();
  const push = (touch: Touch): void => {
    const key = `${touch.how} ${touch.ref}`;
    if (!seen.has(key)) touches.push(touch);
    seen.add(key);
  };
  if (group !== null) for (const ref of group.joins) push({ how: 'clamps', ref });
  for (const relation of machine.relations) for (const touch of touchesOf(relation, names)) push(touch);
  for (const unit of machine.units)
    if (unit.group !== null && group !== unit.group && unit.group.joins.some((ref) => names.has(ref)))
      push({ how: 'clamped-by', ref: unit.id });
  const seats = machine.relations.flatMap((relation) =>
    relation.type === 'seat' && (names.has(relation.inner) || names.has(relation.outer))
      ? [
          {
            fit: relation.fit,
            diameter_m: relation.diameter_m ?? null,
            interference_m: relation.interference_m ?? null,
            with: names.has(relation.inner) ? relation.outer : relation.inner,
          },
        ]
      : [],
  );
  return { touches, seats, group };
}
