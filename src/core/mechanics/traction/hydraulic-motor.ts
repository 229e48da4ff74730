/**
 * Hydraulic motor: T = dp D / (2 pi) eta_m, n = Q eta_v / D, shaft power T w.
 * Source: A. Esposito, Fluid Power with Applications, ch. 7; J. Sullivan, Fluid Power Theory & Applications, ch. 9.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  within,
  type Fault,
  type Message,
  type Result,
} from '../../kernel';

export interface HydraulicMotorInput {
  readonly displacement_m3_rev: number;
  /** Pressure across the motor. */
  readonly pressure_Pa: number;
  /** Give one of flow and speed; both (a measurement) give the volumetric efficiency. */
  readonly flow_m3_s?: number | undefined;
  readonly speed_rpm?: number | undefined;
  /** Shares 0 to 1, default 1. */
  readonly eta_volumetric?: number | undefined;
  readonly eta_mechanical?: number | undefined;
  /** Measured torque; gives the mechanical efficiency. */
  readonly measured_torque_Nm?: number | undefined;
}

export interface HydraulicMotor {
  readonly torque_Nm: number;
  readonly speed_rpm: number | null;
  readonly power_W: number | null;
  readonly flow_m3_s: number | null;
  readonly eta_volumetric: number;
  readonly eta_mechanical: number;
  readonly eta_overall: number;
  readonly notes: readonly Message[];
}

/** Refused: an efficiency stated twice (given and measured), a measurement that makes one above 1 or 0. */
export function hydraulicMotor(input: HydraulicMotorInput): Result<HydraulicMotor> {
  const { displacement_m3_rev: D, pressure_Pa, flow_m3_s: flow, speed_rpm: speed } = input;
  const faults: Fault[] = checkNumbers(input, {
    displacement_m3_rev: above(0),
    pressure_Pa: atLeast(0),
    flow_m3_s: atLeast(0),
    speed_rpm: atLeast(0),
    eta_volumetric: within(0.01, 1),
    eta_mechanical: within(0.01, 1),
    measured_torque_Nm: atLeast(0),
  });
  const ideal_Nm = (pressure_Pa * D) / (2 * Math.PI);
  const measuredVolumetric = flow === undefined || speed === undefined ? undefined : (D * speed) / 60 / flow;
  const measuredMechanical =
    input.measured_torque_Nm === undefined ? undefined : input.measured_torque_Nm / ideal_Nm;
  const eta_volumetric = pick('eta_volumetric', input.eta_volumetric, measuredVolumetric, faults);
  const eta_mechanical = pick('eta_mechanical', input.eta_mechanical, measuredMechanical, faults);
  if (faults.length > 0) return fail(faults);

  const torque_Nm = ideal_Nm * eta_mechanical;
  const speed_rpm = speed ?? (flow === undefined ? null : (60 * flow * eta_volumetric) / D);
  const notes = speed_rpm === null ? [message('mechanics.note.speed-needs-flow')] : [];
  return finished({
    torque_Nm,
    speed_rpm,
    power_W: speed_rpm === null ? null : (torque_Nm * 2 * Math.PI * speed_rpm) / 60,
    flow_m3_s: flow ?? (speed === undefined ? null : (D * speed) / 60 / eta_volumetric),
    eta_volumetric,
    eta_mechanical,
    eta_overall: eta_volumetric * eta_mechanical,
    notes,
  });
}

/** The one efficiency that is known, given or measured; 1 if neither. */
function pick(key: string, given: number | undefined, measured: number | undefined, faults: Fault[]): number {
  if (measured === undefined) return given ?? 1;
  if (given !== undefined) faults.push(faultAt(key, message('mechanics.expected.not-twice'), given));
  else if (!(measured > 0 && measured <= 1)) {
    faults.push(faultAt(key, message('mechanics.expected.efficiency'), measured));
  }
  return measured;
}
