/** `calc identify`: how the trade would describe a machine of models/. */
import { z } from 'zod';
import { message, ok } from '../../../core/kernel';
import { identifyStudy } from '../../../core/studies';
import { defineCalculation } from '../calculation';
import { choice, outNumber } from '../fields';
import { loadStudyModel, modelInput } from '../study-base';

export default defineCalculation({
  name: 'identify',
  answers: 'calc.identify.answers',
  source: 'the machine’s own data; classes by mass: common practice, no source; turning radius: geometry',
  input: z.object({ ...modelInput, pads: z.boolean().default(false) }),
  output: z.object({
    width_class_in: outNumber('in'),
    drum_type: choice('smooth', 'padded'),
    mass_class_t: outNumber('t'),
    mass_class: choice('light', 'medium', 'heavy', 'extra-heavy'),
    drum_axle_kg: outNumber('kg'),
    rear_axle_kg: outNumber('kg'),
    static_linear_N_m: outNumber('N/m'),
    turning_outside_m: outNumber('m'),
  }),
  example: { model: 'alder-one' },
  run: async (input) => {
    const loaded = await loadStudyModel(input.model);
    if (!loaded.ok) return loaded;
    const study = identifyStudy(loaded.value.machine, loaded.value.basis, input.pads);
    return ok({
      width_class_in: study.width_class_in,
      drum_type: study.drum_type,
      mass_class_t: study.mass_class_t,
      mass_class: study.mass_class,
      drum_axle_kg: study.drum_axle_kg,
      rear_axle_kg: study.rear_axle_kg,
      static_linear_N_m: study.static_linear_N_m,
      turning_outside_m: study.turning?.outside_m ?? null,
      notes: [...study.limits, ...(study.turning === null ? [message('calc.identify.no-joint')] : [])],
    });
  },
});
