/**
 * How a fastener group leaves: each of its copies backs out along its own axis by its engaged length, then goes on
 * straight or, where that is barred, sideways from where its shank is clear of the holes; and its tool must reach it.
 */
import { cross, dot, normalize, scale, sub, type Vec3 } from '../kernel';
import { type Sighting, sightAlong, strikes } from './sight';
import { toolBlockers } from './tool-reach';
import { type Blocker, directionNumber, DIRECTIONS, type Way, type WayLeg } from './way';
import { type AssemblyBody, partAxis, type World } from './world';

/** Play between a shank's end and the hole that it has left before it turns aside. */
const CLEAR_M = 0.002;

/** Extent of a part along an axis through its place, metres: [below, above], below at most 0 for a shank. */
export function axialExtent_m(world: World, part: number, axis: Vec3): readonly [number, number] {
  const mesh = world.meshes[part];
  if (mesh === null || mesh === undefined) return [0, 0];
  const at = dot(world.machine.parts[part]!.pose.position_m, axis);
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < mesh.positions.length; i += 3) {
    const value =
      axis[0] * mesh.positions[i]! + axis[1] * mesh.positions[i + 1]! + axis[2] * mesh.positions[i + 2]! - at;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}

export function fastenerWays(sighting: Sighting, body: AssemblyBody): readonly Way[] {
  const { world } = sighting;
  const builder = world.machine.kinds[world.machine.parts[body.parts[0]!]!.kind]?.params.builder;
  // A bolt's head and a nut's far face name the way out; a plain pin may go either way.
  const senses = builder === 'bolt' || builder === 'nut' ? [1] : [1, -1];
  return senses.flatMap((sense) => waysOut(sighting, body, sense));
}

function waysOut(sighting: Sighting, body: AssemblyBody, sense: number): Way[] {
  const { world } = sighting;
  const group = body.group!;
  const centre = body.centre_m;
  const straight = new Map<number, number>();
  const aside = new Map<number, number>();
  const straightLegs = new Map<number, readonly WayLeg[]>();
  const asideLegs = new Map<number, readonly WayLeg[]>();
  const copies = body.parts.map((part) => {
    const out = scale(partAxis(world.machine, part), sense);
    const ahead = strikes(sighting, sightAlong(sighting, out, [part], [0, 0, 0]), [part], [0, 0, 0], out);
    return { part, out, ahead };
  });
  const barred = copies.some(({ ahead }) => ahead.size > 0);
  const engaged = group.engaged_m > 0 ? group.engaged_m : null;
  for (const { part, out, ahead } of copies) {
    merge(straight, ahead);
    const unscrew: WayLeg[] =
      engaged === null
        ? []
        : [
            {
              direction: out,
              distance_m: engaged,
              pitch_m: group.thread.class === null ? null : group.thread.pitch_m,
            },
          ];
    straightLegs.set(part, [...unscrew, { direction: out, distance_m: null, pitch_m: null }]);
    if (!barred) continue;
    const clear = Math.max(engaged ?? 0, -axialExtent_m(world, part, out)[0]) + CLEAR_M;
    const before = new Map([...ahead].filter(([, strike]) => strike < clear));
    let best = ahead;
    let legs: readonly WayLeg[] = [...unscrew, { direction: out, distance_m: null, pitch_m: null }];
    if (ahead.size > before.size) {
      const shift = scale(out, clear);
      const place = sub(world.machine.parts[part]!.pose.position_m, centre);
      const sideways = [...perpendicular(out)].sort((p, q) => dot(q, place) - dot(p, place));
      for (const direction of sideways) {
        const sight = sightAlong(sighting, direction, [part], shift);
        const met = strikes(sighting, sight, [part], shift, direction);
        merge(met, before);
        if (met.size >= best.size) continue;
        best = met;
        legs = [
          ...unscrew,
          { direction: out, distance_m: clear - (engaged ?? 0), pitch_m: null },
          { direction, distance_m: null, pitch_m: null },
        ];
      }
    }
    merge(aside, best);
    asideLegs.set(part, legs);
  }
  const outs = copies.map(({ out }) => directionNumber(out));
  const direction = outs.every((d) => d === outs[0]) ? outs[0]! : -1;
  const tools = toolBlockers(sighting, body, sense, new Set((barred ? aside : straight).keys()));
  const ways: Way[] = [];
  const add = (met: ReadonlyMap<number, number>, legs: ReadonlyMap<number, readonly WayLeg[]>): void => {
    for (const tool of tools) {
      const blockers: Blocker[] = [...met].map(([b, strike_m]) => ({ body: b, strike_m, cause: 'path' }));
      for (const b of tool) if (!met.has(b)) blockers.push({ body: b, strike_m: 0, cause: 'tool' });
      const first = legs.get(body.parts[0]!)!;
      const alike = [...legs.values()].every((l) => sameLegs(l, first));
      ways.push({
        body: body.index,
        kind: 'fastener',
        direction,
        legs: first,
        partLegs: alike ? null : Object.fromEntries(legs),
        blockers,
        releases: -1,
      });
    }
  };
  add(straight, straightLegs);
  if (barred && aside.size < straight.size) add(aside, asideLegs);
  return ways;
}

/** Four directions square to `axis`: the machine's own where it runs along one of them. */
function perpendicular(axis: Vec3): readonly Vec3[] {
  if (directionNumber(axis) >= 0) return DIRECTIONS.filter((d) => Math.abs(dot(d, axis)) < 0.5);
  const helper: Vec3 = Math.abs(axis[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0];
  const e1 = normalize(cross(helper, axis));
  const e2 = cross(axis, e1);
  return [e1, scale(e1, -1), e2, scale(e2, -1)];
}

function merge(into: Map<number, number>, from: ReadonlyMap<number, number>): void {
  for (const [body, strike] of from) into.set(body, Math.min(strike, into.get(body) ?? Infinity));
}

const sameLegs = (a: readonly WayLeg[], b: readonly WayLeg[]): boolean =>
  a.length === b.length && a.every((leg, i) => dot(leg.direction, b[i]!.direction) > 0.99999);
