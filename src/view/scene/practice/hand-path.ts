/** The way of a part as a line to be followed by hand: lengths on it for places, and the moment of play of each. */
import type { Timeline } from '../../../core/assembly';
import type { Vec3 } from '../../../core/kernel';

/** The way that a hold has (`Laying` of the practice), as far as it matters here. */
export interface HandWay {
  readonly timeline: Timeline;
  /** Played backwards: from laid down to joined. */
  readonly reverse: boolean;
}

interface Stretch {
  /** Length of the way before it, and its own, metres. */
  readonly from_m: number;
  readonly length_m: number;
  readonly start: Vec3;
  readonly direction: Vec3;
  readonly start_s: number;
  readonly end_s: number;
}

export interface HandPath {
  readonly length_m: number;
  readonly stretches: readonly Stretch[];
}

/** The straight stretches of one part's motion in the order in which it goes them; what does not move it is left out. */
export function handPath({ timeline, reverse }: HandWay, part: number): HandPath {
  const { keyTimes, keyOffsets, firstKey, stepEnd_s } = timeline;
  const takes_s = stepEnd_s.at(-1) ?? 0;
  const stretches: Stretch[] = [];
  let length_m = 0;
  const first = firstKey[part]!;
  const count = firstKey[part + 1]! - first;
  for (let i = 0; i < count; i++) {
    const k = reverse ? first + count - 1 - i : first + i;
    const ends = [0, 4].map((o): Vec3 => [keyOffsets[8 * k + o]!, keyOffsets[8 * k + o + 1]!, keyOffsets[8 * k + o + 2]!]); // prettier-ignore
    const [start, end] = reverse ? [ends[1]!, ends[0]!] : [ends[0]!, ends[1]!];
    const along = Math.hypot(end[0] - start[0], end[1] - start[1], end[2] - start[2]);
    if (along === 0) continue;
    const [from_s, to_s] = [keyTimes[2 * k]!, keyTimes[2 * k + 1]!];
    stretches.push({
      from_m: length_m,
      length_m: along,
      start,
      direction: [(end[0] - start[0]) / along, (end[1] - start[1]) / along, (end[2] - start[2]) / along],
      start_s: reverse ? takes_s - to_s : from_s,
      end_s: reverse ? takes_s - from_s : to_s,
    });
    length_m += along;
  }
  return { length_m, stretches };
}

/** A straight way without play: where a hand pulls at what gives only a little. */
export const straightPath = (direction: Vec3): HandPath => ({
  length_m: Infinity,
  stretches: [{ from_m: 0, length_m: Infinity, start: [0, 0, 0], direction, start_s: 0, end_s: 0 }],
});

const stretchAt = ({ stretches }: HandPath, at_m: number): Stretch | undefined =>
  stretches.find((s) => at_m < s.from_m + s.length_m) ?? stretches.at(-1);

/** Offset from the seat at a length of the way (before it and after it: at its ends), and which way it goes on there. */
export function placeOn(path: HandPath, at_m: number): { readonly offset: Vec3; readonly direction: Vec3 } {
  const s = stretchAt(path, at_m);
  if (s === undefined) return { offset: [0, 0, 0], direction: [0, 1, 0] };
  const along = Math.min(Math.max(at_m - s.from_m, 0), s.length_m);
  const [x, y, z] = s.start;
  const [dx, dy, dz] = s.direction;
  return { offset: [x + along * dx, y + along * dy, z + along * dz], direction: s.direction };
}

/**
 * Seconds of play at which the part has gone this far. The play of a stretch is eased by e = 3 t^2 - 2 t^3; its
 * inverse is t = 1/2 - sin(asin(1 - 2 e) / 3).
 */
export function playedAt(path: HandPath, at_m: number): number {
  if (at_m <= 0) return 0;
  const s = stretchAt(path, at_m);
  if (s === undefined) return 0;
  const eased = Math.min(1, Math.max(0, (at_m - s.from_m) / s.length_m));
  return s.start_s + (s.end_s - s.start_s) * (0.5 - Math.sin(Math.asin(1 - 2 * eased) / 3));
}
