/**
 * The exciter's study: how hard the drum shakes in each spin direction, with what a person has set, and the outlines
 * that a drawing of the housing needs. Panels and calculations call the same formulas of core/mechanics.
 */
import type { Message } from '../kernel';
import {
  bearingLoads,
  buildSettledChamber,
  chamberOutline,
  type BaffleSection,
  type Direction,
  exciterOutcome,
  type ExciterOutcome,
  exciterState,
  type OutlinePolygon,
  type SettledChamber,
  shotArea_m2,
  shotOutline,
} from '../mechanics';
import type { KindMass, KindSolid } from '../geometry';
import type { Machine } from '../machine';
import type { SettledFit } from '../shot';
import { exciterBasis, type ExciterBasis } from './exciter-basis';
import { type Settled, settledMoment } from './settled-shot';
import { ownShotParameters } from './shot-parameters';

/** Body frame of the housing, metres or kg m. */
export type BodyPoint = readonly [number, number];
export type Loop = readonly BodyPoint[];

export interface ShotBodyOutline {
  readonly loop: Loop;
  readonly holes: readonly Loop[];
  /** Held behind the baffle. */
  readonly pocket: boolean;
}

/** What a person may set; null is the machine's own value. */
export interface ExciterChoice {
  readonly frequencyHigh_Hz: number | null;
  readonly frequencyLow_Hz: number | null;
  /** Share of the chamber's section that the bulk of the shot fills. */
  readonly fill: number | null;
  readonly bafflePsi_deg: number | null;
  readonly baffleOn: boolean;
}

/** The machine as it is: nothing set, the baffle in its place. */
export const OWN_CHOICE: ExciterChoice = {
  frequencyHigh_Hz: null,
  frequencyLow_Hz: null,
  fill: null,
  bafflePsi_deg: null,
  baffleOn: true,
};

/** What the exciter does in one direction with one way of telling where its shot lies. */
export interface ExciterReading {
  /** Share of the shot held behind the baffle; null without shot. */
  readonly captured: number | null;
  readonly shot_kgm: BodyPoint;
  readonly shot_U_kgm: number;
  readonly total_kgm: BodyPoint;
  readonly U_kgm: number;
  readonly angle_deg: number | null;
  readonly force_N: number;
  readonly nominalAmplitude_m: number | null;
  readonly bearing_left_N: number;
  readonly bearing_right_N: number;
}

/** Half widths of the band about a simulated reading: at least 19 of 20 simulated runs lie within. */
export interface ExciterBand {
  readonly captured: number | null;
  readonly U_kgm: number;
  readonly force_N: number;
  readonly nominalAmplitude_m: number | null;
}

export interface DirectionStudy {
  readonly frequency_Hz: number;
  /** First moment of all that turns with the housing but the shot, body frame. */
  readonly housing_kgm: BodyPoint;
  /** Where `value` comes from: the level closed form, the table of simulated runs, or nowhere. */
  readonly surface: 'level' | 'settled' | 'unknown';
  /**
   * What is held for true. With the baffle fitted HIGH is the level closed form, which the simulation bears out; all
   * else is the simulation's table, and null where the table does not reach.
   */
  readonly value: ExciterReading | null;
  /** Shot that finds its level like a liquid. */
  readonly level: ExciterReading;
  /** What the table of simulated runs tells, whether or not it is the value; null where it does not reach. */
  readonly simulated: (ExciterReading & { readonly band: ExciterBand }) | null;
  /** Why the table tells nothing; empty where it does. */
  readonly reasons: readonly Message[];
  /** Outline of the level surface. */
  readonly shot: readonly ShotBodyOutline[];
  readonly notes: readonly Message[];
}

export interface HousingOutline {
  readonly outer: Loop;
  readonly inner: Loop;
  readonly baffle: Loop | null;
  /** Trim bar and its webs. */
  readonly fixed: readonly Loop[];
  /** Centre of the round chamber. */
  readonly centre_m: BodyPoint;
  /** Farthest steel from the shaft axis. */
  readonly reach_m: number;
}

export interface ExciterInputs {
  readonly frequencyHigh_Hz: number;
  readonly frequencyLow_Hz: number;
  readonly fill: number;
  readonly bafflePsi_deg: number;
}

export interface ExciterStudy {
  readonly high: DirectionStudy;
  readonly low: DirectionStudy;
  /** U low / U high; null where either is not known or high has none. */
  readonly ratio: number | null;
  readonly vibratingMass_kg: number;
  readonly shotMass_kg: number;
  readonly housing: HousingOutline;
  /** What is set now, and what the machine file says. */
  readonly inputs: ExciterInputs;
  readonly own: ExciterInputs;
}

/** Corners of a drawn circle. */
const CIRCLE_STEPS = 96;

const circleLoop = (centre: BodyPoint, radius_m: number): Loop =>
  Array.from({ length: CIRCLE_STEPS }, (_, i) => {
    const a = (2 * Math.PI * i) / CIRCLE_STEPS;
    return [centre[0] + radius_m * Math.cos(a), centre[1] + radius_m * Math.sin(a)] as const;
  });

/** Area and first moment of a polygon (shoelace formula). */
function polygonMoments(loop: Loop): { area_m2: number; moment_m3: BodyPoint } {
  let area = 0;
  let mx = 0;
  let my = 0;
  loop.forEach(([x, y], i) => {
    const [u, v] = loop[(i + 1) % loop.length]!;
    const twice = x * v - u * y;
    area += twice / 2;
    mx += (twice * (x + u)) / 6;
    my += (twice * (y + v)) / 6;
  });
  return { area_m2: area, moment_m3: [mx, my] };
}

/** First moment about the shaft of a baffle's steel over the chamber's length. */
function baffleMoment(chamber: SettledChamber, basis: ExciterBasis): BodyPoint {
  const perArea = basis.steel_kg_m3 * basis.chamberLength_m;
  return chamberOutline(chamber).baffle.reduce<BodyPoint>(
    (sum, piece) => {
      const { moment_m3 } = polygonMoments(piece.outer_m);
      return [sum[0] + perArea * moment_m3[0], sum[1] + perArea * moment_m3[1]];
    },
    [0, 0],
  );
}

const bodies = (polygons: readonly OutlinePolygon[], pocket: boolean): ShotBodyOutline[] =>
  polygons.map((p) => ({ loop: p.outer_m, holes: p.holes_m, pocket }));

function housingOutline(basis: ExciterBasis, chamber: SettledChamber): HousingOutline {
  const { housing } = basis;
  const centre: BodyPoint = [basis.chamber.eccentricity_m, 0];
  const outerRadius = basis.chamber.radius_m + housing.shell_m;
  const bar = housing.trim_bar;
  const angle = (bar.angle_deg * Math.PI) / 180;
  const along: BodyPoint = [Math.cos(angle), Math.sin(angle)];
  const across: BodyPoint = [-along[1], along[0]];
  const corner = (r: number, t: number): BodyPoint => [
    along[0] * r + across[0] * t,
    along[1] * r + across[1] * t,
  ];
  const [r0, r1, t] = [bar.arm_m - bar.radial_m / 2, bar.arm_m + bar.radial_m / 2, bar.tangential_m / 2];
  return {
    outer: circleLoop(centre, outerRadius),
    inner: circleLoop(centre, basis.chamber.radius_m),
    baffle: chamberOutline(chamber).baffle[0]?.outer_m ?? null,
    fixed: [[corner(r0, -t), corner(r1, -t), corner(r1, t), corner(r0, t)]],
    centre_m: centre,
    reach_m: basis.chamber.eccentricity_m + outerRadius,
  };
}

interface Prepared {
  readonly chamber: SettledChamber;
  readonly housing: HousingOutline;
  readonly fixed_kgm: BodyPoint;
}

/** Chambers already made ready, by machine and baffle: a slider that moves something else finds its own again. */
const prepared = new WeakMap<ExciterBasis, Map<string, Prepared>>();

function prepare(basis: ExciterBasis, psi_deg: number, on: boolean): Prepared {
  const cache = prepared.get(basis) ?? prepared.set(basis, new Map<string, Prepared>()).get(basis)!;
  const key = on ? String(psi_deg) : 'none';
  let found = cache.get(key);
  if (found === undefined) {
    const baffle: BaffleSection | null = on ? { ...basis.baffle, psi_deg } : null;
    const chamber = buildSettledChamber(basis.chamber, baffle);
    // The solids carry the machine's own baffle; another place of it, or none, changes the fixed moment by its steel.
    const own = baffleMoment(buildSettledChamber(basis.chamber, basis.baffle), basis);
    const now = baffleMoment(chamber, basis);
    const fixed_kgm: BodyPoint = [basis.fixed_kgm[0] - own[0] + now[0], basis.fixed_kgm[1] - own[1] + now[1]];
    found = { chamber, housing: housingOutline(basis, chamber), fixed_kgm };
    if (cache.size > 64) cache.clear();
    cache.set(key, found);
  }
  return found;
}

/**
 * The study; null where the machine has no shot exciter. A fill beyond the chamber's room is cut, with a note.
 * @param fit the machine's table of simulated runs, undefined where it has none: then LOW is not known. The start is
 *   the machine's own soft start whatever speeds are chosen: they only say where it ends, and by then the shot is frozen.
 */
export function exciterStudy(
  machine: Machine,
  solids: Readonly<Record<string, KindSolid>>,
  masses: Readonly<Record<string, KindMass>>,
  choice: ExciterChoice,
  fit: SettledFit | undefined,
): ExciterStudy | null {
  const basis = exciterBasis(machine, solids, masses);
  const run = ownShotParameters(machine, 'low');
  if (basis === null || run === null) return null;
  const { rest } = basis;
  const gross_m2 = Math.PI * basis.chamber.radius_m ** 2;
  const perArea = rest.shot_density_kg_m3 * rest.shot_packing * basis.chamberLength_m;
  const own: ExciterInputs = {
    frequencyHigh_Hz: rest.frequency_high_Hz,
    frequencyLow_Hz: rest.frequency_low_Hz,
    fill: rest.shot_mass_kg / (perArea * gross_m2),
    bafflePsi_deg: basis.baffle.psi_deg,
  };
  const inputs: ExciterInputs = {
    frequencyHigh_Hz: choice.frequencyHigh_Hz ?? own.frequencyHigh_Hz,
    frequencyLow_Hz: choice.frequencyLow_Hz ?? own.frequencyLow_Hz,
    fill: choice.fill ?? own.fill,
    bafflePsi_deg: choice.bafflePsi_deg ?? own.bafflePsi_deg,
  };
  const { chamber, housing, fixed_kgm } = prepare(basis, inputs.bafflePsi_deg, choice.baffleOn);
  const shot = {
    mass_kg: inputs.fill * gross_m2 * perArea,
    packing: rest.shot_packing,
    length_m: basis.chamberLength_m,
    density_kg_m3: rest.shot_density_kg_m3,
  };
  const vibratingMass_kg = basis.vibratingMass_kg + shot.mass_kg - rest.shot_mass_kg;

  const told = (direction: Direction): Settled =>
    settledMoment(fit, {
      chamber: basis.chamber,
      baffle: choice.baffleOn ? { ...basis.baffle, psi_deg: inputs.bafflePsi_deg } : null,
      shot,
      ball_diameter_m: run.shot.ball_diameter_m,
      size_spread: run.shot.size_spread,
      direction,
      spin_up: { kind: 'quadratic', frequency_Hz: rest.frequency_high_Hz, time_s: rest.soft_start_s },
      friction: rest.friction,
    });

  const reading = (outcome: ExciterOutcome, captured: number | null): ExciterReading => {
    const [ux, uy] =
      outcome.U_kgm > 0
        ? [outcome.total_kgm[0] / outcome.U_kgm, outcome.total_kgm[1] / outcome.U_kgm]
        : [1, 0];
    const axial = (k: 0 | 1): number =>
      basis.fixedAxial_kgm2[k] +
      (fixed_kgm[k] - basis.fixed_kgm[k] + outcome.shot_kgm[k]) * basis.chamberMiddle_m;
    const force_m =
      outcome.U_kgm > 0 ? (ux * axial(0) + uy * axial(1)) / outcome.U_kgm : basis.chamberMiddle_m;
    const loads = bearingLoads(outcome.force_N, {
      force_m,
      a_m: rest.bearings.left_x_m,
      b_m: rest.bearings.right_x_m,
    });
    return {
      captured,
      shot_kgm: outcome.shot_kgm,
      shot_U_kgm: outcome.shot_U_kgm,
      total_kgm: outcome.total_kgm,
      U_kgm: outcome.U_kgm,
      angle_deg: outcome.angle_deg,
      force_N: outcome.force_N,
      nominalAmplitude_m: outcome.nominal_amplitude_m,
      bearing_left_N: loads.a_N,
      bearing_right_N: loads.b_N,
    };
  };

  const study = (direction: Direction, frequency_Hz: number): DirectionStudy => {
    const at = { speed_rpm: frequency_Hz * 60, fixed_kgm, vibrating_mass_kg: vibratingMass_kg };
    const state = exciterState(chamber, shot, { direction, ...at });
    const level = reading(state, state.capture_fraction);
    const outline = shotOutline(chamber, chamber.settle(shotArea_m2(shot), direction));
    const settled = told(direction);
    let simulated: DirectionStudy['simulated'] = null;
    if (settled.known) {
      const { shot_kgm, band_kgm, captured, captured_band } = settled.moment;
      const outcome = exciterOutcome(shot_kgm, shot.mass_kg * basis.chamber.radius_m, at);
      simulated = {
        ...reading(outcome, captured),
        band: {
          captured: captured_band,
          U_kgm: band_kgm,
          force_N: band_kgm * (2 * Math.PI * frequency_Hz) ** 2,
          nominalAmplitude_m: vibratingMass_kg > 0 ? band_kgm / vibratingMass_kg : null,
        },
      };
    }
    const surface =
      direction === 'high' && choice.baffleOn ? 'level' : simulated === null ? 'unknown' : 'settled';
    return {
      frequency_Hz,
      housing_kgm: fixed_kgm,
      surface,
      value: surface === 'level' ? level : simulated,
      level,
      simulated,
      reasons: settled.known ? [] : settled.reasons,
      shot: [...bodies(outline.main, false), ...bodies(outline.pocket, true)],
      notes: state.notes,
    };
  };
  const high = study('high', inputs.frequencyHigh_Hz);
  const low = study('low', inputs.frequencyLow_Hz);
  const [H, L] = [high.value?.U_kgm ?? 0, low.value?.U_kgm ?? null];
  return {
    high,
    low,
    housing,
    inputs,
    own,
    vibratingMass_kg,
    ratio: L !== null && H > 0 ? L / H : null,
    shotMass_kg: shot.mass_kg,
  };
}
