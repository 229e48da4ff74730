/**
 * One mass on a spring and a damper: natural frequency, damping, forced response F cos wt, transmissibility.
 * x = A cos(wt + phase): A = F / sqrt((k - m w^2)^2 + (c w)^2), phase from 0 (slow) over -90 degrees (resonance)
 * to -180 degrees (fast). TR = sqrt((1 + (2 z r)^2) / ((1 - r^2)^2 + (2 z r)^2)), r = w / w_n.
 * Source: T. Bevan, The Theory of Machines, ch. 15.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  finished,
  message,
  type Message,
  type Result,
} from '../../kernel';

export interface SingleDofInput {
  readonly mass_kg: number;
  readonly stiffness_N_m: number;
  readonly damping_Ns_m: number;
  /** Amplitude of the force; without it there is no amplitude. */
  readonly force_N?: number | undefined;
  /** Its frequency; without it there is no forced response. */
  readonly omega_rad_s?: number | undefined;
}

export interface SingleDof {
  readonly natural_rad_s: number;
  /** Share of critical damping. */
  readonly damping_ratio: number;
  /** Null from critical damping on, where nothing swings. */
  readonly damped_rad_s: number | null;
  readonly amplitude_m: number | null;
  /** Displacement against force; negative: it lags. */
  readonly phase_deg: number | null;
  /** Force into the ground over force on the mass, equally motion of the mass over motion of the ground. */
  readonly transmissibility: number | null;
  readonly notes: readonly Message[];
}

/** Undamped and within this of resonance, the steady response has no limit. */
const RESONANCE = 1e-9;

export function singleDof(input: SingleDofInput): Result<SingleDof> {
  const { mass_kg: m, stiffness_N_m: k, damping_Ns_m: c, force_N, omega_rad_s: w } = input;
  const faults = checkNumbers(input, {
    mass_kg: above(0),
    stiffness_N_m: above(0),
    damping_Ns_m: atLeast(0),
    force_N: atLeast(0),
    omega_rad_s: atLeast(0),
  });
  if (faults.length > 0) return fail(faults);
  const natural_rad_s = Math.sqrt(k / m);
  const damping_ratio = c / (2 * Math.sqrt(k) * Math.sqrt(m));
  const notes: Message[] = [];
  const swings = damping_ratio < 1;
  if (!swings) notes.push(message('mechanics.note.overdamped'));
  const damped_rad_s = swings ? natural_rad_s * Math.sqrt(1 - damping_ratio ** 2) : null;
  const free = { natural_rad_s, damping_ratio, damped_rad_s };
  const none = { amplitude_m: null, phase_deg: null, transmissibility: null };

  if (w === undefined) {
    notes.push(message('mechanics.note.response-needs-frequency'));
    return finished({ ...free, ...none, notes });
  }
  const r = w / natural_rad_s;
  if (c === 0 && Math.abs(1 - r * r) < RESONANCE) {
    notes.push(message('mechanics.note.undamped-resonance'));
    return finished({ ...free, ...none, notes });
  }
  if (force_N === undefined) notes.push(message('mechanics.note.amplitude-needs-force'));
  const elastic = 1 - r * r;
  const viscous = 2 * damping_ratio * r;
  const size = Math.hypot(elastic, viscous);
  return finished({
    ...free,
    amplitude_m: force_N === undefined ? null : force_N / (k * size),
    // 0 - x, so that no lag is 0 and not minus zero
    phase_deg: 0 - (Math.atan2(viscous, elastic) * 180) / Math.PI,
    transmissibility: Math.hypot(1, viscous) / size,
    notes,
  });
}
