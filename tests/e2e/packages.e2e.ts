/**
 * Packages in a run-time not written here (scorm-again): a page plays the learning system, two frames deep lies the
 * unpacked package. A learner goes through the lesson and the quiz, leaves in the middle and comes back.
 */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Frame, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { filesOf } from '../../scripts/lib/precache.mjs';
import { serveFolder } from '../../scripts/lib/serve.mjs';
import { zipPackage } from '../../src/edge/school';
import { theBrowser, LONG } from './app';

const APP = process.env['DRUMBENCH_DIST'] ?? 'dist';
const folder = mkdtempSync(join(tmpdir(), 'lms-'));
let url = '';
let close = (): void => {};

beforeAll(async () => {
  cpSync('tests/e2e/lms', folder, { recursive: true });
  const again = dirname(createRequire(import.meta.url).resolve('scorm-again/scorm12/min'));
  for (const name of ['scorm12.min.js', 'scorm2004.min.js']) cpSync(join(again, name), join(folder, name));
  const files = filesOf(APP).map((each) => ({ url: each.url, bytes: 0 }));
  const read = (name: string) => Promise.resolve(new Uint8Array(readFileSync(join(APP, name))));
  for (const standard of ['scorm12', 'scorm2004'] as const) {
    const zip = await zipPackage(
      { files, read },
      { standard, lesson: 'two-directions', language: 'en', mastery: 0.8 },
      { title: 'Two directions', summary: 'About it.', waiting: 'Wait.' },
    );
    const unpacked = unzipSync(new Uint8Array(await zip.arrayBuffer()));
    for (const [name, bytes] of Object.entries(unpacked)) {
      mkdirSync(dirname(join(folder, standard, name)), { recursive: true });
      writeFileSync(join(folder, standard, name), bytes);
    }
  }
  const served = await serveFolder(folder);
  url = served.url;
  close = () => {
    served.server.closeAllConnections();
    served.server.close();
  };
});
afterAll(() => {
  close();
  rmSync(folder, { recursive: true, force: true });
});

declare global {
  interface Window {
    refused: readonly unknown[];
    calls: number;
    cmi: () => Readonly<Record<string, never>>;
  }
}

/** The package's own frame, once its lesson is there. */
async function launched(page: Page): Promise<Frame> {
  await expect
    .poll(() => page.frames().some((frame) => frame.url().includes('launch.html')), { timeout: 30000 })
    .toBe(true);
  const frame = page.frames().find((each) => each.url().includes('launch.html'))!;
  await frame.waitForSelector('.lesson, .ask, .school-home', { timeout: 60000 });
  return frame;
}

const next = (frame: Frame): Promise<void> => frame.locator('.lesson-nav .button.act').dispatchEvent('click');
const stepOf = (frame: Frame): Promise<string | null> => frame.locator('.lesson').getAttribute('data-step');

interface Item {
  readonly entry: { readonly id: string; readonly right?: unknown };
}
const BANK = (): readonly Item[] =>
  (
    JSON.parse(readFileSync(join(APP, 'baked/lessons/en/topic-two-directions.json'), 'utf8')) as {
      items: readonly Item[];
    }
  ).items;

/**
 * Answers what is asked with the first of what is offered. Events are handed to the elements themselves: waiting for each to
 * lie still costs seconds where the stage is drawn by software.
 */
async function answerAnyhow(frame: Frame): Promise<string> {
  const ask = frame.locator('form.ask').first();
  const id = (await ask.getAttribute('data-item'))!;
  const kind = await ask.getAttribute('data-kind');
  if (kind === 'number') await ask.locator('input').first().fill('12');
  else if (kind === 'match')
    for (const select of await ask.locator('select').all()) await select.selectOption({ index: 1 });
  else if (kind !== 'order')
    await ask
      .locator('label:has(input[type="radio"]), label:has(input[type="checkbox"])')
      .first()
      .dispatchEvent('click');
  await ask.locator('.segmented label', { hasText: 'A guess' }).dispatchEvent('click');
  await ask.locator('button[type="submit"]').dispatchEvent('click');
  return id;
}

// Both standards are driven through the same run-time without a browser in tests/school.
describe.each(LONG ? (['scorm12', 'scorm2004'] as const) : (['scorm2004'] as const))(
  '%s package',
  (standard) => {
    it('is gone through, left, taken up again and handed in; the system takes every word of it', async () => {
      const context = await (
        await theBrowser()
      ).newContext({
        viewport: { width: 860, height: 640 },
        reducedMotion: 'reduce',
      });
      const page = await context.newPage();
      page.setDefaultTimeout(15000);
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(error.message));
      page.on('console', (message) => {
        if (message.type() === 'error') errors.push(message.text());
      });
      const cmi = () => page.evaluate(() => window.cmi());
      await page.goto(`${url}page.html?standard=${standard}`);
      let frame = await launched(page);
      expect(await stepOf(frame)).toBe('inside-the-drum');
      // The rest of the app is not to be reached.
      expect(await frame.locator('nav.place-nav').count()).toBe(0);

      await next(frame);
      await next(frame);
      expect(await answerAnyhow(frame)).toBe('two-directions-low-force');
      await frame.locator('.told-verdict').waitFor();
      await next(frame);
      expect(await stepOf(frame)).toBe('held-back');

      // Left in the middle: the last word is said as the page goes.
      await page.reload();
      expect(await page.evaluate((name) => localStorage.getItem(`${name}-ended`), standard)).toBe('true');
      frame = await launched(page);
      await expect.poll(() => stepOf(frame), { timeout: 20000 }).toBe('held-back');
      await frame.locator('.lesson-nav .button').first().dispatchEvent('click');
      await frame.locator('.told-verdict').waitFor();

      for (let i = 0; (await stepOf(frame)) !== 'stop-first' && i < 12; i++) {
        const at = await stepOf(frame);
        await next(frame);
        await expect.poll(() => stepOf(frame)).not.toBe(at);
      }
      await next(frame);
      await frame.getByTestId('steps-done').waitFor();
      expect(await frame.getByTestId('steps-done').textContent()).toBe('10 of 10');
      await expect
        .poll(async () => JSON.stringify(await cmi()), { timeout: 5000 })
        .toMatch(/"(lesson_status|completion_status)":"incomplete"/);

      await frame.getByRole('button', { name: 'Start the quiz' }).dispatchEvent('click');
      const first = await answerAnyhow(frame);
      const second = await answerAnyhow(frame);
      expect(second).not.toBe(first);
      await expect.poll(() => frame.locator('.quiz-jump button').filter({ hasText: '✓' }).count()).toBe(2);

      await page.reload();
      frame = await launched(page);
      await expect
        .poll(() => frame.locator('.quiz-jump button').filter({ hasText: '✓' }).count(), { timeout: 20000 })
        .toBe(2);
      // A question that was answered still holds its answer.
      await frame.locator('.quiz-jump button').first().dispatchEvent('click');
      expect(await frame.locator('form.ask').getAttribute('data-item')).toBe(first);
      await frame.locator('.quiz-jump button').nth(2).dispatchEvent('click');
      for (let i = 2; i < BANK().length; i++) await answerAnyhow(frame);
      await frame.getByRole('button', { name: 'Hand in' }).dispatchEvent('click');
      await frame.locator('.quiz-score').waitFor();
      const right = Number(
        /(\d+) of 13/.exec((await frame.locator('.quiz-score strong').textContent())!)?.[1],
      );

      const score =
        standard === 'scorm12'
          ? () => cmi().then((c) => (c as never as { core: { score: { raw: string } } }).core.score.raw)
          : () => cmi().then((c) => (c as never as { score: { raw: string } }).score.raw);
      await expect.poll(score, { timeout: 5000 }).toBe(String(Math.round((right / 13) * 10000) / 100));
      const kept = (await cmi()) as never as {
        core?: { lesson_status: string; exit: string };
        completion_status?: string;
        success_status?: string;
        suspend_data: string;
        interactions: Readonly<Record<string, { id: string; type: string; result: string }>>;
      };
      const passed = right / 13 >= 0.8 ? 'passed' : 'failed';
      if (standard === 'scorm12') expect(kept.core!.lesson_status).toBe(passed);
      else expect([kept.completion_status, kept.success_status]).toEqual(['completed', passed]);
      expect(kept.suspend_data.length).toBeGreaterThan(10);
      const told = Object.values(kept.interactions);
      // One in the lesson, and the quiz.
      expect(told).toHaveLength(1 + BANK().length);
      const correct = told.slice(1).filter((each) => each.result === 'correct');
      expect(correct).toHaveLength(right);
      expect(await page.evaluate(() => window.refused)).toEqual([]);
      expect(errors).toEqual([]);
      await context.close();
    });
  },
);

it('without a system says so, and the lesson works', async () => {
  const context = await (
    await theBrowser()
  ).newContext({ viewport: { width: 390, height: 780 }, reducedMotion: 'reduce' });
  const page = await context.newPage();
  await page.goto(`${url}page.html?standard=none`);
  const frame = await launched(page);
  await frame.locator('.school-notice[data-trouble="missing"]').first().waitFor();
  await next(frame);
  await expect.poll(() => stepOf(frame)).toBe('shot-and-baffle');
  await context.close();
});
