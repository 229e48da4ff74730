/** Pictures and files of the stage, saved from a real view: each opened and looked into. */
import { buffer } from 'node:stream/consumers';
import { validateBytes } from 'gltf-validator';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { atRest, openApp, setRange } from './app';

async function saved(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('.share-menu').getByRole('button', { name: button }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: await buffer(await download.createReadStream()) };
}

describe('save a picture', () => {
  it('line drawing, picture and model of the view that is on the stage', async () => {
    const app = await openApp({ width: 1220, height: 640 });
    const { page } = app;
    // the hub chosen and all apart
    await page.getByRole('searchbox').fill('hub');
    await page
      .locator('tr.level-2')
      .filter({ hasText: /^\s*23/ })
      .first()
      .click();
    await setRange(page, 'Explode', 1);
    await atRest(page);
    await page.locator('summary', { hasText: 'Save a picture' }).focus();
    await page.keyboard.press('Enter');
    await page.locator('.share-menu').waitFor();

    const drawing = await saved(page, 'Save drawing');
    expect(drawing.name).toBe('alder-one-home-exploded.svg');
    const found = await page.evaluate((text) => {
      const dom = new DOMParser().parseFromString(text, 'image/svg+xml');
      const items = (selector: string): (string | null)[] =>
        [...dom.querySelectorAll(selector)].map((b) => b.getAttribute('data-item'));
      return {
        sound: dom.querySelector('parsererror') === null,
        balloons: items('.balloon'),
        list: items('#parts-list .item'),
        outlines: dom.querySelectorAll('#outlines path').length,
        note: dom.querySelector('#title-block')?.textContent ?? '',
      };
    }, drawing.bytes.toString('utf8'));
    expect(found.sound).toBe(true);
    expect(found.balloons).toContain('23');
    expect([...found.list].sort()).toEqual([...found.balloons].sort());
    expect(found.balloons.length).toBeGreaterThan(15);
    expect(found.outlines).toBeGreaterThan(60);
    expect(found.note).toContain('Not for work on a real machine');
    await page.getByText(`Saved as ${drawing.name}`).first().waitFor();

    const picture = await saved(page, 'Save picture');
    expect(picture.name).toBe('alder-one-home-exploded.png');
    const seen = await page.evaluate(async (base64) => {
      const image = new Image();
      image.src = `data:image/png;base64,${base64}`;
      await image.decode();
      const canvas = new OffscreenCanvas(64, 64);
      const paper = canvas.getContext('2d')!;
      paper.drawImage(image, 0, 0, image.naturalWidth, (image.naturalHeight * 2) / 3, 0, 0, 64, 64);
      const { data } = paper.getImageData(0, 0, 64, 64);
      const colours = new Set<number>();
      for (let i = 0; i < data.length; i += 4)
        colours.add(((data[i]! >> 4) << 8) | ((data[i + 1]! >> 4) << 4) | (data[i + 2]! >> 4));
      return { width: image.naturalWidth, height: image.naturalHeight, colours: colours.size };
    }, picture.bytes.toString('base64'));
    const stage = (await page.locator('[data-testid="stage-canvas"]').boundingBox())!;
    expect(seen.width).toBe(Math.round(2 * stage.width));
    expect(seen.height).toBeGreaterThan(2 * stage.height);
    expect(seen.colours).toBeGreaterThan(20);

    await page.getByLabel(/Group of the selected part/).check();
    const group = await saved(page, 'Save model');
    expect(group.name).toBe('alder-one-vibration-side.glb');
    await page.getByLabel('Whole machine').check();
    const whole = await saved(page, 'Save model');
    expect(whole.bytes.length).toBeGreaterThan(2 * group.bytes.length);
    for (const { bytes } of [group, whole]) {
      const report = await validateBytes(new Uint8Array(bytes));
      expect(report.issues.numErrors).toBe(0);
    }
    await app.close();
  });
});
