/**
 * Joints between single parts, as the relations and fastener groups of a machine declare them: which two parts are
 * joined, how, and by which fasteners. Where two patterns of one count are joined they go copy by copy (isolator 3 and
 * shim pack 3), else every one with every other.
 */
import type { Machine } from './machine';
import { findUnit, partsOfRef } from './query';

export type PartJointKind = 'weld' | 'bond' | 'thread' | 'spline' | 'seat' | 'bolted';

export interface PartJoint {
  readonly a: string;
  readonly b: string;
  readonly kind: PartJointKind;
  /** Greatest diametral interference of a seat, metres; 0 for everything else and for running fits. */
  readonly interference_m: number;
  /** Fasteners that clamp the two, at least one of which must be there; empty: it holds by itself. */
  readonly fasteners: readonly string[];
}

const known = new WeakMap<Machine, readonly PartJoint[]>();

/**
 * All joints that hold by themselves or by fasteners. A plane seat holds nothing until it is bolted, so it counts only
 * as the bolted joint; loose contact, seals, hoses and fluids are no joints in this sense.
 */
export function partJoints(machine: Machine): readonly PartJoint[] {
  let joints = known.get(machine);
  if (joints === undefined) {
    joints = findJoints(machine);
    known.set(machine, joints);
  }
  return joints;
}

function findJoints(machine: Machine): readonly PartJoint[] {
  const joints: PartJoint[] = [];
  const link = (
    first: string,
    second: string,
    kind: PartJointKind,
    rest: Partial<Pick<PartJoint, 'interference_m' | 'fasteners'>> = {},
  ): void => {
    for (const [a, b] of matched(machine, first, second))
      if (a !== b) joints.push({ a, b, kind, interference_m: 0, fasteners: [], ...rest });
  };
  const seats = new Set<string>();
  const touching = new Set<string>();
  const both = (a: string, b: string): string => [a, b].sort().join(' ');
  for (const relation of machine.relations) {
    switch (relation.type) {
      case 'weld':
      case 'bond': {
        const { parts, type } = relation;
        parts.forEach((a, i) => {
          for (const b of parts.slice(i + 1)) link(a, b, type);
        });
        break;
      }
      case 'thread':
      case 'spline':
        link(relation.male, relation.female, relation.type);
        break;
      case 'seat':
        seats.add(both(relation.inner, relation.outer));
        if (relation.fit !== 'face')
          link(relation.inner, relation.outer, 'seat', { interference_m: relation.interference_m ?? 0 });
        break;
      case 'contact':
        for (const a of relation.parts) for (const b of relation.parts) touching.add(both(a, b));
        break;
      default:
        break;
    }
  }
  for (const unit of machine.units) {
    const { group } = unit;
    if (group === null) continue;
    const { joins } = group;
    joins.forEach((a, i) =>
      joins.slice(i + 1).forEach((b, k) => {
        // Of several clamped parts those meet that sit on each other, or lie next to each other in the pack.
        const meet = joins.length === 2 || seats.has(both(a, b)) || (k === 0 && touching.has(both(a, b)));
        if (meet) link(a, b, 'bolted', { fasteners: unit.partIds });
      }),
    );
  }
  return joints;
}

function matched(machine: Machine, first: string, second: string): [string, string][] {
  const a = partsOfRef(machine, first);
  const b = partsOfRef(machine, second);
  // A weldment's copies are no pattern: its parts are joined with whatever holds on to any of it.
  const pattern = (ref: string): boolean => findUnit(machine, ref) === undefined;
  if (a.length > 1 && a.length === b.length && pattern(first) && pattern(second))
    return a.map((from, i) => [from, b[i]!]);
  return a.flatMap((from) => b.map((to): [string, string] => [from, to]));
}
