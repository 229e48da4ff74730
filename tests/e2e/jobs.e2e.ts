/**
 * A mechanic's day in the built app: the right-hand exciter bearing from choosing to printed sheet with every hold point,
 * the browser closed in the middle; a damaged file read in with nothing lost.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BROWSER_FLAGS, findBrowser } from '../../scripts/lib/browser.mjs';
import { decodeDocument, kindSolids } from '../../src/core/document';
import { buildJobSheet, type Job, type JobPlan, type JobSheet, type SheetNumber } from '../../src/core/jobs';
import { toShown, UNITS } from '../../src/core/kernel';
import { exciterStudy, OWN_CHOICE } from '../../src/core/studies';
import { goodValue } from '../jobs/good-value';
import { type App, openApp } from './app';
import { pdfPages } from './pdf-text';

const JOB = 'right-exciter-bearing';
const baked = (path: string): Buffer =>
  readFileSync(resolve(import.meta.dirname, '../../public/baked', path));

/** The sheet as it should be, from the data that ships with the app. */
function expectedSheet(): JobSheet {
  const bytes = baked('alder-one.bin');
  const document = decodeDocument(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length) as ArrayBuffer,
  );
  const { machine, masses, fit } = document;
  const solids = kindSolids(document);
  const { jobs } = JSON.parse(baked('alder-one/jobs.json').toString()) as { jobs: Job[] };
  const { plan } = JSON.parse(baked(`alder-one/jobs/${JOB}.json`).toString()) as JobPlan;
  const job = jobs.find((j) => j.id === JOB)!;
  const study = exciterStudy(machine, solids, masses, OWN_CHOICE, fit);
  return buildJobSheet({ machine, solids, masses, job, plan, study, values: {} });
}

const sheet = expectedSheet();
const holds = sheet.steps.filter((s) => s.hold);
const folder = mkdtempSync(join(tmpdir(), 'drumbench-jobs-'));
let context: BrowserContext;
let app: App;
let page: Page;

/** A browser of its own, whose storage outlives it. */
async function startBrowser(path: string): Promise<void> {
  const executablePath = findBrowser();
  if (executablePath === null) throw new Error('no browser');
  context = await chromium.launchPersistentContext(folder, {
    executablePath,
    args: BROWSER_FLAGS,
    // a small stage draws fast without a graphics card
    viewport: { width: 1024, height: 660 },
    reducedMotion: 'reduce',
  });
  app = await openApp({ path, context });
  page = app.page;
}

async function stopBrowser(): Promise<void> {
  await app.close();
  await context.close();
}

beforeAll(() => startBrowser('#/jobs'));
afterAll(async () => {
  await stopBrowser();
  rmSync(folder, { recursive: true, force: true });
});

const atStep = (id: string) => page.waitForSelector(`[data-step="${id}"]`);
const confirm = () => page.getByRole('button', { name: 'Confirm the hold point' }).click();
/** By key, as the button says that it is not ready. */
async function tryToConfirm(): Promise<void> {
  const button = page.getByRole('button', { name: 'Confirm the hold point' });
  expect(await button.getAttribute('aria-disabled')).toBe('true');
  await button.press('Enter');
}
const kept = (): Promise<string[]> =>
  page.evaluate(
    () =>
      new Promise<string[]>((done, failed) => {
        const open = indexedDB.open('drumbench');
        open.onerror = () => failed(new Error('no database'));
        open.onsuccess = () => {
          const all = open.result.transaction('records').objectStore('records').getAll();
          all.onsuccess = () => {
            const rows = all.result as { collection: string; text: string }[];
            open.result.close();
            done(rows.filter((r) => r.collection === 'jobs').map((r) => r.text));
          };
        };
      }),
  );

/** Fills every field of the open step that must be filled, as a person would in SI units. */
async function fillStep(id: string): Promise<void> {
  const step = sheet.steps.find((s) => s.id === id)!;
  for (const field of step.fields) {
    if (field.optional) continue;
    const box = page.locator(`[data-field="${field.id}"]`);
    const value = goodValue(field);
    if (field.type === 'check') await box.getByRole('checkbox').check();
    else if (field.type === 'choice') await box.getByRole('combobox').selectOption(String(value));
    else if (typeof value === 'number')
      await box.getByRole('textbox').fill(String(toShown(value, field.quantity ?? 'plain', 'si')));
    else await box.getByRole('textbox').fill(String(value));
    expect(await box.getAttribute('data-state')).toBe('good');
  }
}

async function goTo(id: string): Promise<void> {
  const { number } = sheet.steps.find((s) => s.id === id)!;
  await page.getByRole('combobox', { name: 'Go to step' }).selectOption(String(number));
  await atStep(id);
}

/** A number as the sheet prints it, without white space. */
function printed(n: SheetNumber): string {
  const [quantity, factor] =
    n.quantity === 'time' ? (['hours', 1 / 3600] as const) : ([n.quantity, 1] as const);
  const { figures, symbol } = UNITS[quantity].si;
  const format = new Intl.NumberFormat('en', {
    maximumSignificantDigits: n.quantity === 'time' ? 3 : figures,
  });
  const one = (si: number): string => format.format(toShown(si * factor, quantity, 'si'));
  const value = typeof n.value === 'number' ? one(n.value) : n.value!.map(one).join('to');
  return `${value}${symbol}`.replace(/\s/g, '');
}

describe('the right-hand exciter bearing', () => {
  it('is chosen from the list, and its first hold point holds', async () => {
    await page.locator(`[data-job-row="${JOB}"]`).click();
    await page.getByRole('button', { name: 'Begin with step 1' }).click();
    await atStep('secure');
    await tryToConfirm();
    expect(await page.getByText('is still empty').count()).toBeGreaterThan(0);
    expect(await kept()).toEqual([]);
    await fillStep('secure');
    await confirm();
    await atStep('index-drum');
    await page.getByRole('button', { name: 'Done, next step' }).click();
    await atStep('temperature-before');
  });

  it('goes on where it stood after the browser was closed in the middle', async () => {
    const middle = holds[Math.floor(holds.length / 2)]!.number;
    for (const hold of holds.filter((s) => s.id !== 'secure' && s.number < middle)) {
      await goTo(hold.id);
      await fillStep(hold.id);
      await confirm();
      await page.waitForSelector(`[data-step="${hold.id}"]`, { state: 'detached' });
    }
    await page.waitForFunction(() => window.__drumbench?.stats !== undefined);
    const before = await kept();
    expect(before).toHaveLength(1);
    await stopBrowser();

    await startBrowser('#/jobs');
    expect(await kept()).toEqual(before);
    await page.locator(`[data-under-way="${JOB}"]`).click();
    // the first step that is not ticked; hold points before and after it are done
    await page.getByRole('button', { name: 'Go on with step 3' }).click();
    await atStep('temperature-before');
  });

  it('passes its other hold points, the manual’s torque among them, and no other way', async () => {
    for (const hold of holds) {
      const { done } = (JSON.parse((await kept())[0]!) as { progress: { done: string[] } }).progress;
      if (done.includes(hold.id)) continue;
      await goTo(hold.id);
      await tryToConfirm();
      await atStep(hold.id);
      await fillStep(hold.id);
      await confirm();
      await page.waitForSelector(`[data-step="${hold.id}"]`, { state: 'detached' });
    }
    const { progress } = JSON.parse((await kept())[0]!) as {
      progress: { done: string[]; values: Record<string, unknown> };
    };
    for (const hold of holds) expect(progress.done).toContain(hold.id);
    expect(progress.values['torque-hub-bolts']).toBeGreaterThan(0);
  });

  it('reads a damaged file in, names its faults in one place, and loses nothing', async () => {
    const before = await kept();
    await page.evaluate((hash) => (location.hash = hash), `#/jobs/${JOB}`);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save this sheet as a file' }).click(),
    ]);
    const text = readFileSync(await download.path(), 'utf8');
    expect(text).toBe(before[0]);
    const damaged = text.replace(/"float": .*/, '"float": null,').replace('"changed_ms"', '"chnaged_ms"');
    await page
      .locator('input[type=file][accept*=json]')
      .setInputFiles({ name: 'damaged.json', mimeType: 'application/json', buffer: Buffer.from(damaged) });
    const alert = page.getByRole('alert');
    await alert.waitFor();
    const lines = await alert.getByRole('listitem').allTextContents();
    const lineOf = (word: string): number =>
      1 + damaged.split('\n').findIndex((line) => line.includes(`"${word}"`));
    for (const start of [
      `damaged.json:${lineOf('float')} progress.values.float: expected`,
      `damaged.json:${lineOf('progress')} progress.changed_ms: expected a number, found (nothing)`,
    ])
      expect(
        lines.some((line) => line.startsWith(start)),
        `${start}\n${lines.join('\n')}`,
      ).toBe(true);
    expect(await kept()).toEqual(before);
    await alert.getByRole('button', { name: 'Close' }).click();
  });

  it('prints every step, computed number and hold point, none of them cut by a page’s end', async () => {
    await page.getByRole('button', { name: 'Sheet to print' }).click();
    await page.waitForSelector('[data-pictures="ready"]', { timeout: 100000 });
    const pages = pdfPages(await page.pdf({ preferCSSPageSize: true }));
    pages.forEach((text, i) => expect(text).toContain(`Page${i + 1}/${pages.length}`));
    const all = pages.join('');
    const numbers = sheet.steps.flatMap((s) => s.numbers).filter((n) => n.value !== null);
    expect(numbers.length).toBeGreaterThan(30);
    for (const n of numbers) expect(all).toContain(printed(n));
    // the fit of the new bearing as the design basis has it: 0.011 to 0.070 mm tight
    expect(all).toContain('fitP611to70µm');
    expect(all.match(/Holdpointsigned/g)).toHaveLength(holds.length);
    for (const { text } of sheet.steps) {
      if (typeof text !== 'string') continue;
      const squeezed = text.replace(/\s/g, '');
      expect(
        pages.filter((p) => p.includes(squeezed)),
        text,
      ).toHaveLength(1);
    }
    for (let k = 1; k <= (await page.locator('figure').count()); k++)
      expect(all).toContain(`Picture${k}:step`);
  });
});
