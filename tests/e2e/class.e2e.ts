/**
 * A class in real browsers: an instructor, eight phones (one with the stage, seven that cannot draw it and use the
 * lists), a reload, a lost connection, and a host that is killed in the middle. Every confirmed answer is there once.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { BrowserContext, Page, WebSocketRoute } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { replay } from '../../src/edge/host/class-store';
import { theBrowser } from './app';

const root = resolve(import.meta.dirname, '../..');
const data = mkdtempSync(join(tmpdir(), 'class-'));
const PHONES = 8;
const PATIENCE_ms = 90_000;
let host: ChildProcess | undefined;
const contexts: BrowserContext[] = [];
afterAll(async () => {
  host?.kill('SIGKILL');
  for (const context of contexts) await context.close();
});

/** Starts the host as a person does, and reads its addresses off the terminal. */
async function startHost(
  port: number,
): Promise<{ home: string; code: string; secret: string; port: number }> {
  const args = ['--interface', 'localhost', '--port', String(port), '--data', data];
  // A built app elsewhere may stand in while the test is written.
  const app = process.env['DRUMBENCH_DIST'];
  const child = spawn(
    process.execPath,
    ['--import', 'tsx', 'src/edge/host/main.ts', ...args, ...(app === undefined ? [] : ['--app', app])],
    { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] },
  );
  host = child;
  let said = '';
  for await (const chunk of child.stdout) {
    said += String(chunk);
    if (said.includes('Ctrl+C')) break;
  }
  const [, home, at, secret] = /(http:\/\/[\d.]+:(\d+)\/)#\/class\/host\/(\S+)/.exec(said)!;
  const code = /Class code:\s+(\S+)/.exec(said)![1]!;
  return { home: home!, port: Number(at), code, secret: secret! };
}

const troubles: string[] = [];

interface Options {
  readonly stage: boolean;
  readonly phone: boolean;
  /** Before the page is loaded. */
  readonly prepare?: (page: Page) => Promise<void>;
}

async function open(home: string, hash: string, options: Options): Promise<Page> {
  const context = await (
    await theBrowser()
  ).newContext({
    viewport: options.phone ? { width: 390, height: 844 } : { width: 1280, height: 800 },
    reducedMotion: 'reduce',
  });
  contexts.push(context);
  const page = await context.newPage();
  // Nine pages on two cores take their time.
  page.setDefaultTimeout(PATIENCE_ms);
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (!['data:', 'blob:'].includes(url.protocol) && url.host !== new URL(home).host)
      troubles.push(`request to ${url.host}`);
  });
  if (!options.stage)
    await page.addInitScript(() => {
      // A phone without WebGL.
      HTMLCanvasElement.prototype.getContext = () => null;
    });
  await options.prepare?.(page);
  await page.goto(`${home}?tier=low${hash}`);
  return page;
}

/** Answers whatever is asked, right or not. */
async function answer(page: Page): Promise<void> {
  const form = page.locator('form.ask');
  await form.waitFor();
  const kind = await form.getAttribute('data-kind');
  if (kind === 'number') await form.locator('input[type=text]').fill('25');
  else if (kind === 'match')
    for (const select of await form.locator('select').all()) await select.selectOption({ index: 1 });
  else if (kind !== 'order') await form.locator('.answer-list input').first().click();
  await form.locator('.segmented label').nth(1).click();
  await form.locator('button[type=submit]').click();
}

const isIn = (page: Page): Promise<unknown> => page.waitForSelector('.class-own[data-reached="true"]');

it('holds through reload, lost connection and kill -9', async () => {
  const { home, port, code, secret } = await startHost(0);
  const teacher = await open(home, `#/class/host/${secret}`, { stage: true, phone: false });
  // What is asked in class is in nobody's app.
  const shipped = await (await fetch(`${home}baked/lessons/en/topic-two-directions.json`)).text();
  expect(shipped).toContain('two-directions-force');
  expect(shipped).not.toContain('class-two-directions');
  const next = teacher.locator('.class-host .button.act');
  await teacher.waitForSelector('.class-host');
  expect(teacher.url()).not.toContain(secret);
  await teacher.locator('.segmented label', { hasText: /^5$/ }).click();
  await next.click();
  await teacher.waitForSelector('.class-draft li');
  expect(await teacher.locator('.class-draft').textContent()).toContain('class bank');
  await next.click();
  await teacher.waitForSelector('.class-how');

  let cut = false;
  const lines = new Set<WebSocketRoute>();
  /** A line that the test can cut, as a phone's that leaves the room. */
  const cuttable = (phone: Page): Promise<void> =>
    phone.routeWebSocket(/class\/socket/, (line) => {
      if (cut) void line.close();
      else {
        line.connectToServer();
        lines.add(line);
      }
    });
  const phones: Page[] = [];
  for (let i = 0; i < PHONES; i++) {
    const phone = await open(home, `#/class/${code}`, {
      stage: i === 0,
      phone: true,
      ...(i === 3 ? { prepare: cuttable } : {}),
    });
    await phone.locator('.class-join input[inputmode=numeric]').fill(String(i + 1));
    await phone.locator('.class-join .button.act').click();
    await phone.waitForSelector('.class-learner');
    phones.push(phone);
  }
  const answered = (count: number): Promise<unknown> =>
    teacher.waitForFunction(
      (wanted) => document.querySelector('.class-count strong')?.textContent === String(wanted),
      count,
    );
  await teacher.waitForFunction(
    (wanted) => document.querySelectorAll('.class-seats li[data-here="true"]').length === wanted,
    PHONES,
  );

  // First question: all answer; one reloads, one is cut off while it answers.
  await next.click();
  await teacher.waitForSelector('.class-run[data-phase="waiting"]');
  expect(await phones[0]!.locator('form.ask').count()).toBe(0);
  await teacher.keyboard.press('PageDown');
  await phones[3]!.waitForSelector('form.ask');
  cut = true;
  for (const line of lines) await line.close();
  await phones[3]!.waitForSelector('.class-link[data-link="lost"], .class-link[data-link="connecting"]');
  await Promise.all(phones.map(answer));
  await Promise.all(phones.map((phone, i) => (i === 3 ? null : isIn(phone))));
  await answered(PHONES - 1);
  expect(await phones[3]!.locator('.class-own').getAttribute('data-reached')).toBe('false');
  await phones[2]!.reload();
  await isIn(phones[2]!);
  await teacher.keyboard.press('PageDown');
  await phones[1]!.waitForSelector('.class-learner[data-phase="closed"]');
  // Closed, and still the answer that was kept on the phone counts.
  cut = false;
  await isIn(phones[3]!);
  await answered(PHONES);
  await next.click();
  await Promise.all(phones.map((phone) => phone.waitForSelector('.class-revealed')));
  expect(await teacher.locator('.class-revealed caption').first().textContent()).toContain(
    `of ${PHONES} right`,
  );

  // Second question: half of them answer, the host dies, the others answer all the same.
  await next.click();
  await teacher.waitForSelector('.class-run[data-phase="waiting"]');
  await next.click();
  await Promise.all(phones.slice(0, 4).map(answer));
  await Promise.all(phones.slice(0, 4).map(isIn));
  await Promise.all(phones.slice(4).map((phone) => phone.waitForSelector('form.ask')));
  host!.kill('SIGKILL');
  await Promise.all(phones.slice(4).map(answer));
  const again = await startHost(port);
  expect(again).toEqual({ home, port, code, secret });
  await Promise.all(phones.map(isIn));
  await answered(PHONES);
  await next.click();
  await teacher.waitForSelector('.class-run[data-phase="closed"]');
  await next.click();
  await teacher.waitForSelector('.class-revealed');
  await teacher.getByRole('button', { name: 'End the session' }).click();
  await teacher.getByRole('button', { name: 'Yes, end it now' }).click();
  await Promise.all(phones.map((phone) => phone.waitForSelector('.class-learner :text("last question")')));

  await teacher.locator('.class-tabs a', { hasText: 'Results' }).click();
  await teacher.waitForSelector('[data-testid="class-numbers"]');
  expect(await teacher.locator('[data-testid="class-items"] tbody tr').count()).toBe(2);
  expect(await teacher.locator('[data-testid="class-numbers"] tbody tr').count()).toBe(PHONES);
  const { state, lost } = replay(join(data, 'journal-000001.log'));
  expect(lost).toBe(0);
  for (const asked of state.session!.asked.slice(0, 2)) {
    expect(Object.keys(asked.answers).map(Number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    // One phone, one number: counted once, however often it was sent.
    for (const given of Object.values(asked.answers))
      expect(given.via === 'phone' && Object.keys(given.revisions)).toHaveLength(1);
  }
  expect(troubles).toEqual([]);
}, 240_000);
