/** What a browser may refuse or lose, and that the rest goes on: 3-D, its context, workers, storage, room. */
import { describe, expect, it } from 'vitest';
import { atRest, openApp, setRange, widerBy } from './app';

describe('without 3-D', () => {
  it('says so, and lists, numbers, teardown and lessons work', async () => {
    const app = await openApp({
      stage: false,
      without: () => {
        const get = HTMLCanvasElement.prototype.getContext;
        HTMLCanvasElement.prototype.getContext = function (
          this: HTMLCanvasElement,
          kind: string,
          ...rest: []
        ) {
          return kind.startsWith('webgl')
            ? null
            : (get as (...all: unknown[]) => unknown).call(this, kind, ...rest);
        } as typeof get;
      },
    });
    const { page } = app;
    await page.getByTestId('stage-notice').waitFor({ timeout: 60000 });
    expect(await page.getByTestId('unbalance-high').textContent()).toMatch(/^\d/);
    await page.getByRole('searchbox').fill('Exciter housing');
    await page.locator('tr.level-2', { hasText: 'Exciter housing' }).first().focus();
    await page.keyboard.press('Enter');
    await page.locator('#side-panel-body').getByText('closed round chamber').first().waitFor();
    // The machine stands there as a line drawing with its balloons.
    await page.locator('[data-testid="drawing-stage"] svg .balloon').first().waitFor({ timeout: 60000 });
    await page.evaluate(() => (window.location.hash = '/lessons/two-directions'));
    await page.locator('.place-body h2, .place-body h1').first().waitFor();
    await app.close();
  });
});

describe('a drawing context that is lost', () => {
  it('comes back by itself with what was shown', async () => {
    const app = await openApp();
    const { page } = app;
    await setRange(page, 'Explode', 0.5);
    await atRest(page);
    const before = await page.evaluate(() => {
      const { stats } = window.__drumbench!;
      const canvas = document.querySelector<HTMLCanvasElement>('[data-testid="stage-canvas"]')!;
      const gl = canvas.getContext('webgl2')!;
      const lose = gl.getExtension('WEBGL_lose_context')!;
      (window as unknown as { lost: WEBGL_lose_context }).lost = lose;
      lose.loseContext();
      return stats!.frames;
    });
    await page.evaluate(() => (window as unknown as { lost: WEBGL_lose_context }).lost.restoreContext());
    await page.waitForFunction((frames) => window.__drumbench!.stats!.frames > frames, before);
    await atRest(page);
    expect(await page.getByRole('slider', { name: 'Explode' }).first().inputValue()).toBe('0.5');
    // Drawn again: the middle of the picture is not one colour.
    const box = (await page.getByTestId('stage-canvas').boundingBox())!;
    const shot = await page.screenshot({ clip: { ...box, x: box.x + box.width / 4, width: box.width / 2 } });
    expect(shot.length).toBeGreaterThan(20_000);
    await app.close();
  });
});

describe('without workers and storage', () => {
  it('names the reason where one was needed, keeps the machine, and works for the visit', async () => {
    const app = await openApp({
      without: () => {
        window.Worker = class {
          constructor() {
            throw new Error('workers are blocked');
          }
        } as unknown as typeof Worker;
        const refuse = (): never => {
          throw new DOMException('refused', 'SecurityError');
        };
        Object.defineProperty(window, 'localStorage', { get: refuse });
        Object.defineProperty(window, 'indexedDB', { get: () => ({ open: refuse }) });
      },
    });
    const { page } = app;
    await page.getByRole('tab', { name: 'Machine' }).click();
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles({
        name: 'machine.yaml',
        mimeType: 'text/yaml',
        buffer: Buffer.from('schema_version: 1\n'),
      });
    await page.getByText('workers are blocked').first().waitFor();
    await page.evaluate(() => (window.location.hash = '/practice'));
    await page.locator('.place-body h2, .place-body h1').first().waitFor();
    await page.locator('label', { hasText: /^US$/ }).first().click();
    await page.evaluate(() => (window.location.hash = '/records'));
    await page
      .locator('.place-body[data-place="records"]')
      .getByText(/keeps nothing/)
      .first()
      .waitFor();
    expect(await page.locator('input[type=radio][value=us]').first().isChecked()).toBe(true);
    await app.close();
  });
});

describe('zoomed to 200 %', () => {
  it('needs no scrolling sideways and keeps every place within reach', async () => {
    const app = await openApp({ width: 720, height: 450, scale: 2 });
    const { page } = app;
    for (const place of ['bench', 'practice', 'jobs', 'lessons', 'quiz', 'studies', 'records']) {
      await page.evaluate((to) => (window.location.hash = `/${to}`), place);
      if (place !== 'bench')
        await page.waitForSelector(`.place-body[data-place="${place}"] :is(h1, h2)`, { timeout: 30000 });
      expect(await widerBy(page), place).toBeLessThanOrEqual(0);
    }
    await app.close();
  });
});

describe('in Spanish', () => {
  it('speaks the browser’s language at first, in every place', async () => {
    const app = await openApp({ locale: 'es-MX' });
    const { page } = app;
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('es');
    await page.getByText('Cuerpo del excitador').first().waitFor();
    for (const [place, words] of [
      ['practice', 'Práctica'],
      ['jobs', 'Trabajos'],
      ['lessons', 'Dos sentidos'],
      ['quiz', 'Cuestionario'],
      ['studies', 'Estudios'],
      ['faults', 'Hallar la falla'],
    ] as const) {
      await page.evaluate((to) => (window.location.hash = `/${to}`), place);
      await page.locator(`.place-body[data-place="${place}"]`).getByText(words).first().waitFor();
    }
    await app.close();
  });
});
