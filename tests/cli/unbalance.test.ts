/** `calc unbalance`, with the keys that people type. */
import { describe, expect, it } from 'vitest';
import { CALCULATIONS } from '../../src/edge/cli/registry';
import { runCalc } from '../../src/edge/cli/run-calc';

const INPUT = {
  chamber: { radius_m: 0.11, eccentricity_m: 0.046, chord_x_m: null as number | null },
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
  fixed_kgm: [0.6, 0.0],
  vibrating_mass_kg: 3950,
  surface: 'level',
};
interface Output {
  capture_fraction: number;
  pocket_capacity_m2: number | null;
  r_spill_m: number | null;
  r0_main_m: number;
  r0_pocket_m: number | null;
  shot_kgm: [number, number];
  shot_U_kgm: number;
  shot_angle_deg: number;
  total_kgm: [number, number];
  U_kgm: number;
  angle_deg: number;
  force_N: number;
  frequency_Hz: number;
  nominal_amplitude_m: number | null;
  surface?: string;
  U_band_kgm?: number;
  U_least_kgm?: number;
  U_greatest_kgm?: number;
  U_level_kgm?: number;
  notes: string[];
}
const calc = (input: unknown) =>
  runCalc(CALCULATIONS, ['unbalance'], () => Promise.resolve(JSON.stringify(input)));
async function unbalance(input: unknown): Promise<Output> {
  const printed = await calc(input);
  expect(printed.stderr).toBe('');
  expect(printed.code).toBe(0);
  return JSON.parse(printed.stdout) as Output;
}
async function faults(input: unknown): Promise<string[]> {
  const printed = await calc(input);
  expect(printed).toMatchObject({ code: 2, stdout: '' });
  return printed.stderr.trimEnd().split('\n');
}

describe('calc unbalance', () => {
  it('low: the pocket fills to its capacity', async () => {
    const low = await unbalance(INPUT);
    const area = 60.2 / (7850 * 0.62 * 1.05);
    expect(low.capture_fraction).toBeCloseTo(low.pocket_capacity_m2! / area, 9);
    expect(low.r_spill_m).toBeCloseTo(0.064, 9);
    expect(low.r0_pocket_m).toBeCloseTo(0.064, 9);
    expect(low.frequency_Hz).toBe(34);
    expect(low.force_N).toBeCloseTo(low.U_kgm * (2 * Math.PI * 34) ** 2, 6);
    expect(low.nominal_amplitude_m).toBeCloseTo(low.U_kgm / 3950, 12);
    expect(low.U_kgm).toBeCloseTo(Math.hypot(...low.total_kgm), 12);
    expect(low.notes).toEqual([]);
  });

  it('high: U 7.03 kg m within 1 %, force 250 kN at 30 Hz within 1 %', async () => {
    const high = await unbalance({ ...INPUT, direction: 'high', speed_rpm: 1800 });
    expect(Math.abs(high.U_kgm / 7.03 - 1)).toBeLessThan(0.01);
    expect(Math.abs(high.force_N / 250e3 - 1)).toBeLessThan(0.01);
    expect(high.capture_fraction).toBe(0);
    expect(high.r0_pocket_m).toBeNull();
    expect(high.notes.join(' ')).toContain('the pocket holds no shot');
  });

  it('mirrored: the same with the sign of y changed', async () => {
    const baffle = { ...INPUT.baffle, psi_deg: -66, beta_deg: -4, side: -1, pocket_side: -1 };
    const one = await unbalance(INPUT);
    const two = await unbalance({ ...INPUT, baffle });
    expect(two.U_kgm).toBeCloseTo(one.U_kgm, 9);
    expect(two.capture_fraction).toBeCloseTo(one.capture_fraction, 9);
    expect(two.shot_kgm[1]).toBeCloseTo(-one.shot_kgm[1], 9);
    expect(two.angle_deg).toBeCloseTo(-one.angle_deg, 9);
  });

  it('a flat face, no second leg, no baffle', async () => {
    const flat = await unbalance({ ...INPUT, chamber: { ...INPUT.chamber, chord_x_m: -0.03 } });
    expect(flat.r_spill_m).not.toBeNull();
    const straight = await unbalance({ ...INPUT, baffle: { ...INPUT.baffle, leg2_m: 0 } });
    expect(straight.pocket_capacity_m2).toBeGreaterThan(0);
    const low = await unbalance({ ...INPUT, baffle: null });
    const high = await unbalance({ ...INPUT, baffle: null, direction: 'high' });
    expect(low).toEqual(high);
    expect(low).toMatchObject({ r_spill_m: null, pocket_capacity_m2: null, capture_fraction: 0 });
    expect(low.notes.join(' ')).toContain('there is no pocket');
  });

  it('surface left out means level, with a note, unless the fit named is stored', async () => {
    const { surface: _, ...without } = INPUT;
    const level = await unbalance(INPUT);
    const assumed = await unbalance(without);
    expect(assumed.notes).toHaveLength(1);
    expect(assumed.notes[0]).toContain('level');
    expect({ ...assumed, notes: [] }).toEqual(level);
    const unknown = await unbalance({ ...without, fit: 'some-machine' });
    expect(unknown.notes.join(' ')).toContain('some-machine');
    expect({ ...unknown, notes: [] }).toEqual(level);
    expect({ ...(await unbalance({ ...INPUT, fit: 'alder-one' })), notes: [] }).toEqual(level);
    const settled = await unbalance({ ...without, fit: 'alder-one' });
    expect(settled.surface).toBe('settled');
    expect(settled.notes.join(' ')).toContain('alder-one');
  });

  it('"settled" without a fit, or with one that is not stored, is refused', async () => {
    expect(await faults({ ...INPUT, surface: 'settled' })).toEqual([expect.stringMatching(/^fit: /)]);
    const lines = await faults({ ...INPUT, surface: 'settled', fit: 'some-machine' });
    expect(lines).toEqual([expect.stringMatching(/^fit: .*some-machine/)]);
  });

  const SETTLED = { ...INPUT, surface: 'settled', fit: 'alder-one' };

  it('settled: LOW about half of HIGH, its band beside it, and the level value with why they differ', async () => {
    const [low, high] = [await unbalance(SETTLED), await unbalance({ ...SETTLED, direction: 'high' })];
    expect(low.U_kgm / high.U_kgm).toBeGreaterThan(0.45);
    expect(low.U_kgm / high.U_kgm).toBeLessThan(0.6);
    expect(low.U_kgm).toBeCloseTo(Math.hypot(...low.total_kgm), 12);
    expect(low.U_least_kgm).toBeCloseTo(low.U_kgm - low.U_band_kgm!, 12);
    expect(low.U_greatest_kgm).toBeCloseTo(low.U_kgm + low.U_band_kgm!, 12);
    expect(low.force_N).toBeCloseTo(low.U_kgm * (2 * Math.PI * 34) ** 2, 6);
    expect(low.nominal_amplitude_m).toBeCloseTo(low.U_kgm / 3950, 12);
    expect(low.U_level_kgm).toBe((await unbalance(INPUT)).U_kgm);
    expect(low.U_level_kgm).toBeGreaterThan(low.U_greatest_kgm!);
    expect(low.notes.filter((note) => note.startsWith('the level value is higher because'))).toHaveLength(1);
    expect(low.r0_main_m).toBeNull();
    expect(low.r_spill_m).toBeCloseTo(0.064, 9);
    // The closed form holds in HIGH.
    expect(Math.abs(high.U_kgm / high.U_level_kgm! - 1)).toBeLessThan(0.02);
  });

  it('settled: a fit file does as well as a name; friction and spin-up move the value', async () => {
    const low = await unbalance(SETTLED);
    expect(await unbalance({ ...SETTLED, fit: 'models/alder-one/fit.yaml' })).toEqual(low);
    const own = { friction: 0.3, spin_up: 'quadratic', spin_up_time_s: 4, spin_up_frequency_Hz: 30 };
    expect(await unbalance({ ...SETTLED, ...own })).toEqual(low);
    // 34 Hz in 4 s is as quick a start as 30 Hz in 4 sqrt(30 / 34) s.
    const quick = await unbalance({ ...SETTLED, spin_up_frequency_Hz: 34 });
    const same = await unbalance({ ...SETTLED, spin_up_time_s: 4 * Math.sqrt(30 / 34) });
    expect(quick.U_kgm).toBeCloseTo(same.U_kgm, 9);
    expect((await unbalance({ ...SETTLED, spin_up_time_s: 2 })).U_kgm).toBeGreaterThan(low.U_greatest_kgm!);
    expect((await unbalance({ ...SETTLED, friction: 0.15 })).U_kgm).not.toBe(low.U_kgm);
  });

  it('settled: mirrored, the same with the sign of y changed', async () => {
    const baffle = { ...INPUT.baffle, psi_deg: -66, beta_deg: -4, side: -1, pocket_side: -1 };
    const [one, two] = [await unbalance(SETTLED), await unbalance({ ...SETTLED, baffle })];
    expect(two.shot_kgm).toEqual([one.shot_kgm[0], -one.shot_kgm[1]]);
    expect(two.U_kgm).toBeCloseTo(one.U_kgm, 9);
  });

  it('settled: outside the table nothing is known, and the level value stands beside under its own name', async () => {
    for (const [change, why] of [
      [{ friction: 2 }, 'friction from 0.15 to 0.8'],
      [{ spin_up_time_s: 0.5 }, 'times to full speed'],
      [{ shot: { ...INPUT.shot, mass_kg: 120 } }, 'fills from 0.15'],
      [{ chamber: { ...INPUT.chamber, radius_m: 0.12 } }, 'another chamber'],
      [{ baffle: { ...INPUT.baffle, leg1_m: 0.08 } }, 'another baffle'],
      [{ ball_diameter_m: 0.008 }, 'other balls'],
    ] as const) {
      const none = await unbalance({ ...SETTLED, ...change });
      expect(none.U_kgm).toBeNull();
      expect(none.shot_kgm).toBeNull();
      expect(none.U_band_kgm).toBeNull();
      expect(none.U_level_kgm).toBeGreaterThan(0);
      expect(none.notes[0]).toContain('not known');
      expect(none.notes.join(' ')).toContain(why);
    }
  });

  it('what may be left out: fixed parts, vibrating mass', async () => {
    const { fixed_kgm: _, vibrating_mass_kg: __, ...less } = INPUT;
    const bare = await unbalance(less);
    expect(bare.total_kgm).toEqual(bare.shot_kgm);
    expect(bare.nominal_amplitude_m).toBeNull();
    expect(bare.notes.join(' ')).toContain('vibrating mass');
  });

  it('reports every fault', async () => {
    const lines = await faults({
      ...INPUT,
      chamber: { radius_m: -0.11, eccentricity_m: 0.046, chord_x_m: 'none' },
      baffle: { ...INPUT.baffle, side: 2, leg1_m: null },
      shot: { ...INPUT.shot, packing: 1.2 },
      direction: 'left',
      fixed_kgm: [1],
    });
    const paths = lines.map((line) => line.split(':')[0]);
    expect(paths).toEqual([
      'chamber.radius_m',
      'chamber.chord_x_m',
      'baffle.leg1_m',
      'baffle.side',
      'shot.packing',
      'direction',
      'fixed_kgm',
    ]);
    expect(lines[3]).toBe('baffle.side: expected one of these: one of 1, one of -1, got 2');
    expect(await faults({ ...INPUT, chamber: { ...INPUT.chamber, chord_x_m: 0.2 } })).toHaveLength(1);
  });
});
