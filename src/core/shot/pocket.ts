/** The pocket behind the baffle, as the readings count it. */
import { distanceToLeg, baffleLegs, type Leg } from './section';
import type { Baffle, Chamber } from './parameters';

/**
 * Where captured shot is counted, about O in the body frame.
 *
 * `lip_m` is the radius at which the steel comes nearest to O, less half its thickness: shot nearer to O passes over
 * the lip. `spill_m` is the least radius at which a level pocket does not spill: the lip, or the near wall where
 * that stands further out. The pocket reaches from leg 1 to the place where the circle `spill_m` meets the wall.
 */
export interface Pocket {
  readonly leg1: Leg;
  readonly pocket_side: 1 | -1;
  readonly lip_m: number;
  readonly spill_m: number;
  /** Angles about O, rad: the foot of leg 1, and how far the sector reaches from it towards either side. */
  readonly foot_rad: number;
  readonly back_rad: number;
  readonly end_rad: number;
}

/** The pocket of a chamber; null without a baffle. */
export function pocketOf(chamber: Chamber, baffle: Baffle | null): Pocket | null {
  if (baffle === null) return null;
  const legs = baffleLegs(chamber, baffle);
  const leg1 = legs[0]!;
  const lip_m = Math.min(...legs.map((leg) => distanceToLeg(leg, 0, 0))) - baffle.half_thickness_m;
  const near = nearWall(chamber);
  const spill_m = Math.max(lip_m, near);
  const side = baffle.pocket_side;
  const foot_rad = Math.atan2(leg1.y1, leg1.x1);
  const tip = turn(side * (Math.atan2(leg1.y2, leg1.x2) - foot_rad));
  return {
    leg1,
    pocket_side: side,
    lip_m,
    spill_m,
    foot_rad,
    back_rad: Math.min(0, tip > Math.PI ? tip - 2 * Math.PI : tip),
    end_rad: wallMeets(chamber, foot_rad, side, spill_m),
  };
}

/** Whether a ball's centre counts as captured when its distance from O is at least `least_m`. */
export function inPocket(pocket: Pocket, x: number, y: number, least_m: number): boolean {
  if (x * x + y * y < least_m * least_m) return false;
  const { leg1, pocket_side } = pocket;
  // Leg 1 runs inwards: its +psi side is on the right of that way.
  const cross = (leg1.x2 - leg1.x1) * (y - leg1.y1) - (leg1.y2 - leg1.y1) * (x - leg1.x1);
  if (cross * pocket_side > 0) return false;
  const from = turn(pocket_side * (Math.atan2(y, x) - pocket.foot_rad));
  return from <= pocket.end_rad || from - 2 * Math.PI >= pocket.back_rad;
}

const turn = (angle: number): number => angle - 2 * Math.PI * Math.floor(angle / (2 * Math.PI));

/** Least distance of the chamber's wall from O. */
function nearWall(chamber: Chamber): number {
  const round = chamber.radius_m - chamber.eccentricity_m;
  return chamber.chord_x_m === null ? round : Math.min(round, Math.abs(chamber.chord_x_m));
}

/** Distance of the wall from O in the direction `angle`. */
function wallRadius(chamber: Chamber, angle: number): number {
  const { eccentricity_m: e, radius_m: r, chord_x_m } = chamber;
  const s = e * Math.sin(angle);
  const round = e * Math.cos(angle) + Math.sqrt(r * r - s * s);
  const c = Math.cos(angle);
  return chord_x_m !== null && chord_x_m < 0 && c < 0 ? Math.min(round, chord_x_m / c) : round;
}

/** How far from the foot, towards the pocket, the wall comes in to the radius `level`. */
function wallMeets(chamber: Chamber, foot: number, side: 1 | -1, level: number): number {
  const step = Math.PI / 3600;
  // A hair above the level, since the near wall touches the circle without crossing it.
  const limit = level + 1e-6 * chamber.radius_m;
  let angle = 0;
  while (angle < 2 * Math.PI && wallRadius(chamber, foot + side * angle) > limit) angle += step;
  return angle;
}
