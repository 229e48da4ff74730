/** Seats of a machine in numbers: the limits of a fit, the wall round a bore, the ring of a bearing that is tight. */
import { kindNamed, type Kind, type Machine, type Relation } from '../machine';
import { isoFit, ringFit } from '../mechanics';

export type Seat = Extract<Relation, { type: 'seat' }>;
type RingParams = Extract<Kind['params'], { builder: 'spherical-roller-bearing' | 'tapered-roller-bearing' }>;

export interface SeatLimits {
  /** Least and greatest clearance of the diameter, m; negative is interference. */
  readonly clearance_m: readonly [number, number];
  /** Which calculation gives it. */
  readonly calculation: 'iso-fit' | 'ring-fit';
}

export interface TightRingSeat {
  readonly diameter_m: number;
  /** Greatest, of the diameter. */
  readonly interference_m: number;
  readonly bearing: RingParams;
}

export const seatBetween = (machine: Machine, inner: string, outer: string): Seat | undefined =>
  machine.relations.find((r): r is Seat => r.type === 'seat' && r.inner === inner && r.outer === outer);

const bearingOf = (machine: Machine, id: string): RingParams | null => {
  const params = kindNamed(machine, id)?.params;
  return params?.builder === 'spherical-roller-bearing' || params?.builder === 'tapered-roller-bearing'
    ? params
    : null;
};

/** Limits from the seat's ISO 286 classes (and ISO 492 for a bearing's ring); null where its fit is words only. */
export function seatLimits(machine: Machine, seat: Seat): SeatLimits | null {
  const size_m = seat.diameter_m;
  if (size_m === undefined) return null;
  const pair = /^([A-Z]+\d+)\/([a-z]+\d+)$/.exec(seat.fit);
  if (pair !== null) {
    const fit = isoFit({ size_m, hole: pair[1] ?? '', shaft: pair[2] ?? '' });
    return fit.ok
      ? { clearance_m: [fit.value.clearance_min_m, fit.value.clearance_max_m], calculation: 'iso-fit' }
      : null;
  }
  const ring =
    bearingOf(machine, seat.inner) !== null
      ? 'outside'
      : bearingOf(machine, seat.outer) !== null
        ? 'bore'
        : null;
  if (ring === null) return null;
  const fit = ringFit({ ring, size_m, seat: seat.fit });
  return fit.ok
    ? { clearance_m: [fit.value.clearance_min_m, fit.value.clearance_max_m], calculation: 'ring-fit' }
    : null;
}

/** Outside diameter of the wall round a bore, m: of the longest stretch with that bore; null where none has it. */
export function wallOutside_m(machine: Machine, outer: string, diameter_m: number): number | null {
  const params = kindNamed(machine, outer)?.params;
  if (params?.builder !== 'turned') return null;
  const stretch = params.stations
    .filter((s) => Math.abs(2 * s.inner_m - diameter_m) < 2e-4)
    .sort((a, b) => b.to_x_m - b.from_x_m - (a.to_x_m - a.from_x_m))[0];
  return stretch === undefined ? null : stretch.outer_m + (stretch.outer_end_m ?? stretch.outer_m);
}

/** A bearing's outer ring in its housing; null where there is no such seat. */
export function tightRingSeat(machine: Machine, inner: string, outer: string): TightRingSeat | null {
  const seat = seatBetween(machine, inner, outer);
  const bearing = bearingOf(machine, inner);
  if (seat?.diameter_m === undefined || bearing === null) return null;
  const limits = seatLimits(machine, seat);
  const interference_m = limits === null ? (seat.interference_m ?? 0) : Math.max(0, -limits.clearance_m[0]);
  return { diameter_m: seat.diameter_m, interference_m, bearing };
}
