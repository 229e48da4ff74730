/**
 * Tension in the legs of a sling: T = m g / (n sin a), a from the horizontal; factor 1 / sin a.
 * Source: ASME B30.9 (secondary listing): 1.155 at 60, 1.414 at 45, 2 at 30 degrees; below 30 degrees not to be
 * used. Of 3 or 4 legs only 2 count, since a stiff load may hang on two of them (common practice). European tables
 * count the angle from the vertical instead.
 */
import {
  above,
  checkNumbers,
  fail,
  finished,
  message,
  STANDARD_GRAVITY,
  within,
  wholeWithin,
  type Message,
  type Result,
} from '../../kernel';

export interface SlingInput {
  readonly mass_kg: number;
  /** 1 to 4; 3 and 4 count as 2. A single leg hangs straight, at 90 degrees. */
  readonly legs: number;
  readonly angle_from_horizontal_deg: number;
}

export interface Sling {
  readonly leg_tension_N: number;
  /** The same as a mass, to compare with a capacity. */
  readonly leg_mass_kg: number;
  /** Tension over that of vertical legs. */
  readonly factor: number;
  readonly legs_counted: number;
  readonly notes: readonly Message[];
}

/** Flattest angle from the horizontal that is allowed. */
export const LEAST_SLING_ANGLE_DEG = 30;

/** Refused: an angle below 30 or above 90 degrees, a single leg off the vertical. */
export function sling(input: SlingInput): Result<Sling> {
  const least = input.legs === 1 ? 90 : LEAST_SLING_ANGLE_DEG;
  const faults = checkNumbers(input, {
    mass_kg: above(0),
    legs: wholeWithin(1, 4),
    angle_from_horizontal_deg: within(least, 90),
  });
  if (faults.length > 0) return fail(faults);
  const legs_counted = Math.min(2, input.legs);
  const factor = 1 / Math.sin((input.angle_from_horizontal_deg * Math.PI) / 180);
  const leg_mass_kg = (input.mass_kg / legs_counted) * factor;
  const notes = input.legs > 2 ? [message('mechanics.note.two-legs-count', { legs: input.legs })] : [];
  return finished({
    leg_tension_N: leg_mass_kg * STANDARD_GRAVITY,
    leg_mass_kg,
    factor,
    legs_counted,
    notes,
  });
}
