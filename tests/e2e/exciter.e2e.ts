import { execFileSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openApp, setRange } from './app';

const root = resolve(import.meta.dirname, '../..');

/** The command line's answer for the training roller's exciter; the fixed moment is what the panel shows of the housing. */
function calc(direction: 'high' | 'low', changes: Record<string, unknown> = {}): Record<string, number> {
  const input = {
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
    direction,
    speed_rpm: direction === 'high' ? 1800 : 2040,
    fixed_kgm: [0.6, 0],
    vibrating_mass_kg: 3950,
    surface: 'level',
    ...changes,
  };
  return JSON.parse(
    execFileSync(
      process.execPath,
      [join(root, 'node_modules/tsx/dist/cli.mjs'), 'src/edge/cli/calc.ts', 'unbalance'],
      {
        cwd: root,
        input: JSON.stringify(input),
        encoding: 'utf8',
      },
    ),
  ) as Record<string, number>;
}

describe('exciter panel', () => {
  it('flips the direction and shows what the command line computes: HIGH level, LOW from the simulated runs', async () => {
    const app = await openApp();
    const cell = async (id: string): Promise<number> =>
      Number((await app.page.getByTestId(id).textContent())!.replace(/[^\d.-]/g, ''));
    for (const direction of ['high', 'low'] as const) {
      await app.page.locator('label', { hasText: direction.toUpperCase() }).first().click();
      expect(await app.page.locator(`input[type=radio][value=${direction}]`).isChecked()).toBe(true);
      const settled = direction === 'low' ? { surface: 'settled', fit: 'alder-one' } : {};
      const expected = calc(direction, settled);
      // Shown to three figures; the housing's own moment from the solids is within 0.01 kg m of 0.60.
      expect(Math.abs((await cell(`unbalance-${direction}`)) - expected['U_kgm']!)).toBeLessThan(0.02);
      expect(Math.abs((await cell(`shot-moment-${direction}`)) - expected['shot_U_kgm']!)).toBeLessThan(
        0.006,
      );
      expect(
        Math.abs((await cell(`captured-${direction}`)) - 100 * expected['capture_fraction']!),
      ).toBeLessThan(0.51);
      expect(Math.abs((await cell(`force-${direction}`)) / (expected['force_N']! / 1000) - 1)).toBeLessThan(
        0.006,
      );
    }
    const low = calc('low', { surface: 'settled', fit: 'alder-one' });
    expect(Math.abs((await cell('unbalance-low-band')) - low['U_band_kgm']!)).toBeLessThan(0.006);
    // The level value stands beside under its own name, and a sentence says why it is higher.
    expect(Math.abs((await cell('level-unbalance-low')) - calc('low')['U_kgm']!)).toBeLessThan(0.02);
    expect(await app.page.getByTestId('surface-note').textContent()).toContain('coat round the wall');
    await app.close();
  });

  it('follows fill, speed and baffle at once', async () => {
    const app = await openApp();
    const cell = async (id: string): Promise<number> =>
      Number((await app.page.getByTestId(id).textContent())!.replace(/[^\d.-]/g, ''));
    await setRange(app.page, 'Fill of the chamber', 0.4);
    const mass_kg = (fill: number): number => fill * Math.PI * 0.11 ** 2 * 1.05 * 0.62 * 7850;
    const shot = (fill: number) => ({
      mass_kg: mass_kg(fill),
      packing: 0.62,
      length_m: 1.05,
      density_kg_m3: 7850,
    });
    const expected = calc('low', { shot: shot(0.4), surface: 'settled', fit: 'alder-one' });
    expect(Math.abs((await cell('shot-moment-low')) - expected['shot_U_kgm']!)).toBeLessThan(0.006);
    await setRange(app.page, 'Speed in LOW', 17);
    expect(
      Math.abs(
        (await cell('force-low')) / (((await cell('unbalance-low')) * (2 * Math.PI * 17) ** 2) / 1000) - 1,
      ),
    ).toBeLessThan(0.01);
    // Beyond the table nothing stands in for the number; the level value is named as such.
    await setRange(app.page, 'Fill of the chamber', 0.6);
    await app.page.locator('label', { hasText: 'LOW' }).first().click();
    expect(await app.page.getByTestId('unbalance-low').textContent()).toBe('–');
    expect(await app.page.getByTestId('surface-note').textContent()).toContain(
      'not known from the simulation table',
    );
    const level = calc('low', { shot: shot(0.6) });
    expect(Math.abs((await cell('level-unbalance-low')) - level['U_kgm']!)).toBeLessThan(0.02);
    // Without the baffle the level surface is one for both directions.
    await app.page.getByText('Baffle fitted').click();
    expect(await cell('level-unbalance-low')).toBe(await cell('level-unbalance-high'));
    await app.close();
  });
});
