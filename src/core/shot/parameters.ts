/**
 * What a run of the loose-shot simulation is made of. Names and frame are those of the settled calculation:
 * body frame of the housing, origin O on the shaft axis, +x towards the chamber centre C = (eccentricity, 0),
 * the axis out of the page along the machine's +x; at rest body +x points down.
 */
import type { SpinUp } from './spin-up';

/** Section of the chamber: points within radius_m of C and, with a flat face, x > chord_x_m. */
export interface Chamber {
  readonly radius_m: number;
  readonly eccentricity_m: number;
  /** Place of the flat face; null for a round chamber. */
  readonly chord_x_m: number | null;
}

/** The L-shaped plate on the wall; see `baffleLegs` for what each number does. */
export interface Baffle {
  /** Place of the foot on the wall, about C, degrees counter-clockwise from +x. */
  readonly psi_deg: number;
  /** Lean of leg 1 off the inward normal, degrees. */
  readonly beta_deg: number;
  readonly leg1_m: number;
  /** 0 for no hook. */
  readonly leg2_m: number;
  /** +1 or -1: the hook turns by -90 or +90 degrees from leg 1. */
  readonly side: 1 | -1;
  /** Side of leg 1 that holds the pocket: +1 the +psi side. */
  readonly pocket_side: 1 | -1;
  readonly half_thickness_m: number;
}

/** The shot of the whole chamber. */
export interface Shot {
  readonly mass_kg: number;
  /** Length of the chamber along the shaft. */
  readonly length_m: number;
  readonly density_kg_m3: number;
  /** Bulk packing (solid share of the bulk volume) that turns mass into a fill. */
  readonly packing: number;
  readonly ball_diameter_m: number;
  /** Half width of the uniform spread of diameters, as a share; 0.1 keeps the shot from crystallising. */
  readonly size_spread: number;
}

/** The part of the chamber that is simulated. */
export interface Slice {
  /** 3: balls in a slice of `depth_m`. 2: discs. */
  readonly dimension: 2 | 3;
  readonly depth_m: number;
  /** 'periodic': the slice repeats along the shaft. 'walls': flat end plates. */
  readonly ends: 'periodic' | 'walls';
}

/** Which way the operator's lever turns the housing: low is positive about the body axis, high negative. */
export type Direction = 'low' | 'high';

export interface ShotParameters {
  readonly chamber: Chamber;
  readonly baffle: Baffle | null;
  readonly shot: Shot;
  readonly slice: Slice;
  readonly direction: Direction;
  readonly spin_up: SpinUp;
  /** The run ends when this frequency is reached: beyond about 10 g all scales with speed and nothing moves. */
  readonly stop_Hz: number;
  readonly friction: { readonly ball: number; readonly wall: number };
  readonly restitution: number;
  /** Gravity on (9.80665 m/s2) or off. */
  readonly gravity: boolean;
  /** Angle of the housing at the start, rad; 0: heavy side down. */
  readonly start_angle_rad: number;
  readonly seed: number;
  /** Bound on the mean overlap of pressed balls, as a share of their diameter; sets the step (see time-step.ts). */
  readonly tolerance: number;
}

/** The numbers that a run starts from when nothing else is said; every one may be replaced. */
export const DEFAULT_RUN = {
  slice: { dimension: 3, depth_m: 0.06, ends: 'periodic' },
  direction: 'low',
  spin_up: { kind: 'quadratic', frequency_Hz: 30, time_s: 4 },
  stop_Hz: 6,
  friction: { ball: 0.3, wall: 0.3 },
  restitution: 0.5,
  gravity: true,
  start_angle_rad: 0,
  seed: 1,
  tolerance: 0.01,
} as const satisfies Omit<ShotParameters, 'chamber' | 'baffle' | 'shot'>;

/** +1 or -1: sense of rotation of a direction about the body axis. */
export const rotationSense = (direction: Direction): 1 | -1 => (direction === 'low' ? 1 : -1);

/** Area in m2 of the chamber's section, steel of the baffle not taken off. */
export function chamberArea(chamber: Chamber): number {
  const { radius_m: r, eccentricity_m: e, chord_x_m } = chamber;
  const disc = Math.PI * r * r;
  if (chord_x_m === null || chord_x_m <= e - r) return disc;
  const cut = Math.min(1, (chord_x_m - e) / r);
  // Segment kept: x > chord, half angle acos(cut) about C.
  const half = Math.acos(cut);
  return r * r * (half - Math.sin(half) * Math.cos(half));
}

/** Share of the chamber that the shot fills in bulk: mass / (density packing length area). */
export const fillOf = (chamber: Chamber, shot: Shot): number =>
  shot.mass_kg / (shot.density_kg_m3 * shot.packing * shot.length_m * chamberArea(chamber));

/** The shot mass in kg that gives a bulk fill; the inverse of `fillOf`. */
export const massOfFill = (chamber: Chamber, shot: Shot, fill: number): number =>
  fill * shot.density_kg_m3 * shot.packing * shot.length_m * chamberArea(chamber);

/** The same machine seen in a mirror: signs of psi, beta, side and pocket side change. */
export const mirrorBaffle = (baffle: Baffle): Baffle => ({
  ...baffle,
  psi_deg: -baffle.psi_deg,
  beta_deg: -baffle.beta_deg,
  side: baffle.side === 1 ? -1 : 1,
  pocket_side: baffle.pocket_side === 1 ? -1 : 1,
});
