/** A browser for the benches of the built app, and what they all do in it. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import {
  type Browser,
  type BrowserContextOptions,
  type CDPSession,
  chromium,
  type Page,
} from 'playwright-core';
import { BROWSER_FLAGS, findBrowser } from '../../scripts/lib/browser.mjs';
import { serveFolder } from '../../scripts/lib/serve.mjs';
import type {} from '../../src/view/scene/stats';

/** The built app; another folder may stand in while sources are being changed. */
export const DIST = process.env['DRUMBENCH_DIST'] ?? join(import.meta.dirname, '../../dist');

export async function withBrowser<T>(use: (browser: Browser) => Promise<T>): Promise<T> {
  const executablePath = findBrowser();
  if (executablePath === null) throw new Error('bench: no Chromium found; set CHROME_PATH');
  if (!existsSync(join(DIST, 'index.html'))) throw new Error('bench: npm run build first');
  const browser = await chromium.launch({
    executablePath,
    args: [...BROWSER_FLAGS, '--enable-precise-memory-info'],
  });
  try {
    return await use(browser);
  } finally {
    await browser.close();
  }
}

export async function withServer<T>(folder: string, use: (url: string) => Promise<T>): Promise<T> {
  const { server, url } = await serveFolder(folder);
  try {
    return await use(url);
  } finally {
    server.close();
  }
}

/** A fresh page with first steps off and without service worker; `before` runs in it before anything else. */
export async function freshPage(
  browser: Browser,
  options: BrowserContextOptions = {},
  before?: () => void,
): Promise<{ page: Page; cdp: CDPSession; close: () => Promise<void> }> {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    reducedMotion: 'reduce',
    serviceWorkers: 'block',
    locale: 'en-GB',
    ...options,
  });
  // The runner's compiler names functions through a helper that a page does not know.
  await context.addInitScript('globalThis.__name = (named) => named');
  await context.addInitScript(() => {
    const kept = { settings: { firstSteps: false }, exciter: {} };
    if (localStorage.getItem('drumbench.kept.1') === null)
      localStorage.setItem('drumbench.kept.1', JSON.stringify(kept));
  });
  if (before !== undefined) await context.addInitScript(before);
  const page = await context.newPage();
  page.setDefaultTimeout(120_000);
  return { page, cdp: await context.newCDPSession(page), close: () => context.close() };
}

export const drawn = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => (window.__drumbench?.stats?.frames ?? 0) > 0);

export const statsOf = (page: Page) => page.evaluate(() => ({ ...window.__drumbench!.stats! }));

/** Waits until no frame was drawn for `quiet_ms`. */
export async function rest(page: Page, quiet_ms = 700): Promise<void> {
  let { frames } = await statsOf(page);
  for (let tries = 0; tries < 60; tries++) {
    await page.waitForTimeout(quiet_ms);
    const now = (await statsOf(page)).frames;
    if (now === frames) return;
    frames = now;
  }
  throw new Error('bench: the stage does not come to rest');
}

/** Bytes of the page's script heap after garbage was collected. */
export async function heapOf(cdp: CDPSession): Promise<number> {
  for (let n = 0; n < 3; n++) await cdp.send('HeapProfiler.collectGarbage');
  return ((await cdp.send('Runtime.getHeapUsage')) as { usedSize: number }).usedSize;
}

/** Sets a range input as a drag does. */
export const setRange = (page: Page, name: string, value: number): Promise<void> =>
  page
    .getByRole('slider', { name })
    .first()
    .evaluate((element, to) => {
      const input = element as HTMLInputElement;
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, String(to));
      input.dispatchEvent(new Event('input', { bubbles: true }));
      input.dispatchEvent(new Event('change', { bubbles: true }));
    }, value);
