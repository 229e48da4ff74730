import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseMachine } from '../../src/core/machine';
import { readModelFolder } from '../../src/edge/content/model-files';
import { atRest, openApp, LONG } from './app';

const parsed = parseMachine(
  readModelFolder(join(resolve(import.meta.dirname, '../..'), 'models', 'alder-one')),
);
if (!parsed.ok) throw new Error('The training roller has faults.');
const { machine } = parsed.value;

describe('parts list and stage', () => {
  it('finds every kind by its name and selects it with the keyboard alone', async () => {
    const app = await openApp();
    const { page } = app;
    const rows = page.locator('tr.level-2');
    const names = (await rows.locator('.cell-item + td').allInnerTexts()).map((t) =>
      t.split('\n')[0]!.trim(),
    );
    expect(names.length).toBeGreaterThan(60);
    const search = page.getByRole('searchbox');
    for (const name of names) {
      await search.fill(name);
      const row = rows.filter({ hasText: name }).first();
      await row.focus();
      await page.keyboard.press('Enter');
      expect(await page.locator('tr[aria-selected="true"]').count(), name).toBeGreaterThan(0);
      const card = await page.locator('#side-panel-body h2').first().innerText();
      expect(card.toLowerCase()).toContain(name.toLowerCase().split(' ')[0]!);
    }
    await app.close();
  });

  it('selects kinds by a click on the stage (every third; in a long run all), and the list follows', async () => {
    // Isolated, so that nothing stands before it; a small window, since every turn draws anew.
    const app = await openApp({ width: 1220, height: 620 });
    const { page } = app;
    const keys = await page
      .locator('tr.level-2')
      .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset['key']!));
    expect(keys.length).toBeGreaterThan(60);
    const missed: string[] = [];
    for (const key of keys.filter((_, i) => LONG || i % 3 === 0)) {
      const part = machine.parts.find((p) => `kind:${p.kind}` === key && !p.context)!;
      await page.locator(`[data-key="${key}"]`).evaluate((row) => (row as HTMLElement).focus());
      await page.keyboard.press('i');
      const at = await page
        .waitForFunction((id) => window.__drumbench!.screenOf!(id), part.id, { timeout: 8000, polling: 100 })
        .then((handle) => handle.jsonValue())
        .catch(() => null);
      if (at === null) {
        missed.push(`${part.id}: not in sight`);
      } else {
        await page.mouse.click(at.x, at.y);
        const selected = await page
          .waitForFunction(
            (k) => document.querySelector('tr[aria-selected="true"]')?.getAttribute('data-key') === k,
            key,
            { timeout: 5000, polling: 100 },
          )
          .then(() => true)
          .catch(() => false);
        if (!selected) missed.push(`${part.id}: not selected`);
      }
      // Out of isolation, then the part is let go.
      await page.keyboard.press('Escape');
      await page.keyboard.press('Escape');
    }
    expect(missed).toEqual([]);
    await app.close();
  }, 400000);

  it('hides, isolates and shows all again', async () => {
    const app = await openApp();
    const { page } = app;
    await atRest(page);
    const all = await page.evaluate(() => window.__drumbench!.stats!.parts);
    // The stage draws on demand, so the figure follows with the next frame; a wrong one never comes.
    const shows = (parts: number) =>
      page.waitForFunction((n) => window.__drumbench!.stats!.parts === n, parts, { timeout: 30000 });
    await page.getByRole('searchbox').fill('drum shell');
    const row = page.locator('tr.level-2').first();
    await row.focus();
    await page.keyboard.press(' ');
    await shows(all - 1);
    await page.keyboard.press(' ');
    await shows(all);
    await page.keyboard.press('i');
    await shows(1);
    await page.keyboard.press('Escape');
    await shows(all);
    await app.close();
  });
});
