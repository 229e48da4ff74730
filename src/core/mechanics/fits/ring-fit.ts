/**
 * Fit of a rolling bearing's ring on its seat: limits of the seat by ISO 286, of the ring by ISO 492, class Normal
 * (bearing-ring-tolerance.ts, from memory). Clearance positive, interference negative.
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
import { bearingRingLimits } from './bearing-ring-tolerance';
import { toMillimetres } from './iso-fit';
import { isoLimits } from './iso-limits';

export interface RingFitInput {
  /** Which surface of the bearing sits there. */
  readonly ring: 'bore' | 'outside';
  readonly size_m: number;
  /** ISO class of the seat: of the shaft for a bore ('g6'), of the housing for an outside diameter ('P6'). */
  readonly seat: string;
}

export interface RingFit {
  readonly seat_upper_m: number;
  readonly seat_lower_m: number;
  readonly ring_upper_m: number;
  readonly ring_lower_m: number;
  readonly clearance_max_m: number;
  /** Negative: interference. */
  readonly clearance_min_m: number;
  readonly character: 'clearance' | 'transition' | 'interference';
  readonly notes: readonly Message[];
}

/** Refused: sizes and classes outside the tables. */
export function ringFit({ ring, size_m, seat }: RingFitInput): Result<RingFit> {
  const faults = checkNumbers({ size_m }, { size_m: above(0) });
  if (faults.length > 0) return fail(faults);
  const size_mm = toMillimetres(size_m);
  const limits = bearingRingLimits(ring, size_mm);
  const found = isoLimits(size_mm, seat, ring === 'bore' ? 'shaft' : 'hole');
  if (limits === null)
    faults.push(faultAt('size_m', message('expected.within', { low: 0.01, high: 0.4 }), size_m));
  if (!found.ok) faults.push(faultAt('seat', found.expected, seat));
  if (limits === null || !found.ok) return fail(faults);
  const [hole, shaft] = ring === 'bore' ? [limits, found.limits] : [found.limits, limits];
  const greatest = hole.upper_um - shaft.lower_um;
  const least = hole.lower_um - shaft.upper_um;
  return finished({
    seat_upper_m: found.limits.upper_um / 1e6,
    seat_lower_m: found.limits.lower_um / 1e6,
    ring_upper_m: limits.upper_um / 1e6,
    ring_lower_m: limits.lower_um / 1e6,
    clearance_max_m: greatest / 1e6,
    clearance_min_m: least / 1e6,
    character:
      least >= 0
        ? ('clearance' as const)
        : greatest <= 0
          ? ('interference' as const)
          : ('transition' as const),
    notes: [message('mechanics.note.ring-tolerance-unconfirmed')],
  });
}
