/**
 * Where the shot's moment comes to lie, told by a fit of simulated runs: whether the fit holds for a chamber at all,
 * and what it tells there. Outside its table nothing is told; nothing is ever extrapolated.
 */
import { type Message, message } from '../kernel';
import {
  type Baffle,
  type Chamber,
  chamberArea,
  type Direction,
  fittedShot,
  geometryDiffers,
  mirrorBaffle,
  type SettledFit,
  type SettledQuery,
} from '../shot';

export interface SettledCase {
  readonly chamber: Chamber;
  readonly baffle: Baffle | null;
  readonly shot: { readonly mass_kg: number; readonly length_m: number; readonly density_kg_m3: number };
  readonly ball_diameter_m: number;
  readonly size_spread: number;
  /** 'low': the pocket scoops; without a baffle: the housing turns counter-clockwise in the body frame. */
  readonly direction: Direction;
  readonly spin_up: SettledQuery['spin_up'];
  readonly friction: number;
}

export interface SettledMoment {
  /** First moment of the shot about the shaft axis, body frame. */
  readonly shot_kgm: readonly [number, number];
  /** At least 19 of 20 simulated runs lie within this of it, and so does the size of any sum with it. */
  readonly band_kgm: number;
  readonly captured: number | null;
  readonly captured_band: number | null;
}

/** What a fit tells, or why it tells nothing. */
export type Settled =
  | { readonly known: true; readonly moment: SettledMoment }
  | { readonly known: false; readonly reasons: readonly Message[] };

const unknown = (...reasons: Message[]): Settled => ({ known: false, reasons });

/**
 * The moment of the settled shot. A case whose chamber is the fit's mirror image has the mirrored moment. The table's
 * fill counts the balls: bulk volume at the fit's own packing over the chamber's.
 */
export function settledMoment(fit: SettledFit | undefined, of: SettledCase): Settled {
  if (fit === undefined) return unknown(message('settled.no-fit'));
  const { chamber, baffle, shot, ball_diameter_m, size_spread, direction } = of;
  const { mass_kg, length_m, density_kg_m3 } = shot;
  const geometry = { chamber, baffle, ball_diameter_m, size_spread };
  const differs = geometryDiffers(fit.geometry, geometry);
  const mirrored =
    differs !== null &&
    baffle !== null &&
    geometryDiffers(fit.geometry, { ...geometry, baffle: mirrorBaffle(baffle) }) === null;
  if (differs !== null && !mirrored) return unknown(message(`settled.other-${differs}`));
  if (mass_kg === 0) {
    const nothing: SettledMoment = { shot_kgm: [0, 0], band_kgm: 0, captured: null, captured_band: null };
    return { known: true, moment: nothing };
  }
  const told = fittedShot(fit, {
    state: baffle === null ? 'none' : direction,
    fill: mass_kg / (density_kg_m3 * fit.packing * length_m * chamberArea(chamber)),
    spin_up: of.spin_up,
    friction: of.friction,
  });
  if (!told.ok)
    return unknown(
      ...told.faults.map((fault) =>
        message(`settled.outside-${fault.path}`, { ...fault.expected.params, found: fault.found }),
      ),
    );
  // Without a baffle the other direction is the mirror image.
  const flip = mirrored !== (baffle === null && direction === 'high') ? -1 : 1;
  const { centre_m, band_m, captured, captured_band } = told.value;
  return {
    known: true,
    moment: {
      shot_kgm: [mass_kg * centre_m[0], flip * mass_kg * centre_m[1]],
      band_kgm: mass_kg * band_m,
      captured,
      captured_band,
    },
  };
}

/** Why the level value lies where it does beside the simulated one: key of one sentence for a reader. */
export function levelWhy(level_kgm: number, simulated_kgm: number, band_kgm: number): string {
  if (Math.abs(level_kgm - simulated_kgm) <= band_kgm) return 'settled.level-agrees';
  return level_kgm > simulated_kgm ? 'settled.level-above' : 'settled.level-below';
}
