import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { PLACES } from '../../src/store/places';
import { openApp, widerBy } from './app';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const SIZES = [
  { name: 'desktop', width: 1440, height: 900 },
  { name: 'tablet', width: 1024, height: 768 },
  { name: 'phone', width: 390, height: 844 },
];

/** What axe finds wrong in the whole page, or in one box of it. */
const violationsOf = (page: Page, box = 'html'): Promise<readonly string[]> =>
  page.evaluate(async (include) => {
    const run = (
      window as unknown as {
        axe: { run(context: string): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      }
    ).axe;
    return (await run.run(include)).violations.map(
      (v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 120)).join(' | ')}`,
    );
  }, box);

describe.each(SIZES)('layout on a $name', ({ name, width, height }) => {
  it('has nothing cut off sideways and no accessibility violation, in every place', async () => {
    const app = await openApp({ width, height, touch: name !== 'desktop' });
    const { page } = app;
    await page.evaluate(axe);
    const links = await page
      .locator('.place-links a')
      .evaluateAll((all) => all.map((a) => a.getAttribute('href')));
    expect(links.length).toBeGreaterThan(1);
    for (const place of PLACES) {
      if (!links.includes(`#/${place}`)) continue;
      await page.evaluate((to) => (window.location.hash = `/${to}`), place);
      if (place !== 'bench')
        await page.waitForSelector(`.place-body[data-place="${place}"] :is(h1, h2)`, { timeout: 30000 });
      expect(await widerBy(page), place).toBeLessThanOrEqual(0);
      expect(await violationsOf(page, place === 'bench' ? 'html' : '.place-body'), place).toEqual([]);
    }
    await app.close();
  });
});
