/**
 * The settled shot as the simulation leaves it: a table of where its centre comes to lie, made from runs for one
 * machine and interpolated. The level closed form does not hold in the direction that fills the pocket, since the rest
 * freezes as a coat round the wall instead of running to its level.
 *
 * Axes: bulk fill of the chamber, time to full speed, friction. Between rows straight lines (trilinear); outside the
 * table the answer is not known, and says so.
 */
import { fail, message, ok, type Fault, type Result } from '../kernel';
import type { Baffle } from './parameters';
import type { FitGeometry, SettledFit, SettledGrid } from './settled-fit-schema';
import type { SpinUp } from './spin-up';

/** 'low': the housing turns so that the pocket scoops; 'high': the other way; 'none': no baffle. */
export type SettledState = 'low' | 'high' | 'none';

export interface SettledQuery {
  readonly state: SettledState;
  readonly fill: number;
  readonly spin_up: Exclude<SpinUp, { kind: 'table' }>;
  readonly friction: number;
}

export interface SettledAnswer {
  /** Centre of the shot's mass, body frame, m. */
  readonly centre_m: readonly [number, number];
  /** Radius about it within which at least 19 of 20 runs lie, m. */
  readonly band_m: number;
  /** How far apart the rows lie between which it was interpolated: weighted root mean square, 0 at a row, m. */
  readonly spread_m: number;
  readonly captured: number;
  readonly captured_band: number;
}

/** Share of runs that the band is set for: above 19 in 20, since the runs that set it are a sample themselves. */
export const BAND_SHARE = 0.97;

/**
 * Radius of the band at a row of the table, m: see `fittedShot`. Below the middle of the table's fills it grows as one
 * over the fill: what scatters between seeds is about the same mass of shot, and of a small charge that is more
 * (measured: misses times fill are alike in 'low' and 'none'; in 'high' they are not, and the band is wider than need be).
 */
export const rowBand_m = (
  fit: Pick<SettledFit, 'seeds'>,
  grid: Pick<SettledGrid, 'scatter_m' | 'fill'>,
  fill: number,
): number => {
  const middle = (grid.fill[0]! + grid.fill[grid.fill.length - 1]!) / 2;
  const spread = Math.sqrt(-Math.log(1 - BAND_SHARE) * (1 + 1 / fit.seeds.length));
  return grid.scatter_m * spread * Math.max(1, middle / fill);
};

/** What of a geometry differs from another: chamber, baffle or balls; null where they are one to 1 part in 10^9. */
export function geometryDiffers(
  a: FitGeometry,
  b: Omit<FitGeometry, 'baffle'> & { readonly baffle: Baffle | null },
): 'chamber' | 'baffle' | 'balls' | null {
  if (!alike(a.chamber, b.chamber)) return 'chamber';
  if (b.baffle !== null && !alike(a.baffle, b.baffle)) return 'baffle';
  const balls = ({
    ball_diameter_m,
    size_spread,
  }: {
    ball_diameter_m: number;
    size_spread: number;
  }): object => ({
    ball_diameter_m,
    size_spread,
  });
  return alike(balls(a), balls(b)) ? null : 'balls';
}

function alike(a: object, b: object): boolean {
  const known = b as Readonly<Record<string, number | null>>;
  return Object.entries(a as Readonly<Record<string, number | null>>).every(([key, value]) => {
    const other = known[key];
    if (typeof value !== 'number' || typeof other !== 'number') return value === (other ?? null);
    return Math.abs(value - other) <= 1e-9 * Math.max(Math.abs(value), Math.abs(other));
  });
}

/**
 * The time in which the law would reach `frequency_Hz` if it went on: laws with the same f / t (linear) or f / t^2
 * (quadratic) are one law as far as the shot goes, since it is frozen long before full speed.
 */
export const timeTo = (law: SettledQuery['spin_up'], frequency_Hz: number): number =>
  law.kind === 'linear'
    ? (law.time_s * frequency_Hz) / law.frequency_Hz
    : law.time_s * Math.sqrt(frequency_Hz / law.frequency_Hz);

/**
 * Interpolates a fit; every quantity outside the table is a fault with the span that is known.
 *
 * The band's radius is sqrt((k scatter)^2 + band_factor^2 v). k scatter holds BAND_SHARE of the runs at a row, were they
 * spread alike in both directions (Rayleigh), and counts in that the row is itself a mean of few seeds. v is the
 * variance of the rows around, weighted as in the mean: nought at a row, great where the straight line has far to go.
 * The factor is the least that held BAND_SHARE of runs which the table was not made from (split conformal prediction:
 * V. Vovk, A. Gammerman, G. Shafer, Algorithmic Learning in a Random World, Springer 2005, from memory). The share
 * holds over the table as a whole; where the shot is only just scooped runs scatter more than elsewhere.
 */
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
  const near: { weight: number; row: number }[] = [];
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
        near.push({ weight: wa * wb * wc, row: (a * nt + b) * nm + c });
  const mean = (of: (row: number) => number): number =>
    near.reduce((sum, { weight, row }) => sum + weight * of(row), 0);
  const x = mean((row) => grid.centre_x_m[row]!);
  const y = mean((row) => grid.centre_y_m[row]!);
  const spread_m2 = mean((row) => (grid.centre_x_m[row]! - x) ** 2 + (grid.centre_y_m[row]! - y) ** 2);
  return ok({
    centre_m: [x, y],
    band_m: Math.hypot(
      rowBand_m(fit, grid, query.fill),
      grid.band_factor * Math.sqrt(Math.max(0, spread_m2)),
    ),
    spread_m: Math.sqrt(Math.max(0, spread_m2)),
    captured: mean((row) => grid.captured[row]!),
    captured_band: grid.captured_band,
  });
}
