/**
 * Equivalent dynamic load of a radial rolling bearing: P = X V Fr + Y Fa.
 * Source: ISO 281; R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, ch. 11 (V: 1 where the
 * inner ring turns against the load, 1.2 where the outer ring does; editions of ISO 281 since 1990 leave V out).
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

export interface BearingLoadInput {
  /** Radial load, N, 0 or more. */
  readonly Fr_N: number;
  /** Axial load, N, 0 or more. */
  readonly Fa_N: number;
  /** Radial factor of the bearing's table. */
  readonly X: number;
  /** Axial factor of the bearing's table. */
  readonly Y: number;
  /** Rotation factor, default 1. */
  readonly V?: number | undefined;
}

export interface BearingLoad {
  /** Equivalent dynamic load, N. */
  readonly P_N: number;
  readonly notes: readonly Message[];
}

/**
 * P = X V Fr + Y Fa. Negative inputs are refused; a result below V Fr is noted, since the tables that X and Y
 * come from then ask for X = 1, Y = 0.
 */
export function bearingLoad(input: BearingLoadInput): Result<BearingLoad> {
  const zero = atLeast(0);
  const faults = checkNumbers(input, { Fr_N: zero, Fa_N: zero, X: zero, Y: zero, V: above(0) });
  if (faults.length > 0) return fail(faults);
  const { Fr_N, Fa_N, X, Y, V = 1 } = input;
  const P_N = X * V * Fr_N + Y * Fa_N;
  const notes = P_N < V * Fr_N ? [message('mechanics.note.load-below-radial')] : [];
  return finished({ P_N, notes });
}
