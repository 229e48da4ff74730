// @vitest-environment jsdom
/** Values, manifests, the launch page and the search for a system, by the rules of the standards. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  courseCmi5,
  decimal,
  identifier,
  launchPage,
  lettersOf,
  manifest12,
  manifest2004,
  packageUrls,
  readPackageSettings,
  time12,
  time2004,
  timeinterval2004,
  timespan12,
} from '../../src/core/records';
import { findApi } from '../../src/edge/school';

describe('values', () => {
  it('spans of time are of the standards’ forms and lose less than a hundredth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 3e7, noNaN: true }), (seconds) => {
        const old = timespan12(seconds);
        expect(old).toMatch(/^\d{4}:[0-5]\d:[0-5]\d\.\d{2}$/);
        const [h, m, s] = old.split(':').map(Number);
        expect(Math.abs(h! * 3600 + m! * 60 + s! - seconds)).toBeLessThanOrEqual(0.0051);
        const read = /^PT(\d+(?:\.\d{1,2})?)S$/.exec(timeinterval2004(seconds));
        expect(Math.abs(Number(read?.[1]) - seconds)).toBeLessThanOrEqual(0.0051);
      }),
      { numRuns: 100, seed: 1 },
    );
    expect(timespan12(-5)).toBe('0000:00:00.00');
    expect(timespan12(NaN)).toBe('0000:00:00.00');
    expect(timespan12(59.999)).toBe('0000:01:00.00');
    expect(timespan12(1e12)).toBe('9999:59:59.99');
    expect(timeinterval2004(Infinity)).toBe('PT0S');
  });
  it('times of day and points of time', () => {
    const at = Date.UTC(2026, 10, 25, 23, 59, 59, 990);
    expect(time12(at, 0)).toBe('23:59:59');
    expect(time12(at, -60)).toBe('00:59:59');
    expect(time2004(at)).toBe('2026-11-25T23:59:59.9Z');
  });
  it('numbers have no exponent, whatever their size', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 }), (n) => {
        expect(decimal(n)).toMatch(/^-?\d+(\.\d+)?$/);
        expect(Number(decimal(n))).toBeCloseTo(n, 6 - Math.ceil(Math.log10(Math.abs(n) + 1)));
      }),
      { numRuns: 200, seed: 2 },
    );
    expect([decimal(1e-12), decimal(1.5e21), decimal(0), decimal(NaN)]).toEqual([
      '0.000000000001',
      '1500000000000000000000',
      '0',
      '0',
    ]);
  });
  it('identifiers and letters', () => {
    expect(identifier('gen/force number/ü')).toBe('gen-force-number--');
    expect(identifier('')).toBe('-');
    expect([...lettersOf(['c', 'a', 'b', 'a'])]).toEqual([
      ['a', 'a'],
      ['b', 'b'],
      ['c', 'c'],
    ]);
    expect(lettersOf(Array.from({ length: 50 }, (_, i) => String(i))).size).toBe(36);
  });
});

const facts = {
  lesson: 'two-directions',
  title: 'A <lesson> & "more"',
  language: 'en',
  mastery: 0.85,
  launch: 'launch.html',
  files: ['launch.html', 'assets/a&b.js', 'baked/x.bin'],
};
const parse = (xml: string): Document => {
  const read = new DOMParser().parseFromString(xml, 'application/xml');
  expect(read.querySelector('parsererror')).toBeNull();
  return read;
};
const NS = {
  ss: 'http://www.imsglobal.org/xsd/imsss',
  cp12: 'http://www.imsproject.org/xsd/imscp_rootv1p1p2',
  adl12: 'http://www.adlnet.org/xsd/adlcp_rootv1p2',
  cp: 'http://www.imsglobal.org/xsd/imscp_v1p1',
  adl: 'http://www.adlnet.org/xsd/adlcp_v1p3',
};

describe('manifests', () => {
  it.each([
    ['1.2', manifest12(facts), NS.cp12, NS.adl12, 'scormtype'],
    ['2004 4th Edition', manifest2004(facts), NS.cp, NS.adl, 'scormType'],
  ])('%s: one organisation, one lesson, all files', (version, xml, cp, adl, type) => {
    const read = parse(xml);
    const all = (name: string) => [...read.getElementsByTagNameNS(cp, name)];
    expect(all('schemaversion')[0]!.textContent).toBe(version);
    expect(all('title').map((each) => each.textContent)).toEqual([facts.title, facts.title]);
    const [organizations] = all('organizations');
    expect(organizations!.getAttribute('default')).toBe(all('organization')[0]!.getAttribute('identifier'));
    const [resource] = all('resource');
    expect(all('item')).toHaveLength(1);
    expect(all('item')[0]!.getAttribute('identifierref')).toBe(resource!.getAttribute('identifier'));
    expect(resource!.getAttributeNS(adl, type)).toBe('sco');
    expect(resource!.getAttribute('href')).toBe('launch.html');
    expect(all('file').map((each) => each.getAttribute('href'))).toEqual(facts.files);
    // Every namespace that is used has a place for its schema.
    const places = read.documentElement.getAttributeNS(
      'http://www.w3.org/2001/XMLSchema-instance',
      'schemaLocation',
    )!;
    const pairs = places.split(' ');
    expect(pairs.length % 2).toBe(0);
    for (const element of read.querySelectorAll('*')) expect(pairs).toContain(element.namespaceURI);
  });
  it('say what passes: of a hundred in 1.2, of one in 2004', () => {
    expect(parse(manifest12(facts)).getElementsByTagNameNS(NS.adl12, 'masteryscore')[0]!.textContent).toBe(
      '85',
    );
    const read = parse(manifest2004(facts));
    const [objective] = read.getElementsByTagNameNS(NS.ss, 'primaryObjective');
    expect(objective!.getAttribute('satisfiedByMeasure')).toBe('true');
    expect(objective!.textContent).toBe('0.85');
    const [controls] = read.getElementsByTagNameNS(NS.ss, 'deliveryControls');
    expect(controls!.getAttribute('completionSetByContent')).toBe('true');
  });
  it('cmi5: one unit with absolute ids, mastery and what moves on', () => {
    const read = parse(courseCmi5({ ...facts, summary: 'About it.' }));
    const [unit] = read.getElementsByTagName('au');
    expect(unit!.getAttribute('masteryScore')).toBe('0.85');
    expect(unit!.getAttribute('moveOn')).toBe('CompletedAndPassed');
    expect(new URL(unit!.id).protocol).toBe('https:');
    expect(unit!.getElementsByTagName('url')[0]!.textContent).toBe('launch.html');
    // The order of the schema: title, description, url.
    expect([...unit!.children].map((each) => each.localName)).toEqual(['title', 'description', 'url']);
  });
});

const INDEX = `<!doctype html>
<html lang="en"><head>
<meta http-equiv="Content-Security-Policy" content="default-src &#39;self&#39;; connect-src &#39;self&#39; https:; base-uri &#39;self&#39;">
<link rel="manifest" href="./manifest.webmanifest" />
<title>Drumbench</title></head><body><div id="root"></div></body></html>`;

describe('launch page', () => {
  const words = { title: 'A $& <lesson>', summary: '', waiting: 'Wait.' };
  it.each(['scorm12', 'scorm2004', 'cmi5'] as const)(
    '%s: says what it is, and speaks to no more than it must',
    (standard) => {
      const settings = { standard, lesson: 'two-directions', language: 'es', mastery: 0.7 };
      const page = new DOMParser().parseFromString(launchPage(INDEX, settings, words), 'text/html');
      const meta = page.querySelector<HTMLMetaElement>('meta[name="drumbench-package"]');
      expect(readPackageSettings(meta!.content)).toEqual(settings);
      expect(page.title).toBe(words.title);
      expect(page.documentElement.lang).toBe('es');
      expect(page.getElementById('root')!.textContent).toBe('Wait.');
      expect(page.querySelector('link')).toBeNull();
      const policy = page.querySelector<HTMLMetaElement>('meta[http-equiv]')!.content.split('; ');
      expect(policy[0]).toBe("default-src 'self'");
      expect(policy[1]).toBe(`connect-src 'self' data: blob:${standard === 'cmi5' ? ' https: http:' : ''}`);
      expect(policy[2]).toBe("base-uri 'self'");
    },
  );
  it('settings that are none are not believed', () => {
    for (const text of [
      null,
      '',
      '[]',
      '{"standard":"other","lesson":"a","language":"en","mastery":1}',
      '{"standard":"cmi5","lesson":"a","language":"en","mastery":7}',
    ])
      expect(readPackageSettings(text)).toBeNull();
  });
});

it('a package holds what one lesson needs and nothing of the others', () => {
  const urls = [
    'index.html',
    'files.json',
    'favicon.svg',
    'icon-192.png',
    'manifest.webmanifest',
    'assets/a.js',
    'assets/a.woff2',
    'baked/alder-one.bin',
    'baked/alder-one.graph.bin',
    'baked/alder-one/jobs.json',
    'baked/alder-one/jobs/x.json',
    'baked/alder-one/faults.json',
    'baked/lessons/en/course.json',
    'baked/lessons/en/topic-a.json',
    'baked/lessons/en/topic-b.json',
    'baked/lessons/es/topic-a.json',
    'baked/lessons/fr/topic-a.json',
  ];
  const kept = packageUrls(
    urls.map((url) => ({ url, bytes: 1 })),
    'a',
    'es',
  ).map(({ url }) => url);
  expect(kept).toEqual([
    'favicon.svg',
    'assets/a.js',
    'assets/a.woff2',
    'baked/alder-one.bin',
    'baked/alder-one/faults.json',
    'baked/lessons/en/course.json',
    'baked/lessons/en/topic-a.json',
    'baked/lessons/es/topic-a.json',
  ]);
});

describe('search for a system', () => {
  type Fake = { parent: Fake; top: Fake; opener: Fake | null } & Record<string, unknown>;
  const frame = (
    parent: Fake | null,
    own: Record<string, unknown> = {},
    opener: Fake | null = null,
  ): Fake => {
    const made = { opener, ...own } as Fake;
    made.parent = parent ?? made;
    made.top = parent === null ? made : parent.top;
    return made;
  };
  const api = { LMSInitialize: () => 'true' };
  const find = (from: Fake) => findApi('scorm12', from as unknown as Window);

  it('looks up through the frames, then from the window that opened this one', () => {
    expect(find(frame(frame(frame(null, { API: api }))))).toBe(api);
    expect(find(frame(null, {}, frame(frame(null, { API: api }))))).toBe(api);
    expect(find(frame(frame(null, {}, frame(null, { API: api }))))).toBe(api);
    expect(findApi('scorm2004', frame(null, { API: api }) as unknown as Window)).toBeNull();
  });
  it('finds none where there is none, however deep, and past a frame that may not be looked into', () => {
    expect(find(frame(null))).toBeNull();
    let deep = frame(null, { API: api });
    for (let i = 0; i < 600; i++) deep = frame(deep);
    expect(find(deep)).toBeNull();
    const closed = frame(frame(null, { API: api }));
    Object.defineProperty(closed, 'API', {
      get: () => {
        throw new DOMException('Blocked a frame', 'SecurityError');
      },
    });
    expect(find(frame(closed))).toBe(api);
  });
});
