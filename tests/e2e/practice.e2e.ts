/**
 * Practice on Alder One: a try that cannot be, with its reason as the command line has it; a support confirmed with its
 * force; a hint; a reload that loses nothing; the end with its sum. With the mouse on the stage, and by keys alone.
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { CALCULATIONS } from '../../src/edge/cli/registry';
import { runCalc } from '../../src/edge/cli/run-calc';
import english from '../../src/words/en';
import { atRest, openApp } from './app';

interface Blocking {
  readonly directions: readonly {
    readonly free: boolean;
    readonly blockers: readonly { readonly unit: string; readonly strike_distance_m: number }[];
  }[];
}

/** What the command line finds in the way of a unit, of each pattern the first, nearest first, in one sentence. */
async function reasonOf(unit: string, unitName: string): Promise<string> {
  const typed = JSON.stringify({ model: 'alder-one', unit });
  const printed = await runCalc(CALCULATIONS, ['blocking'], () => Promise.resolve(typed));
  const { blockers } = (JSON.parse(printed.stdout) as Blocking).directions[0]!;
  const nearest = [...blockers].sort((a, b) => a.strike_distance_m - b.strike_distance_m);
  const kinds = [...new Set(nearest.map((each) => each.unit.replace(/-\d+$/, '')))].slice(0, 3);
  const names = kinds.map((kind) => english[`part.${kind}.name`]!.toLowerCase());
  const by = new Intl.ListFormat('en', { type: 'conjunction' }).format(names);
  return english['practice.why.covered']!.replace('{{part}}', unitName).replace('{{by}}', by);
}

const said = (page: Page) => page.locator('.practice-said');
const count = (page: Page, name: string) => page.locator(`[data-count="${name}"]`).textContent();
const answered = (page: Page, kind: string) => page.waitForSelector(`[data-answer="${kind}"]`);

/** Where a part can be clicked on the stage, once the camera is at rest. */
async function seenAt(page: Page, partId: string): Promise<{ x: number; y: number }> {
  await atRest(page);
  await page.waitForFunction((id) => window.__drumbench?.screenOf?.(id) != null, partId);
  return page.evaluate((id) => window.__drumbench!.screenOf!(id)!, partId);
}

/** Chooses the one part to free, and starts. */
async function start(page: Page, part: string): Promise<void> {
  await page.getByText('Moves: at least').first().waitFor({ timeout: 60_000 });
  await page.getByRole('radio', { name: /^One part/ }).check();
  await page.getByRole('combobox', { name: 'Part to free' }).selectOption({ label: part });
  await page.getByRole('button', { name: 'Start' }).click();
  await answered(page, 'begun');
}

describe('practice', () => {
  it('takes units off with the mouse, on the stage and in the list, over a reload, to a plain sum', async () => {
    const app = await openApp({ path: '#/practice', width: 1024, height: 768 });
    const { page } = app;
    await start(page, 'Scraper bar, front');

    // In the list: it cannot go, and the sentence is what the command line finds.
    await page.getByRole('searchbox', { name: 'Search parts' }).fill('hub bolts');
    await page.locator('.practice-row').first().click();
    await page.locator('.practice-try').click();
    await answered(page, 'refused');
    expect(await said(page).textContent()).toBe(await reasonOf('hub-bolts', 'hub bolts'));
    expect(await count(page, 'wrong')).toBe('1');

    // On the stage: a click takes it in hand, no more; a pull tries it.
    await page.getByRole('button', { name: 'Right', exact: true }).click();
    const bolt = await seenAt(page, 'bracket-bolts/01');
    await page.mouse.click(bolt.x, bolt.y);
    const onStage = page.locator('.practice-on-stage');
    await onStage.getByText('Bracket bolts').waitFor();
    expect(await count(page, 'moves')).toBe('0');
    await page.mouse.down();
    await page.mouse.move(bolt.x + 60, bolt.y, { steps: 3 });
    await page.mouse.up();

    // Held first: the crib with its force.
    const card = page.locator('.practice-confirm');
    const force = await card.locator('[data-force="crib"]').textContent();
    expect(force).toMatch(/^10\.4\s?kN$/);
    const go = card.getByRole('button', { name: 'All done: take it off' });
    expect(await go.isDisabled()).toBe(true);
    for (const point of await card.getByRole('checkbox').all()) await point.check();
    await go.click();
    await answered(page, 'moved');
    expect(await said(page).textContent()).toBe('Off: bracket bolts.');
    await page.getByRole('status').getByText('Off: bracket bolts.').waitFor({ state: 'attached' });

    await page.getByRole('button', { name: 'Hint', exact: true }).click();
    await answered(page, 'hint');
    expect(await said(page).textContent()).toBe('Look at the front.');

    await page.reload();
    await answered(page, 'begun');
    expect(await count(page, 'moves')).toBe('1');
    expect(await count(page, 'wrong')).toBe('1');
    expect(await count(page, 'hints')).toBe('1');
    await page.getByRole('region', { name: 'Held now' }).getByText('Crib under right side plate').waitFor();

    // To the end: by the list, and by the button over the stage.
    await page.locator('.practice-row[data-unit="scraper-bar-bolts-front"]').click();
    await page.locator('.practice-try').click();
    await answered(page, 'moved');
    await page.locator('.practice-row[data-unit="scraper-bar-front"]').click();
    await onStage.getByRole('button', { name: 'Take off' }).click();
    // 1 wrong try at 3, 1 hint at 1, 1 move beyond the least at 1.
    await page.waitForSelector('.practice-score[data-lost="5"]');
    await page.getByText('Your order beside the least').click();
    await page.getByText('not needed', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Another task' }).click();
    await page.getByText('Points lost: 5').waitFor();
    await app.close();
  });

  it('moves a part under the mouse and under a finger, back when let go of soon, off when let go of far out', async () => {
    const app = await openApp({ path: '#/practice', width: 1024, height: 768, touch: true });
    const { page } = app;
    await start(page, 'Scraper bar, front');
    await page.getByRole('button', { name: 'Right', exact: true }).click();
    const place = (id: string) => page.evaluate((part) => window.__drumbench!.screenOf!(part), id);
    const away = (id: string, from: { x: number; y: number }, by: number) =>
      page.waitForFunction(
        ([part, x, y, least]) => {
          const at = window.__drumbench!.screenOf!(part);
          return at !== null && Math.hypot(at.x - x, at.y - y) >= least;
        },
        [id, from.x, from.y, by] as const,
      );

    // Looked at from its end a part is pulled down. A little and let go of: back, and nothing counts.
    const level = await seenAt(page, 'level-plug');
    await page.mouse.move(level.x, level.y);
    await page.mouse.down();
    await page.mouse.move(level.x, level.y + 24, { steps: 3 });
    await away('level-plug', level, 1);
    await page.mouse.up();
    await page.waitForFunction(
      ([x, y]) => {
        const at = window.__drumbench!.screenOf!('level-plug');
        return at !== null && Math.hypot(at.x - x, at.y - y) < 0.5;
      },
      [level.x, level.y] as const,
    );
    expect(await count(page, 'moves')).toBe('0');
    // Far out: it goes on by itself. While it is held nothing is decided, and the view stays.
    const fill = await place('fill-plug');
    await page.mouse.move(level.x, level.y);
    await page.mouse.down();
    await page.mouse.move(level.x, level.y + 90, { steps: 6 });
    await away('level-plug', level, 4);
    expect(await count(page, 'moves')).toBe('0');
    expect(await place('fill-plug')).toEqual(fill);
    await page.mouse.up();
    await answered(page, 'moved');
    expect(await said(page).textContent()).toBe('Off: level plug.');

    // A drag across the way of a part, or on the ground, turns the view.
    await page.getByRole('button', { name: 'Right', exact: true }).click();
    const drain = await seenAt(page, 'drain-plug');
    await page.mouse.move(drain.x, drain.y);
    await page.mouse.down();
    await page.mouse.move(drain.x + 60, drain.y, { steps: 3 });
    await page.mouse.up();
    await away('fill-plug', fill!, 5);
    expect(await count(page, 'moves')).toBe('1');
    expect(await count(page, 'wrong')).toBe('0');

    // By touch, once the view is back: on a busy machine it rests for a while before it has begun to turn.
    const turned = await place('fill-plug');
    await page.getByRole('button', { name: 'Right', exact: true }).click();
    await away('fill-plug', turned!, 5);
    const finger = await seenAt(page, 'fill-plug');
    const cdp = await app.context.newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', dy = 0) =>
      cdp.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: finger.x, y: finger.y + dy }],
      });
    await touch('touchStart');
    for (const dy of [12, 40, 80, 120, 150]) await touch('touchMove', dy);
    await away('fill-plug', finger, 4);
    await touch('touchEnd');
    await page.waitForFunction(() => document.querySelector('[data-count="moves"]')?.textContent === '2');
    expect(await said(page).textContent()).toBe('Off: fill plug.');
    await app.close();
  });

  it('goes by keys alone on a phone', async () => {
    const app = await openApp({ path: '#/practice', width: 390, height: 844 });
    const { page } = app;
    await start(page, 'Lock bar pin');
    const press = (key: string) => page.keyboard.press(key);
    const find = async (name: string): Promise<void> => {
      await page.getByRole('searchbox', { name: 'Search parts' }).focus();
      await page.keyboard.type(name);
      await press('Tab');
      await press('Enter');
      await page.waitForFunction(() => document.activeElement?.classList.contains('practice-try'));
      await press('Enter');
    };
    await find('lock bar pin');
    await page.waitForSelector('.practice-confirm');
    await page.waitForFunction(() => document.activeElement?.id === 'practice-before');
    await press('Tab');
    await press('Space');
    await press('Tab');
    await press('Enter');
    await page.waitForSelector('.practice-score[data-lost="0"]');
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    await app.close();
  });
});
