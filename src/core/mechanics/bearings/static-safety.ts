/**
 * Static safety of a rolling bearing: S0 = C0 / P0, P0 = max(X0 Fr + Y0 Fa, Fr).
 * Source: ISO 76:2006 and its guidance values (from memory).
 */
import {
  above,
  atLeast,
  checkNumbers,
  checkOneOf,
  fail,
  finished,
  message,
  type Message,
  type Result,
} from '../../kernel';

export type BearingKind = 'ball' | 'roller';
export type Running = 'quiet' | 'normal' | 'shock';

/** Least static safety that ISO 76:2006 guides to (from memory). */
export const STATIC_SAFETY_GUIDE: Readonly<Record<BearingKind, Readonly<Record<Running, number>>>> = {
  ball: { quiet: 2, normal: 1, shock: 1.5 },
  roller: { quiet: 3, normal: 1.5, shock: 3 },
};

export interface StaticSafetyInput {
  /** Basic static load rating, N. */
  readonly C0_N: number;
  /** Equivalent static load, N; or give Fr_N. */
  readonly P0_N?: number | undefined;
  /** Greatest radial load, N, 0 or more. */
  readonly Fr_N?: number | undefined;
  /** Axial load with it, N, default 0. */
  readonly Fa_N?: number | undefined;
  /** Static factors of the bearing's table, default 1 and 0. */
  readonly X0?: number | undefined;
  readonly Y0?: number | undefined;
  readonly kind: BearingKind;
  /** Default 'normal'. */
  readonly running?: Running | undefined;
}

export interface StaticSafety {
  readonly P0_N: number;
  /** Null for an unloaded bearing. */
  readonly S0: number | null;
  /** What the guidance asks for at least. */
  readonly S0_guide: number;
  readonly enough: boolean;
  readonly notes: readonly Message[];
}

/** Give either P0_N or Fr_N (with Fa_N, X0, Y0). */
export function staticSafety(input: StaticSafetyInput): Result<StaticSafety> {
  const zero = atLeast(0);
  const faults = checkNumbers(input, {
    C0_N: above(0),
    P0_N: zero,
    Fr_N: zero,
    Fa_N: zero,
    X0: zero,
    Y0: zero,
  });
  faults.push(...checkOneOf(input, ['P0_N', 'Fr_N']));
  if (faults.length > 0) return fail(faults);
  const { C0_N, Fr_N = 0, Fa_N = 0, X0 = 1, Y0 = 0, kind, running = 'normal' } = input;
  const P0_N = input.P0_N ?? Math.max(X0 * Fr_N + Y0 * Fa_N, Fr_N);
  const S0 = P0_N > 0 ? C0_N / P0_N : null;
  const S0_guide = STATIC_SAFETY_GUIDE[kind][running];
  const notes = S0 === null ? [message('mechanics.note.unloaded')] : [];
  return finished({ P0_N, S0, S0_guide, enough: S0 === null || S0 >= S0_guide, notes });
}
