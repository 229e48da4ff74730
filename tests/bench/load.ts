/**
 * Loading on a phone as it is throttled in a browser's own tools (slow 4G, processor four times slower), and how soon the
 * page answers a click. Files are served compressed, as any web host does.
 */
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { FILE_TYPES } from '../../scripts/lib/web.mjs';
import { DIST, drawn, freshPage, rest, setRange, statsOf, withBrowser } from './browser';
import { atMost, medianOf } from './limit';
import { chunkSizes } from './load-sizes';
import type { Measure, Row } from './row';

/** 1.6 Mbit/s down, 750 kbit/s up, 150 ms there and back, as applied by a throttled browser (a tenth less, delay 3.75 times). */
const SLOW_4G = {
  offline: false,
  latency: 150 * 3.75,
  downloadThroughput: (1.6e6 / 8) * 0.9,
  uploadThroughput: (0.75e6 / 8) * 0.9,
};
const TIMES = 5;

async function withCompressed<T>(use: (url: string) => Promise<T>): Promise<T> {
  const kept = new Map<string, Buffer>();
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://local').pathname;
    const file = path === '/' ? '/index.html' : path;
    try {
      const body = kept.get(file) ?? gzipSync(readFileSync(join(DIST, file)));
      kept.set(file, body);
      const type = FILE_TYPES[extname(file) as keyof typeof FILE_TYPES] ?? 'application/octet-stream';
      response.writeHead(200, {
        'content-type': type,
        'content-encoding': 'gzip',
        'content-length': body.length,
      });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  try {
    return await use(`http://127.0.0.1:${(server.address() as { port: number }).port}/`);
  } finally {
    server.close();
  }
}

interface Seen {
  fcp: number;
  lcp: number;
  cls: number;
  long: { start: number; length: number }[];
}

declare global {
  interface Window {
    __seen?: Seen;
  }
}

function watch(): void {
  const seen: Seen = { fcp: 0, lcp: 0, cls: 0, long: [] };
  window.__seen = seen;
  const observe = (type: string, take: (entry: PerformanceEntry) => void): void =>
    new PerformanceObserver((list) => list.getEntries().forEach(take)).observe({ type, buffered: true });
  observe('paint', (e) => {
    if (e.name === 'first-contentful-paint') seen.fcp = e.startTime;
  });
  observe('largest-contentful-paint', (e) => (seen.lcp = e.startTime));
  observe('layout-shift', (e) => {
    const shift = e as PerformanceEntry & { value: number; hadRecentInput: boolean };
    if (!shift.hadRecentInput) seen.cls += shift.value;
  });
  observe('longtask', (e) => seen.long.push({ start: e.startTime, length: e.duration }));
}

/** One cold load; times in ms since the page was asked for. */
async function load(browser: Browser, url: string) {
  const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
  const { page, cdp, close } = await freshPage(browser, phone, watch);
  await cdp.send('Network.enable');
  await cdp.send('Network.emulateNetworkConditions', SLOW_4G);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await page.goto(url, { waitUntil: 'commit' });
  // The stage's own chunk begins to run when it has come: until then it is the first screen.
  await page.waitForFunction(() =>
    performance
      .getEntriesByType('resource')
      .some((e) => e.name.includes('/Stage-') && (e as PerformanceResourceTiming).responseEnd > 0),
  );
  await page.waitForTimeout(200);
  const found = await page.evaluate(() => {
    const stage = performance
      .getEntriesByType('resource')
      .find((e) => /\/Stage-[^/]*\.js/.test(e.name)) as PerformanceResourceTiming;
    const seen = window.__seen!;
    const blocking = (until: number): number =>
      seen.long
        .filter(({ start }) => start >= seen.fcp && start < until)
        .reduce((sum, { length }) => sum + Math.max(0, length - 50), 0);
    return {
      fcp: seen.fcp,
      lcp: seen.lcp,
      cls: seen.cls,
      tbt: blocking(stage.responseEnd),
      stage: stage.responseEnd,
    };
  });
  await close();
  return found;
}

/** From an act to the next paint of the page, ms. */
async function answers(page: Page, act: () => Promise<void> | void): Promise<number> {
  await rest(page, 400);
  await page.evaluate(() => {
    const w = window as unknown as { __answer?: number | undefined };
    w.__answer = undefined;
    const begun = (): void => {
      const start = performance.now();
      // After the frame in which the page is drawn anew.
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => (w.__answer = performance.now() - start);
        channel.port2.postMessage(0);
      });
      for (const type of ['click', 'input']) window.removeEventListener(type, begun, true);
    };
    for (const type of ['click', 'input']) window.addEventListener(type, begun, true);
  });
  await act();
  await page.waitForFunction(() => (window as unknown as { __answer?: number }).__answer !== undefined);
  return page.evaluate(() => (window as unknown as { __answer: number }).__answer);
}

async function clicks(browser: Browser, url: string): Promise<readonly Row[]> {
  const { page, close } = await freshPage(browser);
  await page.goto(`${url}?tier=low`);
  await drawn(page);
  const { renderer } = await statsOf(page);
  const press = (selector: string, n: number) =>
    page
      .locator(selector)
      .nth(n)
      .evaluate((element) => (element as HTMLElement).click());
  const acts: Readonly<Record<string, (n: number) => Promise<void>>> = {
    'a part in the list': (n) => press('.parts-scroll [role="row"] button, .parts-scroll button', 2 + n),
    'a step on': () => press('button[aria-label="One step on"]', 0),
    'direction flipped': (n) => press(`input[type=radio][value=${n % 2 === 0 ? 'low' : 'high'}]`, 0),
    'the explode slider': (n) => setRange(page, 'Explode', 0.1 + 0.1 * n),
  };
  const rows: Row[] = [];
  for (const [name, act] of Object.entries(acts)) {
    if (name === 'direction flipped') await page.getByRole('tab', { name: 'Exciter' }).click();
    const times: number[] = [];
    for (let n = 0; n < TIMES; n++) times.push(await answers(page, () => act(n)));
    rows.push(
      atMost(
        `from click to the next paint of the page: ${name}`,
        'ms',
        medianOf(times),
        100,
        `median of ${TIMES}; the stage's own frame follows, on ${renderer}`,
      ),
    );
  }
  await close();
  return rows;
}

export const measure: Measure = () => {
  const { first, stage, words } = chunkSizes();
  return withBrowser((browser) =>
    withCompressed(async (url) => {
      const loads: Awaited<ReturnType<typeof load>>[] = [];
      for (let n = 0; n < TIMES; n++) loads.push(await load(browser, url));
      const of = (key: keyof (typeof loads)[number]): number => medianOf(loads.map((one) => one[key]));
      const how = `median of ${TIMES} cold loads, 390 x 844, slow 4G, processor 4 times slower`;
      return [
        atMost(
          'first chunk, gzip',
          'kB',
          first.gzip_kB,
          110,
          `${first.hasThree ? 'HAS three' : 'no three in it'}; largest: ${first.largest}; words come beside it: ${words.largest}`,
        ),
        atMost('3-D chunk, gzip', 'kB', stage.gzip_kB, 340, `largest: ${stage.largest}`),
        atMost(
          'largest contentful paint',
          'ms',
          of('lcp'),
          2500,
          `${how}; first paint ${of('fcp').toFixed(0)} ms`,
        ),
        atMost('layout shift', '', of('cls'), 0.02, how),
        atMost(
          'blocking of the first screen',
          'ms',
          of('tbt'),
          200,
          `${how}; long tasks from the first paint until the stage's chunk has come (${of('stage').toFixed(0)} ms)`,
        ),
        ...(await clicks(browser, url)),
      ];
    }),
  );
};
