/**
 * What a file of the settled fit holds. Apart from the reading of its values, so that a page that only reads values does
 * not carry the validator.
 */
import { z } from 'zod';
import { message } from '../kernel';

const numbers = z.array(z.number());
const axis = z.array(z.number()).min(2);
const positive = z.number().positive();
const gridSchema = z
  .strictObject({
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
    /** How far the centre of one seed lies from the mean of a row: root mean square over all rows. */
    scatter_m: positive,
    /** What makes the band of scatter and of the way between rows (see `fittedShot`); measured, not assumed. */
    band_factor: z.number().min(0),
    /** Half width of the band of the captured share, measured likewise; 0 where nothing is ever captured. */
    captured_band: z.number().min(0),
  })
  .check((context) => {
    const grid = context.value;
    const rows = grid.fill.length * grid.time_s.length * grid.friction.length;
    for (const key of ['centre_x_m', 'centre_y_m', 'captured'] as const)
      if (grid[key].length !== rows)
        context.issues.push({
          code: 'custom',
          path: [key],
          input: grid[key],
          params: { expected: message('fault.entries', { count: rows }) },
        });
    for (const key of ['fill', 'time_s', 'friction'] as const)
      if (grid[key].some((value, i) => i > 0 && value <= grid[key][i - 1]!))
        context.issues.push({
          code: 'custom',
          path: [key],
          input: grid[key],
          params: { expected: message('fault.rising') },
        });
  });

/** What the runs were made in: where it differs from a machine, the fit tells nothing about that machine. */
const geometrySchema = z.strictObject({
  chamber: z.strictObject({
    radius_m: positive,
    eccentricity_m: z.number(),
    chord_x_m: z.number().nullable(),
  }),
  baffle: z.strictObject({
    psi_deg: z.number(),
    beta_deg: z.number(),
    leg1_m: z.number(),
    leg2_m: z.number(),
    side: z.union([z.literal(1), z.literal(-1)]),
    pocket_side: z.union([z.literal(1), z.literal(-1)]),
    half_thickness_m: positive,
  }),
  ball_diameter_m: positive,
  size_spread: z.number().min(0),
});

export const settledFitSchema = z.strictObject({
  schema_version: z.literal(2),
  name: z.string(),
  /** Frequency that the times of the spin-up lead to. */
  frequency_Hz: positive,
  geometry: geometrySchema,
  /** Bulk packing that turns a mass of shot into the table's fill. */
  packing: positive.max(1),
  /** The machine's own setting: what is meant where nothing else is said. */
  own: z.strictObject({
    law: z.enum(['linear', 'quadratic']),
    time_s: positive,
    friction: z.number().min(0),
  }),
  seeds: numbers,
  slice_depth_m: positive,
  restitution: z.number().min(0),
  grids: z.array(gridSchema).min(1),
  /** Runs anywhere in the table, with seeds that neither table nor band was made from: how many, and how many lay within. */
  check: z.strictObject({ runs: z.number(), within_band: z.number() }),
});

export type SettledFit = z.infer<typeof settledFitSchema>;
export type SettledGrid = SettledFit['grids'][number];
export type FitGeometry = SettledFit['geometry'];
