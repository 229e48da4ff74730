/** The fault bench in the browser: known readings name the right fault, a training round by number, a reload resumes. */
import { describe, expect, it } from 'vitest';
import { openApp } from './app';

const ready = '.faults[data-phase="ready"]';

describe('the fault bench', () => {
  it('finds a weak motor from its slow vibration, and proposes what to measure next', async () => {
    const app = await openApp({ path: '#/faults/find' });
    const { page } = app;
    await page.waitForSelector(ready, { timeout: 60_000 });
    await page.getByLabel('Reading of Vibrations a minute in HIGH in vpm').fill('1480');
    await page.waitForSelector('.fault-ranking > li:first-child[data-fault="motor-weak"]');
    await page.waitForSelector('[data-next]');
    await page.getByLabel('Reading of Vibrations a minute in LOW in vpm').fill('1675');
    await page.waitForSelector('.fault-ranking > li:first-child[data-fault="motor-weak"]');
    await app.close();
  });

  it('keeps a training round over a reload, marks it and shows a way to find it, on a phone by keys', async () => {
    const app = await openApp({ path: '#/faults/train', width: 390, height: 844 });
    const { page } = app;
    await page.waitForSelector(ready, { timeout: 60_000 });
    await page.getByLabel(/Case number/).fill('4');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Measure Noise, 3 min' }).focus();
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-own="noise"]');
    const read = await page.locator('[data-own="noise"] dd').textContent();
    await page.reload();
    await page.waitForSelector(ready, { timeout: 60_000 });
    expect(await page.locator('[data-own="noise"] dd').textContent()).toBe(read);
    await page.getByLabel('What is it?').selectOption({ label: 'Shot lost' });
    await page.getByRole('button', { name: 'Commit' }).click();
    await page.waitForSelector('[data-truth]');
    await page.waitForFunction(() => document.querySelectorAll('.fault-path > li').length > 1);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    await app.close();
  });
});
