/** `calc isolation-study`: what the isolators of a machine of models/ pass on, sound or not. */
import { z } from 'zod';
import { message, ok } from '../../../core/kernel';
import { isolationSides, isolationStudy, type IsolatorState } from '../../../core/studies';
import { defineCalculation } from '../calculation';
import { between, choice, notNegative, outNumber } from '../fields';
import { directionInput, loadStudyModel, modelInput, outsideFormulas, unknownUnbalance } from '../study-base';

const ids = () => z.array(z.string()).default([]);

export default defineCalculation({
  name: 'isolation-study',
  answers: 'calc.isolation-study.answers',
  source:
    'P. B. Lindley, Engineering Design with Natural Rubber (table from memory); T. Bevan, The Theory of Machines, ch. ' +
    '15; ISO 2631-1 (weighting, from memory); Directive 2002/44/EC, Art. 3',
  input: z.object({
    ...modelInput,
    ...directionInput,
    soil_stiffness_N_m: notNegative('N/m').default(15e6),
    soil_damping_Ns_m: notNegative('N s/m').default(100e3),
    hardness_left_IRHD: between('IRHD', 30, 75).optional(),
    hardness_right_IRHD: between('IRHD', 30, 75).optional(),
    missing: ids(),
    cracked: ids(),
    crack_share: between('1', 0, 0.99).default(0.5),
    hours_a_day: between('h', 0, 24).default(8),
  }),
  output: z.object({
    drum_amplitude_m: outNumber('m'),
    ends: z.array(
      z.object({
        end: choice('left', 'right'),
        standing: z.int().meta({ unit: '1' }),
        static_N_m: outNumber('N/m'),
        sag_m: outNumber('m'),
        natural_Hz: outNumber('Hz'),
        transmissibility: outNumber('1'),
        frame_amplitude_m: outNumber('m'),
        frame_peak_m_s2: outNumber('m/s2'),
        A8_m_s2: outNumber('m/s2'),
        level: choice('below-action', 'above-action', 'above-limit').nullable(),
      }),
    ),
    parts_inside: z.int().meta({ unit: '1' }),
    parts_outside: z.int().meta({ unit: '1' }),
  }),
  example: { model: 'alder-one', direction: 'high', missing: ['isolator-right-1'] },
  run: async (input) => {
    const loaded = await loadStudyModel(input.model);
    if (!loaded.ok) return loaded;
    const { machine, basis, exciter, frequency_Hz } = loaded.value;
    const known = new Set(basis.isolators.flatMap((set) => set.partIds));
    const strangers = [...input.missing, ...input.cracked].filter((id) => !known.has(id));
    if (strangers.length > 0) return outsideFormulas(`missing / cracked: ${strangers.join(', ')}`);
    const reading = exciter[input.direction];
    if (reading === null) return unknownUnbalance(input.direction);
    const states: Record<string, IsolatorState> = {};
    for (const id of input.cracked) states[id] = 'cracked';
    for (const id of input.missing) states[id] = 'missing';
    const study = isolationStudy(basis, {
      ...input,
      unbalance_kgm: reading.U_kgm,
      frequency_Hz: frequency_Hz[input.direction],
      hardness_left_IRHD: input.hardness_left_IRHD ?? basis.isolation.hardness_IRHD,
      hardness_right_IRHD: input.hardness_right_IRHD ?? basis.isolation.hardness_IRHD,
      states,
    });
    if (study === null) return outsideFormulas('hardness_left_IRHD');
    const sides = isolationSides(machine);
    return ok({
      drum_amplitude_m: study.drum_amplitude_m,
      ends: study.ends.map((each) => ({
        end: each.end,
        standing: each.standing,
        static_N_m: each.static_N_m,
        sag_m: each.sag_m,
        natural_Hz: each.natural_Hz,
        transmissibility: each.transmissibility,
        frame_amplitude_m: each.frame_amplitude_m,
        frame_peak_m_s2: each.frame_peak_m_s2,
        A8_m_s2: each.exposure?.A8_m_s2 ?? null,
        level: each.exposure?.level ?? null,
      })),
      parts_inside: sides.inside.length,
      parts_outside: sides.outside.length,
      notes: [
        message('study.isolation.limit.no-measurement'),
        ...(study.ends.some((each) => each.sag_m === null)
          ? [message('calc.isolation-study.none-stands')]
          : []),
      ],
    });
  },
});
