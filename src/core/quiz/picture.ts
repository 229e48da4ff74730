/** Pictures and plots that a question asks to be read. Drawn from the model; nothing is a stored image. */
import { z } from 'zod';

/** Curves that can be plotted (`curves.ts`). Where there are two lines, A and B, their letters are all that is said. */
export const PLOTS = [
  /** Centrifugal force over frequency: A is HIGH, B is LOW. */
  'force-over-frequency',
  /** Pressure under the drum, weight alone, over depth. */
  'stress-over-depth',
  /** Share of the drum's motion that reaches the frame over frequency: A is left, B is right. */
  'transmissibility',
  /** Pull in one of two legs, against that of straight legs, over the angle from level. */
  'sling-leg',
  /** Rating life of an exciter bearing over the share of its load in HIGH. */
  'bearing-life',
  /** Amplitude of the drum hanging free over liquid put into it. */
  'amplitude-over-ballast',
  /** Pull over the grade on wet clay: A is needed, B what both ends in low range give before one slips. */
  'pull-over-grade',
  /** Torque of the drum motor over pressure: A in low range, B in high range. */
  'torque-over-pressure',
  /** Radius of the drum's turn over the angle of the joint. */
  'turn-over-steering',
  /** Load at which the hub's joint slips over the preload that is left: A; the exciter's force in HIGH: B. */
  'slip-over-preload',
] as const;
export type PlotName = (typeof PLOTS)[number];

export const pictureSchema = z.discriminatedUnion('type', [
  /** The section of the exciter housing with the shot where it settles in this range; as built where nothing is said. */
  z.strictObject({
    type: z.literal('exciter'),
    direction: z.enum(['high', 'low']),
    /** Share of the chamber's section that the bulk of the shot fills. */
    fill: z.number().min(0).max(1).optional(),
    baffle_on: z.boolean().optional(),
  }),
  z.strictObject({ type: z.literal('plot'), plot: z.enum(PLOTS) }),
]);

export type PictureSetting = z.infer<typeof pictureSchema>;
