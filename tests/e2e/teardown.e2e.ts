import { describe, expect, it } from 'vitest';
import { atRest, openApp } from './app';

describe('teardown', () => {
  it('walks every step forward and back, each with its name, reasons and what it takes', async () => {
    // A small window: each step draws, and a software renderer takes its time for every pixel.
    const app = await openApp({ width: 1220, height: 560 });
    const { page } = app;
    await page.getByRole('button', { name: /^Teardown/ }).click();
    const card = () =>
      page.evaluate(() => ({
        steps: document.querySelectorAll('ol.step-list li').length,
        now: Number(document.querySelector('li.now .step-number')?.textContent ?? 0),
        title: document.querySelector<HTMLElement>('.step-title')?.innerText ?? '',
        why: document.querySelectorAll('.step-why li').length,
        text: document.querySelector<HTMLElement>('.step-card')?.innerText ?? '',
      }));
    const { steps } = await card();
    expect(steps).toBeGreaterThan(30);
    await page.locator('.teardown-open').focus();
    const titles: string[] = [];
    for (let step = 1; step <= steps; step++) {
      await page.keyboard.press('ArrowRight');
      const shown = await card();
      expect(shown.now).toBe(step);
      titles.push(shown.title);
      expect(shown.why, shown.title).toBeGreaterThan(0);
      // A key that has no words would show with its dots.
      expect(shown.text).not.toMatch(/\b(why|tool|caution|part|unit|support|teardown)\.[a-z-]+/);
    }
    for (let step = steps - 1; step >= 1; step--) {
      await page.keyboard.press('ArrowLeft');
      const shown = await card();
      expect(shown.now).toBe(step);
      expect(shown.title).toBe(titles[step - 1]);
    }
    await page.keyboard.press('ArrowLeft');
    expect((await card()).now).toBe(0);
    await app.close();
  }, 300000);

  it('takes the mounting plate off before the hub bolts, and the hub before the exciter', async () => {
    const app = await openApp();
    const { page } = app;
    await page.getByRole('button', { name: /^Teardown/ }).click();
    const names = await page.locator('ol.step-list li .step-name').allInnerTexts();
    const at = (name: RegExp) => names.findIndex((n) => name.test(n));
    expect(at(/^Mounting plate$/i)).toBeGreaterThan(-1);
    expect(at(/hub bolt/i)).toBeGreaterThan(at(/^Mounting plate$/i));
    expect(at(/^Exciter( housing)?$/i)).toBeGreaterThan(at(/hub bolt/i));
    await app.close();
  });

  it('plays by itself and with the keys', async () => {
    const app = await openApp({ width: 1220, height: 560 });
    const { page } = app;
    await page.getByRole('button', { name: /^Teardown/ }).click();
    await page.locator('.teardown-open').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await atRest(page);
    expect(await page.locator('li.now .step-number').innerText()).toBe('2');
    await page.keyboard.press(' ');
    await page.waitForFunction(
      () => Number(document.querySelector('li.now .step-number')?.textContent ?? 0) >= 4,
      undefined,
      { timeout: 60000 },
    );
    await page.keyboard.press(' ');
    await page.keyboard.press('Home');
    expect(await page.locator('li.now').count()).toBe(0);
    await app.close();
  });
});
