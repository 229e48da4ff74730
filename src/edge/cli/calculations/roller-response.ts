/** `calc roller-response`: drum and frame on soil, steady state of the linear two-mass model. */
import { z } from 'zod';
import { rollerResponse } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'roller-response',
  answers: 'calc.roller-response.answers',
  source:
    'T. S. Yoo, E. T. Selig, J. Geotech. Eng. Div. ASCE 105 (GT10) 1979 (from memory); P. van Susante, M. Mooney, J. Eng. Mech. 134 (8) 2008 (abstract)',
  input: z.object({
    drum_mass_kg: positive('kg'),
    frame_mass_kg: positive('kg'),
    unbalance_kgm: notNegative('kg m'),
    frequency_Hz: positive('Hz'),
    mount_stiffness_N_m: notNegative('N/m'),
    mount_damping_Ns_m: notNegative('N s/m'),
    soil_stiffness_N_m: notNegative('N/m'),
    soil_damping_Ns_m: notNegative('N s/m'),
  }),
  output: z.object({
    drum_amplitude_m: outNumber('m'),
    drum_phase_deg: outNumber('deg'),
    frame_amplitude_m: outNumber('m'),
    frame_phase_deg: outNumber('deg'),
    soil_force_amplitude_N: outNumber('N'),
    static_load_N: outNumber('N'),
    force_N: outNumber('N'),
    nominal_amplitude_m: outNumber('m'),
    contact: choice('kept', 'lost').nullable(),
  }),
  example: {
    drum_mass_kg: 4000,
    frame_mass_kg: 2500,
    unbalance_kgm: 5,
    frequency_Hz: 30,
    mount_stiffness_N_m: 4e6,
    mount_damping_Ns_m: 8000,
    soil_stiffness_N_m: 20e6,
    soil_damping_Ns_m: 100000,
  },
  run: rollerResponse,
});
