/**
 * The settled shot as the simulation leaves it: a table of where its centre comes to lie, made from runs for one
 * machine and interpolated. The level closed form does not hold in the direction that fills the pocket, since the rest
 * freezes as a coat round the wall instead of running to its level.
 *
 * Axes: bulk fill of the chamber, time to full speed, friction. Between rows straight lines (trilinear); outside the
 * table the answer is not known, and says so.
 */
import { z } from 'zod';
import { fail, message, ok, type Fault, type Result } from '../kernel';
import type { SpinUp } from './spin-up';

/** 'low': the housing turns so that the pocket scoops; 'high': the other way; 'none': no baffle. */
export type SettledState = 'low' | 'high' | 'none';

const numbers = z.array(z.number());
const axis = z.array(z.number()).min(2);
const gridSchema = z.object({
  state: z.enum(['low', 'high', 'none']),
  law: z.enum(['linear', 'quadratic']),
  /** Axes, rising. Times are those to `frequency_Hz`. */
  fill: axis,
  time_s: axis,
  friction: axis,
  /** Rows over fill, then time, then friction; means over the seeds. Body frame, turning counter-clockwise in 'low'. */
  centre_x_m: numbers,
  centre_y_m: numbers,
  captured: numbers,
  /**
   * Root mean square miss of runs anywhere in the table and with seeds of their own (scatter and the error between
   * rows): of the coordinate of the centre that misses more, and of the captured share.
   */
  centre_sd_m: z.number(),
  captured_sd: z.number(),
});

export const settledFitSchema = z.object({
  schema_version: z.literal(1),
  name: z.string(),
  /** Frequency that the times of the spin-up lead to. */
  frequency_Hz: z.number(),
  /** What the runs were made with, so that a changed machine is noticed. */
  geometry_hash: z.string(),
  seeds: numbers,
  slice_depth_m: z.number(),
  ball_diameter_m: z.number(),
  restitution: z.number(),
  grids: z.array(gridSchema),
  /** Runs off the grid's rows and with other seeds than its own: how many, and how many lay within the band. */
  check: z.object({ runs: z.number(), within_band: z.number() }),
});

export type SettledFit = z.infer<typeof settledFitSchema>;
export type SettledGrid = SettledFit['grids'][number];

export interface SettledQuery {
  readonly state: SettledState;
  readonly fill: number;
  readonly spin_up: Exclude<SpinUp, { kind: 'table' }>;
  readonly friction: number;
}

export interface SettledAnswer {
  /** Centre of the shot's mass, body frame, m. */
  readonly centre_m: readonly [number, number];
  /** Half width of the band of either coordinate, m: two root mean square misses; `check` says how often it held. */
  readonly band_m: number;
  readonly captured: number;
  readonly captured_band: number;
}

/** The band in root mean square misses. */
export const BAND_SD = 2;

/**
 * The time in which the law would reach `frequency_Hz` if it went on: laws with the same f / t (linear) or f / t^2
 * (quadratic) are one law as far as the shot goes, since it is frozen long before full speed.
 */
export const timeTo = (law: SettledQuery['spin_up'], frequency_Hz: number): number =>
  law.kind === 'linear'
    ? (law.time_s * frequency_Hz) / law.frequency_Hz
    : law.time_s * Math.sqrt(frequency_Hz / law.frequency_Hz);

/** Interpolates a fit; every quantity outside the table is a fault with the span that is known. */
export function fittedShot(fit: SettledFit, query: SettledQuery): Result<SettledAnswer> {
  const grid = fit.grids.find((g) => g.state === query.state && g.law === query.spin_up.kind);
  if (grid === undefined)
    return fail([
      { path: 'spin_up.kind', expected: message('expected.knownToFit'), found: query.spin_up.kind },
    ]);
  const faults: Fault[] = [];
  const place = (path: 'fill' | 'time_s' | 'friction', value: number): [number, number] => {
    const rows = grid[path];
    const [low, high] = [rows[0]!, rows[rows.length - 1]!];
    // A value that went through the machine's mass may miss the end of the table by rounding.
    const hair = 1e-6 * (high - low);
    if (!(value >= low - hair && value <= high + hair))
      faults.push({ path, expected: message('expected.within', { low, high }), found: value.toPrecision(4) });
    let i = 0;
    while (i < rows.length - 2 && value > rows[i + 1]!) i++;
    return [i, (value - rows[i]!) / (rows[i + 1]! - rows[i]!)];
  };
  const [f, fs] = place('fill', query.fill);
  const [t, ts] = place('time_s', timeTo(query.spin_up, fit.frequency_Hz));
  const [m, ms] = place('friction', query.friction);
  if (faults.length > 0) return fail(faults);
  const [nt, nm] = [grid.time_s.length, grid.friction.length];
  const mean = (values: readonly number[]): number => {
    let sum = 0;
    for (const [a, wa] of [
      [f, 1 - fs],
      [f + 1, fs],
    ] as const)
      for (const [b, wb] of [
        [t, 1 - ts],
        [t + 1, ts],
      ] as const)
        for (const [c, wc] of [
          [m, 1 - ms],
          [m + 1, ms],
        ] as const)
          sum += wa * wb * wc * values[(a * nt + b) * nm + c]!;
    return sum;
  };
  return ok({
    centre_m: [mean(grid.centre_x_m), mean(grid.centre_y_m)],
    band_m: BAND_SD * grid.centre_sd_m,
    captured: mean(grid.captured),
    captured_band: BAND_SD * grid.captured_sd,
  });
}
