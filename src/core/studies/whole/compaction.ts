/**
 * Study: compaction. Static linear load, total applied force, blows along the ground, stress below the drum with
 * depth, smooth against padded contact, lifts and passes as guidance.
 */
import { message, STANDARD_GRAVITY, type Message } from '../../kernel';
import type { Machine, PadSegmentParams } from '../../machine';
import {
  contactWidth,
  fadeDepth,
  impactSpacing,
  lineLoadStress,
  stripLoadStress,
  type ImpactSpacing,
} from '../../mechanics';
import type { RollerBasis } from './roller-basis';

export interface CompactionChoice {
  readonly force_N: number;
  readonly frequency_Hz: number;
  readonly speed_m_s: number;
  readonly soil_modulus_Pa: number;
  readonly soil_density_kg_m3: number;
  readonly lift_m: number;
  /** How far pads sink in. */
  readonly pad_sink_m: number;
}

export interface DepthStress {
  readonly depth_m: number;
  readonly line_static_Pa: number;
  readonly line_total_Pa: number;
  readonly strip_static_Pa: number;
  readonly strip_total_Pa: number;
  /** The soil's own weight above that depth. */
  readonly own_weight_Pa: number;
}

export interface PadContact {
  readonly pads: number;
  readonly in_contact: number;
  readonly area_m2: number;
  readonly static_Pa: number;
}

/** Lifts and passes seen in guides; passes and lifts of the table are from memory and to be confirmed. */
export interface Guidance {
  readonly roller: 'padded' | 'smooth' | 'smooth-rock' | 'tyre';
  readonly lift_from_m: number;
  readonly lift_to_m: number;
  readonly passes: readonly [number, number];
}
/** NAVFAC DM-7.2 (1982), ch. 2, table 5, from memory. */
export const GUIDANCE: readonly Guidance[] = [
  { roller: 'padded', lift_from_m: 0.2, lift_to_m: 0.3, passes: [3, 5] },
  { roller: 'smooth', lift_from_m: 0.2, lift_to_m: 0.3, passes: [3, 5] },
  { roller: 'smooth-rock', lift_from_m: 0.3, lift_to_m: 0.9, passes: [4, 6] },
  { roller: 'tyre', lift_from_m: 0.15, lift_to_m: 0.25, passes: [3, 6] },
];
/** Blows a foot wanted on asphalt (trade table, no named source); on soil a common guide only. */
export const ASPHALT_BLOWS_PER_FOOT = [10, 14] as const;
/** Depth of compaction that is claimed now and then: 30 ft. */
export const CLAIMED_DEPTH_m = 30 * 0.3048;
/** Typical lifts. */
export const TYPICAL_LIFT_m = [0.2, 0.6] as const;
/** Share of the soil's own stress below which a load counts as faded. */
export const FADED_SHARE = 0.2;

export interface CompactionStudy {
  readonly static_load_N: number;
  readonly static_linear_N_m: number;
  readonly total_force_N: number;
  readonly total_linear_N_m: number;
  readonly impacts: ImpactSpacing;
  readonly contact_width_m: number;
  readonly contact_pressure_Pa: number;
  readonly pads: PadContact | null;
  readonly depths: readonly DepthStress[];
  readonly at_lift: DepthStress;
  readonly at_claim: DepthStress;
  /** Where static load, and total force, have faded to a fifth of the soil's own stress. */
  readonly fade_static_m: number;
  readonly fade_total_m: number;
  readonly assumptions: readonly Message[];
  readonly limits: readonly Message[];
}

const DEPTHS_m = [0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.25, 1.5, 2, 2.5, 3];

/** The study; null for values that the formulas refuse. */
export function compactionStudy(
  machine: Machine,
  basis: RollerBasis,
  choice: CompactionChoice,
): CompactionStudy | null {
  const static_load_N = basis.drumAxleMass_kg * STANDARD_GRAVITY;
  const total_force_N = static_load_N + choice.force_N;
  const static_linear_N_m = static_load_N / basis.drumWidth_m;
  const total_linear_N_m = total_force_N / basis.drumWidth_m;
  const ground = { drum_radius_m: basis.drumRadius_m, soil_modulus_Pa: choice.soil_modulus_Pa };
  const standing = contactWidth({ load_N_m: static_linear_N_m, ...ground });
  const pressed = contactWidth({ load_N_m: total_linear_N_m, ...ground });
  const impacts = impactSpacing(choice);
  if (!standing.ok || !pressed.ok || !impacts.ok) return null;
  const stress = (depth_m: number): DepthStress => ({
    depth_m,
    line_static_Pa: lineLoadStress(static_linear_N_m, 0, depth_m),
    line_total_Pa: lineLoadStress(total_linear_N_m, 0, depth_m),
    strip_static_Pa: stripLoadStress(standing.value.mean_pressure_Pa, standing.value.width_m, 0, depth_m),
    strip_total_Pa: stripLoadStress(pressed.value.mean_pressure_Pa, pressed.value.width_m, 0, depth_m),
    own_weight_Pa: choice.soil_density_kg_m3 * STANDARD_GRAVITY * depth_m,
  });
  return {
    static_load_N,
    static_linear_N_m,
    total_force_N,
    total_linear_N_m,
    impacts: impacts.value,
    contact_width_m: standing.value.width_m,
    contact_pressure_Pa: standing.value.mean_pressure_Pa,
    pads: padContact(machine, static_load_N, choice.pad_sink_m),
    depths: DEPTHS_m.map(stress),
    at_lift: stress(choice.lift_m),
    at_claim: stress(CLAIMED_DEPTH_m),
    fade_static_m: fadeDepth(static_linear_N_m, choice.soil_density_kg_m3, FADED_SHARE),
    fade_total_m: fadeDepth(total_linear_N_m, choice.soil_density_kg_m3, FADED_SHARE),
    assumptions: ['elastic', 'long-line', 'hertz', 'total-force', 'pads-count'].map((word) =>
      message(`study.compaction.assume.${word}`),
    ),
    limits: ['not-depth', 'total-is-a-rating', 'claims', 'test-the-ground'].map((word) =>
      message(`study.compaction.limit.${word}`),
    ),
  };
}

/** Pads that touch with a pad row straight down, by how far they have sunk in; null where the machine has no pads. */
function padContact(machine: Machine, load_N: number, sink_m: number): PadContact | null {
  const kind = Object.entries(machine.kinds).find(([, each]) => each.params.builder === 'pad-segment');
  if (kind === undefined) return null;
  const { pad } = kind[1].params as PadSegmentParams;
  const segments = machine.parts.filter((part) => part.kind === kind[0]).length;
  const perSegment = pad.rows.reduce((sum, row) => sum + row.angles_deg.length, 0);
  const lifted_m = (angle_deg: number) => pad.reach_m * (1 - Math.cos((angle_deg * Math.PI) / 180));
  // a pad of the middle of a segment points straight down; its neighbours stand the higher the farther round they are
  const in_contact = pad.rows.reduce(
    (sum, row) => sum + row.angles_deg.filter((angle) => lifted_m(angle) <= sink_m).length,
    0,
  );
  const area_m2 = in_contact * pad.top_m[0] * pad.top_m[1];
  return { pads: segments * perSegment, in_contact, area_m2, static_Pa: load_N / area_m2 };
}
