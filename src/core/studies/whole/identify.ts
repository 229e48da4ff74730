/** Study: how the trade would describe the machine, from its own data; and how far it bends and rolls. */
import { message, STANDARD_GRAVITY, type Message } from '../../kernel';
import type { Articulation, Machine } from '../../machine';
import type { RollerBasis } from './roller-basis';

const INCH = 0.0254;

/** Class by operating mass: common practice, no source; makers and countries draw the lines elsewhere. */
export type MassClass = 'light' | 'medium' | 'heavy' | 'extra-heavy';
const CLASSES: readonly (readonly [number, MassClass])[] = [
  [5000, 'light'],
  [10000, 'medium'],
  [16000, 'heavy'],
  [Infinity, 'extra-heavy'],
];

export interface Turning {
  /** Greatest angle each way. */
  readonly steering_deg: number;
  readonly oscillation_deg: number;
  /** Radius of the drum's middle on full lock, on level ground, both halves rolling without sideslip. */
  readonly drum_radius_m: number;
  readonly axle_radius_m: number;
  /** Radius that the drum's outer edge sweeps. */
  readonly outside_m: number;
  /** Rise of one drum end over the other at full oscillation. */
  readonly drum_end_rise_m: number;
}

export interface IdentifyStudy {
  readonly drum_width_m: number;
  /** The width as the trade says it: whole inches. */
  readonly width_class_in: number;
  readonly drum_type: 'smooth' | 'padded';
  readonly pads_fit: boolean;
  readonly operating_mass_kg: number;
  /** Whole tonnes of its class. */
  readonly mass_class_t: number;
  readonly mass_class: MassClass;
  readonly drum_axle_kg: number;
  readonly rear_axle_kg: number;
  readonly drum_share: number;
  readonly static_linear_N_m: number;
  readonly turning: Turning | null;
  /** Pins, for the stage. */
  readonly articulation: Articulation | null;
  readonly assumptions: readonly Message[];
  readonly limits: readonly Message[];
}

export function identifyStudy(machine: Machine, basis: RollerBasis, padsOn: boolean): IdentifyStudy {
  const { operatingMass_kg, drumAxleMass_kg, drumWidth_m } = basis;
  const articulation = machine.articulation ?? null;
  return {
    drum_width_m: drumWidth_m,
    width_class_in: Math.round(drumWidth_m / INCH),
    drum_type: padsOn ? 'padded' : 'smooth',
    pads_fit: Object.values(machine.kinds).some((kind) => kind.params.builder === 'pad-segment'),
    operating_mass_kg: operatingMass_kg,
    mass_class_t: Math.round(operatingMass_kg / 1000),
    mass_class: CLASSES.find(([limit]) => operatingMass_kg < limit)![1],
    drum_axle_kg: drumAxleMass_kg,
    rear_axle_kg: operatingMass_kg - drumAxleMass_kg,
    drum_share: drumAxleMass_kg / operatingMass_kg,
    static_linear_N_m: (drumAxleMass_kg * STANDARD_GRAVITY) / drumWidth_m,
    turning: articulation === null ? null : turning(articulation, drumWidth_m),
    articulation,
    assumptions: ['own-data', 'mass-classes', 'no-sideslip'].map((word) =>
      message(`study.identify.assume.${word}`),
    ),
    limits: ['describe-not-name', 'plate-counts'].map((word) => message(`study.identify.limit.${word}`)),
  };
}

/**
 * Two axles that meet at a joint bent by `angle`: both axle lines pass through the centre of the turn. With the joint a
 * ahead of the rear axle and b behind the drum: R_drum = (a + b cos) / sin, R_axle = (b + a cos) / sin. Geometry.
 */
export function turning(articulation: Articulation, drumWidth_m: number): Turning {
  const angle = (articulation.steering_limit_deg * Math.PI) / 180;
  const toDrum_m = articulation.steering_pin_m[2];
  const toAxle_m = articulation.wheelbase_m - toDrum_m;
  const drum_radius_m = (toAxle_m + toDrum_m * Math.cos(angle)) / Math.sin(angle);
  const roll = (articulation.oscillation_limit_deg * Math.PI) / 180;
  return {
    steering_deg: articulation.steering_limit_deg,
    oscillation_deg: articulation.oscillation_limit_deg,
    drum_radius_m,
    axle_radius_m: (toDrum_m + toAxle_m * Math.cos(angle)) / Math.sin(angle),
    outside_m: drum_radius_m + drumWidth_m / 2,
    drum_end_rise_m: drumWidth_m * Math.sin(roll),
  };
}
