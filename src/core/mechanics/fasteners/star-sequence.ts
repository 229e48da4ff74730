/**
 * Order in which to tighten a ring of bolts so that the joint closes evenly: common practice, no source.
 *
 * Even counts: each bolt is followed by the one opposite; the next pair is the one that stands farthest from all
 * pairs done, then farthest from the last. Odd counts have no opposite: every step goes round by (n - 1) / 2
 * places, which visits each bolt once because n and (n - 1) / 2 have no common divisor.
 */
import { checkNumbers, fail, finished, wholeWithin, type Message, type Result } from '../../kernel';

export interface StarSequenceInput {
  /** Number of bolts, 1 to 1000, evenly spaced. */
  readonly count: number;
}

export interface StarSequence {
  /** Places from 1, numbered round the ring in one sense. */
  readonly order: readonly number[];
  /** Angle of each place from place 1, in that order, degrees. */
  readonly angles_deg: readonly number[];
  readonly notes: readonly Message[];
}

export function starSequence(input: StarSequenceInput): Result<StarSequence> {
  const faults = checkNumbers(input, { count: wholeWithin(1, 1000) });
  if (faults.length > 0) return fail(faults);
  const { count } = input;
  const places = count % 2 === 0 ? evenOrder(count) : oddOrder(count);
  return finished({
    order: places.map((place) => place + 1),
    angles_deg: places.map((place) => (place * 360) / count),
    notes: [],
  });
}

/** Places from 0. */
function oddOrder(count: number): number[] {
  const step = Math.max(1, (count - 1) / 2);
  return Array.from({ length: count }, (_, i) => (i * step) % count);
}

/** Places from 0. An axis is a pair of opposite places, named by the lower one. */
function evenOrder(count: number): number[] {
  const half = count / 2;
  const between = (a: number, b: number) => Math.min(Math.abs(a - b), half - Math.abs(a - b));
  const nearestDone = Array.from({ length: half }, () => Infinity);
  const left = new Set(nearestDone.keys());
  const order: number[] = [];
  let axis = 0;
  while (left.size > 0) {
    left.delete(axis);
    order.push(axis, axis + half);
    let best = axis;
    let bestNearest = -1;
    let bestFromLast = -1;
    for (const each of left) {
      const fromLast = between(each, axis);
      const nearest = Math.min(nearestDone[each] ?? Infinity, fromLast);
      nearestDone[each] = nearest;
      if (nearest > bestNearest || (nearest === bestNearest && fromLast > bestFromLast)) {
        [best, bestNearest, bestFromLast] = [each, nearest, fromLast];
      }
    }
    axis = best;
  }
  return order;
}
