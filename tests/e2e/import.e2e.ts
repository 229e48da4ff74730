import { readFileSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openApp } from './app';

const folder = join(resolve(import.meta.dirname, '../..'), 'models', 'alder-one');
const files = () =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.yaml') && name !== 'fit.yaml')
    .map((name) => ({ name, mimeType: 'text/yaml', buffer: readFileSync(join(folder, name)) }));

describe('dropping machine files', () => {
  it('lists all faults of a broken file with line and path, and leaves the machine alone', async () => {
    const app = await openApp();
    const { page } = app;
    await page.getByRole('tab', { name: 'Machine' }).click();
    const broken = files().map((file) =>
      file.name === 'drum.yaml'
        ? {
            ...file,
            buffer: Buffer.from(
              file.buffer
                .toString()
                .replace('kind: drum-shell', 'kind: drum-shall')
                .replace(/outer_m: 0\.75\b/, 'outer_m: wide'),
            ),
          }
        : file,
    );
    await page.locator('input[type=file]').setInputFiles(broken);
    const list = page.getByRole('list', { name: 'Faults' });
    await list.waitFor({ timeout: 60000 });
    const text = await list.innerText();
    expect(text).toMatch(
      /drum\.yaml:\d+ kinds\.[\w-]+\.params\.stations\[0\]\.outer_m: expected a number, found "wide"/,
    );
    expect(await page.getByText(/is unchanged/).isVisible()).toBe(true);
    expect(await page.evaluate(() => window.__drumbench!.stats!.parts)).toBeGreaterThan(250);
    await app.close();
  });

  it('takes the saved training roller, changed by a person, and puts it on the stage', async () => {
    const app = await openApp();
    const { page } = app;
    await page.getByRole('tab', { name: 'Machine' }).click();
    const saving = page.waitForEvent('download');
    await page.getByRole('link', { name: /^Save the training roller/ }).click();
    const chunks: Buffer[] = [];
    for await (const chunk of await (await saving).createReadStream()) chunks.push(chunk as Buffer);
    const saved = Buffer.concat(chunks).toString('utf8');
    expect(saved).toContain('name: Alder One');
    const renamed = {
      name: 'mine.yaml',
      mimeType: 'text/yaml',
      buffer: Buffer.from(saved.replace('name: Alder One', 'name: Alder One B')),
    };
    await page.locator('input[type=file]').setInputFiles(renamed);
    await page.waitForFunction(
      () => document.querySelector('h1')?.textContent?.includes('Alder One B') === true,
      undefined,
      { timeout: 110000 },
    );
    await app.close();
  });
});
