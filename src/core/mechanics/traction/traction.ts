/**
 * Does a roller with driven drum and driven axle climb a grade? Both hydraulic motors hang on one circuit, in
 * parallel: they share the pressure, so the pulls stand as displacement x gear / radius, and as soon as one spins,
 * the pressure, and with it the other's pull, rises no further.
 * Pull per pressure: D i eta / (2 pi r). Needed: W (sin a + rr cos a), tan a = grade / 100. An axle slips at
 * mu W_i cos a. Source: A. Esposito, Fluid Power with Applications, ch. 7 (torque); S. W. Nunnally, Construction
 * Methods and Management, ch. 4 (grade, rolling resistance, traction), here with sine and cosine instead of its
 * small-slope form. That weight moves to the lower axle on a grade is left out.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  finished,
  message,
  within,
  type Message,
  type Result,
} from '../../kernel';

/** Speed range of a motor: low turns slowly with the larger displacement. */
export type DriveRange = 'low' | 'high';

/** One driven end of the machine. */
export interface DrivenEnd {
  /** Displacement of all its motors together in low range, and in high range. */
  readonly displacement_low_m3_rev: number;
  readonly displacement_high_m3_rev: number;
  /** Motor turns per wheel turn. */
  readonly gear_ratio: number;
  /** Rolling radius. */
  readonly radius_m: number;
  /** Weight on it on level ground. */
  readonly load_N: number;
  /** Mechanical efficiency of motor and gear together, 0 to 1. */
  readonly efficiency: number;
  /** Greatest pull over normal force. */
  readonly adhesion: number;
}

export interface TractionInput {
  readonly drum: DrivenEnd;
  readonly axle: DrivenEnd;
  readonly drum_range: DriveRange;
  readonly axle_range: DriveRange;
  /** Uphill rise per run, percent, 0 to 100. */
  readonly grade_percent: number;
  readonly rolling_resistance_N_per_N: number;
  readonly relief_Pa: number;
}

export interface Traction {
  readonly pull_needed_N: number;
  /** Pressure that this pull asks for, whether or not it can be reached. */
  readonly pressure_needed_Pa: number;
  /** Pulls of the two at that pressure. */
  readonly drum_pull_N: number;
  readonly axle_pull_N: number;
  /** Drum's share of the pull, 0 to 1. */
  readonly drum_share: number;
  /** Which end spins first as the pressure rises; 'none' if the relief valve opens before either does. */
  readonly slips_first: 'drum' | 'axle' | 'none';
  /** Pressure at which the weaker end would spin, also where that lies above the relief pressure. */
  readonly slip_pressure_Pa: number;
  readonly climbs: boolean;
  /** What stops it, when it does not climb. */
  readonly limit: 'slip' | 'relief' | 'none';
  /** Greatest pull there is: at the slip or the relief pressure, whichever comes first. */
  readonly pull_available_N: number;
  readonly notes: readonly Message[];
}

export function traction(input: TractionInput): Result<Traction> {
  const faults = [
    ...checkEnd(input.drum, 'drum'),
    ...checkEnd(input.axle, 'axle'),
    ...checkNumbers(input, {
      grade_percent: within(0, 100),
      rolling_resistance_N_per_N: atLeast(0),
      relief_Pa: above(0),
    }),
  ];
  if (faults.length > 0) return fail(faults);
  const { drum, axle, relief_Pa } = input;
  const slope = Math.atan(input.grade_percent / 100);
  const weight_N = drum.load_N + axle.load_N;
  const pull_needed_N = weight_N * (Math.sin(slope) + input.rolling_resistance_N_per_N * Math.cos(slope));
  const drumPull = pullPerPressure(drum, input.drum_range);
  const axlePull = pullPerPressure(axle, input.axle_range);
  const pressure_needed_Pa = pull_needed_N / (drumPull + axlePull);
  const drumSlip_Pa = (drum.adhesion * drum.load_N * Math.cos(slope)) / drumPull;
  const axleSlip_Pa = (axle.adhesion * axle.load_N * Math.cos(slope)) / axlePull;
  const slip_pressure_Pa = Math.min(drumSlip_Pa, axleSlip_Pa);
  const highest_Pa = Math.min(slip_pressure_Pa, relief_Pa);
  const slipsBeforeRelief = slip_pressure_Pa < relief_Pa;
  // a hair of slack: a machine that just holds at the limit is not stopped by rounding
  const climbs = pressure_needed_Pa <= highest_Pa * (1 + 1e-12);
  const notes: Message[] = [message('mechanics.note.no-load-transfer')];
  for (const [end, each] of [
    ['drum', drum],
    ['axle', axle],
  ] as const) {
    if (each.displacement_high_m3_rev > each.displacement_low_m3_rev) {
      notes.push(message('mechanics.note.high-range-displaces-more', { end }));
    }
  }
  return finished({
    pull_needed_N,
    pressure_needed_Pa,
    drum_pull_N: drumPull * pressure_needed_Pa,
    axle_pull_N: axlePull * pressure_needed_Pa,
    drum_share: drumPull / (drumPull + axlePull),
    slips_first: !slipsBeforeRelief ? 'none' : drumSlip_Pa <= axleSlip_Pa ? 'drum' : 'axle',
    slip_pressure_Pa,
    climbs,
    limit: climbs ? 'none' : slipsBeforeRelief ? 'slip' : 'relief',
    pull_available_N: (drumPull + axlePull) * highest_Pa,
    notes,
  });
}

/** Pull at the ground per pressure across the motor, N/Pa. */
export function pullPerPressure(end: DrivenEnd, range: DriveRange): number {
  const displacement = range === 'low' ? end.displacement_low_m3_rev : end.displacement_high_m3_rev;
  return (displacement * end.gear_ratio * end.efficiency) / (2 * Math.PI * end.radius_m);
}

const checkEnd = (end: DrivenEnd, at: string) =>
  checkNumbers(
    end,
    {
      displacement_low_m3_rev: above(0),
      displacement_high_m3_rev: above(0),
      gear_ratio: above(0),
      radius_m: above(0),
      load_N: atLeast(0),
      efficiency: within(0.01, 1),
      adhesion: atLeast(0),
    },
    at,
  );
