/**
 * A bolt's preload, tightening torque and stress: F = share x As x Sp, T = K F d, and under an outside load P
 * the bolt carries F + C P, C = bolt stiffness / (bolt + members).
 * Source: R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, ch. 8 (from memory);
 * U. C. Jindal, Machine Design, ch. 9. K scatters by a quarter or more; a real machine's torque comes from its own
 * documentation, this only shows the relation.
 */
import {
  above,
  atLeast,
  checkNumbers,
  checkOneOf,
  fail,
  faultAt,
  finished,
  message,
  within,
  type Fault,
  type Message,
  type Result,
} from '../../kernel';

export type ThreadForm = 'metric' | 'unified';

/**
 * As = pi/4 (d - c P)^2 with c = 0.9382 for ISO metric (ISO 898-1) and 0.9743 for unified threads (ASME B1.1);
 * both from memory.
 * @returns m2
 */
export function stressArea(diameter_m: number, pitch_m: number, thread: ThreadForm = 'metric'): number {
  const core = diameter_m - (thread === 'metric' ? 0.9382 : 0.9743) * pitch_m;
  return (Math.PI / 4) * core * core;
}

export interface BoltInput {
  /** Nominal diameter. */
  readonly diameter_m: number;
  /** Give one of these two; the pitch is that of `thread`. */
  readonly stress_area_m2?: number | undefined;
  readonly pitch_m?: number | undefined;
  /** Default 'metric'. */
  readonly thread?: ThreadForm | undefined;
  /** Proof strength. */
  readonly proof_Pa: number;
  /** Give one of these two: share of the proof load, 0 to 1, or the force. */
  readonly preload_fraction?: number | undefined;
  readonly preload_N?: number | undefined;
  /** Nut factor, about 0.2 dry. */
  readonly K: number;
  /** Load that pulls the joint apart, per bolt, and the share C of it that the bolt sees. */
  readonly external_load_N?: number | undefined;
  readonly joint_stiffness_ratio?: number | undefined;
}

export interface Bolt {
  readonly stress_area_m2: number;
  readonly preload_N: number;
  readonly torque_Nm: number;
  readonly stress_initial_Pa: number;
  /** Stress with the outside load; null without one. */
  readonly stress_loaded_Pa: number | null;
  /** Greatest stress over proof strength. */
  readonly proof_ratio: number;
  /** Outside load at which the joint opens, F / (1 - C); null without C, or where C is 1. */
  readonly separation_load_N: number | null;
  readonly notes: readonly Message[];
}

/** Noted: stress above proof, and a joint that opens (the bolt then carries the whole outside load). */
export function bolt(input: BoltInput): Result<Bolt> {
  const faults = checkBolt(input);
  if (faults.length > 0) return fail(faults);
  const { diameter_m, pitch_m = 0, proof_Pa, K, external_load_N, joint_stiffness_ratio: C } = input;
  const stress_area_m2 = input.stress_area_m2 ?? stressArea(diameter_m, pitch_m, input.thread);
  const preload_N = input.preload_N ?? (input.preload_fraction ?? 0) * stress_area_m2 * proof_Pa;
  const stress_initial_Pa = preload_N / stress_area_m2;
  const separation_load_N = C === undefined || C === 1 ? null : preload_N / (1 - C);
  const notes: Message[] = [];
  if (separation_load_N === null) notes.push(message('mechanics.note.no-separation-load'));

  let stress_loaded_Pa: number | null = null;
  if (external_load_N === undefined || C === undefined) {
    notes.push(message('mechanics.note.no-outside-load'));
  } else {
    const opens = separation_load_N !== null && external_load_N > separation_load_N;
    stress_loaded_Pa = (opens ? external_load_N : preload_N + C * external_load_N) / stress_area_m2;
    if (opens) notes.push(message('mechanics.note.joint-opens'));
  }
  const proof_ratio = Math.max(stress_initial_Pa, stress_loaded_Pa ?? 0) / proof_Pa;
  if (proof_ratio > 1) notes.push(message('mechanics.note.above-proof'));
  return finished({
    stress_area_m2,
    preload_N,
    torque_Nm: K * preload_N * diameter_m,
    stress_initial_Pa,
    stress_loaded_Pa,
    proof_ratio,
    separation_load_N,
    notes,
  });
}

function checkBolt(input: BoltInput): Fault[] {
  const faults = checkNumbers(input, {
    diameter_m: above(0),
    stress_area_m2: above(0),
    pitch_m: above(0),
    proof_Pa: above(0),
    preload_fraction: within(0, 1),
    preload_N: atLeast(0),
    K: above(0),
    external_load_N: atLeast(0),
    joint_stiffness_ratio: within(0, 1),
  });
  faults.push(
    ...checkOneOf(input, ['stress_area_m2', 'pitch_m']),
    ...checkOneOf(input, ['preload_fraction', 'preload_N']),
  );
  const { diameter_m, pitch_m, external_load_N, joint_stiffness_ratio } = input;
  if (pitch_m !== undefined && pitch_m >= diameter_m) {
    faults.push(faultAt('pitch_m', message('expected.below', { limit: diameter_m }), pitch_m));
  }
  if (external_load_N !== undefined && joint_stiffness_ratio === undefined) {
    faults.push(faultAt('joint_stiffness_ratio', message('expected.within', { low: 0, high: 1 }), undefined));
  }
  return faults;
}
