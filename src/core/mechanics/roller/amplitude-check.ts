/**
 * Verdict on a measured amplitude and vibration rate in one direction: measured against expected, within a share of it
 * and the expected value's own band. Amplitude is half of the double amplitude, drum free (ISO 8811, from memory): on
 * tyres or soft soil it reads close to it, on firm soil it does not. The tolerances are common practice, no source.
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

export interface AmplitudeCheckInput {
  readonly amplitude_m: number;
  readonly vibrations_per_minute: number;
  readonly expected_amplitude_m: number;
  readonly expected_vibrations_per_minute: number;
  /** Half width of the expected amplitude's own band, default 0. */
  readonly band_m?: number | undefined;
  /** Allowed shares, default 0.1 and 0.03. */
  readonly amplitude_tolerance?: number | undefined;
  readonly rate_tolerance?: number | undefined;
}

export type AmplitudeVerdict = 'within' | 'low' | 'high';

export interface AmplitudeCheck {
  readonly amplitude: AmplitudeVerdict;
  readonly rate: AmplitudeVerdict;
  readonly amplitude_ratio: number;
  readonly rate_ratio: number;
  readonly amplitude_from_m: number;
  readonly amplitude_to_m: number;
  readonly rate_from: number;
  readonly rate_to: number;
  readonly passed: boolean;
  readonly notes: readonly Message[];
}

/** Refused: measured or expected values not above 0. */
export function amplitudeCheck(input: AmplitudeCheckInput): Result<AmplitudeCheck> {
  const faults = checkNumbers(input, {
    amplitude_m: above(0),
    vibrations_per_minute: above(0),
    expected_amplitude_m: above(0),
    expected_vibrations_per_minute: above(0),
    band_m: atLeast(0),
    amplitude_tolerance: above(0),
    rate_tolerance: above(0),
  });
  if (faults.length > 0) return fail(faults);
  const { band_m = 0, amplitude_tolerance = 0.1, rate_tolerance = 0.03 } = input;
  const slack_m = band_m + amplitude_tolerance * input.expected_amplitude_m;
  const slack = rate_tolerance * input.expected_vibrations_per_minute;
  const judge = (value: number, from: number, to: number): AmplitudeVerdict =>
    value < from - 1e-12 ? 'low' : value > to + 1e-12 ? 'high' : 'within';
  const amplitude_from_m = Math.max(0, input.expected_amplitude_m - slack_m);
  const amplitude_to_m = input.expected_amplitude_m + slack_m;
  const rate_from = input.expected_vibrations_per_minute - slack;
  const rate_to = input.expected_vibrations_per_minute + slack;
  const amplitude = judge(input.amplitude_m, amplitude_from_m, amplitude_to_m);
  const rate = judge(input.vibrations_per_minute, rate_from, rate_to);
  const notes: Message[] = [];
  if (amplitude === 'low') notes.push(message('mechanics.note.amplitude-low'));
  if (amplitude === 'high') notes.push(message('mechanics.note.amplitude-high'));
  if (rate === 'low') notes.push(message('mechanics.note.rate-low'));
  if (rate === 'high') notes.push(message('mechanics.note.rate-high'));
  return finished({
    amplitude,
    rate,
    amplitude_ratio: input.amplitude_m / input.expected_amplitude_m,
    rate_ratio: input.vibrations_per_minute / input.expected_vibrations_per_minute,
    amplitude_from_m,
    amplitude_to_m,
    rate_from,
    rate_to,
    passed: amplitude === 'within' && rate === 'within',
    notes,
  });
}
