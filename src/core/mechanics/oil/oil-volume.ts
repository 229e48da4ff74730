/**
 * Oil in a lying round case: area of a circular segment times length, less what dips into it.
 * A = r^2 (acos(1 - h/r)) - (r - h) sqrt(h (2 r - h)), h the depth at the lowest point.
 * Source: Machinery's Handbook, "Areas and volumes" (from memory; see segment.ts). The case lies level.
 */
import {
  above,
  atLeast,
  checkNumbers,
  checkOneOf,
  fail,
  faultAt,
  finished,
  message,
  within,
  type Fault,
  type Message,
  type Result,
} from '../../kernel';
import { circularSegment } from '../segment';

export interface OilVolumeInput {
  /** Inner radius and inner length of the case. */
  readonly radius_m: number;
  readonly length_m: number;
  /** Give one of these three: depth at the lowest point; height of the level over the axis (below it negative); volume. */
  readonly depth_m?: number | undefined;
  readonly level_m?: number | undefined;
  readonly volume_m3?: number | undefined;
  /** Volume of parts below the level, default 0. */
  readonly displaced_m3?: number | undefined;
  /** For the mass; mineral oil about 870. */
  readonly density_kg_m3?: number | undefined;
}

export interface OilVolume {
  readonly volume_m3: number;
  readonly depth_m: number;
  readonly level_m: number;
  /** Share of the round section below the level. */
  readonly section_share: number;
  readonly mass_kg: number | null;
  readonly notes: readonly Message[];
}

/** Refused: a level outside the case, more volume than it holds, parts larger than the room below the level. */
export function oilVolume(input: OilVolumeInput): Result<OilVolume> {
  const faults = checkOil(input);
  if (faults.length > 0) return fail(faults);
  const { radius_m, length_m, displaced_m3 = 0, density_kg_m3 } = input;
  const depth_m =
    input.volume_m3 !== undefined
      ? depthOfArea(radius_m, (input.volume_m3 + displaced_m3) / length_m)
      : (input.depth_m ?? (input.level_m ?? 0) + radius_m);
  const area_m2 = areaBelow(radius_m, depth_m);
  const volume_m3 = input.volume_m3 ?? area_m2 * length_m - displaced_m3;
  if (volume_m3 < 0) {
    return fail([
      faultAt('displaced_m3', message('expected.at-most', { limit: area_m2 * length_m }), displaced_m3),
    ]);
  }
  return finished({
    volume_m3,
    depth_m,
    level_m: depth_m - radius_m,
    section_share: area_m2 / (Math.PI * radius_m ** 2),
    mass_kg: density_kg_m3 === undefined ? null : volume_m3 * density_kg_m3,
    notes: density_kg_m3 === undefined ? [message('mechanics.note.mass-needs-density')] : [],
  });
}

/** Area of a circle below a level, at `depth_m` over its lowest point (0 to 2 r). */
function areaBelow(radius_m: number, depth_m: number): number {
  if (depth_m <= 0) return 0;
  const angle_rad = 2 * Math.acos(Math.max(-1, 1 - depth_m / radius_m));
  return circularSegment(radius_m, angle_rad).area_m2;
}

/** Depth that encloses an area; the area grows with the depth, so halving finds it. */
function depthOfArea(radius_m: number, area_m2: number): number {
  let low = 0;
  let high = 2 * radius_m;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (areaBelow(radius_m, middle) < area_m2) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function checkOil(input: OilVolumeInput): Fault[] {
  const { radius_m, length_m, displaced_m3 = 0, volume_m3 } = input;
  const faults = [
    ...checkNumbers(input, {
      radius_m: above(0),
      length_m: above(0),
      depth_m: within(0, 2 * radius_m),
      level_m: within(-radius_m, radius_m),
      volume_m3: atLeast(0),
      displaced_m3: atLeast(0),
      density_kg_m3: above(0),
    }),
    ...checkOneOf(input, ['depth_m', 'level_m', 'volume_m3']),
  ];
  const room = Math.PI * radius_m ** 2 * length_m - displaced_m3;
  if (volume_m3 !== undefined && volume_m3 > room) {
    faults.push(faultAt('volume_m3', message('expected.at-most', { limit: room }), volume_m3));
  }
  return faults;
}
