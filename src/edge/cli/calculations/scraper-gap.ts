/** `calc scraper-gap`: how to set scraper bars, and how worn their blades are. */
import { z } from 'zod';
import { scraperGap } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, notNegative, number, outNumber, positive } from '../fields';

const ends = () =>
  z.object({
    front_left: notNegative('m'),
    front_right: notNegative('m'),
    rear_left: notNegative('m'),
    rear_right: notNegative('m'),
  });
const bar = () =>
  z.object({
    works_in: choice('forward', 'reverse'),
    move_left_m: number('m'),
    move_right_m: number('m'),
    uneven_m: number('m'),
    even: z.boolean(),
    within: z.boolean(),
    wear_left_m: outNumber('m'),
    wear_right_m: outNumber('m'),
    worn_out: z.boolean().nullable(),
  });

export default defineCalculation({
  name: 'scraper-gap',
  answers: 'calc.scraper-gap.answers',
  source: 'geometry; gaps and evenness: common practice, no source',
  input: z.object({
    gaps_m: ends(),
    target_m: positive('m'),
    tolerance_m: positive('m'),
    travel_m: positive('m'),
    depths_m: ends().optional(),
    new_depth_m: positive('m').optional(),
  }),
  output: z.object({ front: bar(), rear: bar() }),
  example: {
    gaps_m: { front_left: 0.024, front_right: 0.02, rear_left: 0.028, rear_right: 0.03 },
    target_m: 0.02,
    tolerance_m: 0.003,
    travel_m: 0.02,
    depths_m: { front_left: 0.066, front_right: 0.07, rear_left: 0.062, rear_right: 0.06 },
    new_depth_m: 0.07,
  },
  run: scraperGap,
});
