/**
 * Whether a tool reaches a fastener. Three ways, head by head the first that is free will do: a straight free
 * cylinder for the socket (and its extension) from the head to the open; a ratchet right on the head with a swing of
 * 30 degrees for its handle; an open-ended spanner on the head with the same swing. For the last two the hand must come to the handle's
 * end from some side. Sizes by wrench size (sizes.ts).
 */
import { add, cross, dot, quatFromAxisAngle, rotate, scale, type Vec3 } from '../kernel';
import { type Sight, sightAlong, type Sighting } from './sight';
import { RATCHET_HANDLE_M, RATCHET_HEIGHT_M, socketOutside_m, spannerLength_m } from './sizes';
import { bodiesInCylinder, eachInSlab } from './slab';
import { DIRECTIONS } from './way';
import { type AssemblyBody, partAxis } from './world';

/** Longer than any machine here: 'to the open'. */
const FAR_M = 20;
/** Swing of a handle from one flat to the next by turning the tool over: 30 degrees; places where it may begin. */
const STARTS = 48;
const START_STEP = (2 * Math.PI) / STARTS;
const SWING_STEPS = 4;
const SWING = SWING_STEPS * START_STEP;
const COS = Array.from({ length: STARTS }, (_, o) => Math.cos(o * START_STEP));
const SIN = Array.from({ length: STARTS }, (_, o) => Math.sin(o * START_STEP));
/** Radius that a hand and forearm need. */
const HAND_M = 0.045;
/** Of the swings that least bars, so many are asked whether a hand comes to them. */
const HANDS_TRIED = 8;
/** Distance between lines that look for what bars a handle, narrower than any handle. */
const SWING_STEP_M = 0.008;

interface Head {
  readonly sight: Sight;
  readonly out: Vec3;
  readonly at_m: Vec3;
  readonly height_m: number;
}

/**
 * Sets of bodies, one of which must be gone for a tool to reach every copy of the group. Beyond the straight socket
 * other tools are tried only where it needs more gone than `path`, what the fastener's own way needs.
 */
export function toolBlockers(
  sighting: Sighting,
  body: AssemblyBody,
  sense: number,
  path: ReadonlySet<number>,
): readonly Set<number>[] {
  const { drive, size_m } = body.group!.tool;
  if (drive === 'none' || size_m <= 0) return [new Set()];
  const heads = body.parts.map((part) => headOf(sighting, body, part, sense));
  const inside = drive === 'socket-hex';
  const straight = new Set<number>();
  for (const head of heads)
    for (const b of straightReach(sighting, head, size_m, inside, body.index)) straight.add(b);
  if (drive === 'pin' || [...straight].every((b) => path.has(b))) return [straight];
  // Head by head the tool that needs least; where that spares nothing, the straight socket is all there is to say.
  const best = new Set<number>();
  for (const head of heads) {
    let least: ReadonlySet<number> | null = null;
    let fewest = Infinity;
    for (const reach of [straightReach, ratchetReach, ...(drive === 'hex' ? [spannerReach] : [])]) {
      const met = reach(sighting, head, size_m, inside, body.index);
      const extra = [...met].filter((b) => !path.has(b)).length;
      if (extra >= fewest) continue;
      fewest = extra;
      least = met;
      if (extra === 0) break;
    }
    for (const b of least ?? []) best.add(b);
  }
  return [...straight].every((b) => best.has(b)) ? [straight] : [straight, best];
}

type Reach = (
  sighting: Sighting,
  head: Head,
  size_m: number,
  inside: boolean,
  skip: number,
) => ReadonlySet<number>;

/** Where the tool takes hold: in a socket head at its top, on a hexagon above its lower edge. */
const holdFrom = (head: Head, inside: boolean): number => (inside ? head.height_m : 0.4 * head.height_m);

const toolRadius = (size_m: number, inside: boolean): number =>
  inside ? Math.max(size_m, 0.011) : socketOutside_m(size_m) / 2;

const straightReach: Reach = (sighting, head, size_m, inside, skip) =>
  bodiesInCylinder(
    sighting,
    head.sight,
    head.at_m,
    holdFrom(head, inside),
    FAR_M,
    toolRadius(size_m, inside),
    skip,
  );

const ratchetReach: Reach = (sighting, head, size_m, inside, skip) => {
  const from = holdFrom(head, inside);
  const top = head.height_m + RATCHET_HEIGHT_M;
  const radius = toolRadius(size_m, inside);
  const met = bodiesInCylinder(sighting, head.sight, head.at_m, from, top - from, radius, skip);
  const shape = {
    jaws_m: radius,
    tips_m: radius,
    halfWidth_m: 0.02,
    length_m: Math.max(0.25, spannerLength_m(size_m)),
  };
  return bestSwing(sighting, head, top - RATCHET_HANDLE_M, top, shape, skip, met);
};

/** An open-ended spanner slides on from the side: its jaws are wide, but their tips end close behind the head. */
const spannerReach: Reach = (sighting, head, size_m, _inside, skip) => {
  const h = head.height_m;
  const shape = {
    jaws_m: 1.05 * size_m,
    tips_m: 0.5 * size_m,
    halfWidth_m: 0.35 * size_m,
    length_m: spannerLength_m(size_m),
  };
  return bestSwing(sighting, head, 0.3 * h, h, shape, skip, new Set());
};

function headOf(sighting: Sighting, body: AssemblyBody, part: number, sense: number): Head {
  const { world } = sighting;
  const out = scale(partAxis(world.machine, part), sense);
  const at_m = world.machine.parts[part]!.pose.position_m;
  const reach = Math.max(0.25, spannerLength_m(body.group!.tool.size_m));
  const sight = sightAlong(sighting, out, [part], [0, 0, 0], reach);
  const mesh = world.meshes[part];
  const base = dot(out, at_m);
  let height_m = 0;
  if (mesh !== null && mesh !== undefined)
    for (let i = 0; i < mesh.positions.length; i += 3) {
      const h =
        out[0] * mesh.positions[i]! +
        out[1] * mesh.positions[i + 1]! +
        out[2] * mesh.positions[i + 2]! -
        base;
      if (h > height_m) height_m = h;
    }
  return { sight, out, at_m, height_m };
}

/** A tool seen along the fastener: jaws round the head, tips beyond it, a handle away from it. */
interface ToolShape {
  /** Half width of the jaws, and how far they reach towards the handle. */
  readonly jaws_m: number;
  /** How far they reach past the head's middle on the far side. */
  readonly tips_m: number;
  readonly halfWidth_m: number;
  readonly length_m: number;
}

/**
 * Bodies in the way of the best swing of a tool that lies between two heights over the head's seat,
 * `met` (what bars it before it swings) included.
 */
function bestSwing(
  sighting: Sighting,
  head: Head,
  low_m: number,
  high_m: number,
  shape: ToolShape,
  skip: number,
  met: ReadonlySet<number>,
): ReadonlySet<number> {
  const { sight, at_m, out } = head;
  const { jaws_m, tips_m, halfWidth_m, length_m } = shape;
  const sectors = Array.from({ length: STARTS }, () => new Set(met));
  /** Whether the tool covers a point (p along the handle, q across). */
  const covers = (p: number, q: number): boolean =>
    (p <= jaws_m && p >= -tips_m && Math.abs(q) <= jaws_m && Math.hypot(p, q) <= jaws_m) ||
    (p > 0 && p <= length_m && Math.abs(q) <= halfWidth_m);
  const mark = (b: number, x: number, y: number): void => {
    const distance = Math.hypot(x, y);
    if (distance > jaws_m) {
      const angle = Math.atan2(y, x);
      const margin = Math.asin(Math.min(1, halfWidth_m / distance));
      // A swing spans from its start to 30 degrees on; the handle's half width widens it on both sides.
      const last = Math.floor((angle + margin) / START_STEP);
      for (let s = Math.ceil((angle - margin - SWING) / START_STEP); s <= last; s++)
        sectors[((s % STARTS) + STARTS) % STARTS]!.add(b);
      return;
    }
    for (let o = 0; o < STARTS; o++) {
      const c = COS[o]!;
      const d = SIN[o]!;
      if (!covers(c * x + d * y, c * y - d * x)) continue;
      // Seen at its start, middle or end: the swings that began up to 30 degrees before this place.
      for (const back of [0, SWING_STEPS / 2, SWING_STEPS]) sectors[(o - back + STARTS) % STARTS]!.add(b);
    }
  };
  const stride = Math.max(1, Math.floor(SWING_STEP_M / sight.grid.cell_m));
  eachInSlab(sighting, sight, at_m, low_m, high_m, length_m, skip, mark, stride);
  if (stride > 1) eachInSlab(sighting, sight, at_m, low_m, high_m, jaws_m, skip, mark);
  let best: Set<number> | null = null;
  const order = sectors.map((set, s) => ({ set, s })).sort((a, b) => a.set.size - b.set.size || a.s - b.s);
  for (const { set, s } of order.slice(0, HANDS_TRIED)) {
    if (best !== null && set.size >= best.size) break;
    // The angle is measured in the plane of the sight's first two axes, from the first to the second.
    const [e1, e2, e3] = sight.axes;
    const turn = quatFromAxisAngle(e3, (s * START_STEP + 0.5 * SWING) * handedness(e1, e2, e3));
    const hand = add(add(at_m, scale(rotate(turn, e1), 0.85 * length_m)), scale(out, (low_m + high_m) / 2));
    const reached = handReach(sighting, hand, out, skip);
    const all = new Set([...set, ...reached]);
    if (best === null || all.size < best.size) best = all;
  }
  return best ?? new Set(met);
}

/** Bodies between a hand's place and the open, from the side where fewest stand. */
function handReach(sighting: Sighting, hand: Vec3, out: Vec3, skip: number): Set<number> {
  let best: Set<number> | null = null;
  for (const direction of [out, ...DIRECTIONS.filter((d) => Math.abs(dot(d, out)) < 0.5)]) {
    const axis = DIRECTIONS.findIndex((d) => dot(d, direction) > 0.99999);
    if (axis < 0) continue;
    const sight = sightAlong(sighting, direction, [], [0, 0, 0]);
    const met = bodiesInCylinder(sighting, sight, hand, 0, FAR_M, HAND_M, skip);
    if (best === null || met.size < best.size) best = met;
    if (best.size === 0) break;
  }
  return best ?? new Set();
}

const handedness = (a: Vec3, b: Vec3, c: Vec3): number => (dot(cross(a, b), c) > 0 ? 1 : -1);
