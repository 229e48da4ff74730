/** `calc traction-study`: a machine of models/ on a slope, in the four combinations of its two speed ranges. */
import { z } from 'zod';
import { ok } from '../../../core/kernel';
import { twoSpeedStudy } from '../../../core/studies';
import { defineCalculation } from '../calculation';
import { between, choice, notNegative, outNumber, positive } from '../fields';
import { loadStudyModel, modelInput, outsideFormulas } from '../study-base';

export default defineCalculation({
  name: 'traction-study',
  answers: 'calc.traction-study.answers',
  source: 'the machine’s data with the formula of traction',
  input: z.object({
    ...modelInput,
    grade_percent: between('%', 0, 100),
    drum_adhesion: notNegative('1'),
    axle_adhesion: notNegative('1'),
    rolling_resistance_N_per_N: notNegative('1'),
    relief_Pa: positive('Pa').optional(),
    speed_m_s: positive('m/s').default(1),
  }),
  output: z.object({
    combinations: z.array(
      z.object({
        drum_range: choice('low', 'high'),
        axle_range: choice('low', 'high'),
        pressure_needed_Pa: outNumber('Pa'),
        drum_slip_Pa: outNumber('Pa'),
        axle_slip_Pa: outNumber('Pa'),
        drum_share: outNumber('1'),
        climbs: z.boolean(),
        limit: choice('slip', 'relief', 'none'),
        slips_first: choice('drum', 'axle', 'none'),
        drum_flow_m3_s: outNumber('m3/s'),
        axle_flow_m3_s: outNumber('m3/s'),
        top_speed_m_s: outNumber('m/s'),
      }),
    ),
  }),
  example: {
    model: 'alder-one',
    grade_percent: 25,
    drum_adhesion: 0.25,
    axle_adhesion: 0.45,
    rolling_resistance_N_per_N: 0.05,
  },
  run: async (input) => {
    const loaded = await loadStudyModel(input.model);
    if (!loaded.ok) return loaded;
    const { machine } = loaded.value;
    const relief_Pa = input.relief_Pa ?? machine.drive?.relief_Pa;
    const study = relief_Pa === undefined ? null : twoSpeedStudy(machine, { ...input, relief_Pa });
    if (study === null) return outsideFormulas('model: drive');
    return ok({
      combinations: study.combinations.map(({ traction, ...each }) => ({
        drum_range: each.drum_range,
        axle_range: each.axle_range,
        pressure_needed_Pa: traction.pressure_needed_Pa,
        drum_slip_Pa: each.drum_slip_Pa,
        axle_slip_Pa: each.axle_slip_Pa,
        drum_share: traction.drum_share,
        climbs: traction.climbs,
        limit: traction.limit,
        slips_first: traction.slips_first,
        drum_flow_m3_s: each.drum_flow_m3_s,
        axle_flow_m3_s: each.axle_flow_m3_s,
        top_speed_m_s: each.top_speed_m_s,
      })),
      notes: study.combinations[0]?.traction.notes ?? [],
    });
  },
});
