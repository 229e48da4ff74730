/** `calc roller-time`: drum and frame on soil in time, the drum may lift off. */
import { z } from 'zod';
import { rollerInTime } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, choice, notNegative, number, outNumber, positive } from '../fields';

const samples = (unit: string) => z.array(number(unit)).readonly();

export default defineCalculation({
  name: 'roller-time',
  answers: 'calc.roller-time.answers',
  source:
    'T. S. Yoo, E. T. Selig, J. Geotech. Eng. Div. ASCE 105 (GT10) 1979 (from memory); P. van Susante, M. Mooney, ' +
    'J. Eng. Mech. 134 (8) 2008 (loss of contact); names of the ways of running: D. Adam, F. Kopf, as quoted in Acta ' +
    'Geotech. 2024, s11440-024-02342-8',
  input: z.object({
    drum_mass_kg: positive('kg'),
    frame_mass_kg: positive('kg'),
    unbalance_kgm: notNegative('kg m'),
    frequency_Hz: positive('Hz'),
    mount_stiffness_N_m: positive('N/m'),
    mount_damping_Ns_m: notNegative('N s/m'),
    soil_stiffness_N_m: positive('N/m'),
    soil_damping_Ns_m: notNegative('N s/m'),
    settle_s: between('s', 0, 60).optional(),
  }),
  output: z.object({
    drum_amplitude_m: outNumber('m'),
    frame_amplitude_m: outNumber('m'),
    drum_first_m: outNumber('m'),
    drum_phase_deg: outNumber('deg'),
    frame_first_m: outNumber('m'),
    soil_force_max_N: outNumber('N'),
    soil_force_min_N: outNumber('N'),
    soil_force_mean_N: outNumber('N'),
    static_load_N: outNumber('N'),
    contact_share: outNumber('1'),
    contact: choice('kept', 'lost').nullable(),
    regime: choice('continuous-contact', 'partial-uplift', 'double-jump', 'long-repeat', 'irregular'),
    repeats_after_turns: outNumber('1'),
    half_frequency_share: outNumber('1'),
    exciter_power_W: outNumber('W'),
    soil_power_W: outNumber('W'),
    mount_power_W: outNumber('W'),
    energy_residual: outNumber('1'),
    steps: z.int().meta({ unit: '1' }),
    trace: z.object({
      time_s: samples('s'),
      drum_m: samples('m'),
      frame_m: samples('m'),
      soil_force_N: samples('N'),
    }),
  }),
  example: {
    drum_mass_kg: 4000,
    frame_mass_kg: 2500,
    unbalance_kgm: 5,
    frequency_Hz: 30,
    mount_stiffness_N_m: 4e6,
    mount_damping_Ns_m: 8000,
    soil_stiffness_N_m: 40e6,
    soil_damping_Ns_m: 100000,
  },
  run: rollerInTime,
});
