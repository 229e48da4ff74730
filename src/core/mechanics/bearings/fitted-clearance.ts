/**
 * Radial internal clearance that is left in a bearing after mounting and at running temperature.
 *
 * An interference on the shaft widens the inner raceway, one in the housing narrows the outer raceway, and an
 * inner ring warmer than the outer one takes alpha dT D more (D: outer raceway; the rollers count as warm).
 * Raceway changes by thick-cylinder theory: widening of a ring's outside by an inner pressure,
 * 2 p A^2 B / (E (B^2 - A^2)) with inside A and outside B, and the mirror image for an outer pressure.
 * Source: T. A. Harris, Rolling Bearing Analysis (from memory). Smoothing of rough seats is left out, so the
 * loss is on the large side.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  faultAt,
  finite,
  finished,
  message,
  type Fault,
  type Message,
  type Result,
} from '../../kernel';
import { bearingRingLimits } from '../fits/bearing-ring-tolerance';
import { ringRatio } from '../fits/interference-fit';
import { toMillimetres } from '../fits/iso-fit';
import { isoLimits } from '../fits/iso-limits';
import { clearanceBand, type ClearanceClass, type RollerBearingType } from './clearance-table';

export interface FittedClearanceInput {
  readonly type: RollerBearingType;
  readonly clearance_class: ClearanceClass;
  readonly bore_m: number;
  readonly outside_m: number;
  /** Raceway diameters; default a quarter and three quarters of the way from bore to outside. */
  readonly inner_raceway_m?: number | undefined;
  readonly outer_raceway_m?: number | undefined;
  /** ISO class of the seat on the shaft, such as 'g6'. */
  readonly shaft: string;
  /** ISO class of the seat in the housing, such as 'P6'. */
  readonly housing: string;
  /** Bore of a hollow shaft, default 0. */
  readonly shaft_bore_m?: number | undefined;
  /** Outside diameter of the housing; left out: a very thick one. */
  readonly housing_outside_m?: number | undefined;
  /** Inner ring warmer than outer ring by this, default 0. */
  readonly temperature_difference_K?: number | undefined;
  /** Default 12e-6 (steel). */
  readonly alpha_per_K?: number | undefined;
}

export interface FittedClearance {
  /** Of the bearing as bought. */
  readonly clearance_min_m: number;
  readonly clearance_max_m: number;
  /** Interference of the seats, negative where there is play. */
  readonly shaft_interference_min_m: number;
  readonly shaft_interference_max_m: number;
  readonly housing_interference_min_m: number;
  readonly housing_interference_max_m: number;
  readonly temperature_loss_m: number;
  /** Left when running; below 0 the bearing runs preloaded. */
  readonly fitted_min_m: number;
  readonly fitted_max_m: number;
  readonly notes: readonly Message[];
}

/** Refused: sizes and classes outside the tables, diameters out of order. */
export function fittedClearance(input: FittedClearanceInput): Result<FittedClearance> {
  const { bore_m, outside_m, shaft_bore_m = 0, housing_outside_m = Infinity } = input;
  const { inner_raceway_m = bore_m + (outside_m - bore_m) / 4 } = input;
  const { outer_raceway_m = outside_m - (outside_m - bore_m) / 4 } = input;
  const faults = checkNumbers(input, {
    bore_m: above(0),
    outside_m: above(0),
    inner_raceway_m: above(0),
    outer_raceway_m: above(0),
    shaft_bore_m: atLeast(0),
    housing_outside_m: above(0),
    temperature_difference_K: finite,
    alpha_per_K: above(0),
  });
  faults.push(
    ...checkOrder([
      ['shaft_bore_m', shaft_bore_m],
      ['bore_m', bore_m],
      ['inner_raceway_m', inner_raceway_m],
      ['outer_raceway_m', outer_raceway_m],
      ['outside_m', outside_m],
      ['housing_outside_m', housing_outside_m],
    ]),
  );
  const bore_mm = toMillimetres(bore_m);
  const outside_mm = toMillimetres(outside_m);
  const band = clearanceBand(input.type, bore_mm, input.clearance_class);
  const bore = bearingRingLimits('bore', bore_mm);
  const outside = bearingRingLimits('outside', outside_mm);
  const shaft = isoLimits(bore_mm, input.shaft, 'shaft');
  const housing = isoLimits(outside_mm, input.housing, 'hole');
  if (band === null)
    faults.push(faultAt('bore_m', message('expected.within', { low: 0.05, high: 0.2 }), bore_m));
  if (outside === null) {
    faults.push(faultAt('outside_m', message('expected.within', { low: 0.01, high: 0.5 }), outside_m));
  }
  if (!shaft.ok) faults.push(faultAt('shaft', shaft.expected, input.shaft));
  if (!housing.ok) faults.push(faultAt('housing', housing.expected, input.housing));
  if (faults.length > 0 || band === null || bore === null || outside === null || !shaft.ok || !housing.ok) {
    return fail(faults);
  }

  const onShaft = [shaft.limits.lower_um - bore.upper_um, shaft.limits.upper_um - bore.lower_um] as const;
  const inHousing = [
    outside.lower_um - housing.limits.upper_um,
    outside.upper_um - housing.limits.lower_um,
  ] as const;
  const inner = innerRacewayShare(shaft_bore_m, bore_m, inner_raceway_m);
  const outer = outerRacewayShare(outer_raceway_m, outside_m, housing_outside_m);
  const { temperature_difference_K = 0, alpha_per_K = 12e-6 } = input;
  const heat_um = alpha_per_K * temperature_difference_K * outer_raceway_m * 1e6;
  const loss = (end: 0 | 1) =>
    inner * Math.max(0, onShaft[end]) + outer * Math.max(0, inHousing[end]) + heat_um;
  const fitted_min_m = (band[0] - loss(1)) / 1e6;
  const notes: Message[] = [message('mechanics.note.clearance-tables-unconfirmed')];
  if (fitted_min_m < 0) notes.push(message('mechanics.note.may-run-preloaded'));
  return finished({
    clearance_min_m: band[0] / 1e6,
    clearance_max_m: band[1] / 1e6,
    shaft_interference_min_m: onShaft[0] / 1e6,
    shaft_interference_max_m: onShaft[1] / 1e6,
    housing_interference_min_m: inHousing[0] / 1e6,
    housing_interference_max_m: inHousing[1] / 1e6,
    temperature_loss_m: heat_um / 1e6,
    fitted_min_m,
    fitted_max_m: (band[1] - loss(0)) / 1e6,
    notes,
  });
}

/**
 * Widening of the inner raceway over the interference; B/C on a solid shaft. Ring and shaft are of one steel, so
 * modulus and Poisson's ratio drop out.
 */
export function innerRacewayShare(shaftBore_m: number, bore_m: number, raceway_m: number): number {
  const ring = ringRatio(bore_m, raceway_m);
  const shaft = ringRatio(shaftBore_m, bore_m);
  // 2 A^2 B / (B^2 - A^2) = (ratio - 1) B
  return ((ring - 1) * raceway_m) / (bore_m * (ring + shaft));
}

/** Narrowing of the outer raceway over the interference; raceway / outside in a very thick housing (Infinity). */
export function outerRacewayShare(raceway_m: number, outside_m: number, housingOutside_m: number): number {
  const ring = ringRatio(raceway_m, outside_m);
  const housing = ringRatio(outside_m, housingOutside_m);
  // narrowing of the inside by an outer pressure: 2 B^2 A / (B^2 - A^2) = (ratio + 1) A
  return ((ring + 1) * raceway_m) / (outside_m * (ring + housing));
}

/** Diameters must grow from one to the next. */
function checkOrder(sizes: readonly (readonly [string, number])[]): Fault[] {
  const faults: Fault[] = [];
  for (let i = 1; i < sizes.length; i += 1) {
    const [, smaller] = sizes[i - 1] ?? ['', 0];
    const [key, size] = sizes[i] ?? ['', 0];
    if (Number.isFinite(smaller) && size <= smaller) {
      faults.push(faultAt(key, message('expected.above', { limit: smaller }), size));
    }
  }
  return faults;
}
