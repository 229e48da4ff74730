/** `calc compaction-study`: what the drum of a machine of models/ does to the ground. */
import { z } from 'zod';
import { ok } from '../../../core/kernel';
import { compactionStudy } from '../../../core/studies';
import { defineCalculation } from '../calculation';
import { between, notNegative, outNumber, positive } from '../fields';
import { directionInput, loadStudyModel, modelInput, outsideFormulas, unknownUnbalance } from '../study-base';

export default defineCalculation({
  name: 'compaction-study',
  answers: 'calc.compaction-study.answers',
  source:
    'B. M. Das, Principles of Geotechnical Engineering, ch. 10; K. L. Johnson, Contact Mechanics, ch. 4 (from memory)',
  input: z.object({
    ...modelInput,
    ...directionInput,
    speed_m_s: notNegative('m/s'),
    soil_modulus_Pa: positive('Pa').default(30e6),
    soil_density_kg_m3: positive('kg/m3').default(1900),
    lift_m: positive('m').default(0.3),
    pad_sink_m: between('m', 0, 0.1).default(0.01),
  }),
  output: z.object({
    static_linear_N_m: outNumber('N/m'),
    total_force_N: outNumber('N'),
    spacing_m: outNumber('m'),
    per_metre: outNumber('1/m'),
    per_foot: outNumber('1/ft'),
    contact_width_m: outNumber('m'),
    contact_pressure_Pa: outNumber('Pa'),
    pads_in_contact: outNumber('1'),
    pad_pressure_Pa: outNumber('Pa'),
    stress_at_lift_static_Pa: outNumber('Pa'),
    stress_at_lift_total_Pa: outNumber('Pa'),
    fade_static_m: outNumber('m'),
    fade_total_m: outNumber('m'),
  }),
  example: { model: 'alder-one', direction: 'high', speed_m_s: 1.1111 },
  run: async (input) => {
    const loaded = await loadStudyModel(input.model);
    if (!loaded.ok) return loaded;
    const { machine, basis, exciter, frequency_Hz } = loaded.value;
    const reading = exciter[input.direction];
    if (reading === null) return unknownUnbalance(input.direction);
    const study = compactionStudy(machine, basis, {
      ...input,
      force_N: reading.force_N,
      frequency_Hz: frequency_Hz[input.direction],
    });
    if (study === null) return outsideFormulas('soil_modulus_Pa');
    return ok({
      static_linear_N_m: study.static_linear_N_m,
      total_force_N: study.total_force_N,
      spacing_m: study.impacts.spacing_m,
      per_metre: study.impacts.per_metre,
      per_foot: study.impacts.per_foot,
      contact_width_m: study.contact_width_m,
      contact_pressure_Pa: study.contact_pressure_Pa,
      pads_in_contact: study.pads?.in_contact ?? null,
      pad_pressure_Pa: study.pads?.static_Pa ?? null,
      stress_at_lift_static_Pa: study.at_lift.strip_static_Pa,
      stress_at_lift_total_Pa: study.at_lift.strip_total_Pa,
      fade_static_m: study.fade_static_m,
      fade_total_m: study.fade_total_m,
      notes: [...study.impacts.notes, ...study.limits],
    });
  },
});
