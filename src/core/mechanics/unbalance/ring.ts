/** Free arcs of a ring about the shaft axis: the angles at which the point at radius r is in the free region. */
import { isFree, type Leg, type Section } from './section';

const TURN = 2 * Math.PI;

/** Arcs as from/to pairs in radians, `to` above `from`; a whole ring is one pair a full turn apart. */
export interface RingArcs {
  readonly r_m: number;
  readonly from: readonly number[];
  readonly to: readonly number[];
}

/**
 * Free arcs of the ring of radius `r_m` > 0 about O, in rising order: the ring's crossings with every bounding
 * curve (in closed form) cut it into pieces, and the middle of each piece tells whether it is free.
 */
export function freeArcs(section: Section, r_m: number): RingArcs {
  const cuts = ringCuts(section, r_m);
  const free = (angle: number) => isFree(section, r_m * Math.cos(angle), r_m * Math.sin(angle));
  if (cuts.length === 0) {
    return free(0) ? { r_m, from: [-Math.PI], to: [Math.PI] } : { r_m, from: [], to: [] };
  }
  const from: number[] = [];
  const to: number[] = [];
  for (let i = 0; i < cuts.length; i++) {
    const start = cuts[i]!;
    const end = i + 1 < cuts.length ? cuts[i + 1]! : cuts[0]! + TURN;
    if (!free((start + end) / 2)) continue;
    // a cut with free arc on both sides is no edge
    if (to.length > 0 && to[to.length - 1] === start) to[to.length - 1] = end;
    else {
      from.push(start);
      to.push(end);
    }
  }
  const last = to.length - 1;
  if (last > 0 && to[last] === from[0]! + TURN) {
    // the last arc runs on into the first
    to[0] = to[0]! + TURN;
    from[0] = from[last]!;
    from.pop();
    to.pop();
    return { r_m, from: [...from.slice(1), from[0]!], to: [...to.slice(1), to[0]!] };
  }
  return { r_m, from, to };
}

/** Angles in [-pi, pi), rising, where the ring meets a bounding curve. */
function ringCuts(section: Section, r: number): number[] {
  const { radius_m: R, eccentricity_m: e, chordX_m, half_m } = section;
  const cuts: number[] = [];
  addAbout(cuts, 0, (r * r + e * e - R * R) / (2 * r * e));
  addAbout(cuts, 0, chordX_m / r);
  section.legs.forEach((leg, i) => {
    addSides(cuts, leg, half_m, r);
    // the second leg starts in the round end of the first
    if (i === 0) addEnd(cuts, leg.x1, leg.y1, half_m, r);
    addEnd(cuts, leg.x2, leg.y2, half_m, r);
  });
  return cuts.sort((a, b) => a - b).filter((cut, i) => i === 0 || cut - cuts[i - 1]! > 1e-13);
}

/** Adds the two angles that stand acos(cosine) to each side of `middle`, where they exist. */
function addAbout(cuts: number[], middle: number, cosine: number): void {
  if (!(Math.abs(cosine) < 1)) return;
  const apart = Math.acos(cosine);
  cuts.push(wrap(middle - apart), wrap(middle + apart));
}

function addEnd(cuts: number[], x: number, y: number, half: number, r: number): void {
  const c = Math.hypot(x, y);
  addAbout(cuts, Math.atan2(y, x), (r * r + c * c - half * half) / (2 * r * c));
}

/** Crossings with the two straight sides; those beyond a side's ends lie in steel or in the open and do no harm. */
function addSides(cuts: number[], leg: Leg, half: number, r: number): void {
  const dx = leg.x2 - leg.x1;
  const dy = leg.y2 - leg.y1;
  const length = Math.hypot(dx, dy);
  const nx = -dy / length;
  const ny = dx / length;
  const middle = Math.atan2(ny, nx);
  const offset = leg.x1 * nx + leg.y1 * ny;
  addAbout(cuts, middle, (offset + half) / r);
  addAbout(cuts, middle, (offset - half) / r);
}

function wrap(angle: number): number {
  if (angle >= Math.PI) return angle - TURN;
  return angle < -Math.PI ? angle + TURN : angle;
}

/** Number of turns k for which the arcs of `ring`, taken from the k-th on, stand nearest to those of `other`. */
export function bestShift(ring: RingArcs, other: RingArcs): number {
  const n = ring.from.length;
  let best = 0;
  let least = Infinity;
  for (let shift = 0; shift < n; shift++) {
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const j = (i + shift) % n;
      const apart = Math.abs((ring.from[j]! + ring.to[j]! - other.from[i]! - other.to[i]!) / 2) % TURN;
      sum += Math.min(apart, TURN - apart) ** 2;
    }
    if (sum < least) {
      least = sum;
      best = shift;
    }
  }
  return best;
}

/** The ring with its arcs renumbered to follow those of `other`, which has as many. */
export function follow(ring: RingArcs, other: RingArcs): RingArcs {
  if (ring.from.length < 2) return ring;
  const shift = bestShift(ring, other);
  if (shift === 0) return ring;
  const turn = (list: readonly number[]) => [...list.slice(shift), ...list.slice(0, shift)];
  return { r_m: ring.r_m, from: turn(ring.from), to: turn(ring.to) };
}

/** Length in radians that arc i of `a` and arc j of `b` share. */
export function sharedAngle(a: RingArcs, i: number, b: RingArcs, j: number): number {
  let shared = 0;
  for (const turn of [-TURN, 0, TURN]) {
    const low = Math.max(a.from[i]!, b.from[j]! + turn);
    const high = Math.min(a.to[i]!, b.to[j]! + turn);
    if (high > low) shared += high - low;
  }
  return shared;
}

/** Index of the arc that holds the angle, or -1. */
export function arcAt(ring: RingArcs, angle: number): number {
  return ring.from.findIndex((from, i) => {
    const above = (((angle - from) % TURN) + TURN) % TURN;
    return above <= ring.to[i]! - from;
  });
}
