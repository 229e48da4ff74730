/** Opens the built app in a fresh context and watches it: any console error or request to another host fails the test. */
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect, inject } from 'vitest';

export interface OpenOptions {
  readonly width?: number;
  readonly height?: number;
  readonly path?: string;
  /** Drawing tier of the stage; tests use the low one unless a picture is the point. */
  readonly tier?: 'low' | 'full';
  readonly context?: BrowserContext;
  readonly touch?: boolean;
}

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
    (await own.newContext({ viewport: { width, height }, hasTouch: touch, reducedMotion: 'reduce' }));
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
  await page.waitForFunction(() => document.documentElement.dataset['ready'] === 'true', undefined, {
    timeout: 90000,
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
