/** `calc unbalance`: the exciter's unbalance with its shot settled, in one direction of rotation. */
import { z } from 'zod';
import { fail, message, ok, type Fault } from '../../../core/kernel';
import { buildSettledChamber, exciterState } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, notNegative, number, outNumber, outVector2, positive, text, vector2 } from '../fields';

const side = () => z.union([z.literal(1), z.literal(-1)]).meta({ unit: '1' });

export default defineCalculation({
  name: 'unbalance',
  answers: 'calc.unbalance.answers',
  source:
    'rigid-body rotation of a liquid (potential -w^2 r^2 / 2), derived here; F = U w^2: T. Bevan, The Theory of ' +
    'Machines, ch. 15; nominal amplitude U / m: common practice, no source',
  input: z.object({
    chamber: z.object({
      radius_m: positive('m'),
      eccentricity_m: notNegative('m'),
      chord_x_m: number('m').nullable().default(null),
    }),
    baffle: z
      .object({
        psi_deg: number('deg'),
        beta_deg: number('deg'),
        leg1_m: notNegative('m'),
        leg2_m: notNegative('m').default(0),
        side: side(),
        pocket_side: side(),
        half_thickness_m: positive('m'),
      })
      .nullable(),
    shot: z.object({
      mass_kg: notNegative('kg'),
      packing: z.number().gt(0).lte(1).meta({ unit: '1' }),
      length_m: positive('m'),
      density_kg_m3: positive('kg/m3'),
    }),
    direction: choice('low', 'high'),
    speed_rpm: notNegative('rpm'),
    fixed_kgm: vector2('kg m').default([0, 0]),
    vibrating_mass_kg: positive('kg').optional(),
    surface: choice('level', 'settled').optional(),
    fit: text().optional(),
  }),
  output: z.object({
    capture_fraction: outNumber('1'),
    pocket_capacity_m2: outNumber('m2'),
    r_spill_m: outNumber('m'),
    r0_main_m: outNumber('m'),
    r0_pocket_m: outNumber('m'),
    shot_kgm: outVector2('kg m'),
    shot_U_kgm: outNumber('kg m'),
    shot_angle_deg: outNumber('deg'),
    total_kgm: outVector2('kg m'),
    U_kgm: outNumber('kg m'),
    angle_deg: outNumber('deg'),
    force_N: outNumber('N'),
    frequency_Hz: outNumber('Hz'),
    nominal_amplitude_m: outNumber('m'),
  }),
  example: {
    chamber: { radius_m: 0.11, eccentricity_m: 0.046, chord_x_m: null },
    baffle: {
      psi_deg: 66,
      beta_deg: 4,
      leg1_m: 0.09,
      leg2_m: 0.02,
      side: 1,
      pocket_side: 1,
      half_thickness_m: 0.004,
    },
    shot: { mass_kg: 60.2, packing: 0.62, length_m: 1.05, density_kg_m3: 7850 },
    direction: 'low',
    speed_rpm: 2040,
    fixed_kgm: [0.6, 0],
    vibrating_mass_kg: 3950,
    surface: 'level',
  },
  run: (input) => {
    const { chamber, baffle, shot, surface, fit } = input;
    const faults: Fault[] = [];
    const reach_m = chamber.eccentricity_m + chamber.radius_m;
    if (chamber.chord_x_m !== null && chamber.chord_x_m >= reach_m) {
      const expected = message('calc.expected.below', { limit: reach_m });
      faults.push({ path: 'chamber.chord_x_m', expected, found: String(chamber.chord_x_m) });
    }
    if (surface === 'settled') {
      faults.push({ path: 'surface', expected: message('calc.unbalance.no-settled'), found: '"settled"' });
    }
    if (faults.length > 0) return fail(faults);
    const { notes, ...output } = exciterState(buildSettledChamber(chamber, baffle), shot, {
      direction: input.direction,
      speed_rpm: input.speed_rpm,
      fixed_kgm: input.fixed_kgm,
      vibrating_mass_kg: input.vibrating_mass_kg ?? null,
    });
    const assumed = surface === undefined ? [message('calc.unbalance.surface-assumed')] : [];
    const noFit = fit === undefined ? [] : [message('calc.unbalance.fit-unused', { fit })];
    return ok({ ...output, notes: [...assumed, ...noFit, ...notes] });
  },
});
