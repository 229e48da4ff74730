/** `calc vibration-study`: drum and frame of a machine of models/ on a ground, as the study shows them. */
import { z } from 'zod';
import { message, ok } from '../../../core/kernel';
import { vibrationStudy } from '../../../core/studies';
import { defineCalculation } from '../calculation';
import { between, choice, notNegative, outNumber } from '../fields';
import { directionInput, loadStudyModel, modelInput, outsideFormulas, unknownUnbalance } from '../study-base';

export default defineCalculation({
  name: 'vibration-study',
  answers: 'calc.vibration-study.answers',
  source: 'the machine’s solids and data with the formulas of roller-response and roller-time',
  input: z.object({
    ...modelInput,
    ...directionInput,
    frequency_Hz: between('Hz', 1, 200).optional(),
    soil_stiffness_N_m: notNegative('N/m'),
    soil_damping_Ns_m: notNegative('N s/m'),
    hardness_IRHD: between('IRHD', 30, 75).optional(),
  }),
  output: z.object({
    drum_mass_kg: outNumber('kg'),
    frame_mass_kg: outNumber('kg'),
    unbalance_kgm: outNumber('kg m'),
    frequency_Hz: outNumber('Hz'),
    mount_stiffness_N_m: outNumber('N/m'),
    mount_damping_Ns_m: outNumber('N s/m'),
    natural_lower_Hz: outNumber('Hz'),
    natural_upper_Hz: outNumber('Hz'),
    linear_drum_amplitude_m: outNumber('m'),
    linear_frame_amplitude_m: outNumber('m'),
    linear_contact: choice('kept', 'lost').nullable(),
    drum_amplitude_m: outNumber('m'),
    frame_amplitude_m: outNumber('m'),
    soil_force_max_N: outNumber('N'),
    regime: choice(
      'continuous-contact',
      'partial-uplift',
      'double-jump',
      'long-repeat',
      'irregular',
    ).nullable(),
  }),
  example: { model: 'alder-one', direction: 'high', soil_stiffness_N_m: 30e6, soil_damping_Ns_m: 150e3 },
  run: async (input) => {
    const loaded = await loadStudyModel(input.model);
    if (!loaded.ok) return loaded;
    const { basis, exciter, frequency_Hz } = loaded.value;
    const reading = exciter[input.direction];
    if (reading === null) return unknownUnbalance(input.direction);
    const study = vibrationStudy(basis, {
      unbalance_kgm: reading.U_kgm,
      frequency_Hz: input.frequency_Hz ?? frequency_Hz[input.direction],
      soil_stiffness_N_m: input.soil_stiffness_N_m,
      soil_damping_Ns_m: input.soil_damping_Ns_m,
      hardness_IRHD: input.hardness_IRHD ?? basis.isolation.hardness_IRHD,
    });
    if (study === null) return outsideFormulas('soil_stiffness_N_m');
    const { linear, time, natural } = study;
    return ok({
      drum_mass_kg: study.input.drum_mass_kg,
      frame_mass_kg: study.input.frame_mass_kg,
      unbalance_kgm: study.input.unbalance_kgm,
      frequency_Hz: study.input.frequency_Hz,
      mount_stiffness_N_m: study.input.mount_stiffness_N_m,
      mount_damping_Ns_m: study.input.mount_damping_Ns_m,
      natural_lower_Hz: natural.lower_Hz,
      natural_upper_Hz: natural.upper_Hz,
      linear_drum_amplitude_m: linear.drum_amplitude_m,
      linear_frame_amplitude_m: linear.frame_amplitude_m,
      linear_contact: linear.contact,
      drum_amplitude_m: time?.drum_amplitude_m ?? null,
      frame_amplitude_m: time?.frame_amplitude_m ?? null,
      soil_force_max_N: time?.soil_force_max_N ?? null,
      regime: time?.regime ?? null,
      notes: [...linear.notes, ...(time === null ? [message('calc.vibration-study.no-time')] : time.notes)],
    });
  },
});
