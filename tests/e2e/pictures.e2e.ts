/**
 * The main views look as they did when a person last looked at them.
 *
 * References: tests/e2e/pictures. `npm run pictures:renew` takes them anew from the built app: look at each before it is
 * committed. What differs is written to .cache/pictures (the picture as it is, and with the difference marked).
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, atRest, LONG, openApp, setRange, theBrowser } from './app';
import { type Comparison, comparePictures } from './picture-compare';

/**
 * What may differ: about twice what another software renderer (SwiftShader beside Mesa's llvmpipe) draws differently in the
 * same browser, at most 0.14 % of the picture and 2.6 % of a tile, in section 14.5 % of one tile of fine hatching. Faults
 * planted below lie above it: a bolt that is gone 16 % of its tile, no ink on a phone 0.47 %, a twentieth apart 7 %.
 */
const MOST = { share: 0.003, tile: 0.06 };
const MOST_IN_SECTION = { ...MOST, tile: 0.3 };

const references = join(import.meta.dirname, 'pictures');
const renew = process.env['DRUMBENCH_PICTURES'] === 'renew';
const wrong = join(import.meta.dirname, '../../.cache/pictures');

/** The app at home in a theme. */
async function home(
  size: { width: number; height: number },
  theme = 'paper',
  without?: () => void,
): Promise<App> {
  const own = await theBrowser();
  const context = await own.newContext({
    viewport: size,
    hasTouch: size.width < 1100,
    reducedMotion: 'reduce',
    serviceWorkers: 'block',
    locale: 'en-GB',
  });
  await context.addInitScript((to) => {
    const kept = { settings: { firstSteps: false, theme: to }, exciter: {} };
    if (localStorage.getItem('drumbench.kept.1') === null)
      localStorage.setItem('drumbench.kept.1', JSON.stringify(kept));
  }, theme);
  if (without !== undefined) await context.addInitScript(without);
  const app = await openApp({ context });
  return {
    ...app,
    close: async () => {
      await app.close();
      await context.close();
    },
  };
}

/** A picture of the page once two in a row are alike. */
async function picture(page: Page): Promise<Buffer> {
  await page.mouse.move(0, 0);
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await atRest(page);
  let last = await page.screenshot();
  for (let tries = 0; tries < 40; tries++) {
    await atRest(page, 300);
    const next = await page.screenshot();
    if (next.equals(last)) return next;
    last = next;
  }
  throw new Error('pictures: the page does not come to rest');
}

const fileOf = (name: string): string => join(references, `${name}.png`);
const referenceOf = (name: string): Buffer => readFileSync(fileOf(name));

function expectAlike(name: string, actual: Buffer, most = MOST): void {
  if (renew) {
    mkdirSync(references, { recursive: true });
    writeFileSync(fileOf(name), actual);
    return;
  }
  if (!existsSync(fileOf(name))) throw new Error(`pictures: no reference ${name}; npm run pictures:renew`);
  const { share, worstTile, at, marked } = comparePictures(actual, referenceOf(name));
  const said = `${name}: ${(100 * share).toFixed(3)} % differs, ${(100 * worstTile).toFixed(1)} % of the tile at ${at}`;
  if (process.env['DRUMBENCH_PICTURES'] === 'say') console.log(said);
  if (share <= most.share && worstTile <= most.tile) return;
  mkdirSync(wrong, { recursive: true });
  writeFileSync(join(wrong, `${name}.actual.png`), actual);
  writeFileSync(join(wrong, `${name}.diff.png`), marked);
  expect.fail(`${said}; see .cache/pictures/${name}.actual.png and .diff.png`);
}

const beyond = ({ share, worstTile }: Comparison): boolean => share > MOST.share || worstTile > MOST.tile;

const DESKTOP = { width: 1440, height: 900 };
const PHONE = { width: 390, height: 844 };

describe('pictures of the desktop', () => {
  let app: App;
  beforeAll(async () => {
    app = await home(DESKTOP);
  });
  afterAll(() => app.close());

  it('at home on paper and in the night shift, in section and exploded', async () => {
    const { page } = app;
    expectAlike('home-paper', await picture(page));
    for (const [name, look] of [
      ['home-night', 'Night shift'],
      [null, 'Paper'],
    ] as const) {
      await page.getByRole('tab', { name: 'Settings' }).click();
      await page.locator('label', { hasText: new RegExp(`^${look}$`) }).click();
      await page.getByRole('tab', { name: 'Exciter' }).click();
      if (name !== null) expectAlike(name, await picture(page));
    }
    await page.getByRole('button', { name: 'Section' }).click();
    await page.waitForFunction(() => window.__drumbench!.stats!.capTriangles > 1000);
    expectAlike('section', await picture(page), MOST_IN_SECTION);
    await page.getByRole('button', { name: 'Section' }).click();
    await page.waitForFunction(() => window.__drumbench!.stats!.capTriangles === 0);
    await setRange(page, 'Explode', 1);
    expectAlike('exploded', await picture(page));
  });
});

it.each([
  { name: 'home-projector', theme: 'projector', ...DESKTOP },
  { name: 'home-tablet', theme: 'paper', width: 1024, height: 768 },
  { name: 'home-phone', theme: 'paper', ...PHONE },
])('picture of $name', async ({ name, theme, ...size }) => {
  const app = await home(size, theme);
  expectAlike(name, await picture(app.page));
  await app.close();
});

describe('the comparison itself', () => {
  /** A change in the reference that a person would see: a 30 px square of it takes the colour of its corner. */
  const painted = (name: string, left: number, top: number): Buffer => {
    const png = PNG.sync.read(referenceOf(name));
    const at = (x: number, y: number): number => 4 * (y * png.width + x);
    const colour = png.data.subarray(at(left, top), at(left, top) + 4);
    for (let y = top; y < top + 30; y++)
      for (let x = left; x < left + 30; x++) png.data.set(colour, at(x, y));
    return PNG.sync.write(png);
  };

  it('notices another theme, another view and a part that is gone', () => {
    expect(beyond(comparePictures(referenceOf('home-night'), referenceOf('home-paper')))).toBe(true);
    expect(beyond(comparePictures(referenceOf('section'), referenceOf('home-paper')))).toBe(true);
    expect(beyond(comparePictures(painted('home-paper', 478, 484), referenceOf('home-paper')))).toBe(true);
    expect(beyond(comparePictures(referenceOf('home-paper'), referenceOf('home-paper')))).toBe(false);
  });

  it.runIf(LONG)('notices missing ink and a machine that is a little apart', async () => {
    const app = await home(PHONE, 'paper', () => {
      const given = WebGL2RenderingContext.prototype.shaderSource;
      WebGL2RenderingContext.prototype.shaderSource = function (shader, source) {
        given.call(
          this,
          shader,
          source.replace('uniform float inkStrength;', 'const float inkStrength = 0.0;'),
        );
      };
    });
    const bare = comparePictures(await picture(app.page), referenceOf('home-phone'));
    await setRange(app.page, 'Explode', 0.05);
    const apart = comparePictures(await picture(app.page), referenceOf('home-phone'));
    await app.close();
    if (process.env['DRUMBENCH_PICTURES'] === 'say')
      console.log('no ink', bare.share, bare.worstTile, 'apart', apart.share, apart.worstTile);
    expect([beyond(bare), beyond(apart)]).toEqual([true, true]);
  });
});
