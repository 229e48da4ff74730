/** Geometry of the live chart: captured share and U over time, or over w^2 r / g on a logarithmic scale. */
import type { Readings } from '../../../core/shot';

export const CHART = { width: 340, height: 176, left: 36, right: 40, top: 20, bottom: 34 } as const;

export type ChartOver = 'time' | 'gravity';

/** Least w^2 r / g shown: below it gravity rules alone. */
const LEAST_RATIO = 0.1;

export interface ChartScale {
  readonly x: (reading: Pick<Readings, 'time_s' | 'gravity_ratio'>) => number;
  readonly share: (captured: number) => number;
  readonly U: (kgm: number) => number;
  /** Values along the foot with their places. */
  readonly ticks: readonly { readonly value: number; readonly x: number }[];
  /** Where w^2 r = g. */
  readonly critical_x: number | null;
  readonly U_ticks_kgm: readonly number[];
}

/** 1, 2 or 5 times a power of ten, so that about `count` steps make up `span`. */
export function niceStep(span: number, count: number): number {
  const raw = span / count;
  const power = 10 ** Math.floor(Math.log10(raw));
  const lead = raw / power;
  return power * (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10);
}

/**
 * Scales for the readings of a take and the U that goes with each; `extra_kgm` must fit as well. `unit_kgm` is what one
 * of the person's units of U stands for, so that the scale has round numbers in it.
 */
export function chartScale(
  readings: readonly Readings[],
  U_kgm: readonly number[],
  over: ChartOver,
  extra_kgm: number | null,
  unit_kgm = 1,
): ChartScale {
  const { width, height, left, right, top, bottom } = CHART;
  const last = readings[readings.length - 1]!;
  const span = width - left - right;
  const up = (share: number): number => height - bottom - (height - top - bottom) * share;
  const most_U = Math.max(...U_kgm, extra_kgm ?? 0) * 1.04 || 1;
  const step_U = niceStep(most_U / unit_kgm, 4) * unit_kgm;
  const ratio = (r: number): number => Math.log(Math.max(LEAST_RATIO, r) / LEAST_RATIO);
  const most_ratio = ratio(last.gravity_ratio) || 1;
  const x = (r: Pick<Readings, 'time_s' | 'gravity_ratio'>): number =>
    left + span * (over === 'time' ? r.time_s / last.time_s : ratio(r.gravity_ratio) / most_ratio);
  const step_t = niceStep(last.time_s, 4);
  const values =
    over === 'time'
      ? Array.from({ length: Math.floor(last.time_s / step_t + 1e-9) + 1 }, (_, i) => i * step_t)
      : [0.1, 0.3, 1, 3, 10, 30].filter((v) => v <= last.gravity_ratio);
  const at = readings.findIndex((r) => r.gravity_ratio >= 1);
  const before = readings[at - 1];
  const after = readings[at];
  let critical_x: number | null = null;
  if (before !== undefined && after !== undefined) {
    const s = (1 - before.gravity_ratio) / (after.gravity_ratio - before.gravity_ratio);
    critical_x = x({ time_s: before.time_s + s * (after.time_s - before.time_s), gravity_ratio: 1 });
  }
  return {
    x,
    share: up,
    U: (kgm) => up(kgm / most_U),
    ticks: values.map((value) => ({ value, x: x({ time_s: value, gravity_ratio: value }) })),
    critical_x,
    U_ticks_kgm: Array.from({ length: Math.floor(most_U / step_U) + 1 }, (_, i) => i * step_U),
  };
}

/** A path through points given by two functions of the readings. */
export const chartPath = (
  readings: readonly Readings[],
  x: (r: Readings) => number,
  y: (r: Readings, i: number) => number,
): string => `M${readings.map((r, i) => `${x(r).toFixed(1)} ${y(r, i).toFixed(1)}`).join('L')}`;
