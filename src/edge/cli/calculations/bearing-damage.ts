/** `calc bearing-damage`: names of bearing damage with what each looks like. */
import { z } from 'zod';
import { DAMAGE_MODES } from '../../../core/mechanics';
import { message, ok } from '../../../core/kernel';
import { defineCalculation } from '../calculation';
import { text } from '../fields';
import { say } from '../say';

export default defineCalculation({
  name: 'bearing-damage',
  answers: 'calc.bearing-damage.answers',
  source: 'names: ISO 15243:2017 (secondary listing; clauses from memory); looks: our own words',
  input: z.object({}),
  output: z.object({
    modes: z.array(z.object({ id: text(), class: text(), clause: text(), name: text(), looks: text() })),
  }),
  example: {},
  run: () =>
    ok({
      modes: DAMAGE_MODES.map((mode) => ({
        id: mode.id,
        class: say(message(`damage.class.${mode.class}`)),
        clause: mode.clause,
        name: say(message(`damage.${mode.id}.name`)),
        looks: say(message(`damage.${mode.id}.looks`)),
      })),
    }),
});
