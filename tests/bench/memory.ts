/** What 50 switches of place, section, teardown, machine options and theme leave behind: graphics objects and script heap. */
import type { Page } from 'playwright-core';
import { PLACES } from '../../src/store/places';
import { DIST, drawn, freshPage, heapOf, rest, statsOf, withBrowser, withServer } from './browser';
import { atMost } from './limit';
import type { Measure } from './row';

const SWITCHES = 50;

const go = async (page: Page, place: string): Promise<void> => {
  await page.evaluate((to) => (location.hash = `/${to}`), place);
  await page.waitForSelector(
    place === 'bench' ? '[data-testid="stage"]' : `.place-body[data-place="${place}"] :is(h1, h2)`,
  );
};

const section = async (page: Page): Promise<void> => {
  const button = page.getByRole('button', { name: 'Section' });
  await button.click();
  await page.waitForFunction(() => window.__drumbench!.stats!.capTriangles > 1000);
  await button.click();
  await page.waitForFunction(() => window.__drumbench!.stats!.capTriangles === 0);
};

const options = async (page: Page): Promise<void> => {
  const menu = page.locator('.stage-tools details', { has: page.locator('summary', { hasText: 'Show' }) });
  await menu.locator('summary').click();
  const boxes = menu.getByRole('checkbox');
  if ((await boxes.count()) === 0) throw new Error('bench/memory: no machine options to switch');
  for (let turn = 0; turn < 2; turn++)
    for (let n = 0; n < (await boxes.count()); n++) await boxes.nth(n).click({ force: true });
  await menu.locator('summary').click();
};

const teardown = async (page: Page): Promise<void> => {
  for (const key of ['last', 'first'] as const)
    await page
      .getByRole('slider')
      .last()
      .press(key === 'last' ? 'End' : 'Home');
};

const ACTS: readonly ((page: Page) => Promise<void>)[] = [
  ...PLACES.filter((place) => place !== 'bench').map((place) => async (page: Page) => {
    await go(page, place);
    await go(page, 'bench');
  }),
  section,
  options,
  teardown,
];

async function reading(page: Page, cdp: Parameters<typeof heapOf>[0]) {
  await page.bringToFront();
  await rest(page);
  const { geometries, textures, programs } = await statsOf(page);
  return { geometries, textures, programs, heap: (await heapOf(cdp)) / 1e6 };
}

export const measure: Measure = () =>
  withBrowser((browser) =>
    withServer(DIST, async (url) => {
      const { page, cdp, close } = await freshPage(browser);
      await page.goto(`${url}?tier=low`);
      await drawn(page);
      // Twice round first: chunks, words and shaders come once and stay.
      for (let round = 0; round < 2; round++) for (const act of ACTS) await act(page);
      const before = await reading(page, cdp);
      for (let n = 0; n < SWITCHES; n++) await ACTS[n % ACTS.length]!(page);
      const after = await reading(page, cdp);
      await close();
      const row = (name: string, key: keyof typeof before, unit: string) =>
        atMost(
          `${name} after ${SWITCHES} switches`,
          unit,
          after[key],
          before[key] * 1.05,
          `before them ${before[key].toPrecision(4)}, ${(100 * (after[key] / before[key] - 1)).toFixed(1)} % more; places, section, teardown, machine options`,
        );
      return [
        row('geometries', 'geometries', 'geometries'),
        row('textures', 'textures', 'textures'),
        row('programs', 'programs', 'programs'),
        row('script heap', 'heap', 'MB'),
      ];
    }),
  );
