/**
 * The section of the shot chamber: a round bore, an optional flat face and an optional L-shaped baffle.
 *
 * Body frame of the housing: origin O on the shaft axis, +x towards the chamber's centre C = (eccentricity, 0),
 * angles counter-clockwise from +x. Steel of the baffle is all points nearer than its half thickness to a leg.
 */
import { panic } from '../../kernel';

/** Points within `radius_m` of C and, where `chord_x_m` is a number, also x > chord_x_m. */
export interface ChamberSection {
  readonly radius_m: number;
  /** Distance of the chamber's centre from the shaft axis, 0 or more. */
  readonly eccentricity_m: number;
  readonly chord_x_m: number | null;
}

/**
 * An L of plate on the wall at W = C + radius (cos psi, sin psi): leg 1 from W to K along d1 = psi + 180 + beta,
 * leg 2 from K along d2 = d1 - side x 90. A leg of length 0 is no leg.
 */
export interface BaffleSection {
  readonly psi_deg: number;
  readonly beta_deg: number;
  readonly leg1_m: number;
  readonly leg2_m: number;
  readonly side: 1 | -1;
  /** Side of leg 1 on which the pocket lies: +1 the side of greater psi. */
  readonly pocket_side: 1 | -1;
  readonly half_thickness_m: number;
}

/** A leg's centre line; its steel is all points nearer than the half thickness. */
export interface Leg {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Chamber and legs as the numbers that the rest works on. */
export interface Section {
  readonly radius_m: number;
  readonly eccentricity_m: number;
  /** Flat face, or minus infinity where there is none (or where it does not cut the circle). */
  readonly chordX_m: number;
  readonly half_m: number;
  readonly legs: readonly Leg[];
  /** Leg 1 alone, for the pocket; null where there is no baffle or leg 1 has no length. */
  readonly leg1: Leg | null;
}

const DEGREE = Math.PI / 180;

/** Throws where the chamber has no size, the flat face leaves nothing of it, or a number is not finite. */
export function makeSection(chamber: ChamberSection, baffle: BaffleSection | null): Section {
  const { radius_m, eccentricity_m, chord_x_m } = chamber;
  if (!(radius_m > 0) || !Number.isFinite(radius_m)) {
    panic('mechanics/makeSection', 'chamber radius_m', radius_m, '> 0');
  }
  if (!(eccentricity_m >= 0) || !Number.isFinite(eccentricity_m)) {
    panic('mechanics/makeSection', 'chamber eccentricity_m', eccentricity_m, '0 or more');
  }
  if (chord_x_m !== null && !(chord_x_m < eccentricity_m + radius_m)) {
    panic('mechanics/makeSection', 'chamber chord_x_m', chord_x_m, 'below eccentricity_m + radius_m');
  }
  const cuts = chord_x_m !== null && chord_x_m > eccentricity_m - radius_m;
  const base = { radius_m, eccentricity_m, chordX_m: cuts ? chord_x_m : -Infinity };
  if (baffle === null) return { ...base, half_m: 0, legs: [], leg1: null };

  const { psi_deg, beta_deg, leg1_m, leg2_m, side, half_thickness_m } = baffle;
  const wanted: readonly (readonly [string, number, boolean])[] = [
    ['psi_deg', psi_deg, true],
    ['beta_deg', beta_deg, true],
    ['leg1_m', leg1_m, leg1_m >= 0],
    ['leg2_m', leg2_m, leg2_m >= 0],
    ['half_thickness_m', half_thickness_m, half_thickness_m > 0],
  ];
  for (const [name, value, good] of wanted) {
    if (!good || !Number.isFinite(value))
      panic('mechanics/makeSection', `baffle ${name}`, value, 'a length or angle');
  }
  const psi = psi_deg * DEGREE;
  const d1 = psi + Math.PI + beta_deg * DEGREE;
  const d2 = d1 - (side * Math.PI) / 2;
  const leg1 = legFrom(eccentricity_m + radius_m * Math.cos(psi), radius_m * Math.sin(psi), d1, leg1_m);
  const leg2 = legFrom(leg1.x2, leg1.y2, d2, leg2_m);
  const legs = [...(leg1_m > 0 ? [leg1] : []), ...(leg2_m > 0 ? [leg2] : [])];
  return { ...base, half_m: half_thickness_m, legs, leg1: leg1_m > 0 ? leg1 : null };
}

const legFrom = (x: number, y: number, direction_rad: number, length_m: number): Leg => ({
  x1: x,
  y1: y,
  x2: x + length_m * Math.cos(direction_rad),
  y2: y + length_m * Math.sin(direction_rad),
});

/** Distance of a point from a leg's centre line. */
export function distanceToLeg(leg: Leg, x: number, y: number): number {
  const dx = leg.x2 - leg.x1;
  const dy = leg.y2 - leg.y1;
  const along = ((x - leg.x1) * dx + (y - leg.y1) * dy) / (dx * dx + dy * dy);
  const t = along < 0 ? 0 : along > 1 ? 1 : along;
  const ex = x - leg.x1 - t * dx;
  const ey = y - leg.y1 - t * dy;
  return Math.sqrt(ex * ex + ey * ey);
}

/** True inside the chamber, steel or not. */
export function isInChamber(section: Section, x: number, y: number): boolean {
  const dx = x - section.eccentricity_m;
  return dx * dx + y * y < section.radius_m * section.radius_m && x > section.chordX_m;
}

/** True inside the steel of a leg. */
export function isInSteel(section: Section, x: number, y: number): boolean {
  for (const leg of section.legs) if (distanceToLeg(leg, x, y) < section.half_m) return true;
  return false;
}

/** True where shot can be. */
export const isFree = (section: Section, x: number, y: number): boolean =>
  isInChamber(section, x, y) && !isInSteel(section, x, y);

/** Area of the chamber with the baffle's steel still in it. */
export function grossArea_m2(section: Section): number {
  const { radius_m: r, eccentricity_m: e, chordX_m } = section;
  if (chordX_m === -Infinity) return Math.PI * r * r;
  const half = Math.acos((chordX_m - e) / r);
  return r * r * (half - Math.sin(half) * Math.cos(half));
}
