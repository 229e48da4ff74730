/** Watching the shot in the browser: the shipped recordings, and runs of one's own in the worker. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './app';

let app: App;
let page: Page;
beforeAll(async () => {
  app = await openApp();
  page = app.page;
  await page.getByRole('radio', { name: 'Watch the shot' }).check();
  await page.waitForSelector('.shot-drawing canvas', { timeout: 60000 });
}, 180000);
afterAll(() => app.close());

const numberIn = (text: string): number => Number(/-?[\d.]+/.exec(text.replaceAll(',', ''))![0]);
const reading = async (word: string): Promise<number> =>
  numberIn(await page.locator(`[data-reading="${word}"]`).innerText());
const row = async (run: string): Promise<readonly string[]> =>
  page.locator(`[data-run="${run}"] td`).allInnerTexts();
const play = async (): Promise<void> => {
  await page.getByRole('radio', { name: 'True', exact: true }).check();
  await page.locator('.shot-play button').click();
  await page.waitForFunction(() => {
    const slider = document.querySelector<HTMLInputElement>('.shot-play input')!;
    return slider.valueAsNumber >= Number(slider.max) - 0.011;
  });
};

describe('the shipped recordings', () => {
  it('play both ways to the numbers of the table', async () => {
    for (const [name, run] of [
      ['LOW', 'own-low'],
      ['HIGH', 'own-high'],
    ] as const) {
      await page
        .getByRole('radio', { name: new RegExp(`^${name}`) })
        .first()
        .check();
      await page.locator('.shot-play input').fill('0');
      await expect.poll(() => reading('gravity-ratio')).toBe(0);
      await play();
      await expect.poll(() => reading('gravity-ratio')).toBeGreaterThan(15);
      const [captured, U] = await row(run);
      await expect.poll(() => reading('unbalance')).toBe(numberIn(U!));
      expect(Math.round(await reading('captured'))).toBe(numberIn(captured!));
      expect(numberIn(await page.getByTestId('shot-U').innerText())).toBe(numberIn(U!));
    }
  });

  it('agree in HIGH with the closed form within 2 %', async () => {
    const balls = numberIn(await page.getByTestId('shot-U').innerText());
    const level = numberIn(await page.getByTestId('shot-level-U').innerText());
    expect(Math.abs(balls / level - 1)).toBeLessThan(0.02);
  });

  it('lie within the band of the table of simulated runs', async () => {
    for (const name of ['LOW', 'HIGH']) {
      await page
        .getByRole('radio', { name: new RegExp(`^${name}`) })
        .first()
        .check();
      const balls = numberIn(await page.getByTestId('shot-U').innerText());
      const [table, band] = (await page.getByTestId('shot-settled-U').innerText()).split('±').map(numberIn);
      expect(Math.abs(balls - table!)).toBeLessThanOrEqual(band! + 0.01);
    }
  });

  it('stand on the stage, all balls of the chamber, in a handful of draw calls', async () => {
    expect(await page.evaluate(() => window.__drumbench!.stats!.calls)).toBeLessThanOrEqual(12);
    const triangles = (): Promise<number> => page.evaluate(() => window.__drumbench!.stats!.triangles);
    const whole = await triangles();
    expect(whole).toBeGreaterThan(2 * 8000);
    await page.getByRole('radio', { name: 'the slice alone' }).check();
    await expect.poll(triangles).toBeLessThan(whole - 2 * 6000);
    await page.getByRole('radio', { name: 'whole length' }).check();
    await expect.poll(triangles).toBe(whole);
  });
});

describe('a run of one’s own', () => {
  const setUp = async (fill: string): Promise<void> => {
    await page.getByRole('button', { name: 'A run of your own', exact: true }).click();
    await page.locator('.shot-form').getByRole('slider', { name: 'Fill of the chamber' }).fill(fill);
    await page.getByRole('radio', { name: 'Less' }).check();
    await page.getByRole('button', { name: 'Run it' }).click();
  };
  const done = (count: number): Promise<unknown> =>
    page.waitForFunction((n) => document.querySelectorAll('[data-run^="run-"]').length === n, count, {
      timeout: 90000,
    });

  it('finishes with a changed fill and is shown', async () => {
    await setUp('0.2');
    await done(1);
    expect(await page.locator('.shot-result').innerText()).toContain('It shakes less');
    expect(numberIn((await row('run-1'))[2]!)).toBeLessThan(0.9);
  });

  it('is cancelled', async () => {
    await setUp('0.25');
    await page.getByRole('button', { name: 'Cancel the run' }).click();
    await page.getByRole('button', { name: 'Run it' }).waitFor();
    expect(await page.locator('[data-run^="run-"]').count()).toBe(1);
    await page.getByRole('button', { name: 'Back', exact: true }).click();
  });

  it('is repeated by its seed with the identical result', async () => {
    await setUp('0.2');
    await done(2);
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export as CSV' }).click();
    const stream = await (await download).createReadStream();
    const chunks: Buffer[] = [];
    for await (const chunk of stream) chunks.push(chunk as Buffer);
    const lines = Buffer.concat(chunks).toString('utf8').trim().split('\r\n');
    expect(lines).toHaveLength(5);
    const cells = (line: string): readonly string[] => line.split(',').slice(1);
    expect(cells(lines[4]!)).toEqual(cells(lines[3]!));
  });
});
