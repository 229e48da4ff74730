/**
 * Study: liquid ballast in the drum, as a question of what if. Load gained, amplitude lost, freezing, and what speaks
 * against it. Liquid in a vibrating drum lags and sloshes; here it moves with the shell, which is the worst case for
 * the amplitude.
 */
import { message, STANDARD_GRAVITY, type Message } from '../../kernel';
import type { Machine } from '../../machine';
import { brine, brineFill } from '../../mechanics';
import type { DrumRoom } from './drum-room';
import type { RollerBasis } from './roller-basis';

export interface BallastChoice {
  readonly unbalance_high_kgm: number;
  readonly unbalance_low_kgm: number;
  /** Share of the room that is filled, 0 to 1; about 0.75 leaves air (common practice). */
  readonly fill_share: number;
  readonly salt_mass_percent: number;
  readonly temperature_C: number;
}

export interface BallastStudy {
  readonly plugs: number;
  readonly room_m3: number;
  readonly volume_m3: number;
  /** Null when frozen. */
  readonly density_kg_m3: number | null;
  readonly freezing_C: number;
  readonly total_kg: number | null;
  readonly salt_kg: number | null;
  readonly water_kg: number | null;
  readonly linear_before_N_m: number;
  readonly linear_after_N_m: number | null;
  readonly amplitude_before_m: { readonly high: number; readonly low: number };
  readonly amplitude_after_m: { readonly high: number; readonly low: number } | null;
  /** Share of the amplitude that is lost, 0 to 1. */
  readonly amplitude_loss: number | null;
  readonly notes: readonly Message[];
  readonly assumptions: readonly Message[];
  readonly limits: readonly Message[];
}

/** The study; null for values that the formulas refuse (salt 0 to 30 %, -40 to 40 degrees). */
export function ballastStudy(
  machine: Machine,
  basis: RollerBasis,
  room: DrumRoom,
  choice: BallastChoice,
): BallastStudy | null {
  const liquid = brine(choice);
  if (!liquid.ok) return null;
  const { density_kg_m3, freezing_C, notes } = liquid.value;
  const volume_m3 = room.volume_m3 * choice.fill_share;
  const fill =
    density_kg_m3 === null
      ? null
      : brineFill({ volume_m3, density_kg_m3, salt_mass_percent: choice.salt_mass_percent });
  const masses = fill?.ok === true ? fill.value : null;
  const amplitude = (added_kg: number) => ({
    high: choice.unbalance_high_kgm / (basis.vibratingMass_kg + added_kg),
    low: choice.unbalance_low_kgm / (basis.vibratingMass_kg + added_kg),
  });
  const linear = (added_kg: number) =>
    ((basis.drumAxleMass_kg + added_kg) * STANDARD_GRAVITY) / basis.drumWidth_m;
  return {
    plugs: machine.parts.filter((part) => (machine.kinds[part.kind]?.word ?? part.kind) === 'ballast-plug')
      .length,
    room_m3: room.volume_m3,
    volume_m3,
    density_kg_m3,
    freezing_C,
    total_kg: masses?.total_kg ?? null,
    salt_kg: masses?.salt_kg ?? null,
    water_kg: masses?.water_kg ?? null,
    linear_before_N_m: linear(0),
    linear_after_N_m: masses === null ? null : linear(masses.total_kg),
    amplitude_before_m: amplitude(0),
    amplitude_after_m: masses === null ? null : amplitude(masses.total_kg),
    amplitude_loss: masses === null ? null : masses.total_kg / (basis.vibratingMass_kg + masses.total_kg),
    notes,
    assumptions: ['room-from-solids', 'moves-with-shell', 'brine-table', 'air-space'].map((word) =>
      message(`study.ballast.assume.${word}`),
    ),
    limits: ['runs-dry', 'not-above-25', 'corrosion', 'environment', 'diesel'].map((word) =>
      message(`study.ballast.limit.${word}`),
    ),
  };
}
