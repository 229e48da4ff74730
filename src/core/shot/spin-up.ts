/**
 * Spin-up laws: how the housing is brought up to speed.
 *
 * The law matters: gravity scoops the shot in the few radians of turning around the critical speed
 * (w^2 r = g), so a start that rushes through that window leaves the pocket half empty.
 */

/** Frequency in Hz against time in s; the turning sense is set elsewhere, so frequencies are not negative. */
export type SpinUp =
  /** f = frequency (t / time), then held. */
  | { readonly kind: 'linear'; readonly frequency_Hz: number; readonly time_s: number }
  /** Soft start f = frequency (t / time)^2, then held. */
  | { readonly kind: 'quadratic'; readonly frequency_Hz: number; readonly time_s: number }
  /** A measured table, times rising from 0, straight lines between its rows, the last value held. */
  | { readonly kind: 'table'; readonly points: readonly SpinUpPoint[] };

export interface SpinUpPoint {
  readonly time_s: number;
  readonly frequency_Hz: number;
}

/** State of the turning housing: angle in rad, speed in rad/s, acceleration in rad/s2, counter-clockwise positive. */
export interface Turning {
  angle_rad: number;
  speed_rad_s: number;
  acceleration_rad_s2: number;
}

const TURN = 2 * Math.PI;

/** The angle, speed and acceleration (all >= 0, angle from 0) of a spin-up law at `time_s`; at rest before 0. */
export function spinUpAt(law: SpinUp, time_s: number, out: Turning): void {
  if (time_s <= 0) {
    out.angle_rad = 0;
    out.speed_rad_s = law.kind === 'table' ? TURN * (law.points[0]?.frequency_Hz ?? 0) : 0;
    out.acceleration_rad_s2 = 0;
    return;
  }
  if (law.kind === 'table') return tableAt(law.points, time_s, out);
  const top = TURN * law.frequency_Hz;
  const span = law.time_s;
  const power = law.kind === 'linear' ? 1 : 2;
  const done = Math.min(time_s / span, 1);
  out.angle_rad = (top * span * done ** (power + 1)) / (power + 1) + top * Math.max(0, time_s - span);
  out.speed_rad_s = top * done ** power;
  out.acceleration_rad_s2 = done < 1 ? (power * top * done ** (power - 1)) / span : 0;
}

/** The first time at which the law reaches `frequency_Hz`; null when it never does. */
export function timeToReach(law: SpinUp, frequency_Hz: number): number | null {
  if (law.kind === 'table') return tableTimeToReach(law.points, frequency_Hz);
  if (frequency_Hz > law.frequency_Hz) return null;
  const share = frequency_Hz / law.frequency_Hz;
  return law.time_s * (law.kind === 'linear' ? share : Math.sqrt(share));
}

function tableAt(points: readonly SpinUpPoint[], time_s: number, out: Turning): void {
  let angle = 0;
  for (let i = 1; i < points.length; i++) {
    const from = points[i - 1]!;
    const to = points[i]!;
    const span = to.time_s - from.time_s;
    const slope = (TURN * (to.frequency_Hz - from.frequency_Hz)) / span;
    const start = TURN * from.frequency_Hz;
    const passed = Math.min(time_s - from.time_s, span);
    angle += start * passed + 0.5 * slope * passed * passed;
    if (time_s <= to.time_s) {
      out.angle_rad = angle;
      out.speed_rad_s = start + slope * passed;
      out.acceleration_rad_s2 = slope;
      return;
    }
  }
  const last = points[points.length - 1]!;
  out.speed_rad_s = TURN * last.frequency_Hz;
  out.angle_rad = angle + out.speed_rad_s * (time_s - last.time_s);
  out.acceleration_rad_s2 = 0;
}

function tableTimeToReach(points: readonly SpinUpPoint[], frequency_Hz: number): number | null {
  for (let i = 0; i < points.length; i++) {
    const to = points[i]!;
    if (to.frequency_Hz < frequency_Hz) continue;
    const from = points[i - 1];
    if (from === undefined || to.frequency_Hz === from.frequency_Hz) return to.time_s;
    const share = (frequency_Hz - from.frequency_Hz) / (to.frequency_Hz - from.frequency_Hz);
    return from.time_s + share * (to.time_s - from.time_s);
  }
  return null;
}
