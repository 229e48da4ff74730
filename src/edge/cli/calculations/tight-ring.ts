/** `calc tight-ring`: which ring of a bearing needs the tight seat. */
import { z } from 'zod';
import { tightRing } from '../../../core/mechanics';
import { ok } from '../../../core/kernel';
import { defineCalculation } from '../calculation';
import { choice, number, text } from '../fields';

export default defineCalculation({
  name: 'tight-ring',
  answers: 'calc.tight-ring.answers',
  source: 'T. A. Harris, Rolling Bearing Analysis (from memory); classes: common practice, no source',
  input: z.object({ shaft_rpm: number('rpm'), housing_rpm: number('rpm'), load_rpm: number('rpm') }),
  output: z.object({
    inner_load: choice('rotating', 'stationary'),
    outer_load: choice('rotating', 'stationary'),
    tight: choice('inner', 'outer', 'both', 'none'),
    shaft_classes: z.array(text()),
    housing_classes: z.array(text()),
  }),
  example: { shaft_rpm: 1800, housing_rpm: 0, load_rpm: 1800 },
  run: (input) => {
    const found = tightRing(input);
    return found.ok
      ? ok({
          ...found.value,
          shaft_classes: [...found.value.shaft_classes],
          housing_classes: [...found.value.housing_classes],
        })
      : found;
  },
});
