/**
 * Which touching surfaces do not count as blocking. Pair by pair, from the declared relations, never by a tolerance
 * for all: a cylinder that two parts share (a seat, a thread, a spline) is left out in a thin band about its radius
 * and only along its own axis; a seal yields to what it seals and comes out of what it sits in.
 */
import type { Vec3 } from '../kernel';
import { sealHost } from './seal-host';
import { partAxis, type World } from './world';

/** A shared cylinder: lines along `axis` within `halfWidth_m` of its surface do not count for this pair. */
export interface SeatBand {
  readonly axis: Vec3;
  readonly through_m: Vec3;
  readonly radius_m: number;
  readonly halfWidth_m: number;
}

export interface PairRule {
  readonly bands: readonly SeatBand[];
  /** Along these axes lines on which the two already overlap do not count (a spline's teeth, a gland's squeeze). */
  readonly slides: readonly Vec3[];
  /** Lines on which the two already overlap do not count in any direction (a lip on its shaft). */
  readonly yields: boolean;
  /** Along these axes the pair never blocks one another (an elastic ring and the groove that it is picked out of). */
  readonly picks: readonly Vec3[];
  /** The pair never blocks one another (a hose and its port). */
  readonly free: boolean;
}

/** Rules by pair of bodies: key is low * bodies.length + high. */
export type PairRules = ReadonlyMap<number, PairRule>;

export const pairKey = (world: World, a: number, b: number): number =>
  a < b ? a * world.bodies.length + b : b * world.bodies.length + a;

/**
 * Half width of a band: the sagitta of a 96-gon of the radius (circles are polygons here), and 0.3 mm for the
 * declared fit and its chamfer.
 */
export const bandHalfWidth_m = (radius_m: number, interference_m: number): number =>
  0.0003 + radius_m * (1 - Math.cos(Math.PI / 48)) + Math.max(0, interference_m);

export function pairRules(world: World): PairRules {
  const rules = new Map<
    number,
    { bands: SeatBand[]; slides: Vec3[]; yields: boolean; picks: Vec3[]; free: boolean }
  >();
  const rule = (
    a: number,
    b: number,
  ): { bands: SeatBand[]; slides: Vec3[]; yields: boolean; picks: Vec3[]; free: boolean } => {
    const key = pairKey(world, a, b);
    const known = rules.get(key) ?? { bands: [], slides: [], yields: false, picks: [], free: false };
    rules.set(key, known);
    return known;
  };
  /** Every pair of a part of `first` and a part of `second` in different bodies. */
  const each = (
    first: readonly number[],
    second: readonly number[],
    use: (partA: number, bodyA: number, bodyB: number) => void,
  ): void => {
    for (const p of first)
      for (const q of second) {
        const a = world.bodyOfPart[p] ?? -1;
        const b = world.bodyOfPart[q] ?? -1;
        if (a >= 0 && b >= 0 && a !== b) use(p, a, b);
      }
  };
  const place = (part: number): Vec3 => world.machine.parts[part]?.pose.position_m ?? [0, 0, 0];
  const along = (part: number, axis: Vec3 | undefined): Vec3 => axis ?? partAxis(world.machine, part);

  for (const relation of world.machine.relations) {
    switch (relation.type) {
      case 'seat':
        each(world.partsOf(relation.inner), world.partsOf(relation.outer), (p, a, b) => {
          const axis = along(p, relation.axis);
          const radius_m = (relation.diameter_m ?? 0) / 2;
          if (radius_m > 0)
            rule(a, b).bands.push({
              axis,
              through_m: place(p),
              radius_m,
              halfWidth_m: bandHalfWidth_m(radius_m, relation.interference_m ?? 0),
            });
          else if (relation.fit !== 'face') rule(a, b).slides.push(axis);
        });
        break;
      case 'thread':
        each(world.partsOf(relation.male), world.partsOf(relation.female), (p, a, b) => {
          const radius_m = relation.diameter_m / 2;
          const axis = partAxis(world.machine, p);
          const halfWidth_m = bandHalfWidth_m(radius_m, 0);
          rule(a, b).bands.push({ axis, through_m: place(p), radius_m, halfWidth_m });
          rule(a, b).slides.push(axis);
        });
        break;
      case 'spline':
        each(world.partsOf(relation.male), world.partsOf(relation.female), (p, a, b) =>
          rule(a, b).slides.push(partAxis(world.machine, p)),
        );
        break;
      case 'seal':
        for (const other of new Set([sealHost(world.machine, relation), ...relation.between]))
          each(world.partsOf(relation.seal), world.partsOf(other), (p, a, b) => {
            rule(a, b).yields = true;
            if (other === sealHost(world.machine, relation))
              rule(a, b).picks.push(partAxis(world.machine, p));
          });
        break;
      case 'hose':
        each(world.partsOf(relation.hose), world.partsOf(relation.port), (_, a, b) => {
          rule(a, b).free = true;
        });
        break;
      case 'contact':
        for (const id of relation.parts)
          for (const other of relation.parts)
            if (id < other)
              each(world.partsOf(id), world.partsOf(other), (p, a, b) =>
                rule(a, b).slides.push(along(p, relation.axis)),
              );
        break;
      default:
        break;
    }
  }
  for (const body of world.bodies) {
    const { group } = body;
    if (group === null) continue;
    for (const joined of group.joins.flatMap((id) => world.bodiesOf(id))) {
      if (joined === body.index) continue;
      for (const part of body.parts) {
        const radius_m = group.thread.diameter_m / 2;
        const axis = partAxis(world.machine, part);
        const halfWidth_m = bandHalfWidth_m(radius_m, 0);
        rule(body.index, joined).bands.push({ axis, through_m: place(part), radius_m, halfWidth_m });
        rule(body.index, joined).slides.push(axis);
      }
    }
  }
  return rules;
}
