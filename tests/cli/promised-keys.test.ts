/** The names and keys that people and scripts may rely on: they stay, whatever is added. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeCalculation } from '../../src/edge/cli/describe';
import { CALCULATIONS } from '../../src/edge/cli/registry';
import { runCalc } from '../../src/edge/cli/run-calc';

const end = (name: string) =>
  [
    'displacement_low_m3_rev',
    'displacement_high_m3_rev',
    'gear_ratio',
    'radius_m',
    'load_N',
    'efficiency',
    'adhesion',
  ]
    .map((key) => `${name}.${key}`)
    .join(' ');

/** Name, inputs that must be given, inputs that may, outputs. */
const PROMISED: readonly (readonly [string, string, string, string])[] = [
  ['bearing-load', 'Fr_N Fa_N X Y', 'V', 'P_N'],
  ['bearing-life', 'C_N P_N p', 'speed_rpm reliability_percent edition weibull_slope', 'L10_Mrev L10_h a1 Lnm_Mrev Lnm_h'],
  ['bearing-duty', 'segments[].fraction_of_time segments[].load_N segments[].speed_rpm p', 'life_h', 'mean_speed_rpm Pm_N life_Mrev C_required_N'],
  ['bearing-system', 'lives_h exponent', '', 'life_h'],
  ['iso-fit', 'size_m hole shaft', '', 'hole_upper_m hole_lower_m shaft_upper_m shaft_lower_m clearance_max_m clearance_min_m'],
  ['interference-fit', 'inner_bore_m fit_diameter_m outer_diameter_m E_inner_Pa E_outer_Pa nu_inner nu_outer', 'interference_diametral_m pressure_Pa length_m friction', 'interference_diametral_m pressure_Pa hoop_outer_at_fit_Pa hoop_outer_at_outside_Pa hoop_inner_at_fit_Pa hoop_inner_at_bore_Pa press_force_N torque_Nm'],
  ['heating', 'diameter_m growth_m alpha_per_K', '', 'delta_T_K'],
  ['bolt', 'diameter_m proof_Pa K', 'stress_area_m2 pitch_m preload_fraction preload_N external_load_N joint_stiffness_ratio', 'stress_area_m2 preload_N torque_Nm stress_initial_Pa stress_loaded_Pa proof_ratio'],
  ['rubber-mount', 'shape t_m hardness_IRHD', 'a_m b_m d_m', 'G_Pa E_Pa k shape_factor shear_N_m compression_N_m'],
  ['single-dof', 'mass_kg stiffness_N_m damping_Ns_m', 'force_N omega_rad_s', 'natural_rad_s damping_ratio damped_rad_s amplitude_m phase_deg transmissibility'],
  ['roller-response', 'drum_mass_kg frame_mass_kg unbalance_kgm frequency_Hz mount_stiffness_N_m mount_damping_Ns_m soil_stiffness_N_m soil_damping_Ns_m', '', 'drum_amplitude_m drum_phase_deg frame_amplitude_m soil_force_amplitude_N static_load_N contact'],
  ['soil-stress', 'kind x_m z_m', 'force_N load_N_m pressure_Pa width_m y_m', 'sigma_z_Pa'],
  ['impact-spacing', 'frequency_Hz speed_m_s', '', 'spacing_m per_metre per_foot'],
  ['hydraulic-motor', 'displacement_m3_rev pressure_Pa', 'flow_m3_s speed_rpm eta_volumetric eta_mechanical', 'torque_Nm speed_rpm power_W flow_m3_s'],
  ['traction', `${end('drum')} ${end('axle')} drum_range axle_range grade_percent rolling_resistance_N_per_N relief_Pa`, '', 'pull_needed_N pressure_needed_Pa drum_pull_N axle_pull_N drum_share slips_first slip_pressure_Pa climbs limit'],
  ['sling', 'mass_kg legs angle_from_horizontal_deg', '', 'leg_tension_N leg_mass_kg factor'],
  ['two-point-lift', 'mass_kg distance_m cog_from_a_m', '', 'a_kg b_kg'],
  ['brine', 'salt_mass_percent temperature_C', '', 'density_kg_m3 freezing_C'],
  ['brine-fill', 'volume_m3 density_kg_m3 salt_mass_percent', '', 'total_kg salt_kg water_kg'],
  ['item-statistics', 'responses', '', 'totals p variance_population kr20 point_biserial item_rest'],
]; // prettier-ignore

const LATER =
  'static-safety fitted-clearance alignment star-sequence joint-slip oil-volume lift-limit end-play roller-time rolling-time';
const words = (text: string) => text.split(' ').filter((word) => word !== '');
const find = (name: string) => {
  const found = CALCULATIONS.find((each) => each.name === name);
  if (found === undefined) throw new Error(`no calculation ${name}`);
  return found;
};

describe('promised', () => {
  it.each(PROMISED)('%s', (name, needed, optional, outputs) => {
    const described = describeCalculation(find(name));
    const keys = (list: readonly { key: string; required: boolean }[], required: boolean) =>
      list.filter((each) => each.required === required).map((each) => each.key);
    expect([...keys(described.inputs, true)].sort()).toEqual(words(needed).sort());
    expect(keys(described.inputs, false)).toEqual(expect.arrayContaining(words(optional)));
    expect(described.outputs.map((each) => each.key)).toEqual(expect.arrayContaining(words(outputs)));
  });

  it('and those that the list describes', () => {
    for (const name of words(LATER)) expect(find(name).name).toBe(name);
  });
});

describe('whatever number is typed', () => {
  const names = [...PROMISED.map(([name]) => name), ...words(LATER)];
  const odd = fc.constantFrom(0, -1, 1, 3, 1e-320, 1e-150, 1e150, 1e308, -1e308, 0.5, 90, null, 'x');

  it.each(names)('%s answers or refuses in words, and every null has its note', async (name) => {
    const calculation = find(name);
    const paths = leavesOf(calculation.example);
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(paths.length - 1), odd), { minLength: 1, maxLength: 3 }),
        async (changes) => {
          const input = structuredClone(calculation.example);
          for (const [which, value] of changes) setAt(input, paths[which] ?? [], value);
          const printed = await runCalc(CALCULATIONS, [name], () => Promise.resolve(JSON.stringify(input)));
          expect(printed.stdout + printed.stderr).not.toMatch(/NaN|Infinity|\{\{|cannot be computed/);
          if (printed.code === 2) {
            for (const line of printed.stderr.trimEnd().split('\n'))
              expect(line).toMatch(/^.+: expected .+, got .+$/);
            // every fault has words: a key without text would print as itself
            expect(printed.stderr).not.toMatch(/(expected|mechanics|quiz)\.[a-z-]+/);
            return;
          }
          const { notes, ...output } = JSON.parse(printed.stdout) as { notes: string[] };
          expect(notes.join(' ')).not.toMatch(/(mechanics|quiz|calc)\.[a-z-]+/);
          if (JSON.stringify(output).includes('null')) expect(notes).not.toEqual([]);
        },
      ),
      { seed: 1, numRuns: 60 },
    );
  });
});

/** Paths of all values in a JSON value. */
function leavesOf(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, item]) => leavesOf(item, [...path, key]));
}

function setAt(target: unknown, path: readonly string[], value: unknown): void {
  const last = path.at(-1);
  const holder = path.slice(0, -1).reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], target);
  if (last !== undefined) (holder as Record<string, unknown>)[last] = value;
}
