/**
 * Slip of a bolted friction joint: F = n mu Fi faces, and about the axis of a bolt circle T = F r.
 * Source: R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, ch. 8 (from memory). Force and
 * torque together are added as if they pulled the same way at the worst bolt, which is on the safe side.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  wholeWithin,
  type Message,
  type Result,
} from '../../kernel';

export interface JointSlipInput {
  /** Number of bolts. */
  readonly count: number;
  /** Preload of each. */
  readonly preload_N: number;
  readonly friction: number;
  /** Number of friction faces, default 1. */
  readonly faces?: number | undefined;
  /** Radius of the bolt circle; without it there is no slip torque. */
  readonly radius_m?: number | undefined;
  /** Load in the plane of the joint, default 0. */
  readonly force_N?: number | undefined;
  /** Torque about the axis of the bolt circle, default 0; needs the radius. */
  readonly torque_Nm?: number | undefined;
}

export interface JointSlip {
  readonly slip_force_N: number;
  readonly slip_torque_Nm: number | null;
  /** Force / slip force + torque / slip torque; at 1 it slips. */
  readonly use: number | null;
  readonly slips: boolean | null;
  readonly notes: readonly Message[];
}

/** `use` and `slips` are null where there is no friction at all. */
export function jointSlip(input: JointSlipInput): Result<JointSlip> {
  const faults = checkNumbers(input, {
    count: wholeWithin(1, 1000),
    preload_N: atLeast(0),
    friction: atLeast(0),
    faces: wholeWithin(1, 100),
    radius_m: above(0),
    force_N: atLeast(0),
    torque_Nm: atLeast(0),
  });
  const { count, preload_N, friction, faces = 1, radius_m, force_N = 0, torque_Nm = 0 } = input;
  if (torque_Nm > 0 && radius_m === undefined) {
    faults.push(faultAt('radius_m', message('expected.above', { limit: 0 }), undefined));
  }
  if (faults.length > 0) return fail(faults);
  const slip_force_N = count * friction * preload_N * faces;
  const slip_torque_Nm = radius_m === undefined ? null : slip_force_N * radius_m;
  const notes: Message[] = [];
  if (slip_torque_Nm === null) notes.push(message('mechanics.note.slip-torque-needs-radius'));
  if (slip_force_N === 0) {
    notes.push(message('mechanics.note.no-friction-grip'));
    return finished({ slip_force_N, slip_torque_Nm, use: null, slips: null, notes });
  }
  const use = force_N / slip_force_N + (slip_torque_Nm === null ? 0 : torque_Nm / slip_torque_Nm);
  return finished({ slip_force_N, slip_torque_Nm, use, slips: use >= 1, notes });
}
