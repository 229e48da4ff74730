/**
 * Scraper bars: how far each end must move to stand at its gap, whether the gap is even along the bar, and how much of
 * the blade is worn. A bar works when the drum's surface comes up towards it out of the soil: the rear bar in forward
 * travel (the rear of the drum rises), the front bar in reverse. Geometry; gaps of 10 to 25 mm on soil and evenness along
 * the width are common practice, no source.
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

/** One value an end of a bar, seen from the seat. */
export interface ScraperEnds {
  readonly front_left: number;
  readonly front_right: number;
  readonly rear_left: number;
  readonly rear_right: number;
}

export interface ScraperGapInput {
  /** Gap from blade to drum at each end. */
  readonly gaps_m: ScraperEnds;
  /** Wanted gap and how far from it an end may be. */
  readonly target_m: number;
  readonly tolerance_m: number;
  /** Travel of the slots towards the drum from the blade's place when new. */
  readonly travel_m: number;
  /** Blade measured from its slots' middle to its edge, each end, and the same when new; without both no wear. */
  readonly depths_m?: ScraperEnds | undefined;
  readonly new_depth_m?: number | undefined;
}

export interface ScraperBar {
  /** Travel in which it cleans the drum. */
  readonly works_in: 'forward' | 'reverse';
  /** Towards the drum positive. */
  readonly move_left_m: number;
  readonly move_right_m: number;
  /** Difference of the two ends' gaps. */
  readonly uneven_m: number;
  readonly even: boolean;
  readonly within: boolean;
  readonly wear_left_m: number | null;
  readonly wear_right_m: number | null;
  /** Wear that the slots cannot make good any more. */
  readonly worn_out: boolean | null;
}

export interface ScraperGap {
  readonly front: ScraperBar;
  readonly rear: ScraperBar;
  readonly notes: readonly Message[];
}

/** Refused: negative gaps or depths, a target, tolerance or travel not above 0. */
export function scraperGap(input: ScraperGapInput): Result<ScraperGap> {
  const zero = atLeast(0);
  const ends = { front_left: zero, front_right: zero, rear_left: zero, rear_right: zero };
  const faults = [
    ...checkNumbers(input.gaps_m, ends, 'gaps_m'),
    ...(input.depths_m === undefined ? [] : checkNumbers(input.depths_m, ends, 'depths_m')),
    ...checkNumbers(input, {
      target_m: above(0),
      tolerance_m: above(0),
      travel_m: above(0),
      new_depth_m: above(0),
    }),
  ];
  if (faults.length > 0) return fail(faults);
  const notes: Message[] = [];
  const front = barOf(input, 'front');
  const rear = barOf(input, 'rear');
  if (!front.even || !rear.even) notes.push(message('mechanics.note.scraper-uneven'));
  if (front.worn_out === true || rear.worn_out === true) notes.push(message('mechanics.note.scraper-worn'));
  if (front.wear_left_m === null) notes.push(message('mechanics.note.scraper-wear-needs-depths'));
  return finished({ front, rear, notes });
}

function barOf(input: ScraperGapInput, bar: 'front' | 'rear'): ScraperBar {
  const { gaps_m, target_m, tolerance_m, travel_m, depths_m, new_depth_m } = input;
  const left = gaps_m[`${bar}_left`];
  const right = gaps_m[`${bar}_right`];
  const wear = (end: 'left' | 'right'): number | null =>
    depths_m === undefined || new_depth_m === undefined
      ? null
      : Math.max(0, new_depth_m - depths_m[`${bar}_${end}`]);
  const [wear_left_m, wear_right_m] = [wear('left'), wear('right')];
  const ok = (gap: number): boolean => Math.abs(gap - target_m) <= tolerance_m + 1e-12;
  return {
    works_in: bar === 'rear' ? 'forward' : 'reverse',
    move_left_m: left - target_m,
    move_right_m: right - target_m,
    uneven_m: Math.abs(left - right),
    even: Math.abs(left - right) <= tolerance_m + 1e-12,
    within: ok(left) && ok(right),
    wear_left_m,
    wear_right_m,
    worn_out:
      wear_left_m === null || wear_right_m === null ? null : Math.max(wear_left_m, wear_right_m) > travel_m,
  };
}
