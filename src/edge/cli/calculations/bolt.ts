/** `calc bolt`: preload, torque and stress of a bolt. */
import { z } from 'zod';
import { bolt } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, choice, notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'bolt',
  answers: 'calc.bolt.answers',
  source:
    'R. G. Budynas, J. K. Nisbett, Mechanical Engineering Design, ch. 8 (from memory); U. C. Jindal, Machine Design, ch. 9; stress area: ISO 898-1, ASME B1.1 (from memory)',
  input: z.object({
    diameter_m: positive('m'),
    stress_area_m2: positive('m2').optional(),
    pitch_m: positive('m').optional(),
    thread: choice('metric', 'unified').optional(),
    proof_Pa: positive('Pa'),
    preload_fraction: between('1', 0, 1).optional(),
    preload_N: notNegative('N').optional(),
    K: positive('1'),
    external_load_N: notNegative('N').optional(),
    joint_stiffness_ratio: between('1', 0, 1).optional(),
  }),
  output: z.object({
    stress_area_m2: outNumber('m2'),
    preload_N: outNumber('N'),
    torque_Nm: outNumber('N m'),
    stress_initial_Pa: outNumber('Pa'),
    stress_loaded_Pa: outNumber('Pa'),
    proof_ratio: outNumber('1'),
    separation_load_N: outNumber('N'),
  }),
  example: {
    diameter_m: 0.024,
    pitch_m: 0.003,
    proof_Pa: 830e6,
    preload_fraction: 0.75,
    K: 0.2,
    external_load_N: 50000,
    joint_stiffness_ratio: 0.2,
  },
  run: bolt,
});
