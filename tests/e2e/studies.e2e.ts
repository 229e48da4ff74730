/** Every study in the built app: it opens, one input changes it, its number is the command line's, its plot a file. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CALCULATIONS } from '../../src/edge/cli/registry';
import { runCalc } from '../../src/edge/cli/run-calc';
import { type App, atRest, openApp } from './app';

/** The command line's answer, without a process of its own: the machine is loaded once. */
async function calc(name: string, input: object): Promise<Record<string, unknown>> {
  const typed = JSON.stringify({ model: 'alder-one', ...input });
  const printed = await runCalc(CALCULATIONS, [name], () => Promise.resolve(typed));
  expect(printed.stderr).toBe('');
  return JSON.parse(printed.stdout) as Record<string, unknown>;
}

let app: App;
let page: Page;
beforeAll(async () => {
  app = await openApp({ path: '#/studies' });
  page = app.page;
});
afterAll(() => app.close());

async function open(study: string): Promise<void> {
  await page.evaluate((hash) => (location.hash = hash), `#/studies/${study}`);
  await page.waitForSelector(`[data-study="${study}"]`);
}

const fill = (name: RegExp, value: number) => page.getByRole('spinbutton', { name }).fill(String(value));

/** Waits until the number shown under this name is the expected one. */
async function shows(id: string, expected: unknown): Promise<void> {
  expect(typeof expected).toBe('number');
  await page.waitForFunction(
    ([name, value]) => {
      const shown = document.querySelector<HTMLElement>(`[data-testid="${name}"]`)?.dataset['si'];
      return shown !== undefined && Math.abs(Number(shown) / (value as number) - 1) < 1e-6;
    },
    [id, expected] as const,
  );
}

/** Saves the first plot and hands over its lines. */
async function saved(): Promise<string[]> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page
      .getByRole('button', { name: /^Save as CSV/ })
      .first()
      .click(),
  ]);
  // the browser runs in another process: the file comes as a stream
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8').split('\r\n');
}

describe('studies', () => {
  it('vibration: loose fill, 26 Hz', async () => {
    // the first from the list, the others by their address
    await page
      .locator('.study-list')
      .getByRole('button', { name: /^Vibration/ })
      .click();
    await page.waitForSelector('[data-study="vibration"]');
    await page.getByRole('combobox', { name: 'Ground' }).selectOption('loose');
    await fill(/^Frequency/, 26);
    const said = await calc('vibration-study', {
      direction: 'high',
      frequency_Hz: 26,
      soil_stiffness_N_m: 15e6,
      soil_damping_Ns_m: 100e3,
    });
    await shows('drum-amplitude-time', said['drum_amplitude_m']);
    await shows('drum-amplitude-linear', said['linear_drum_amplitude_m']);
    const lines = await saved();
    expect(lines[0]).toBe('frequency_Hz,drum_m,frame_m');
    expect(lines.length).toBeGreaterThan(100);
  });

  it('isolation: one missing, sides on the stage', async () => {
    await open('isolation');
    await page.getByRole('combobox', { name: 'Right isolator 1' }).selectOption('missing');
    const said = await calc('isolation-study', { direction: 'high', missing: ['isolator-right-1'] });
    await shows('sag-right', (said['ends'] as { sag_m: number }[])[1]!.sag_m);
    const before = await page.evaluate(() => window.__drumbench!.stats!.frames);
    await page.getByRole('button', { name: 'Show the sides on the stage' }).click();
    await page.waitForFunction((frames) => window.__drumbench!.stats!.frames > frames, before);
    expect((await saved())[0]).toBe('frequency_Hz,left,right');
  });

  it('two-speed traction: 18 % grade, and the circuit', async () => {
    await open('two-speed');
    await fill(/^Grade/, 18);
    const said = await calc('traction-study', {
      grade_percent: 18,
      drum_adhesion: 0.25,
      axle_adhesion: 0.45,
      rolling_resistance_N_per_N: 0.05,
    });
    await shows(
      'needs-low-low',
      (said['combinations'] as { pressure_needed_Pa: number }[])[0]!.pressure_needed_Pa,
    );
    expect(await page.getByRole('img', { name: /Hydraulic circuit/ }).count()).toBe(1);
    expect(await page.getByTestId('example-shares').textContent()).toMatch(/^37\.5 \/ 62\.5/);
    expect((await saved())[0]).toBe('pressure_Pa,drum_N,axle_N,both_N');
  });

  it('compaction: 3 km/h', async () => {
    await open('compaction');
    await fill(/^Speed/, 3);
    await shows(
      'spacing',
      (await calc('compaction-study', { direction: 'high', speed_m_s: 3 / 3.6 }))['spacing_m'],
    );
    expect((await saved())[0]).toMatch(/^depth_m,line_static_Pa/);
  });

  it('ballast: half full', async () => {
    await open('ballast');
    await fill(/^Filled/, 50);
    await shows(
      'added',
      (await calc('ballast-study', { fill_share: 0.5, salt_mass_percent: 20 }))['total_kg'],
    );
    expect((await saved())[0]).toBe('fill_share,linear_load,amplitude');
  });

  it('identify: the joint bends on the stage', async () => {
    await open('identify');
    await shows('turn-radius', (await calc('identify', {}))['turning_outside_m']);
    await page.getByRole('button', { name: 'Show the joint on the stage' }).click();
    await atRest(page);
    const before = await page.evaluate(() => window.__drumbench!.stats!.frames);
    await fill(/^Steering angle/, 20);
    await page.waitForFunction((frames) => window.__drumbench!.stats!.frames > frames, before);
  });
});
