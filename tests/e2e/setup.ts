/** One static server and one browser for all browser tests; their addresses reach the tests through provide(). */
import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { BROWSER_FLAGS, findBrowser } from '../../scripts/lib/browser.mjs';
import { serveFolder } from '../../scripts/lib/serve.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    appUrl: string;
    browserEndpoint: string;
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const executablePath = findBrowser();
  if (executablePath === null) throw new Error('No Chromium found: install one or set CHROME_PATH.');
  // A server that already runs (npm run dev) may stand in for the built app while a test is written.
  const running = process.env['DRUMBENCH_URL'];
  const { server, url } = running === undefined ? await serveFolder('dist') : { server: null, url: running };
  const browser = await chromium.launchServer({ executablePath, args: BROWSER_FLAGS, headless: true });
  project.provide('appUrl', url);
  project.provide('browserEndpoint', browser.wsEndpoint());
  return async () => {
    await browser.close();
    server?.close();
  };
}
