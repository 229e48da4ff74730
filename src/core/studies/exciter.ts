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
  exciterState,
  type OutlinePolygon,
  type SettledChamber,
  shotArea_m2,
  shotOutline,
} from '../mechanics';
import type { KindMass, KindSolid } from '../geometry';
import type { Machine } from '../machine';
import { exciterBasis, type ExciterBasis } from './exciter-basis';

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

export interface DirectionStudy {
  readonly captured: number | null;
  readonly shot_kgm: BodyPoint;
  readonly shot_U_kgm: number;
  readonly housing_kgm: BodyPoint;
  readonly total_kgm: BodyPoint;
  readonly U_kgm: number;
  readonly angle_deg: number | null;
  readonly force_N: number;
  readonly frequency_Hz: number;
  readonly nominalAmplitude_m: number | null;
  readonly bearing_left_N: number;
  readonly bearing_right_N: number;
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
  /** U low / U high; null where high has none. */
  readonly ratio: number | null;
  readonly vibratingMass_kg: number;
  readonly shotMass_kg: number;
  readonly housing: HousingOutline;
  /** What is set now, and what the machine file says. */
  readonly inputs: ExciterInputs;
  readonly own: ExciterInputs;
  /** Low is the level closed form, known to be too high. */
  readonly lowIsLevel: boolean;
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

/** The study; null where the machine has no shot exciter. A fill beyond the chamber's room is cut, with a note. */
export function exciterStudy(
  machine: Machine,
  solids: Readonly<Record<string, KindSolid>>,
  masses: Readonly<Record<string, KindMass>>,
  choice: ExciterChoice,
): ExciterStudy | null {
  const basis = exciterBasis(machine, solids, masses);
  if (basis === null) return null;
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

  const study = (direction: Direction, frequency_Hz: number): DirectionStudy => {
    const settled = chamber.settle(shotArea_m2(shot), direction);
    const state = exciterState(chamber, shot, {
      direction,
      speed_rpm: frequency_Hz * 60,
      fixed_kgm,
      vibrating_mass_kg: vibratingMass_kg,
    });
    const outline = shotOutline(chamber, settled);
    const [ux, uy] =
      state.U_kgm > 0 ? [state.total_kgm[0] / state.U_kgm, state.total_kgm[1] / state.U_kgm] : [1, 0];
    const axial = (k: 0 | 1): number =>
      basis.fixedAxial_kgm2[k] +
      (fixed_kgm[k] - basis.fixed_kgm[k] + state.shot_kgm[k]) * basis.chamberMiddle_m;
    const force_m = state.U_kgm > 0 ? (ux * axial(0) + uy * axial(1)) / state.U_kgm : basis.chamberMiddle_m;
    const loads = bearingLoads(state.force_N, {
      force_m,
      a_m: rest.bearings.left_x_m,
      b_m: rest.bearings.right_x_m,
    });
    return {
      captured: state.capture_fraction,
      shot_kgm: state.shot_kgm,
      shot_U_kgm: state.shot_U_kgm,
      housing_kgm: fixed_kgm,
      total_kgm: state.total_kgm,
      U_kgm: state.U_kgm,
      angle_deg: state.angle_deg,
      force_N: state.force_N,
      frequency_Hz: state.frequency_Hz,
      nominalAmplitude_m: state.nominal_amplitude_m,
      bearing_left_N: loads.a_N,
      bearing_right_N: loads.b_N,
      shot: [...bodies(outline.main, false), ...bodies(outline.pocket, true)],
      notes: state.notes,
    };
  };
  const high = study('high', inputs.frequencyHigh_Hz);
  const low = study('low', inputs.frequencyLow_Hz);
  return {
    high,
    low,
    housing,
    inputs,
    own,
    vibratingMass_kg,
    ratio: high.U_kgm > 0 ? low.U_kgm / high.U_kgm : null,
    shotMass_kg: shot.mass_kg,
    lowIsLevel: true,
  };
}
