/** `calc ballast-study`: liquid in the drum of a machine of models/, load gained and amplitude lost. */
import { z } from 'zod';
import { ok } from '../../../core/kernel';
import { ballastStudy, drumRoom } from '../../../core/studies';
import { defineCalculation } from '../calculation';
import { between, outNumber } from '../fields';
import { loadStudyModel, modelInput, outsideFormulas, unknownUnbalance } from '../study-base';

export default defineCalculation({
  name: 'ballast-study',
  answers: 'calc.ballast-study.answers',
  source: 'the machine’s solids with the table of brine; nominal amplitude U / m: common practice, no source',
  input: z.object({
    ...modelInput,
    fill_share: between('1', 0, 1),
    salt_mass_percent: between('%', 0, 30),
    temperature_C: between('degC', -40, 40).default(15),
  }),
  output: z.object({
    room_m3: outNumber('m3'),
    volume_m3: outNumber('m3'),
    density_kg_m3: outNumber('kg/m3'),
    freezing_C: outNumber('degC'),
    total_kg: outNumber('kg'),
    linear_before_N_m: outNumber('N/m'),
    linear_after_N_m: outNumber('N/m'),
    amplitude_high_before_m: outNumber('m'),
    amplitude_high_after_m: outNumber('m'),
    amplitude_loss: outNumber('1'),
  }),
  example: { model: 'alder-one', fill_share: 0.75, salt_mass_percent: 20 },
  run: async (input) => {
    const loaded = await loadStudyModel(input.model);
    if (!loaded.ok) return loaded;
    const { machine, solids, basis, exciter } = loaded.value;
    const room = drumRoom(machine, solids);
    if (room === null) return outsideFormulas('model: drum room');
    if (exciter.high === null || exciter.low === null) return unknownUnbalance('high / low');
    const study = ballastStudy(machine, basis, room, {
      ...input,
      unbalance_high_kgm: exciter.high.U_kgm,
      unbalance_low_kgm: exciter.low.U_kgm,
    });
    if (study === null) return outsideFormulas('salt_mass_percent');
    return ok({
      room_m3: study.room_m3,
      volume_m3: study.volume_m3,
      density_kg_m3: study.density_kg_m3,
      freezing_C: study.freezing_C,
      total_kg: study.total_kg,
      linear_before_N_m: study.linear_before_N_m,
      linear_after_N_m: study.linear_after_N_m,
      amplitude_high_before_m: study.amplitude_before_m.high,
      amplitude_high_after_m: study.amplitude_after_m?.high ?? null,
      amplitude_loss: study.amplitude_loss,
      notes: [...study.notes, ...study.limits],
    });
  },
});
