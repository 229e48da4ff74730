/** The section of the chamber as plain geometry: the baffle's legs as segments in the body frame. */
import type { Baffle, Chamber } from './parameters';

/** A leg's centre line from (x1, y1) to (x2, y2), m. */
export interface Leg {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

const RAD = Math.PI / 180;

/**
 * Centre lines of the baffle's legs: W = C + R (cos psi, sin psi); leg 1 from W along psi + 180 + beta; leg 2 from
 * its end at right angles, -side x 90 degrees. Leg 2 is left out when its length is 0.
 */
export function baffleLegs(chamber: Chamber, baffle: Baffle): Leg[] {
  const psi = baffle.psi_deg * RAD;
  const d1 = psi + Math.PI + baffle.beta_deg * RAD;
  const x1 = chamber.eccentricity_m + chamber.radius_m * Math.cos(psi);
  const y1 = chamber.radius_m * Math.sin(psi);
  const x2 = x1 + baffle.leg1_m * Math.cos(d1);
  const y2 = y1 + baffle.leg1_m * Math.sin(d1);
  const legs = [{ x1, y1, x2, y2 }];
  if (baffle.leg2_m > 0) {
    const d2 = d1 - (baffle.side * Math.PI) / 2;
    legs.push({
      x1: x2,
      y1: y2,
      x2: x2 + baffle.leg2_m * Math.cos(d2),
      y2: y2 + baffle.leg2_m * Math.sin(d2),
    });
  }
  return legs;
}

/** Distance in m of the point (x, y) from a leg's centre line. */
export function distanceToLeg(leg: Leg, x: number, y: number): number {
  const dx = leg.x2 - leg.x1;
  const dy = leg.y2 - leg.y1;
  const along = ((x - leg.x1) * dx + (y - leg.y1) * dy) / (dx * dx + dy * dy);
  const s = Math.min(1, Math.max(0, along));
  return Math.hypot(x - leg.x1 - s * dx, y - leg.y1 - s * dy);
}
