import { appendFileSync, cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { serveFolder } from '../../scripts/lib/serve.mjs';
import { theBrowser } from './app';

/** The built app in a folder and on a server of its own: the test takes both away. */
const folder = mkdtempSync(join(tmpdir(), 'offline-'));
cpSync('dist', folder, { recursive: true });
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const stands = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => (window.__drumbench?.stats?.frames ?? 0) > 0, undefined, { timeout: 60000 });

const isKept = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active?.state !== 'activated')
      await new Promise((done) => active?.addEventListener('statechange', done, { once: true }));
  });

describe('without a network', () => {
  it('opens again, with lessons, jobs and faults; a newer version waits to be taken', async () => {
    const first = await serveFolder(folder);
    const { port } = new URL(first.url);
    const context = await (await theBrowser()).newContext({ viewport: { width: 1200, height: 560 } });
    const page = await context.newPage();
    page.setDefaultTimeout(60000);
    await page.goto(`${first.url}?tier=low`);
    await stands(page);
    await isKept(page);

    first.server.closeAllConnections();
    await new Promise((closed) => first.server.close(closed));
    await page.reload();
    await stands(page);
    for (const [link, sight] of [
      ['Lessons', '.course-list li, .place-body article, .place-body ol li'],
      ['Faults', '.faults[data-phase="ready"]'],
    ] as const) {
      await page.getByRole('link', { name: link }).click();
      await page.waitForSelector(sight);
    }

    // The server comes back with a newer worker.
    appendFileSync(join(folder, 'service-worker.js'), '\n// newer\n');
    const second = await serveFolder(folder, { port: Number(port) });
    expect(new URL(second.url).port).toBe(port);
    await page.evaluate(async () => void (await (await navigator.serviceWorker.getRegistration())?.update()));
    const take = page.getByRole('button', { name: 'Use it now' });
    await take.waitFor();
    const loaded = page.waitForEvent('load');
    await take.click();
    await loaded;
    await page.waitForSelector('.faults[data-phase="ready"]');
    expect(
      await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting ?? null),
    ).toBeNull();
    await context.close();
    second.server.closeAllConnections();
    second.server.close();
  });
});
