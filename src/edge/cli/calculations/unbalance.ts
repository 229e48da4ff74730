/** `calc unbalance`: the exciter's unbalance with its shot settled, in one direction of rotation. */
import { z } from 'zod';
import { fail, message, type Message, ok, printFound } from '../../../core/kernel';
import { buildSettledChamber, exciterOutcome, exciterState } from '../../../core/mechanics';
import { levelWhy, type SettledFit, settledMoment } from '../../../core/studies';
import { defineCalculation } from '../calculation';
import { choice, notNegative, number, outNumber, outVector2, positive, text, vector2 } from '../fields';
import { loadFit } from '../model';

const side = () => z.union([z.literal(1), z.literal(-1)]).meta({ unit: '1' });

const input = z.object({
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
  friction: notNegative('1').optional(),
  spin_up: choice('quadratic', 'linear').optional(),
  spin_up_time_s: positive('s').optional(),
  spin_up_frequency_Hz: positive('Hz').optional(),
  ball_diameter_m: positive('m').optional(),
});

export default defineCalculation({
  name: 'unbalance',
  answers: 'calc.unbalance.answers',
  source:
    'rigid-body rotation of a liquid (potential -w^2 r^2 / 2), derived here; F = U w^2: T. Bevan, The Theory of ' +
    'Machines, ch. 15; nominal amplitude U / m: common practice, no source; settled: table of simulated runs of the ' +
    'model, straight lines between its rows',
  input,
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
    surface: choice('level', 'settled').optional(),
    U_band_kgm: outNumber('kg m').optional(),
    U_least_kgm: outNumber('kg m').optional(),
    U_greatest_kgm: outNumber('kg m').optional(),
    capture_band: outNumber('1').optional(),
    U_level_kgm: outNumber('kg m').optional(),
    shot_U_level_kgm: outNumber('kg m').optional(),
    capture_fraction_level: outNumber('1').optional(),
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
  run: async (input) => {
    const { chamber, baffle, shot, surface, fit } = input;
    const reach_m = chamber.eccentricity_m + chamber.radius_m;
    if (chamber.chord_x_m !== null && chamber.chord_x_m >= reach_m) {
      const expected = message('calc.expected.below', { limit: reach_m });
      return fail([{ path: 'chamber.chord_x_m', expected, found: String(chamber.chord_x_m) }]);
    }
    const level = exciterState(buildSettledChamber(chamber, baffle), shot, runOf(input));
    if (surface === 'level')
      return ok(fit === undefined ? level : noted(level, message('calc.unbalance.fit-ignored', { fit })));
    if (fit === undefined)
      return surface === 'settled'
        ? fail([{ path: 'fit', expected: message('calc.unbalance.fit-needed'), found: printFound(fit) }])
        : ok(noted(level, message('calc.unbalance.surface-assumed')));
    const stored = await loadFit(fit);
    if (!stored.ok) return stored;
    if (stored.value !== undefined) return ok(settledState(input, level, stored.value));
    if (surface === 'settled')
      return fail([{ path: 'fit', expected: message('calc.unbalance.fit-stored'), found: printFound(fit) }]);
    const unused = message('calc.unbalance.fit-unused', { fit });
    return ok(noted(level, message('calc.unbalance.surface-assumed'), unused));
  },
});

type Input = z.output<typeof input>;
type Level = ReturnType<typeof exciterState>;

const runOf = (given: Input) => ({
  direction: given.direction,
  speed_rpm: given.speed_rpm,
  fixed_kgm: given.fixed_kgm,
  vibrating_mass_kg: given.vibrating_mass_kg ?? null,
});

const noted = (level: Level, ...notes: readonly Message[]): Level => ({
  ...level,
  notes: [...notes, ...level.notes],
});

/** The table's answer with the level value beside it; all that the table does not tell is null, with the reasons. */
function settledState(given: Input, level: Level, fit: SettledFit) {
  const { own, geometry, frequency_Hz } = fit;
  const spin_up = {
    kind: given.spin_up ?? own.law,
    time_s: given.spin_up_time_s ?? own.time_s,
    frequency_Hz: given.spin_up_frequency_Hz ?? frequency_Hz,
  };
  const friction = given.friction ?? own.friction;
  const ball_diameter_m = given.ball_diameter_m ?? geometry.ball_diameter_m;
  const told = settledMoment(fit, {
    chamber: given.chamber,
    baffle: given.baffle,
    shot: given.shot,
    ball_diameter_m,
    size_spread: geometry.size_spread,
    direction: given.direction,
    spin_up,
    friction,
  });
  const assumed = [
    ...(given.surface === undefined ? [message('calc.unbalance.settled-assumed', { fit: fit.name })] : []),
    message('calc.unbalance.settled-setting', { ...spin_up, friction, ball_diameter_m }),
  ];
  const beside = {
    // Geometry alone; the settled shot has no level surface, so the radii of one do not exist.
    pocket_capacity_m2: level.pocket_capacity_m2,
    r_spill_m: level.r_spill_m,
    r0_main_m: null,
    r0_pocket_m: null,
    frequency_Hz: level.frequency_Hz,
    surface: 'settled' as const,
    U_level_kgm: level.U_kgm,
    shot_U_level_kgm: level.shot_U_kgm,
    capture_fraction_level: level.capture_fraction,
  };
  const aboutPocket = level.notes.filter(({ key }) => POCKET_NOTES.includes(key));
  if (!told.known)
    return {
      ...beside,
      capture_fraction: null,
      shot_kgm: null,
      shot_U_kgm: null,
      shot_angle_deg: null,
      total_kgm: null,
      U_kgm: null,
      angle_deg: null,
      force_N: null,
      nominal_amplitude_m: null,
      U_band_kgm: null,
      U_least_kgm: null,
      U_greatest_kgm: null,
      capture_band: null,
      notes: [message('calc.unbalance.not-known'), ...told.reasons, ...assumed, ...aboutPocket],
    };
  const { shot_kgm, band_kgm, captured, captured_band } = told.moment;
  const { notes, ...outcome } = exciterOutcome(
    shot_kgm,
    given.shot.mass_kg * given.chamber.radius_m,
    runOf(given),
  );
  return {
    ...beside,
    ...outcome,
    capture_fraction: captured,
    U_band_kgm: band_kgm,
    U_least_kgm: Math.max(0, outcome.U_kgm - band_kgm),
    U_greatest_kgm: outcome.U_kgm + band_kgm,
    capture_band: captured_band,
    notes: [
      ...assumed,
      message('settled.no-level-radii'),
      message(levelWhy(level.U_kgm, outcome.U_kgm, band_kgm)),
      ...notes,
      ...aboutPocket,
      ...(captured === null ? [message('mechanics.unbalance.no-shot')] : []),
    ],
  };
}

const POCKET_NOTES = ['no-leg', 'never-separate', 'closed', 'no-vibrating-mass'].map(
  (key) => `mechanics.unbalance.${key}`,
);
