/**
 * Equivalent load of a duty cycle: mean speed n = sum t n, Pm = (sum n t P^p / sum n t)^(1/p), and the rating that
 * a wanted life asks for, C = Pm L^(1/p).
 * Source: ISO 281; T. A. Harris, Rolling Bearing Analysis (from memory).
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  within,
  type Message,
  type Result,
} from '../../kernel';
import { checkExponent, lifeExponent, type LifeExponent } from './exponent';

export interface DutySegment {
  /** Share of the time, 0 to 1; all shares add up to 1. */
  readonly fraction_of_time: number;
  readonly load_N: number;
  readonly speed_rpm: number;
}

export interface BearingDutyInput {
  readonly segments: readonly DutySegment[];
  readonly p: LifeExponent;
  /** Wanted life; without it the rating is null. */
  readonly life_h?: number | undefined;
}

export interface BearingDuty {
  readonly mean_speed_rpm: number;
  /** Constant load that wears the bearing as much per revolution. */
  readonly Pm_N: number;
  readonly life_Mrev: number | null;
  readonly C_required_N: number | null;
  readonly notes: readonly Message[];
}

/** Shares may miss 1 by this much (thirds typed as 0.33 each); they are then scaled, and that is noted. */
const SHARE_SLACK = 0.011;

/** Refused: no segment, negative numbers, shares that do not add up to 1, a cycle that never turns. */
export function bearingDuty(input: BearingDutyInput): Result<BearingDuty> {
  const { segments, life_h } = input;
  const faults = [
    ...segments.flatMap((segment, i) =>
      checkNumbers(
        segment,
        { fraction_of_time: within(0, 1), load_N: atLeast(0), speed_rpm: atLeast(0) },
        `segments[${i}]`,
      ),
    ),
    ...checkExponent('p', input.p),
    ...checkNumbers(input, { life_h: above(0) }),
  ];
  const total = segments.reduce((sum, each) => sum + each.fraction_of_time, 0);
  if (!(Math.abs(total - 1) <= SHARE_SLACK)) {
    faults.push(
      faultAt('segments[].fraction_of_time', message('mechanics.expected.shares-sum-to-one'), total),
    );
  } else if (!segments.some((each) => each.fraction_of_time * each.speed_rpm > 0)) {
    faults.push(faultAt('segments[].speed_rpm', message('mechanics.expected.some-turning'), 0));
  }
  if (faults.length > 0) return fail(faults);

  const p = lifeExponent(input.p);
  const turns = segments.map((each) => (each.fraction_of_time / total) * each.speed_rpm);
  const mean_speed_rpm = turns.reduce((sum, each) => sum + each, 0);
  // scaled by the greatest load so that P^p cannot overflow
  const greatest = Math.max(...segments.map((each) => each.load_N));
  const damage = segments.reduce((sum, each, i) => {
    const ratio = greatest > 0 ? each.load_N / greatest : 0;
    return sum + ((turns[i] ?? 0) / mean_speed_rpm) * ratio ** p;
  }, 0);
  const Pm_N = greatest * damage ** (1 / p);
  const life_Mrev = life_h === undefined ? null : (60 * mean_speed_rpm * life_h) / 1e6;
  const notes: Message[] = [];
  if (Math.abs(total - 1) > 1e-9) notes.push(message('mechanics.note.shares-scaled', { sum: total }));
  if (life_Mrev === null) notes.push(message('mechanics.note.rating-needs-life'));
  const C_required_N = life_Mrev === null ? null : Pm_N * life_Mrev ** (1 / p);
  return finished({ mean_speed_rpm, Pm_N, life_Mrev, C_required_N, notes });
}
