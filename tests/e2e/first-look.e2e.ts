import { describe, expect, inject, it } from 'vitest';
import { atRest, openApp, setRange } from './app';

describe('first look', () => {
  it('shows the drum, draws it in few calls and stops drawing when nothing moves', async () => {
    const app = await openApp();
    await atRest(app.page);
    const stats = await app.page.evaluate(() => window.__drumbench!.stats!);
    expect(stats.parts).toBeGreaterThan(250);
    expect(stats.triangles).toBeGreaterThan(50_000);
    expect(stats.calls).toBeLessThanOrEqual(200);
    // At rest there are no frames at all.
    const before = stats.frames;
    await app.page.waitForTimeout(1500);
    expect(await app.page.evaluate(() => window.__drumbench!.stats!.frames)).toBe(before);
    // The canvas is not blank: the middle of the stage has many colours.
    const shot = await app.page.getByTestId('stage').screenshot();
    expect(shot.length).toBeGreaterThan(20_000);
    await app.close();
  });

  it('explodes, cuts and spins', async () => {
    const app = await openApp();
    const stats = () => app.page.evaluate(() => window.__drumbench!.stats!);
    await app.page.getByRole('button', { name: 'Section' }).click();
    await app.page.waitForFunction(() => window.__drumbench!.stats!.capTriangles > 1000, undefined, {
      timeout: 30000,
    });
    await app.page.getByRole('button', { name: 'Section' }).click();
    const inTheOpen = (is: boolean) =>
      app.page.waitForFunction((want) => (window.__drumbench!.screenOf!('exciter') !== null) === want, is, {
        timeout: 40000,
        polling: 500,
      });
    // Apart, the exciter stands in the open; together it is out of sight.
    await setRange(app.page, 'Explode', 1);
    await inTheOpen(true);
    await setRange(app.page, 'Explode', 0);
    await inTheOpen(false);
    const still = (await stats()).frames;
    await app.page.getByRole('button', { name: 'Spin' }).click();
    await app.page.waitForFunction((n) => window.__drumbench!.stats!.frames > n + 2, still, {
      timeout: 30000,
    });
    await app.page.getByRole('button', { name: 'Spin' }).click();
    await app.close();
  });

  it('keeps settings over a reload', async () => {
    const app = await openApp();
    await app.page.locator('label', { hasText: /^US$/ }).first().click();
    await app.page.locator('label', { hasText: 'LOW' }).first().click();
    expect(await app.page.getByTestId('unbalance-high').textContent()).toMatch(/^6[01]\d$/);
    await app.page.reload();
    await app.page.waitForFunction(() => (window.__drumbench?.stats?.frames ?? 0) > 0);
    expect(await app.page.getByTestId('unbalance-high').textContent()).toMatch(/^6[01]\d$/);
    expect(await app.page.locator('input[type=radio][value=low]').isChecked()).toBe(true);
    await app.close();
  });

  it('leads through the first steps, which stay away once closed', async () => {
    const app = await openApp({ firstSteps: true });
    const { page } = app;
    const strip = page.getByRole('region', { name: 'First steps' });
    for (const act of ['Pull it apart', 'Show me', 'Turn to LOW', 'Watch the shot'])
      await strip.getByRole('button', { name: act }).click();
    await page.waitForSelector('.shot-watch');
    await strip.getByRole('button', { name: 'Take it down' }).click();
    await strip.getByRole('link', { name: 'Go to the lessons' }).click({ timeout: 60000 });
    await page.getByRole('heading', { name: 'Lessons', exact: true }).waitFor();
    await page.goto('about:blank');
    await page.goto(inject('appUrl'));
    await page.getByRole('button', { name: /^Teardown/ }).waitFor();
    await page.waitForFunction(() => (window.__drumbench?.stats?.frames ?? 0) > 0);
    expect(await strip.count()).toBe(0);
    await app.close();
  });
});
