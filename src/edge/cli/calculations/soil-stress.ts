/** `calc soil-stress`: vertical stress in the ground below a load. */
import { z } from 'zod';
import { soilStress } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { missing } from '../missing-keys';
import { choice, notNegative, number, outNumber, positive } from '../fields';

const NEEDED = {
  point: ['force_N'],
  line: ['load_N_m'],
  strip: ['pressure_Pa', 'width_m'],
} as const;

export default defineCalculation({
  name: 'soil-stress',
  answers: 'calc.soil-stress.answers',
  source: 'B. M. Das, Principles of Geotechnical Engineering, ch. 10 (Boussinesq)',
  input: z.object({
    kind: choice('point', 'line', 'strip'),
    force_N: notNegative('N').optional(),
    load_N_m: notNegative('N/m').optional(),
    pressure_Pa: notNegative('Pa').optional(),
    width_m: positive('m').optional(),
    x_m: number('m'),
    y_m: number('m').optional(),
    z_m: positive('m'),
  }),
  output: z.object({
    sigma_z_Pa: outNumber('Pa'),
  }),
  example: { kind: 'line', load_N_m: 30000, x_m: 0, z_m: 0.3 },
  run: (input) => {
    const { kind, force_N, load_N_m, pressure_Pa, width_m, x_m, y_m, z_m } = input;
    const place = { x_m, y_m, z_m };
    if (kind === 'point' && force_N !== undefined) return soilStress({ kind, force_N, ...place });
    if (kind === 'line' && load_N_m !== undefined) return soilStress({ kind, load_N_m, ...place });
    if (kind === 'strip' && pressure_Pa !== undefined && width_m !== undefined) {
      return soilStress({ kind, pressure_Pa, width_m, ...place });
    }
    return missing(input, NEEDED[kind]);
  },
});
