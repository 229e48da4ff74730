/**
 * What the joints add that shapes cannot say: threads first, tight fits together until pressed, hoses off, fluid
 * drained, seals carried by the part they sit in.
 */
import { sealHost } from './seal-host';
import type { World } from './world';

export type JointKind = 'clamped' | 'holds' | 'thread' | 'tight' | 'hose' | 'drain' | 'carries';

/** `from` cannot move unless `to` is gone, or moves along with it (where `along` allows that). */
export interface Joint {
  readonly from: number;
  readonly to: number;
  readonly kind: JointKind;
  /** Whether moving both together satisfies the joint. */
  readonly along: boolean;
}

export function findJoints(world: World): readonly Joint[] {
  const joints: Joint[] = [];
  const seen = new Set<string>();
  const link = (from: number, to: number, kind: JointKind, along: boolean): void => {
    const key = `${from} ${to} ${kind}`;
    if (from < 0 || to < 0 || from === to || seen.has(key)) return;
    seen.add(key);
    joints.push({ from, to, kind, along });
  };
  const pairs = (first: string, second: string, use: (a: number, b: number) => void): void => {
    for (const [a, b] of matched(world, first, second)) use(a, b);
  };
  for (const body of world.bodies)
    for (const joined of body.group?.joins.flatMap((id) => world.bodiesOf(id)) ?? []) {
      link(joined, body.index, 'clamped', true);
      link(body.index, joined, 'holds', true);
    }
  for (const relation of world.machine.relations) {
    switch (relation.type) {
      case 'thread':
        pairs(relation.male, relation.female, (a, b) => {
          link(a, b, 'thread', true);
          link(b, a, 'thread', true);
        });
        break;
      case 'seat':
        if ((relation.interference_m ?? 0) > 0)
          pairs(relation.inner, relation.outer, (a, b) => {
            // A lip or an O-ring gives way; what it sits in carries it along.
            if (world.bodies[a]?.seal === true || world.bodies[b]?.seal === true) return;
            link(a, b, 'tight', true);
            link(b, a, 'tight', true);
          });
        break;
      case 'hose':
        pairs(relation.port, relation.hose, (a, b) => link(a, b, 'hose', false));
        break;
      case 'seal':
        pairs(sealHost(world.machine, relation), relation.seal, (a, b) => link(a, b, 'carries', true));
        break;
      case 'fluid':
        if (relation.drain !== null)
          for (const id of relation.boundary) pairs(id, relation.drain, (a, b) => link(a, b, 'drain', false));
        break;
      default:
        break;
    }
  }
  return joints;
}

/**
 * Bodies that two names mean, as pairs: copy by copy where both are patterns of one count (isolator 3 and shim pack
 * 3), else every one with every other.
 */
function matched(world: World, first: string, second: string): [number, number][] {
  const a = world.bodiesOf(first);
  const b = world.bodiesOf(second);
  if (a.length > 1 && a.length === b.length) return a.map((from, i) => [from, b[i]!]);
  return a.flatMap((from) => b.map((to): [number, number] => [from, to]));
}

/** The member of each threaded pair of parts that is turned: the lighter one, with the pitch and engaged length. */
export interface ThreadTurn {
  readonly body: number;
  readonly partner: number;
  readonly part: number;
  readonly pitch_m: number;
  readonly engaged_m: number;
}

export function threadTurns(world: World): readonly ThreadTurn[] {
  return world.machine.relations.flatMap((relation) => {
    if (relation.type !== 'thread') return [];
    return matched(world, relation.male, relation.female).flatMap(([male, female]): ThreadTurn[] => {
      const a = world.bodies[male];
      const b = world.bodies[female];
      if (a === undefined || b === undefined || a === b) return [];
      const [turned, partner] = a.fixed || (!b.fixed && b.mass_kg <= a.mass_kg) ? [b, a] : [a, b];
      const part = turned.parts[0];
      if (part === undefined) return [];
      return [
        {
          body: turned.index,
          partner: partner.index,
          part,
          pitch_m: relation.pitch_m,
          engaged_m: relation.engaged_m,
        },
      ];
    });
  });
}
