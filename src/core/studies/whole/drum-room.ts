/**
 * Room inside the drum that a ballast liquid could fill, from the solids: between the shell's inside and the exciter
 * case, from head to head, less every tube in it. The drum is cut across its axis at many stations; at each, the room
 * is the shell's hole less whatever closed outlines stand in it (what is inside those holds exciter or oil).
 */
import { type KindSolid, planeInPart, sliceSolid } from '../../geometry';
import { defaultOptions, isPresent, type Machine } from '../../machine';

export interface DrumRoom {
  readonly volume_m3: number;
  readonly from_x_m: number;
  readonly to_x_m: number;
}

/** Stations of the integral over the room's length. */
const STATIONS = 40;
/** Step of the search for a head (thinner than any head), and how close its face is found. */
const SEARCH_m = 0.02;
const FACE_m = 2e-4;
/** A station whose shell hole is filled by more than this is a head. */
const HEAD_SHARE = 0.9;

const known = new WeakMap<Machine, DrumRoom | null>();

/** Null where no closed room is found (no heads, no shell about the axis). */
export function drumRoom(machine: Machine, solids: Readonly<Record<string, KindSolid>>): DrumRoom | null {
  let room = known.get(machine);
  if (room === undefined) {
    room = workOut(machine, solids);
    known.set(machine, room);
  }
  return room;
}

const area = (loop: Float64Array): number => {
  let twice = 0;
  const n = loop.length / 2;
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    twice += loop[2 * i]! * loop[2 * j + 1]! - loop[2 * j]! * loop[2 * i + 1]!;
  }
  return Math.abs(twice) / 2;
};

/** Greatest distance of an outline from the drum axis. */
const reach = (loop: Float64Array): number => {
  let most = 0;
  for (let i = 0; i < loop.length; i += 2) most = Math.max(most, Math.hypot(loop[i]!, loop[i + 1]!));
  return most;
};

const holdsAxis = (loop: Float64Array): boolean => {
  let inside = false;
  const n = loop.length / 2;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const [ax, ay, bx, by] = [loop[2 * i]!, loop[2 * i + 1]!, loop[2 * j]!, loop[2 * j + 1]!];
    if (ay > 0 !== by > 0 && 0 < ((bx - ax) * -ay) / (by - ay) + ax) inside = !inside;
  }
  return inside;
};

/** Free area at a station, null outside the shell; a head leaves next to none. */
type Station = (x_m: number) => { readonly free_m2: number; readonly isHead: boolean } | null;

function stations(machine: Machine, solids: Readonly<Record<string, KindSolid>>): Station {
  const options = defaultOptions(machine);
  const parts = machine.parts.filter((p) => p.movesWith === 'drum' && isPresent(p, options));
  return (x_m) => {
    const plane = { point_m: [x_m, 0, 0] as const, normal: [1, 0, 0] as const };
    const regions = parts.flatMap((part) =>
      solids[part.kind]!.bodies.flatMap((body) => sliceSolid(body.solid, planeInPart(plane, part.pose))),
    );
    // the wall: the shell, and rings that lie against its inside (weld beads)
    const wide = (loop: Float64Array) => reach(loop) > machine.drumRadius_m / 2;
    const rings = regions.filter((region) => region.holes.some((hole) => wide(hole) && holdsAxis(hole)));
    if (rings.length === 0) return null;
    const hole = rings
      .flatMap((ring) => ring.holes.filter((each) => wide(each) && holdsAxis(each)))
      .reduce((least, each) => (reach(each) < reach(least) ? each : least));
    const inside = regions.filter(
      (region) => !rings.includes(region) && reach(region.outer) <= reach(hole) * 1.02,
    );
    // an outline inside another one (a ring in the case) is covered already
    const outer = inside.filter(
      (region) => !inside.some((other) => other !== region && covers(other.outer, region.outer)),
    );
    const hole_m2 = area(hole);
    const free_m2 = Math.max(0, hole_m2 - outer.reduce((sum, region) => sum + area(region.outer), 0));
    return { free_m2, isHead: free_m2 < (1 - HEAD_SHARE) * hole_m2 };
  };
}

function workOut(machine: Machine, solids: Readonly<Record<string, KindSolid>>): DrumRoom | null {
  const at = stations(machine, solids);
  const from_x_m = headFace(at, machine.drumWidth_m / 2, -1);
  const to_x_m = headFace(at, machine.drumWidth_m / 2, 1);
  if (from_x_m === null || to_x_m === null) return null;
  const step = (to_x_m - from_x_m) / STATIONS;
  let volume_m3 = 0;
  for (let i = 0; i < STATIONS; i++) volume_m3 += (at(from_x_m + (i + 0.5) * step)?.free_m2 ?? 0) * step;
  return { volume_m3, from_x_m, to_x_m };
}

/** Inner face of the head towards one end: a search outwards from the middle, then halving. */
function headFace(at: Station, half_m: number, towards: 1 | -1): number | null {
  let open_m = 0;
  if (at(0)?.isHead !== false) return null;
  for (let x = SEARCH_m; x < half_m; x += SEARCH_m) {
    const here = at(towards * x);
    if (here === null) return null;
    if (here.isHead) {
      let closed_m = x;
      while (closed_m - open_m > FACE_m) {
        const middle = (open_m + closed_m) / 2;
        if (at(towards * middle)?.isHead === true) closed_m = middle;
        else open_m = middle;
      }
      return towards * open_m;
    }
    open_m = x;
  }
  return null;
}

/** Whether the first corner of `small` lies inside `big`. */
function covers(big: Float64Array, small: Float64Array): boolean {
  const [x, y] = [small[0]!, small[1]!];
  const shifted = big.map((value, i) => value - (i % 2 === 0 ? x : y));
  return area(big) > area(small) && holdsAxis(shifted);
}
