/** Opens the built app in a fresh context and watches it: any console error or request to another host fails the test. */
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect, inject } from 'vitest';
import type {} from '../../src/view/scene/stats';

export interface OpenOptions {
  readonly width?: number;
  readonly height?: number;
  readonly path?: string;
  /** Drawing tier of the stage; tests use the low one unless a picture is the point. */
  readonly tier?: 'low' | 'full';
  readonly context?: BrowserContext;
  readonly touch?: boolean;
  /** The strip of first things to do over the stage, as on a first visit. */
  readonly firstSteps?: boolean;
  /** Run in the page before the app: takes something away that a browser usually has. */
  readonly without?: () => void;
  /** Language of the browser, a BCP 47 tag. */
  readonly locale?: string;
  /** Pixels of the screen to one of the page: 2 with half the size is a zoom of 200 %. */
  readonly scale?: number;
  /** False where there will be no stage to wait for. */
  readonly stage?: boolean;
}

/** `DRUMBENCH_LONG=1 npm test`: also what takes minutes and is seldom hurt. */
export const LONG = process.env['DRUMBENCH_LONG'] === '1';

let browser: Browser | undefined;

export async function theBrowser(): Promise<Browser> {
  browser ??= await chromium.connect(inject('browserEndpoint'));
  return browser;
}

export interface App {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly troubles: readonly string[];
  /** Closes the page and fails when anything went wrong meanwhile. */
  close(): Promise<void>;
}

/** The app, loaded until the machine stands on the stage. */
export async function openApp(options: OpenOptions = {}): Promise<App> {
  const { width = 1440, height = 900, path = '', tier = 'low', touch = false } = options;
  const own = await theBrowser();
  const context =
    options.context ??
    (await own.newContext({
      viewport: { width, height },
      hasTouch: touch,
      reducedMotion: 'reduce',
      ...(options.locale === undefined ? {} : { locale: options.locale }),
      ...(options.scale === undefined ? {} : { deviceScaleFactor: options.scale }),
      // Keeping the app offline fetches all of it: tests/e2e/offline does so.
      serviceWorkers: 'block',
    }));
  if (options.firstSteps !== true)
    await context.addInitScript(() => {
      const key = 'drumbench.kept.1';
      try {
        if (localStorage.getItem(key) === null)
          localStorage.setItem(key, JSON.stringify({ settings: { firstSteps: false }, exciter: {} }));
      } catch {
        // A browser that keeps nothing keeps no settings either.
      }
    });
  if (options.without !== undefined) await context.addInitScript(options.without);
  const page = await context.newPage();
  const troubles: string[] = [];
  const home = new URL(inject('appUrl')).host;
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => troubles.push(`page: ${error.message}`));
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (!['data:', 'blob:'].includes(url.protocol) && url.host !== home)
      troubles.push(`request to ${url.host}`);
  });
  await page.goto(`${inject('appUrl')}?tier=${tier}${path}`);
  if (options.stage !== false)
    await page.waitForFunction(() => (window.__drumbench?.stats?.frames ?? 0) > 0, undefined, {
      timeout: 60000,
    });
  return {
    page,
    context,
    troubles,
    close: async () => {
      await page.close();
      if (options.context === undefined) await context.close();
      expect(troubles).toEqual([]);
    },
  };
}

/** Waits until the stage has drawn nothing new for a moment: with frames on demand that is rest. */
export async function atRest(page: Page, quiet_ms = 400): Promise<void> {
  await page.evaluate(async (quiet) => {
    const frames = (): number => window.__drumbench?.stats?.frames ?? 0;
    let last = frames();
    let since = performance.now();
    const start = since;
    while (performance.now() - since < quiet && performance.now() - start < 30000) {
      await new Promise((resolve) => setTimeout(resolve, 50));
      if (frames() !== last) {
        last = frames();
        since = performance.now();
      }
    }
  }, quiet_ms);
}

/** How much wider the page is than its window, pixels. */
export const widerBy = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Sets a range input as a person's drag does. */
export async function setRange(page: Page, name: string, value: number): Promise<void> {
  await page
    .getByRole('slider', { name })
    .first()
    .evaluate((element, to) => {
      const input = element as HTMLInputElement;
      const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
      set?.call(input, String(to));
      input.dispatchEvent(new Event('input', { bubbles: true }));
      input.dispatchEvent(new Event('change', { bubbles: true }));
    }, value);
}
