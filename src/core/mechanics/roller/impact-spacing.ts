/**
 * Distance that the drum rolls from one blow to the next: s = v / f. Geometry. That 10 to 12 blows a foot are wanted
 * is an asphalt rule and only a guide on soil (common practice, no source).
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

const FOOT_M = 0.3048;

export interface ImpactSpacingInput {
  readonly frequency_Hz: number;
  readonly speed_m_s: number;
}

export interface ImpactSpacing {
  readonly spacing_m: number;
  /** Blows a metre and a foot of travel; null when standing. */
  readonly per_metre: number | null;
  readonly per_foot: number | null;
  readonly notes: readonly Message[];
}

export function impactSpacing(input: ImpactSpacingInput): Result<ImpactSpacing> {
  const faults = checkNumbers(input, { frequency_Hz: above(0), speed_m_s: atLeast(0) });
  if (faults.length > 0) return fail(faults);
  const spacing_m = input.speed_m_s / input.frequency_Hz;
  if (spacing_m === 0) {
    return finished({
      spacing_m,
      per_metre: null,
      per_foot: null,
      notes: [message('mechanics.note.standing')],
    });
  }
  return finished({ spacing_m, per_metre: 1 / spacing_m, per_foot: FOOT_M / spacing_m, notes: [] });
}
