/**
 * Drum and frame of a vibratory roller on soil in time, with loss of contact: the soil pushes and never pulls.
 *   md z" = md g + U w^2 cos wt - k (z - f) - c (z' - f') - Fs,   mf f" = mf g + k (z - f) + c (z' - f'),
 *   Fs = max(0, ks z + cs z'); downwards positive, z = 0 with the drum just touching.
 * Sources: T. S. Yoo, E. T. Selig 1979 (from memory); P. van Susante, M. Mooney, J. Eng. Mech. 134 (8) 2008 (loss of
 * contact). Kinds of running: D. Adam, F. Kopf, as quoted in Acta Geotech. 2024, s11440-024-02342-8: continuous
 * contact, partial uplift (each turn alike), double jump (every second turn alike); rocking needs both ends of the
 * drum and is outside this model.
 *
 * The run starts at rest on the settled ground with the exciter at full speed, and is looked at once it has settled.
 * Where several motions are possible, another start may end in another one.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  STANDARD_GRAVITY as G,
  within,
  type Message,
  type Result,
} from '../../kernel';
import { dormandPrince } from './dormand-prince';
import type { RollerResponseInput } from './roller-response';
import { type Regime, regimeOf, WATCHED_TURNS } from './regime';

/** Samples a turn of the exciter that readings are taken from. */
export const SAMPLES_A_TURN = 64;
/** Error that one step may make, as a share of the nominal amplitude. */
export const STEP_ERROR = 1e-7;
const MOST_STEPS = 400_000;
/** Turns that are handed on as a trace. */
const TRACED_TURNS = 4;

export interface RollerInTimeInput extends RollerResponseInput {
  /** Time before the readings begin, default 8 s. */
  readonly settle_s?: number | undefined;
}

/** The last turns, sampled evenly; downwards positive, from the standing position. */
export interface RollerTrace {
  readonly time_s: readonly number[];
  readonly drum_m: readonly number[];
  readonly frame_m: readonly number[];
  readonly soil_force_N: readonly number[];
}

export interface RollerInTime {
  /** Half of peak to peak. */
  readonly drum_amplitude_m: number;
  readonly frame_amplitude_m: number;
  /** Share of the motion at the exciter's own frequency. */
  readonly drum_first_m: number;
  /** Its phase against the force; negative: it lags. Null with no motion. */
  readonly drum_phase_deg: number | null;
  readonly frame_first_m: number;
  readonly soil_force_max_N: number;
  readonly soil_force_min_N: number;
  readonly soil_force_mean_N: number;
  readonly static_load_N: number;
  /** Share of the time in which the soil carries. */
  readonly contact_share: number;
  readonly contact: 'kept' | 'lost' | null;
  readonly regime: Regime;
  /** Turns after which the motion repeats; null when it does not within four. */
  readonly repeats_after_turns: number | null;
  /** Drum motion at half the exciter's frequency over that at its own; null with no motion. */
  readonly half_frequency_share: number | null;
  /** Mean powers over the watched turns. */
  readonly exciter_power_W: number;
  readonly soil_power_W: number;
  readonly mount_power_W: number;
  /** What the energy of the watched turns leaves unaccounted, as a share of the greatest of its terms. */
  readonly energy_residual: number;
  readonly steps: number;
  readonly trace: RollerTrace;
  readonly notes: readonly Message[];
}

/** Refused: what `rollerResponse` refuses, and inputs so stiff or fast that the steps run out. */
export function rollerInTime(input: RollerInTimeInput): Result<RollerInTime> {
  const faults = checkNumbers(input, {
    drum_mass_kg: above(0),
    frame_mass_kg: above(0),
    unbalance_kgm: atLeast(0),
    frequency_Hz: within(1, 200),
    mount_stiffness_N_m: above(0),
    mount_damping_Ns_m: atLeast(0),
    soil_stiffness_N_m: above(0),
    soil_damping_Ns_m: atLeast(0),
    settle_s: within(0, 60),
  });
  if (faults.length > 0) return fail(faults);
  const { drum_mass_kg: md, frame_mass_kg: mf, unbalance_kgm: U, frequency_Hz } = input;
  const { mount_stiffness_N_m: k, mount_damping_Ns_m: c } = input;
  const { soil_stiffness_N_m: ks, soil_damping_Ns_m: cs, settle_s = 8 } = input;
  const w = 2 * Math.PI * frequency_Hz;
  const force_N = U * w * w;
  const static_load_N = (md + mf) * G;
  const sink_m = static_load_N / ks;
  const frameSink_m = sink_m + (mf * G) / k;

  /** z, z', f, f', then work of exciter, soil and mount damper. */
  const slope = (t: number, y: Float64Array, out: Float64Array): void => {
    const [z, zv, f, fv] = y as unknown as [number, number, number, number];
    const push = force_N * Math.cos(w * t);
    const damper = c * (zv - fv);
    const mount = k * (z - f) + damper;
    const soil = Math.max(0, ks * z + cs * zv);
    out[0] = zv;
    out[1] = G + (push - mount - soil) / md;
    out[2] = fv;
    out[3] = G + mount / mf;
    out[4] = push * zv;
    out[5] = soil * zv;
    out[6] = damper * (zv - fv);
  };
  const bound_m = STEP_ERROR * (U > 0 ? U / md : sink_m);
  const bounds = Float64Array.of(bound_m, bound_m * w, bound_m, bound_m * w, Infinity, Infinity, Infinity);
  const solver = dormandPrince(slope, bounds, 1 / (frequency_Hz * SAMPLES_A_TURN), MOST_STEPS);
  const y = Float64Array.of(sink_m, 0, frameSink_m, 0, 0, 0, 0);
  const tooHard = () =>
    fail<RollerInTime>([
      faultAt(
        'soil_stiffness_N_m / mount_stiffness_N_m',
        message('mechanics.expected.within-steps', { steps: MOST_STEPS }),
        ks,
      ),
    ]);
  // whole turns, so that the samples start with the force pointing down
  const settleTurns = Math.ceil(settle_s * frequency_Hz);
  const samples = WATCHED_TURNS * SAMPLES_A_TURN;
  const time = (sample: number): number => (settleTurns + sample / SAMPLES_A_TURN) / frequency_Hz;
  if (!solver.advance(y, 0, time(0))) return tooHard();

  const stored = (): number =>
    (md * y[1]! ** 2 + mf * y[3]! ** 2 + k * (y[0]! - y[2]!) ** 2) / 2 - G * (md * y[0]! + mf * y[2]!);
  const before = stored();
  y.fill(0, 4);
  const drum_m: number[] = [];
  const frame_m: number[] = [];
  const soil_N: number[] = [];
  for (let i = 0; i < samples; i++) {
    drum_m.push(y[0]! - sink_m);
    frame_m.push(y[2]! - frameSink_m);
    soil_N.push(Math.max(0, ks * y[0]! + cs * y[1]!));
    if (!solver.advance(y, time(i), time(i + 1))) return tooHard();
  }
  const [exciter_J, soil_J, mount_J] = [y[4]!, y[5]!, y[6]!];
  const gained_J = stored() - before;
  const largest_J = Math.max(Math.abs(exciter_J), Math.abs(soil_J), Math.abs(mount_J), Math.abs(gained_J));
  const watched_s = WATCHED_TURNS / frequency_Hz;

  const first = harmonic(drum_m, 1);
  const half = harmonic(drum_m, 0.5);
  const moves = U > 0 && first.size > 0;
  // what is left of rounding around the standing place is no motion to judge
  const { regime, repeats_after_turns } = regimeOf(moves ? drum_m : [0], soil_N, SAMPLES_A_TURN);
  const contact_share = soil_N.filter((each) => each > 0).length / samples;
  const notes: Message[] = [];
  if (!moves) notes.push(message('mechanics.note.no-motion'));
  if (repeats_after_turns === null) notes.push(message('mechanics.note.does-not-repeat'));
  const from = samples - TRACED_TURNS * SAMPLES_A_TURN;
  return finished({
    drum_amplitude_m: halfSpan(drum_m),
    frame_amplitude_m: halfSpan(frame_m),
    drum_first_m: first.size,
    drum_phase_deg: moves ? first.angle_deg : null,
    frame_first_m: harmonic(frame_m, 1).size,
    soil_force_max_N: Math.max(...soil_N),
    soil_force_min_N: Math.min(...soil_N),
    soil_force_mean_N: soil_N.reduce((sum, each) => sum + each, 0) / samples,
    static_load_N,
    contact_share,
    contact: contact_share < 1 ? ('lost' as const) : ('kept' as const),
    regime,
    repeats_after_turns,
    half_frequency_share: moves ? half.size / first.size : null,
    exciter_power_W: exciter_J / watched_s,
    soil_power_W: soil_J / watched_s,
    mount_power_W: mount_J / watched_s,
    energy_residual: largest_J === 0 ? 0 : (exciter_J - soil_J - mount_J - gained_J) / largest_J,
    steps: solver.steps,
    trace: {
      time_s: drum_m.slice(from).map((_, i) => i / (SAMPLES_A_TURN * frequency_Hz)),
      drum_m: drum_m.slice(from),
      frame_m: frame_m.slice(from),
      soil_force_N: soil_N.slice(from),
    },
    notes,
  });
}

const halfSpan = (values: readonly number[]): number => (Math.max(...values) - Math.min(...values)) / 2;

/** Size and angle of the component at `order` times the exciter's frequency; whole cycles of it are watched. */
function harmonic(values: readonly number[], order: number): { size: number; angle_deg: number } {
  let re = 0;
  let im = 0;
  values.forEach((value, i) => {
    const angle = (2 * Math.PI * order * i) / SAMPLES_A_TURN;
    re += value * Math.cos(angle);
    im -= value * Math.sin(angle);
  });
  return {
    size: (2 * Math.hypot(re, im)) / values.length,
    angle_deg: (Math.atan2(im, re) * 180) / Math.PI,
  };
}
