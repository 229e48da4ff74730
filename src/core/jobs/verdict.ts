/** After the job: measured amplitude and vibration rate in each direction against what the exciter's study expects. */
import { type Message, message } from '../kernel';
import { type AmplitudeCheck, amplitudeCheck } from '../mechanics';
import type { ExciterStudy } from '../studies';

export interface Measured {
  /** Half of the double amplitude. */
  readonly amplitude_m: number;
  readonly vibrations_per_minute: number;
}

export interface MeasuredJob {
  readonly high: Measured | null;
  readonly low: Measured | null;
  /** Allowed shares; default 0.1 and 0.03 (common practice, no source). */
  readonly amplitude_tolerance?: number | undefined;
  readonly rate_tolerance?: number | undefined;
}

export interface DirectionVerdict {
  readonly direction: 'high' | 'low';
  readonly measured: Measured | null;
  readonly expected: Measured | null;
  readonly check: AmplitudeCheck | null;
  readonly notes: readonly Message[];
}

export interface JobVerdict {
  readonly directions: readonly DirectionVerdict[];
  /** 'open' while a direction is not measured or not known. */
  readonly result: 'passed' | 'failed' | 'open';
}

export function jobVerdict(study: ExciterStudy | null, measured: MeasuredJob): JobVerdict {
  const directions = (['high', 'low'] as const).map((direction): DirectionVerdict => {
    const found = measured[direction];
    const side = study?.[direction];
    const amplitude = side?.value?.nominalAmplitude_m ?? null;
    const expected =
      side === undefined || amplitude === null
        ? null
        : { amplitude_m: amplitude, vibrations_per_minute: side.frequency_Hz * 60 };
    const base = { direction, measured: found, expected };
    if (found === null) return { ...base, check: null, notes: [message('job.verdict.not-measured')] };
    if (expected === null) return { ...base, check: null, notes: [message('job.verdict.not-expected')] };
    const band_m = side?.surface === 'settled' ? (side.simulated?.band.nominalAmplitude_m ?? 0) : 0;
    const checked = amplitudeCheck({
      ...found,
      expected_amplitude_m: expected.amplitude_m,
      expected_vibrations_per_minute: expected.vibrations_per_minute,
      band_m,
      amplitude_tolerance: measured.amplitude_tolerance,
      rate_tolerance: measured.rate_tolerance,
    });
    return checked.ok
      ? { ...base, check: checked.value, notes: checked.value.notes }
      : { ...base, check: null, notes: checked.faults.map((f) => f.expected) };
  });
  const known = directions.filter((d) => d.check !== null);
  const failed = known.some((d) => d.check?.passed === false);
  return {
    directions,
    result: failed ? 'failed' : known.length === directions.length ? 'passed' : 'open',
  };
}
