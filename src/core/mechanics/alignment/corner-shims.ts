/**
 * Shims that bring four corner gaps to one value: a stiff part rests on four corners of a rectangle, and a shim
 * under a corner opens the gap there by its thickness. A stiff part stays plane, so the four openings must lie in a
 * plane: front-left - front-right - rear-left + rear-right = 0. Among shims that do, and are not negative, those are
 * taken that leave the least sum of squares of (gap + shim - target). What no shim can take away is the twist.
 * Source: least squares; that gaps should agree within 2 to 3 mm is common practice, no source.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  finished,
  message,
  type Message,
  type Result,
} from '../../kernel';

/** One value a corner, seen from above. */
export interface Corners {
  readonly front_left: number;
  readonly front_right: number;
  readonly rear_left: number;
  readonly rear_right: number;
}

export interface AlignmentInput {
  /** Gap measured at each corner, 0 or more. */
  readonly gaps_m: Corners;
  /** Wanted gap; left out: whatever the smallest set of shims gives. */
  readonly target_m?: number | undefined;
  /** Thinnest shim at hand: shims are rounded to whole multiples. */
  readonly shim_step_m?: number | undefined;
  /** Allowed difference between the greatest and the least gap, default 0.003. */
  readonly tolerance_m?: number | undefined;
}

export interface Alignment {
  readonly shims_m: Corners;
  readonly gaps_after_m: Corners;
  readonly spread_before_m: number;
  readonly spread_after_m: number;
  /** Part of each gap that no shims of a stiff part can take away. */
  readonly twist_m: number;
  readonly within_tolerance: boolean;
  readonly notes: readonly Message[];
}

const KEYS = ['front_left', 'front_right', 'rear_left', 'rear_right'] as const;
/** Direction of the twist; a plane has none of it. */
const TWIST = [1, -1, -1, 1] as const;
const DEFAULT_TOLERANCE_M = 0.003;

export function alignment(input: AlignmentInput): Result<Alignment> {
  const zero = atLeast(0);
  const faults = [
    ...checkNumbers(
      input.gaps_m,
      { front_left: zero, front_right: zero, rear_left: zero, rear_right: zero },
      'gaps_m',
    ),
    ...checkNumbers(input, { target_m: zero, shim_step_m: above(0), tolerance_m: above(0) }),
  ];
  if (faults.length > 0) return fail(faults);
  const gaps = KEYS.map((key) => input.gaps_m[key]);
  const exact = input.target_m === undefined ? smallestLevelling(gaps) : nearestShims(gaps, input.target_m);
  const step = input.shim_step_m;
  const shims = step === undefined ? exact : exact.map((shim) => Math.round(shim / step) * step);
  const after = gaps.map((gap, i) => gap + (shims[i] ?? 0));
  const twist_m = twistOf(gaps) / 4;
  const spread_after_m = spreadOf(after);
  const within_tolerance = spread_after_m <= (input.tolerance_m ?? DEFAULT_TOLERANCE_M) + 1e-12;
  const notes: Message[] = [];
  if (!within_tolerance) notes.push(message('mechanics.note.gaps-still-apart', { spread_m: spread_after_m }));
  return finished({
    shims_m: asCorners(shims),
    gaps_after_m: asCorners(after),
    spread_before_m: spreadOf(gaps),
    spread_after_m,
    twist_m,
    within_tolerance,
    notes,
  });
}

/** Without a target: take out tilt both ways, and lower all until the least shim is 0. */
function smallestLevelling(gaps: readonly number[]): number[] {
  const twist = twistOf(gaps) / 4;
  const openings = gaps.map((gap, i) => -(gap - twist * (TWIST[i] ?? 0)));
  const least = Math.min(...openings);
  return openings.map((opening) => opening - least);
}

/**
 * With a target: least squares with shims not negative. Each set of corners is tried as the one that gets no shim;
 * on the others the free optimum in the plane is known, and the best of those that are not negative is the answer.
 */
function nearestShims(gaps: readonly number[], target_m: number): number[] {
  const wanted = gaps.map((gap) => target_m - gap);
  let best = [0, 0, 0, 0];
  let bestError = Infinity;
  for (let set = 0; set < 16; set += 1) {
    const isFree = (i: number) => (set & (1 << i)) !== 0;
    const free = KEYS.map((_, i) => i).filter(isFree);
    const tilt =
      free.reduce((sum, i) => sum + (TWIST[i] ?? 0) * (wanted[i] ?? 0), 0) / Math.max(1, free.length);
    const shims = wanted.map((value, i) => (isFree(i) ? value - tilt * (TWIST[i] ?? 0) : 0));
    if (shims.some((shim) => shim < -1e-12)) continue;
    const error = shims.reduce((sum, shim, i) => sum + (shim - (wanted[i] ?? 0)) ** 2, 0);
    if (error < bestError) [best, bestError] = [shims.map((shim) => Math.max(0, shim)), error];
  }
  return best;
}

const twistOf = (values: readonly number[]): number =>
  values.reduce((sum, value, i) => sum + (TWIST[i] ?? 0) * value, 0);
const spreadOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
const asCorners = ([
  front_left = 0,
  front_right = 0,
  rear_left = 0,
  rear_right = 0,
]: readonly number[]): Corners => ({
  front_left,
  front_right,
  rear_left,
  rear_right,
});
