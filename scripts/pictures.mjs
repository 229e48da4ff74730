/** Takes the README's pictures from the built app: real screens at full drawing quality, into docs/pictures. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { BROWSER_FLAGS, findBrowser } from './lib/browser.mjs';
import { root } from './lib/run.mjs';
import { serveFolder } from './lib/serve.mjs';

const out = join(root, 'docs', 'pictures');
mkdirSync(out, { recursive: true });

/** Sets the explode slider as a drag does. */
const explode = (page, value) =>
  page
    .getByRole('slider', { name: 'Explode' })
    .first()
    .evaluate((input, to) => {
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set.call(input, String(to));
      input.dispatchEvent(new Event('input', { bubbles: true }));
      input.dispatchEvent(new Event('change', { bubbles: true }));
    }, value);

const PICTURES = [
  { name: 'home' },
  { name: 'section', act: (page) => page.getByRole('button', { name: 'Section' }).click() },
  { name: 'exploded', act: (page) => explode(page, 1) },
  {
    name: 'teardown',
    act: async (page) => {
      await page.getByRole('button', { name: /^Teardown/ }).click();
      await page
        .locator('.step-name', { hasText: /^Mounting plate$/ })
        .first()
        .click({ force: true });
    },
  },
  {
    name: 'night',
    act: async (page) => {
      await page.getByRole('tab', { name: 'Settings' }).click();
      await page.getByRole('radio', { name: 'Night shift' }).check({ force: true });
      await page.getByRole('tab', { name: 'Exciter' }).click();
    },
  },
  { name: 'low', act: (page) => page.locator('input[type=radio][value=low]').check({ force: true }) },
  { name: 'lesson', address: '#/lessons/two-directions/inside-the-drum' },
  { name: 'job', address: '#/jobs/right-exciter-bearing/step/24' },
  { name: 'study', address: '#/studies/two-speed' },
  { name: 'phone', width: 390, height: 844 },
  { name: 'tablet', width: 1024, height: 768 },
];

const wanted = process.argv.slice(2);
const { server, url } = await serveFolder(join(root, 'dist'));
const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_FLAGS });
for (const { name, width = 1440, height = 900, address = '', act } of PICTURES) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const context = await browser.newContext({ viewport: { width, height }, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(60000);
  await page.goto(`${url}?tier=full${address}`);
  await page.waitForFunction(() => (window.__drumbench?.stats?.frames ?? 0) > 0);
  await page.waitForTimeout(3000);
  if (act) {
    try {
      await act(page);
    } catch (error) {
      console.error(`${name}: ${error.message.split('\n')[0]}`);
    }
    await page.waitForTimeout(6000);
  }
  await page.screenshot({ path: join(out, `${name}.png`), timeout: 90000 });
  console.log(`docs/pictures/${name}.png`);
  await context.close();
}
await browser.close();
server.close();
