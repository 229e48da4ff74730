/** `calc item-statistics`: how a test and its items did. */
import { z } from 'zod';
import { itemStatistics } from '../../../core/quiz';
import { defineCalculation } from '../calculation';
import { number, outNumber } from '../fields';

export default defineCalculation({
  name: 'item-statistics',
  answers: 'calc.item-statistics.answers',
  source: 'G. F. Kuder, M. W. Richardson, Psychometrika 2 (1937) 151 (from memory)',
  input: z.object({
    responses: z.array(z.array(number('1')).min(1)).min(1),
  }),
  output: z.object({
    totals: z.array(number('1')).readonly(),
    p: z.array(number('1')).readonly(),
    variance_population: outNumber('1'),
    kr20: outNumber('1'),
    point_biserial: z.array(outNumber('1')).readonly(),
    item_rest: z.array(outNumber('1')).readonly(),
  }),
  example: {
    responses: [
      [1, 1, 0],
      [1, 0, 0],
      [1, 1, 1],
      [0, 0, 0],
    ],
  },
  run: ({ responses }) => itemStatistics(responses),
});
