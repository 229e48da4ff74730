/** `calc centrifugal`: the force of a turning unbalance. */
import { z } from 'zod';
import { ok } from '../../../core/kernel';
import { centrifugalForce, rpmToRadPerS, unbalanceOf } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { notNegative, outNumber } from '../fields';

export default defineCalculation({
  name: 'centrifugal',
  answers: 'calc.centrifugal.answers',
  source:
    'T. Bevan, The Theory of Machines, ch. 15, F = (W/g) w^2 r; R. S. Khurmi, Engineering Mechanics, ch. 28',
  input: z.object({
    mass_kg: notNegative('kg'),
    radius_m: notNegative('m'),
    speed_rpm: notNegative('rpm'),
  }),
  output: z.object({
    unbalance_kgm: outNumber('kg m'),
    omega_rad_s: outNumber('rad/s'),
    force_N: outNumber('N'),
  }),
  example: { mass_kg: 60, radius_m: 0.1, speed_rpm: 1800 },
  run: ({ mass_kg, radius_m, speed_rpm }) => {
    const unbalance_kgm = unbalanceOf(mass_kg, radius_m);
    const omega_rad_s = rpmToRadPerS(speed_rpm);
    return ok({ unbalance_kgm, omega_rad_s, force_N: centrifugalForce(unbalance_kgm, omega_rad_s) });
  },
});
