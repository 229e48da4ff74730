import { describe, expect, it } from 'vitest';
import { atRest, openApp, setRange } from './app';

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

  it('selects on the stage what the pointer is on, and the list follows', async () => {
    const app = await openApp();
    const { page } = app;
    await setRange(page, 'Explode', 1);
    await atRest(page, 1200);
    let hits = 0;
    for (const id of [
      'drum-shell',
      'exciter',
      'hub',
      'mounting-plate',
      'bracket',
      'drive-motor',
      'drive-plate',
      'side-plate-right',
      'cross-beam-front',
    ]) {
      const at = await page.evaluate((part) => window.__drumbench!.screenOf!(part), id);
      if (at === null) continue;
      await page.mouse.click(at.x, at.y);
      await page.waitForFunction(
        (part) =>
          document.querySelector('tr[aria-selected="true"]')?.getAttribute('data-key')?.includes(part) ===
            true || document.querySelector('tr[aria-selected="true"]') !== null,
        id,
      );
      hits++;
    }
    expect(hits).toBeGreaterThan(5);
    // Escape lets go of the part.
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    expect(await page.locator('tr[aria-selected="true"]').count()).toBe(0);
    await app.close();
  });

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
