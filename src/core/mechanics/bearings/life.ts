/**
 * Rating life of a rolling bearing: L10 = (C/P)^p million revolutions, L10h = 10^6 L10 / (60 n), Lnm = a1 L10.
 * Source: ISO 281; T. H. Wentzell, Machine Design, ch. 20; a1: reliability.ts.
 */
import {
  above,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  type Message,
  type Result,
} from '../../kernel';
import { checkExponent, lifeExponent, type LifeExponent } from './exponent';
import { a1FromTable, highestReliability, weibullFactor, type Iso281Edition } from './reliability';

export interface BearingLifeInput {
  /** Basic dynamic load rating, N. */
  readonly C_N: number;
  /** Equivalent dynamic load, N, above 0 (an unloaded bearing has no rating life). */
  readonly P_N: number;
  /** 3 or 'ball', 10/3 or 'roller'. */
  readonly p: LifeExponent;
  /** Speed of one ring against the other; without it the life in hours is null. */
  readonly speed_rpm?: number | undefined;
  /** Share that survives, percent, default 90. */
  readonly reliability_percent?: number | undefined;
  /** Edition of ISO 281 whose a1 table is used, default '2007'. */
  readonly edition?: Iso281Edition | undefined;
  /** If given, a1 comes from a Weibull law of this slope instead of the table. */
  readonly weibull_slope?: number | undefined;
}

export interface BearingLife {
  readonly L10_Mrev: number;
  readonly L10_h: number | null;
  readonly a1: number;
  readonly Lnm_Mrev: number;
  readonly Lnm_h: number | null;
  readonly notes: readonly Message[];
}

/**
 * Life at 90 % and at the wanted reliability. Refused: C, P, speed or slope not above 0; a reliability outside
 * the edition's table (90 to 99 %, 2007 to 99.95 %), or with `weibull_slope` outside 0 to 100 %. Noted: P above
 * half of C, where ISO 281 no longer holds.
 */
export function bearingLife(input: BearingLifeInput): Result<BearingLife> {
  const { C_N, P_N, speed_rpm, reliability_percent = 90, edition = '2007', weibull_slope } = input;
  const faults = [
    ...checkNumbers(input, { C_N: above(0), P_N: above(0), speed_rpm: above(0), weibull_slope: above(0) }),
    ...checkExponent('p', input.p),
  ];
  const a1 = reliabilityFactor(reliability_percent, edition, weibull_slope);
  if (a1 === null) {
    const [low, high] = weibull_slope === undefined ? [90, highestReliability(edition)] : [0, 100];
    faults.push(
      faultAt('reliability_percent', message('expected.within', { low, high }), reliability_percent),
    );
  }
  if (faults.length > 0 || a1 === null) return fail(faults);

  const L10_Mrev = (C_N / P_N) ** lifeExponent(input.p);
  const hours = (life_Mrev: number) =>
    speed_rpm === undefined ? null : (life_Mrev * 1e6) / (60 * speed_rpm);
  const notes: Message[] = [];
  if (speed_rpm === undefined) notes.push(message('mechanics.note.hours-need-speed'));
  if (P_N > C_N / 2) notes.push(message('mechanics.note.load-above-half-rating'));
  if (weibull_slope !== undefined) notes.push(message('mechanics.note.a1-weibull', { slope: weibull_slope }));
  else if (reliability_percent !== 90) notes.push(message('mechanics.note.a1-edition', { edition }));
  const Lnm_Mrev = a1 * L10_Mrev;
  return finished({ L10_Mrev, L10_h: hours(L10_Mrev), a1, Lnm_Mrev, Lnm_h: hours(Lnm_Mrev), notes });
}

function reliabilityFactor(
  reliability_percent: number,
  edition: Iso281Edition,
  slope: number | undefined,
): number | null {
  if (slope === undefined) return a1FromTable(reliability_percent, edition);
  return reliability_percent > 0 && reliability_percent < 100
    ? weibullFactor(reliability_percent, slope)
    : null;
}
