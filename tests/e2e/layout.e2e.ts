import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { openApp } from './app';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const SIZES = [
  { name: 'desktop', width: 1440, height: 900 },
  { name: 'tablet', width: 1024, height: 768 },
  { name: 'phone', width: 390, height: 844 },
];

describe.each(SIZES)('layout on a $name', ({ name, width, height }) => {
  it('has nothing cut off sideways and no accessibility violation', async () => {
    const app = await openApp({ width, height, touch: name !== 'desktop' });
    const { page } = app;
    const wider = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wider).toBeLessThanOrEqual(0);
    await page.evaluate(axe);
    const violations = await page.evaluate(async () => {
      const run = (
        window as unknown as {
          axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
        }
      ).axe;
      return (await run.run()).violations.map(
        (v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 120)).join(' | ')}`,
      );
    });
    expect(violations).toEqual([]);
    await app.close();
  });
});
