/**
 * What a wedge gauge, a tachometer and a sensor on the frame would read with the exciter running: settled shot by the
 * machine's table of simulated runs, drum and frame by the isolation study. Where the table does not reach, or the
 * drum leaves its bed, the amplitude is not known (null).
 */
import { isolationStudy, settledMoment, type IsolationStudy } from '../studies';
import type { BenchInputs } from './inputs';
import type { Plant } from './plant';

export interface Shaking {
  /** The drum's; 0 where nothing drives the exciter. */
  readonly frequency_Hz: number;
  readonly captured: number | null;
  readonly U_kgm: number | null;
  readonly drum_m: number | null;
  readonly frameLeft_m_s2: number | null;
  readonly frameRight_m_s2: number | null;
}

/** One standard deviation of a band that holds 19 of 20. */
const BAND_SD = 0.5;
/** Spread of where a loose plate may lie, about the shot's centre. */
const PLATE_SPREAD_M = 0.08;
const OIL_KG_M3 = 870;

/** @param lever where the operator's switch stands; hoses that have changed places turn the housing the other way */
export function shakingOf(plant: Plant, v: BenchInputs, lever: 'high' | 'low'): Shaking {
  const { exciter, roller } = plant;
  const rated_Hz = lever === 'high' ? exciter.rest.frequency_high_Hz : exciter.rest.frequency_low_Hz;
  if (v.spline_intact < 0.5)
    return { frequency_Hz: 0, captured: null, U_kgm: 0, drum_m: 0, frameLeft_m_s2: 0, frameRight_m_s2: 0 };
  const frequency_Hz = (rated_Hz * v.motor_volumetric) / plant.sound.motor_volumetric;
  const swapped = v.hoses_swapped > 0.5;
  const direction = swapped === (lever === 'high') ? 'low' : 'high';
  const { U_kgm, captured } = unbalanceOf(plant, v, direction);
  if (U_kgm === null)
    return { frequency_Hz, captured, U_kgm, drum_m: null, frameLeft_m_s2: null, frameRight_m_s2: null };
  const lost_kg = (1 - v.shot_share) * exciter.rest.shot_mass_kg;
  const study = isolationStudy(
    { ...roller, vibratingMass_kg: roller.vibratingMass_kg - lost_kg },
    {
      unbalance_kgm: U_kgm,
      frequency_Hz,
      soil_stiffness_N_m: v.bed_stiffness_N_m,
      soil_damping_Ns_m: plant.book.bench.bed_damping_Ns_m,
      hardness_left_IRHD: v.hardness_IRHD,
      hardness_right_IRHD: v.hardness_IRHD,
      states: missingStates(plant, v),
      crack_share: 0,
      hours_a_day: 1,
    },
  );
  const known = study !== null && study.contact !== 'lost';
  const rms = (i: number): number | null =>
    known && study.ends[i]?.frame_peak_m_s2 != null ? study.ends[i].frame_peak_m_s2 / Math.SQRT2 : null;
  return {
    frequency_Hz,
    captured,
    U_kgm,
    drum_m: known ? study.drum_amplitude_m : null,
    frameLeft_m_s2: rms(0),
    frameRight_m_s2: rms(1),
  };
}

/** Size of the unbalance with the housing turning one way, and the share of the shot behind the baffle. */
export function unbalanceOf(
  plant: Plant,
  v: BenchInputs,
  direction: 'high' | 'low',
): { readonly U_kgm: number | null; readonly captured: number | null } {
  const { exciter, book } = plant;
  const fitted = v.baffle_fitted > 0.5;
  const shot_kg = v.shot_share * exciter.rest.shot_mass_kg;
  const none = { U_kgm: null, captured: null };
  // Oil beyond a film swims and drags: no run of the table had any.
  const voids_m3 = (shot_kg / exciter.rest.shot_density_kg_m3) * (1 / exciter.rest.shot_packing - 1);
  const oil_m3 = Math.max(0, v.chamber_oil_m3);
  if (oil_m3 > voids_m3 || (direction === 'low' && oil_m3 > book.bench.film_m3)) return none;
  const settled = settledMoment(plant.fit, {
    chamber: exciter.chamber,
    baffle: fitted ? exciter.baffle : null,
    shot: {
      mass_kg: shot_kg,
      length_m: exciter.chamberLength_m,
      density_kg_m3: exciter.rest.shot_density_kg_m3,
    },
    ball_diameter_m: exciter.rest.ball_diameter_m,
    size_spread: plant.sizeSpread,
    direction,
    spin_up: {
      kind: 'quadratic',
      frequency_Hz: exciter.rest.frequency_high_Hz,
      time_s: v.spin_up_s,
    },
    friction: v.friction,
  });
  if (!settled.known) return none;
  const { shot_kgm, band_kgm, captured } = settled.moment;
  const fixed = fitted ? exciter.fixed_kgm : plant.bareFixed_kgm;
  // What rides with the shot (oil in its voids, a loose plate) sits at its centre.
  const rider_kg = oil_m3 * OIL_KG_M3 + (fitted ? 0 : plant.plate_kg);
  const whole = shot_kg > 0 ? 1 + rider_kg / shot_kg : 1;
  const sd_kgm = Math.hypot(BAND_SD * band_kgm, fitted ? 0 : plant.plate_kg * PLATE_SPREAD_M);
  const place = direction === 'low' ? v.settled_low_sd : v.settled_high_sd;
  const U_kgm = Math.hypot(fixed[0] + whole * shot_kgm[0], fixed[1] + whole * shot_kgm[1]);
  return { U_kgm: Math.max(0, U_kgm + place * sd_kgm), captured };
}

/** The first so many isolators of each end as missing. */
function missingStates(plant: Plant, v: BenchInputs): Record<string, 'missing'> {
  const states: Record<string, 'missing'> = {};
  for (const [end, count] of [
    ['left', v.isolators_missing_left],
    ['right', v.isolators_missing_right],
  ] as const) {
    const ids = plant.roller.isolators.filter((set) => set.end === end).flatMap((set) => set.partIds);
    for (const id of ids.slice(0, Math.round(count))) states[id] = 'missing';
  }
  return states;
}

/** Sag of the frame on its isolators at both ends, at rest. */
export function sagOf(plant: Plant, v: BenchInputs): readonly [number | null, number | null] {
  const study: IsolationStudy | null = isolationStudy(plant.roller, {
    unbalance_kgm: 0,
    frequency_Hz: 1,
    soil_stiffness_N_m: v.bed_stiffness_N_m,
    soil_damping_Ns_m: plant.book.bench.bed_damping_Ns_m,
    hardness_left_IRHD: v.hardness_IRHD,
    hardness_right_IRHD: v.hardness_IRHD,
    states: missingStates(plant, v),
    crack_share: 0,
    hours_a_day: 1,
  });
  return [study?.ends[0]?.sag_m ?? null, study?.ends[1]?.sag_m ?? null];
}
