/** Pictures and plots that a question asks to be read. Drawn from the model; nothing is a stored image. */
import { z } from 'zod';

/** Curves that can be plotted. Force over frequency: line A is HIGH, line B is LOW. */
export const PLOTS = ['force-over-frequency'] as const;
export type PlotName = (typeof PLOTS)[number];

export const pictureSchema = z.discriminatedUnion('type', [
  /** The section of the exciter housing with the shot where it settles in this range. */
  z.strictObject({ type: z.literal('exciter'), direction: z.enum(['high', 'low']) }),
  z.strictObject({ type: z.literal('plot'), plot: z.enum(PLOTS) }),
]);

export type PictureSetting = z.infer<typeof pictureSchema>;
