import { describe, expect, it } from 'vitest';
import { atRest, openApp } from './app';

describe('teardown', () => {
  it('walks every step forward and back, each with its name, reasons and what it takes', async () => {
    const app = await openApp();
    const { page } = app;
    await page.getByRole('button', { name: /^Teardown/ }).click();
    const steps = await page.locator('ol.step-list li').count();
    expect(steps).toBeGreaterThan(30);
    const next = page.getByRole('button', { name: 'One step on' });
    const titles: string[] = [];
    for (let step = 0; step < steps; step++) {
      await next.click();
      titles.push(await page.locator('.step-title').innerText());
      expect(await page.locator('.step-why li').count(), titles.at(-1)).toBeGreaterThan(0);
      // A key that has no words would show with its dots.
      expect(await page.locator('.step-card').innerText()).not.toMatch(/\b[a-z-]+\.[a-z-]+\.[a-z-]+\b/);
    }
    expect(await next.isDisabled()).toBe(true);
    const back = page.getByRole('button', { name: 'One step back' });
    for (let step = steps - 1; step > 0; step--) {
      await back.click();
      expect(await page.locator('.step-title').innerText()).toBe(titles[step - 1]);
    }
    await back.click();
    expect(await back.isDisabled()).toBe(true);
    await app.close();
  });

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
    const app = await openApp();
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
