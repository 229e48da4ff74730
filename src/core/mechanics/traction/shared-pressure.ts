/**
 * Two hydraulic motors on one pressure: what a change of one motor's range does. With pulls a p and b p at low range
 * and r a p after the change, the same hill needs (a + b) p_low = (r a + b) p_high. Two pressures read on the same
 * hill therefore tell r, the ratio of displacements, and the shares of the pull.
 * Source: parallel motors share pressure, torque goes with displacement (A. Esposito, Fluid Power with Applications,
 * ch. 7); the worked example is common practice, no source.
 */
import {
  above,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  type Message,
  type Result,
} from '../../kernel';

export interface SharedPressureInput {
  /** Pressure that the hill needs with both in low range, or would need if nothing spun. */
  readonly pressure_low_Pa: number;
  /** Pressure at which it climbs with the changed end in high range. */
  readonly pressure_high_Pa: number;
  /** Pressure at which the changed end breaks away in low range. */
  readonly slip_low_Pa: number;
  /** Pull of the other end over pull of the changed end, both in low range, default 1 (equal motors). */
  readonly other_over_changed?: number | undefined;
}

export interface SharedPressure {
  /** Displacement in high range over that in low range. */
  readonly displacement_ratio: number;
  /** Share of the pull that the changed end has in high range, 0 to 1, and the other's. */
  readonly changed_share: number;
  readonly other_share: number;
  /** Pressure at which the changed end would break away in high range. */
  readonly slip_high_Pa: number;
  readonly climbs_low: boolean;
  readonly climbs_high: boolean;
  readonly notes: readonly Message[];
}

/** Refused: pressures that would ask for a ratio of 0 or less. */
export function sharedPressure(input: SharedPressureInput): Result<SharedPressure> {
  const { pressure_low_Pa, pressure_high_Pa, slip_low_Pa, other_over_changed: b = 1 } = input;
  const faults = checkNumbers(input, {
    pressure_low_Pa: above(0),
    pressure_high_Pa: above(0),
    slip_low_Pa: above(0),
    other_over_changed: above(0),
  });
  if (faults.length > 0) return fail(faults);
  const displacement_ratio = (1 + b) * (pressure_low_Pa / pressure_high_Pa) - b;
  if (!(displacement_ratio > 0)) {
    const limit = pressure_low_Pa * (1 + 1 / b);
    return fail([faultAt('pressure_high_Pa', message('expected.below', { limit }), pressure_high_Pa)]);
  }
  const slip_high_Pa = slip_low_Pa / displacement_ratio;
  return finished({
    displacement_ratio,
    changed_share: displacement_ratio / (displacement_ratio + b),
    other_share: b / (displacement_ratio + b),
    slip_high_Pa,
    climbs_low: pressure_low_Pa <= slip_low_Pa,
    climbs_high: pressure_high_Pa <= slip_high_Pa,
    notes: [],
  });
}
