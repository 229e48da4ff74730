/**
 * Lifting by hand: the recommended weight limit for now and then lifting by one person, both hands,
 * RWL = 23 kg x HM x VM x DM x AM x CM with HM = 0.25 / H, VM = 1 - 0.3 |V - 0.75|, DM = 0.82 + 0.045 / D,
 * AM = 1 - 0.0032 A (metres, degrees); the frequency factor is 1 (at most one lift in five minutes for up to an hour).
 * Source: T. R. Waters, V. Putz-Anderson, A. Garg, Applications Manual for the Revised NIOSH Lifting Equation,
 * DHHS (NIOSH) 94-110. Reference mass 25 kg: ISO 11228-1 (from memory).
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

export type HandCoupling = 'good' | 'fair' | 'poor';

export interface LiftLimitInput {
  readonly mass_kg: number;
  /** Hands ahead of the ankles, default 0.25 m; at most 0.63. */
  readonly horizontal_m?: number | undefined;
  /** Hands above the floor at the start, default 0.75 m, 0 to 1.75. */
  readonly vertical_m?: number | undefined;
  /** Height lifted through, up to 1.75 m, default 0.25 m (less counts as 0.25). */
  readonly travel_m?: number | undefined;
  /** Twist of the body, 0 to 135 degrees, default 0. */
  readonly twist_deg?: number | undefined;
  /** Grip, default 'good'. */
  readonly coupling?: HandCoupling | undefined;
}

export interface LiftLimit {
  /** Recommended limit at this posture. */
  readonly limit_kg: number;
  /** Mass over limit. */
  readonly lifting_index: number;
  /** ISO 11228-1 reference mass for one person. */
  readonly reference_kg: number;
  /** By hand only while within both. */
  readonly by_hand: boolean;
  readonly notes: readonly Message[];
}

const LOAD_CONSTANT_KG = 23;
const REFERENCE_KG = 25;
/** Grips: below, and from 0.75 m hand height on. */
const COUPLING: Readonly<Record<HandCoupling, readonly [number, number]>> = {
  good: [1, 1],
  fair: [0.95, 1],
  poor: [0.9, 0.9],
};

/** Refused: postures outside the ranges of the equation, for which it gives no limit. */
export function liftLimit(input: LiftLimitInput): Result<LiftLimit> {
  const faults = checkNumbers(input, {
    mass_kg: above(0),
    horizontal_m: within(0, 0.63),
    vertical_m: within(0, 1.75),
    travel_m: within(0, 1.75),
    twist_deg: within(0, 135),
  });
  if (faults.length > 0) return fail(faults);
  const { mass_kg, horizontal_m = 0.25, vertical_m = 0.75, travel_m = 0.25, twist_deg = 0 } = input;
  const grip = COUPLING[input.coupling ?? 'good'][vertical_m < 0.75 ? 0 : 1];
  const limit_kg =
    LOAD_CONSTANT_KG *
    (0.25 / Math.max(0.25, horizontal_m)) *
    (1 - 0.3 * Math.abs(vertical_m - 0.75)) *
    Math.min(1, 0.82 + 0.045 / Math.max(0.25, travel_m)) *
    (1 - 0.0032 * twist_deg) *
    grip;
  const by_hand = mass_kg <= Math.min(limit_kg, REFERENCE_KG);
  return finished({
    limit_kg,
    lifting_index: mass_kg / limit_kg,
    reference_kg: REFERENCE_KG,
    by_hand,
    notes: by_hand ? [] : [message('mechanics.note.use-hoist')],
  });
}
