/** `calc single-dof`: one mass on a spring and a damper, free and driven. */
import { z } from 'zod';
import { singleDof } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'single-dof',
  answers: 'calc.single-dof.answers',
  source: 'T. Bevan, The Theory of Machines, ch. 15',
  input: z.object({
    mass_kg: positive('kg'),
    stiffness_N_m: positive('N/m'),
    damping_Ns_m: notNegative('N s/m'),
    force_N: notNegative('N').optional(),
    omega_rad_s: notNegative('rad/s').optional(),
  }),
  output: z.object({
    natural_rad_s: outNumber('rad/s'),
    damping_ratio: outNumber('1'),
    damped_rad_s: outNumber('rad/s'),
    amplitude_m: outNumber('m'),
    phase_deg: outNumber('deg'),
    transmissibility: outNumber('1'),
  }),
  example: { mass_kg: 2900, stiffness_N_m: 3900000, damping_Ns_m: 8000, force_N: 1000, omega_rad_s: 188.5 },
  run: singleDof,
});
