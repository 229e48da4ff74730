/** ISO 286 fit of a hole and a shaft: limit deviations and the clearances they allow. Rules: iso-limits.ts. */
import { fail, faultAt, finished, type Fault, type Message, type Result } from '../../kernel';
import { isoLimits, type LimitDeviations } from './iso-limits';

export interface IsoFitInput {
  /** Nominal size, m, above 0 up to 0.5. */
  readonly size_m: number;
  /** Such as 'H7'. */
  readonly hole: string;
  /** Such as 'p6'. */
  readonly shaft: string;
}

export interface IsoFit {
  readonly hole_upper_m: number;
  readonly hole_lower_m: number;
  readonly shaft_upper_m: number;
  readonly shaft_lower_m: number;
  readonly clearance_max_m: number;
  /** Negative: interference. */
  readonly clearance_min_m: number;
  readonly character: 'clearance' | 'transition' | 'interference';
  readonly notes: readonly Message[];
}

/** Refused: sizes outside 0 to 500 mm, letters and grades that the tables do not hold. */
export function isoFit({ size_m, hole, shaft }: IsoFitInput): Result<IsoFit> {
  const size_mm = toMillimetres(size_m);
  const holeFound = isoLimits(size_mm, hole, 'hole');
  const shaftFound = isoLimits(size_mm, shaft, 'shaft');
  if (holeFound.ok && shaftFound.ok) return finished(fitOf(holeFound.limits, shaftFound.limits));
  const faults: Fault[] = [];
  for (const [key, name, found] of [
    ['hole', hole, holeFound],
    ['shaft', shaft, shaftFound],
  ] as const) {
    if (found.ok) continue;
    const isSize = found.expected.key === 'mechanics.expected.iso-size';
    if (isSize && faults.some((fault) => fault.path === 'size_m')) continue;
    faults.push(faultAt(isSize ? 'size_m' : key, found.expected, isSize ? size_m : name));
  }
  return fail(faults);
}

/** Millimetres, rounded to the nanometre, so that 0.08 m does not slip into the next range. */
export const toMillimetres = (size_m: number): number => Math.round(size_m * 1e9) / 1e6;

/** Metres from micrometres; dividing keeps the shortest decimal (51 um is 0.000051). */
const metres = (um: number): number => um / 1e6;

function fitOf(hole: LimitDeviations, shaft: LimitDeviations): IsoFit {
  const greatest = hole.upper_um - shaft.lower_um;
  const least = hole.lower_um - shaft.upper_um;
  return {
    hole_upper_m: metres(hole.upper_um),
    hole_lower_m: metres(hole.lower_um),
    shaft_upper_m: metres(shaft.upper_um),
    shaft_lower_m: metres(shaft.lower_um),
    clearance_max_m: metres(greatest),
    clearance_min_m: metres(least),
    character: least >= 0 ? 'clearance' : greatest <= 0 ? 'interference' : 'transition',
    notes: [],
  };
}
