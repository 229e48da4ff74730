/**
 * What eyes and shackles still carry when the pull is not in line. Shouldered eye bolt, by the angle from its own axis:
 * 100 % to 5 degrees, 80 % at 15, 65 % at 30, 30 % at 45, 25 % at 90 (a trade table that names no standard; ASME B18.15
 * and B30.26 disagree about listing any: confirm). Screw-pin or bolt shackle, by the angle from its bow's line: 100 % in
 * line, 70 % at 45, 50 % at 90 degrees (ASME B30.26, from memory). Between two rows the steeper row's share is taken.
 */
import {
  above,
  checkNumbers,
  fail,
  finished,
  message,
  within,
  type Message,
  type Result,
} from '../../kernel';

export interface RiggingInput {
  /** Angle of the pull: from the eye bolt's axis, and from the shackle's line. */
  readonly angle_deg: number;
  /** Rated capacity in line; with it the capacity at the angle is given. */
  readonly rated_kg?: number | undefined;
  /** Pull of the leg, to compare. */
  readonly load_kg?: number | undefined;
}

export interface Rigging {
  readonly eye_share: number;
  readonly shackle_share: number;
  readonly eye_kg: number | null;
  readonly shackle_kg: number | null;
  /** Rated capacity in line that the load asks of each; null without a load. */
  readonly eye_needed_kg: number | null;
  readonly shackle_needed_kg: number | null;
  readonly notes: readonly Message[];
}

const EYE = [
  [5, 1],
  [15, 0.8],
  [30, 0.65],
  [45, 0.3],
  [90, 0.25],
] as const;
const SHACKLE = [
  [5, 1],
  [45, 0.7],
  [90, 0.5],
] as const;

const shareAt = (rows: readonly (readonly [number, number])[], angle_deg: number): number =>
  rows.find(([angle]) => angle_deg <= angle + 1e-9)?.[1] ?? rows[rows.length - 1]![1];

/** Refused: angles outside 0 to 90 degrees. */
export function rigging(input: RiggingInput): Result<Rigging> {
  const faults = checkNumbers(input, { angle_deg: within(0, 90), rated_kg: above(0), load_kg: above(0) });
  if (faults.length > 0) return fail(faults);
  const eye_share = shareAt(EYE, input.angle_deg);
  const shackle_share = shareAt(SHACKLE, input.angle_deg);
  const { rated_kg, load_kg } = input;
  const notes = [message('mechanics.note.eye-table-unconfirmed')];
  if (input.angle_deg > 45) notes.push(message('mechanics.note.use-swivel-ring'));
  return finished({
    eye_share,
    shackle_share,
    eye_kg: rated_kg === undefined ? null : rated_kg * eye_share,
    shackle_kg: rated_kg === undefined ? null : rated_kg * shackle_share,
    eye_needed_kg: load_kg === undefined ? null : load_kg / eye_share,
    shackle_needed_kg: load_kg === undefined ? null : load_kg / shackle_share,
    notes,
  });
}
