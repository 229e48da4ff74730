/**
 * The exciter's unbalance: settled shot plus what is fixed to the housing, its force and the drum's nominal
 * amplitude. Body frame as in section.ts.
 */
import { message, type Message } from '../../kernel';
import { centrifugalForce, nominalAmplitude, rpmToRadPerS } from '../centrifugal';
import type { Direction, SettledChamber } from './settled';

export interface ShotCharge {
  readonly mass_kg: number;
  /** Share of the bulk that is metal. */
  readonly packing: number;
  /** Length of the chamber along the shaft. */
  readonly length_m: number;
  /** Density of the shot's metal. */
  readonly density_kg_m3: number;
}

/** What the exciter does with a given moment of its shot, however that was found. */
export interface ExciterOutcome {
  /** First moment of the shot about the shaft axis, [x, y], its size and its angle from +x. */
  readonly shot_kgm: readonly [number, number];
  readonly shot_U_kgm: number;
  readonly shot_angle_deg: number | null;
  /** Shot and fixed parts together. */
  readonly total_kgm: readonly [number, number];
  readonly U_kgm: number;
  readonly angle_deg: number | null;
  readonly force_N: number;
  readonly frequency_Hz: number;
  readonly nominal_amplitude_m: number | null;
  readonly notes: readonly Message[];
}

export interface ExciterState extends ExciterOutcome {
  readonly capture_fraction: number | null;
  readonly pocket_capacity_m2: number | null;
  readonly r_spill_m: number | null;
  readonly r0_main_m: number | null;
  readonly r0_pocket_m: number | null;
}

export interface ExciterRun {
  readonly direction: Direction;
  readonly speed_rpm: number;
  /** First moment about O of all that turns with the housing but the shot, [x, y]. */
  readonly fixed_kgm: readonly [number, number];
  /** Mass that the force shakes; null where it is not known. */
  readonly vibrating_mass_kg: number | null;
}

/** Bulk section area of the shot, A = mass / (density packing length). */
export const shotArea_m2 = ({ mass_kg, density_kg_m3, packing, length_m }: ShotCharge): number =>
  mass_kg / (density_kg_m3 * packing * length_m);

/**
 * Unbalance, force F = U w^2 and nominal amplitude U / m of the exciter with level shot.
 * Shot that does not fit into the chamber is left out, with a note.
 */
export function exciterState(chamber: SettledChamber, shot: ShotCharge, run: ExciterRun): ExciterState {
  const settled = chamber.settle(shotArea_m2(shot), run.direction);
  const perArea = shot.density_kg_m3 * shot.packing * shot.length_m;
  const outcome = exciterOutcome(
    [settled.moment_m3[0] * perArea, settled.moment_m3[1] * perArea],
    shot.mass_kg * chamber.section.radius_m,
    run,
  );
  // Shot that is not there has no angle either, and its absence has a note of its own.
  const own = outcome.notes.filter((n) => settled.area_m2 > 0 || n.key !== SHOT_BALANCED);
  return {
    capture_fraction: settled.captureFraction,
    pocket_capacity_m2: chamber.pocketCapacity_m2,
    r_spill_m: chamber.spillRadius_m,
    r0_main_m: settled.main.surface_m,
    r0_pocket_m: settled.pocket.surface_m,
    ...outcome,
    notes: [...settled.notes, ...own],
  };
}

const SHOT_BALANCED = 'mechanics.unbalance.shot-balanced';

/**
 * Unbalance of shot and fixed parts, force F = U w^2 and nominal amplitude U / m.
 * @param shot_kgm first moment of the shot about the shaft axis, body frame
 * @param scale_kgm a moment of the shot's order of size: what is 10^12 times smaller is rounding and points nowhere
 */
export function exciterOutcome(
  shot_kgm: readonly [number, number],
  scale_kgm: number,
  run: Omit<ExciterRun, 'direction'>,
): ExciterOutcome {
  const total_kgm: readonly [number, number] = [
    shot_kgm[0] + run.fixed_kgm[0],
    shot_kgm[1] + run.fixed_kgm[1],
  ];
  const U_kgm = Math.hypot(...total_kgm);
  const nothing = 1e-12 * (scale_kgm + Math.hypot(...run.fixed_kgm));
  const shot_angle_deg = angleOf(shot_kgm, nothing);
  const angle_deg = angleOf(total_kgm, nothing);
  const nominal_amplitude_m =
    run.vibrating_mass_kg === null ? null : nominalAmplitude(U_kgm, run.vibrating_mass_kg);
  return {
    shot_kgm,
    shot_U_kgm: Math.hypot(...shot_kgm),
    shot_angle_deg,
    total_kgm,
    U_kgm,
    angle_deg,
    force_N: centrifugalForce(U_kgm, rpmToRadPerS(run.speed_rpm)),
    frequency_Hz: run.speed_rpm / 60,
    nominal_amplitude_m,
    notes: [
      ...(shot_angle_deg === null ? [message(SHOT_BALANCED)] : []),
      ...(angle_deg === null ? [message('mechanics.unbalance.balanced')] : []),
      ...(nominal_amplitude_m === null ? [message('mechanics.unbalance.no-vibrating-mass')] : []),
    ],
  };
}

const angleOf = ([x, y]: readonly [number, number], nothing: number): number | null =>
  Math.hypot(x, y) > nothing ? (Math.atan2(y, x) * 180) / Math.PI : null;
