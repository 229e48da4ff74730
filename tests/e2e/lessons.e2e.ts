/** Lessons and quiz in the built app: the whole course walked, every item kind answered by keys, the review list. */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { buildGraph, planOnGraph } from '../../src/core/assembly';
import { toShown } from '../../src/core/kernel';
import type { CourseOutline } from '../../src/core/lessons';
import { type Subject, valuesOf } from '../../src/core/quiz';
import { fit, machine, masses, solids } from '../models/alder-one';
import { atRest, LONG, openApp } from './app';

const course = async (): Promise<CourseOutline> =>
  (await (await fetch(new URL('baked/lessons/en/course.json', inject('appUrl')))).json()) as CourseOutline;
const bank = readFileSync(
  join(resolve(import.meta.dirname, '../..'), 'lessons/two-directions/bank.yaml'),
  'utf8',
);

/** Answers whatever is asked, right or not, with the keyboard alone. */
async function answerByKeys(page: Page): Promise<string> {
  const form = page.locator('form.ask');
  const kind = (await form.getAttribute('data-kind'))!;
  const press = async (name: string): Promise<void> => {
    await form.locator(name).first().focus();
    await page.keyboard.press('Space');
  };
  if (kind === 'number') {
    await form.locator('input[type=text]').focus();
    await page.keyboard.type('250');
  } else if (kind === 'match') {
    for (const select of await form.locator('select').all()) {
      await select.focus();
      await page.keyboard.press('ArrowDown');
    }
  } else if (kind === 'order') await press('.order-buttons button:not(:disabled)');
  else await press('.answer-list input');
  await form.locator('.segmented input').first().focus();
  await page.keyboard.press('Space');
  await form.locator('button[type=submit]').focus();
  await page.keyboard.press('Enter');
  await page.waitForSelector('.ask-told');
  return kind;
}

/** The values of texts, worked out here from the model's files and not from what the app was given. */
const subject: Subject = {
  machine,
  solids,
  masses,
  fit,
  graph: null,
  teardown: planOnGraph(machine, buildGraph(machine, solids, masses)),
};
const values = valuesOf(subject);

interface Said {
  readonly name: string;
  readonly si: string | null;
  readonly text: string;
}

/** What a step says, checked: no dash for a value, each number that of the model, and its words that number. */
function checkSaid(said: readonly Said[], where: string): void {
  for (const { name, si, text } of said) {
    expect(text, `${where} ${name}`).not.toBe('–');
    const own = values.get(name.replace(/^now\./, 'study.'));
    if (own === undefined) throw new Error(`${where}: the model gives no ${name}`);
    if ('text' in own) {
      expect(text, where).toBe(own.text);
      continue;
    }
    if (!name.startsWith('now.'))
      expect(Math.abs(Number(si) - own.si), `${where} ${name}`).toBeLessThanOrEqual(Math.abs(own.si) * 1e-6);
    const shown = toShown(Number(si), own.quantity, 'si');
    const read = Number(/[-−]?[\d,]*\.?\d+/.exec(text)?.[0].replace('−', '-').replaceAll(',', ''));
    expect(Math.abs(read - shown), `${where} ${name}: ${text}`).toBeLessThanOrEqual(
      Math.max(0.051 * Math.abs(shown), 1e-9),
    );
  }
}

describe('lessons', () => {
  // Some 160 steps: under a minute by itself, minutes on a machine that does other work.
  it(
    'walks lessons (every second; in a long run all) from first to last step, with the numbers of the model',
    { timeout: 900_000 },
    async () => {
      const app = await openApp({ path: '#/lessons', width: 1000, height: 600 });
      const { page } = app;
      await page.waitForSelector('.course-list');
      for (const lesson of (await course()).lessons.filter((_, i) => LONG || i % 2 === 0)) {
        await page.evaluate(
          (hash) => (location.hash = hash),
          `#/lessons/${lesson.id}/${lesson.steps[0]!.id}`,
        );
        for (const [i, step] of lesson.steps.entries()) {
          const where = `${lesson.id}/${step.id}`;
          await page.waitForSelector(`.lesson[data-step="${step.id}"]`);
          expect(new URL(page.url()).hash).toBe(`#/lessons/${where}`);
          const said = await page.locator('.lesson .said-value').evaluateAll((list) =>
            list.map((each) => ({
              name: each.getAttribute('data-value')!,
              si: each.getAttribute('data-si'),
              text: each.textContent,
            })),
          );
          checkSaid(said, where);
          expect(await page.locator('.lesson h2').textContent()).toBe(step.title);
          // A question that this machine cannot be asked would leave its step without one.
          if (step.asks) expect(await page.locator('.lesson .lesson-task').count(), where).toBeGreaterThan(0);
          await page.locator('.lesson-nav .act').evaluate((button) => (button as HTMLElement).click());
          if (i === lesson.steps.length - 1) await page.waitForSelector('.course-list');
        }
      }
      await app.close();
    },
  );

  it('asks every kind by keys and puts the wrong ones on tomorrow’s list, which outlives a reload', async () => {
    const app = await openApp({ path: '#/quiz' });
    const { page } = app;
    await page.locator('.quiz-topics summary').click();
    await page.locator('.quiz-topics label', { hasText: 'Two directions' }).click();
    await page.locator('label', { hasText: 'Bank' }).click();
    // All of this bank, so that every kind comes.
    await page.locator('.quiz-home .segmented label', { hasText: /^20$/ }).click();
    await page.locator('.quiz-home .button.act').click();
    const kinds = new Set<string>();
    for (let left = true; left;) {
      kinds.add(await answerByKeys(page));
      const next = page.locator('.quiz-nav .act');
      left = (await next.textContent())!.startsWith('Next');
      const before = await page.locator('form.ask').getAttribute('data-item');
      await next.click();
      if (left)
        await page.waitForFunction(
          (id) => document.querySelector('form.ask')?.getAttribute('data-item') !== id,
          before,
        );
    }
    await page.waitForSelector('.quiz-results');
    expect([...kinds].sort()).toEqual([...new Set(bank.match(/(?<=kind: )[a-z-]+/g))].sort());
    await page.locator('.quiz-results .button.act').click();
    const planned = async (): Promise<number> =>
      (await page.locator('.review-plan td').allTextContents()).reduce((sum, cell) => sum + Number(cell), 0);
    await page.waitForSelector('.review-plan');
    const before = await planned();
    expect(before).toBeGreaterThanOrEqual(kinds.size);
    await page.reload();
    await page.waitForSelector('.review-plan');
    expect(await planned()).toBe(before);
    await app.close();
  });

  it('takes a part picked on the stage as an answer', async () => {
    const app = await openApp({ path: '#/lessons/two-directions/inside-the-drum' });
    await app.page.waitForSelector('.lesson-task');
    expect(await app.page.locator('.task-done').count()).toBe(0);
    // Where the housing is seen uncovered once the view has come to rest.
    await atRest(app.page);
    const seen = await app.page.waitForFunction((id) => window.__drumbench!.screenOf!(id), 'exciter', {
      timeout: 60000,
      polling: 200,
    });
    const at = (await seen.jsonValue())!;
    await app.page.mouse.click(at.x, at.y);
    await app.page.waitForSelector('.task-done');
    await app.close();
  });
});
