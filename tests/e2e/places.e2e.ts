import { describe, expect, it } from 'vitest';
import { openApp } from './app';

describe('places', () => {
  it('are reached by link, address and the back button; panels come over them and go again', async () => {
    const app = await openApp({ path: '#/studies/ballast' });
    const { page } = app;
    await page.getByRole('heading', { name: 'Ballast' }).waitFor();
    expect(await page.title()).toMatch(/^Studies – Alder One/);
    await page.getByRole('link', { name: 'Lessons' }).click();
    await page.getByRole('heading', { name: 'Lessons', exact: true }).waitFor();
    expect(await page.evaluate(() => window.location.hash)).toBe('#/lessons');
    await page.goBack();
    await page.getByRole('heading', { name: 'Ballast' }).waitFor();

    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('radio', { name: 'Night shift' }).check({ force: true });
    await page.getByRole('button', { name: 'Back to Studies' }).click();
    await page.getByRole('heading', { name: 'Ballast' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('night');

    await page.getByRole('link', { name: 'Explore' }).click();
    await page.getByRole('button', { name: /^Teardown/ }).waitFor();
    await app.close();
  });

  it('are in a menu on a phone, by keyboard too', async () => {
    const app = await openApp({ width: 390, height: 844 });
    const { page } = app;
    await page.locator('.place-nav summary').focus();
    await page.keyboard.press('Enter');
    await page.getByRole('link', { name: 'Faults' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Find the fault' }).waitFor();
    expect(await page.locator('.place-nav details').getAttribute('open')).toBeNull();
    await app.close();
  });
});
